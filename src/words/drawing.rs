//! The rig as a drawing needs it, and in words.

use super::phrase::{newtons, sentence};
use super::{Drawing, DrawnRope, DrawnStop, Level, Strand, Tension};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::can_i_climb::Answer;
use crate::reeving::{BodyKind, Phase, Rope, Stop, What};

/// The drawing of the rig, while the hands pull.
pub(super) fn drawing(answer: &Answer, view: View) -> Drawing {
    let levels = answer.rig.bodies().iter().enumerate().map(|(at, body)| Level {
        id: format!("body-{at}"),
        kind: match body.kind {
            BodyKind::Tree => "tree",
            BodyKind::Carriage => "carriage",
            BodyKind::Climber => "climber",
            BodyKind::Ground => "ground",
        },
        noun: body.noun.to_string(),
    });
    let grips = Phase::pull(&answer.rig).grips;
    let ropes = answer.rig.ropes().iter().zip(&answer.tensions).enumerate().map(|(at, (rope, tensions))| DrawnRope {
        noun: rope.noun.to_string(),
        stops: rope.stops.iter().enumerate().map(|(place, stop)| drawn(answer, at, place, stop, &grips)).collect(),
        strands: tensions.iter().map(|tension| strand(*tension, view)).collect(),
    });
    Drawing { levels: levels.collect(), ropes: ropes.collect(), text: text(answer, view) }
}

fn drawn(answer: &Answer, rope: usize, place: usize, stop: &Stop, grips: &[bool]) -> DrawnStop {
    let (kind, state) = match stop.what {
        What::Tied => ("tied", None),
        What::Turn(_) => ("turn", None),
        What::Hitch(number) => {
            ("hitch", Some(if grips.get(number).copied().unwrap_or(false) { "grips" } else { "slides" }))
        }
        What::Hand(_) => ("hand", None),
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
fn text(answer: &Answer, view: View) -> String {
    let ropes = answer.rig.ropes().iter().zip(&answer.tensions);
    let lines: Vec<String> = ropes.map(|(rope, tensions)| rope_text(rope, tensions, view)).collect();
    format!("While you pull. {}", lines.join(" "))
}

fn rope_text(rope: &Rope, tensions: &[Spread], view: View) -> String {
    let steps = rope.stops.windows(2).zip(tensions).filter_map(|(ends, tension)| {
        let to = ends.last()?;
        Some(match to.body {
            None => "then its loose tail".to_owned(),
            Some(_) if tension.likely > 0.0 => format!("{} to the {}", newtons(tension.likely, view), to.noun),
            Some(_) => format!("slack to the {}", to.noun),
        })
    });
    let start = rope.stops.first().map_or_else(String::new, |stop| stop.noun.to_string());
    format!("{}: from the {start}, {}.", sentence(&rope.noun), steps.collect::<Vec<_>>().join(", "))
}
