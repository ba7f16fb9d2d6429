//! Parts of the rig, and what happens when they fail.

use super::PartLine;
use super::phrase::sentence;
use super::template::{said, say};
use crate::field::Spread;
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
            let drop = Spread::point(drop.in_metres());
            said("If it fails, only a knot is left to catch you, after a drop of about {M}: near the ground you land first.", &[&drop], &[], view)
        }
        _ => "If it fails while you hang at rest, something else in this model still holds you. While you pull is not reckoned here."
            .to_owned(),
    };
    let mut id = said("rope-{0}", &[&Spread::point(part.rope as f64)], &[], view);
    if let Some(stop) = part.stop {
        say(&mut id, "-{0}", &[&Spread::point(stop as f64)], &[], view);
    }
    PartLine { id, noun: noun.map_or_else(String::new, |noun| sentence(noun)), single: part.single, text }
}
