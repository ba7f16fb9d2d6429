//! The rig as a drawing needs it, and in words.

use super::phrase::sentence;
use super::template::{said, say};
use super::{Drawing, DrawnRope, DrawnStop, Level, Strand, Tension};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::can_i_climb::Answer;
use crate::reeving::{BodyKind, Phase, Rig, Rope, Stop, What};

/// The drawing of the rig, while the hands pull.
pub(super) fn drawing(answer: &Answer, view: View) -> Drawing {
    let single = |rope: usize, place: usize| {
        answer.parts.iter().any(|part| part.single && part.rope == rope && part.stop == Some(place))
    };
    let opening = if answer.hauled { "While the helper pulls." } else { "While you pull." };
    drawn_rig(&answer.rig, (&Phase::pull(&answer.rig).grips, true), &answer.tensions, &single, None, opening, view)
}

/// The drawing of a rig whose hitches grip or slide, with hands on it or off, with these tensions and these single parts;
/// and with crotch and climber at their heights in metres, where they are known.
pub(super) fn drawn_rig(
    rig: &Rig,
    (grips, hands): (&[bool], bool),
    tensions: &[Vec<Spread>],
    single: &dyn Fn(usize, usize) -> bool,
    heights: Option<[f64; 2]>,
    opening: &str,
    view: View,
) -> Drawing {
    let mut levels = Vec::new();
    for (at, body) in rig.bodies().iter().enumerate() {
        let kind = match body.kind {
            BodyKind::Tree => "tree",
            BodyKind::Carriage => "carriage",
            BodyKind::Climber => "climber",
            BodyKind::Ground => "ground",
        };
        let id = said("body-{0}", &[&Spread::point(at as f64)], &[], view);
        let height = heights.and_then(|[crotch, climber]| match body.kind {
            BodyKind::Tree => Some(crotch),
            BodyKind::Climber => Some(climber),
            BodyKind::Ground => Some(0.0),
            BodyKind::Carriage => None,
        });
        let height_text = height.map(|height| said("{M}", &[&Spread::point(height)], &[], view));
        levels.push(Level { id, kind, noun: body.noun.as_ref().to_owned(), height, at: height_text });
    }
    let mut ropes = Vec::new();
    let mut text = opening.to_owned();
    for (at, (rope, tensions)) in rig.ropes().iter().zip(tensions).enumerate() {
        let mut drawn_rope = DrawnRope { noun: rope.noun.as_ref().to_owned(), stops: Vec::new(), strands: Vec::new() };
        for (place, stop) in rope.stops.iter().enumerate() {
            // Hands that are off are not drawn: the strand that comes to them goes on.
            if hands || !matches!(stop.what, What::Hand | What::Helper(_)) {
                drawn_rope.stops.push(drawn(stop, grips, single(at, place)));
                if let Some(tension) = tensions.get(place) {
                    drawn_rope.strands.push(strand(*tension, view));
                }
            }
        }
        ropes.push(drawn_rope);
        text.push(' ');
        tell_rope(&mut text, rope, (tensions, hands), view);
    }
    Drawing { levels, ropes, text }
}

fn drawn(stop: &Stop, grips: &[bool], single: bool) -> DrawnStop {
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
    DrawnStop { kind, level: stop.body, noun: stop.noun.as_ref().to_owned(), state, single }
}

fn strand(tension: Spread, view: View) -> Strand {
    let Spread { low, likely, high } = tension;
    Strand { tension: Tension { value: likely, low, high, text: said("{N}", &[&tension], &[], view) } }
}

/// From stop to stop, with the tensions where there are any.
fn tell_rope(text: &mut String, rope: &Rope, (tensions, hands): (&[Spread], bool), view: View) {
    text.push_str(&sentence(&rope.noun));
    if let Some(start) = rope.stops.first() {
        say(text, ": from the {}", &[], &[&start.noun], view);
    }
    for (to, tension) in rope.stops.iter().skip(1).zip(tensions) {
        match to.body {
            _ if !hands && matches!(to.what, What::Hand | What::Helper(_)) => {}
            None => text.push_str(", then its loose tail"),
            Some(_) if tension.likely > 0.0 => say(text, ", {N} to the {}", &[tension], &[&to.noun], view),
            Some(_) => say(text, ", slack to the {}", &[], &[&to.noun], view),
        }
    }
    text.push('.');
}
