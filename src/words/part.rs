//! Parts of the rig, and what happens when they fail.

use super::PartLine;
use super::phrase::{counted, metres, sentence};
use crate::quantity::{Length, View};
use crate::question::can_i_climb::{Answer, PartFact};

/// The parts as people read them, single ones first.
pub(super) fn part_lines(answer: &Answer, view: View) -> Vec<PartLine> {
    let mut lines = Vec::new();
    for single in [true, false] {
        for part in answer.parts.iter().filter(|part| part.single == single) {
            lines.push(part_line(answer, part, view));
        }
    }
    lines
}

fn part_line(answer: &Answer, part: &PartFact, view: View) -> PartLine {
    let rope = answer.rig.ropes().get(part.rope);
    let noun = part.stop_in(&answer.rig).map(|stop| &stop.noun).or(rope.map(|rope| &rope.noun));
    let text = match part.drop {
        _ if part.single => "If it fails, you fall: nothing else in this model holds you.".to_owned(),
        Some(drop) if drop > Length::metres(0.0) => {
            format!("If it fails, a knot holds you after a drop of about {}.", metres(drop.in_metres(), view))
        }
        _ => "If it fails while you hang at rest, something else still holds you. While you pull is not reckoned here."
            .to_owned(),
    };
    let at = part.stop.map_or_else(String::new, |stop| format!("-{}", counted(stop)));
    PartLine {
        id: format!("rope-{}{at}", counted(part.rope)),
        noun: noun.map_or_else(String::new, |noun| sentence(noun)),
        single: part.single,
        text,
    }
}
