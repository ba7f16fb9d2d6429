//! The rig as a drawing needs it, and in words.

use super::phrase::{counted, newtons, sentence};
use super::{Drawing, DrawnRope, DrawnStop, Level, Strand, Tension};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::can_i_climb::Answer;
use crate::reeving::{BodyKind, Phase, Rope, Stop, What};

/// The drawing of the rig, while the hands pull.
pub(super) fn drawing(answer: &Answer, view: View) -> Drawing {
    let mut levels = Vec::new();
    for (at, body) in answer.rig.bodies().iter().enumerate() {
        let kind = match body.kind {
            BodyKind::Tree => "tree",
            BodyKind::Carriage => "carriage",
            BodyKind::Climber => "climber",
            BodyKind::Ground => "ground",
        };
        levels.push(Level { id: format!("body-{}", counted(at)), kind, noun: body.noun.to_string() });
    }
    let grips = Phase::pull(&answer.rig).grips;
    let mut ropes = Vec::new();
    let mut text = "While you pull.".to_owned();
    for (at, (rope, tensions)) in answer.rig.ropes().iter().zip(&answer.tensions).enumerate() {
        let mut drawn_rope = DrawnRope { noun: rope.noun.to_string(), stops: Vec::new(), strands: Vec::new() };
        for (place, stop) in rope.stops.iter().enumerate() {
            drawn_rope.stops.push(drawn(answer, at, place, stop, &grips));
        }
        for tension in tensions {
            drawn_rope.strands.push(strand(*tension, view));
        }
        ropes.push(drawn_rope);
        text.push(' ');
        text.push_str(&rope_text(rope, tensions, view));
    }
    Drawing { levels, ropes, text }
}

fn drawn(answer: &Answer, rope: usize, place: usize, stop: &Stop, grips: &[bool]) -> DrawnStop {
    let (kind, state) = match stop.what {
        What::Tied => ("tied", None),
        What::Turn(_) => ("turn", None),
        What::Hitch(number) => {
            ("hitch", Some(if grips.get(number).copied().unwrap_or(false) { "grips" } else { "slides" }))
        }
        What::Hand | What::Helper(_) => ("hand", None),
        What::Knot(_) => ("knot", None),
        What::Free => ("free", None),
    };
    let single = answer.parts.iter().any(|part| part.single && part.rope == rope && part.stop == Some(place));
    DrawnStop { kind, level: stop.body, noun: stop.noun.to_string(), state, single }
}

fn strand(tension: Spread, view: View) -> Strand {
    let Spread { low, likely, high } = tension;
    Strand { tension: Tension { value: likely, low, high, text: newtons(likely, view) } }
}

/// From stop to stop, with the tensions where there are any.
fn rope_text(rope: &Rope, tensions: &[Spread], view: View) -> String {
    let mut text = sentence(&rope.noun);
    if let Some(start) = rope.stops.first() {
        text += &format!(": from the {}", start.noun);
    }
    for (to, tension) in rope.stops.iter().skip(1).zip(tensions) {
        text += &match to.body {
            None => ", then its loose tail".to_owned(),
            Some(_) if tension.likely > 0.0 => format!(", {} to the {}", newtons(tension.likely, view), to.noun),
            Some(_) => format!(", slack to the {}", to.noun),
        };
    }
    text + "."
}
