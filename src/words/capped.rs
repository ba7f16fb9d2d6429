//! What caps a verdict, whatever the strength, in a sentence.

use super::template::{said, say};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::can_i_climb::{Answer, Decided, HARNESS_CLOCK};

/// What caps the verdict, whatever the strength.
pub(super) fn capped(decided: Decided, answer: &Answer, view: View) -> Option<String> {
    Some(match decided {
        Decided::RatedMass => rated(answer, view),
        Decided::TopOut => too_low(answer, view),
        Decided::NothingHolds => {
            "Nothing in this rig holds you once a hand lets go of the rope, so it is at best your limit, whatever the strength."
                .to_owned()
        }
        Decided::HarnessClock => hanging(answer, view),
        _ => return None,
    })
}

/// How much too heavy the climber is.
fn rated(answer: &Answer, view: View) -> String {
    let mass = &answer.mass;
    let Some(rated) = answer.rated else {
        return said(
            "You and what you carry weigh about {K}, past most ratings, and what the labels of your gear allow has not been entered.",
            &[mass],
            &[],
            view,
        );
    };
    let rated = &Spread::point(rated.in_kilograms());
    if mass.likely > rated.likely {
        let template = "You and what you carry weigh about {K}, more than the {K} that the labels of your gear allow.";
        said(template, &[mass, rated], &[], view)
    } else {
        let template =
            "You and what you carry may weigh as much as {K}, more than the {K} that the labels of your gear allow.";
        said(template, &[&Spread::point(mass.high), rated], &[], view)
    }
}

/// How long somebody whose legs do not move would hang.
fn hanging(answer: &Answer, view: View) -> String {
    let clock = &const { Spread::point(HARNESS_CLOCK) };
    match &answer.hanging {
        Some(hanging) => {
            let template = "The time in the harness decides, not your strength: it is about {S} until you are down again. Where legs do not move, more than {S} is at best your limit.";
            said(template, &[hanging, clock], &[], view)
        }
        None => {
            let template = "How long you would hang in the harness is not known. Where legs do not move, more than {S} is at best your limit.";
            said(template, &[clock], &[], view)
        }
    }
}

/// How much the crotch is too low by.
fn too_low(answer: &Answer, view: View) -> String {
    let unknown = Spread::point(f64::NAN);
    let seat = answer.top.seat.as_ref().unwrap_or(&unknown);
    let template =
        "The crotch is too low for this: with the hitches closed up under it your seat ends about {M} above the ground";
    let mut text = said(template, &[seat], &[], view);
    if let Some(left) = answer.top.left.filter(|left| left.likely > 0.0) {
        say(&mut text, ", {M} short of the height you ask for", &[&left], &[], view);
    }
    if let Some(over) = answer.top.over_edge.filter(|over| over.likely < 0.0) {
        say(&mut text, ", {M} below the edge of the platform", &[&Spread::point(-over.likely)], &[], view);
    }
    if !answer.top.is_too_low() {
        text.push_str(", and it may end short of what you ask for");
    }
    text + "."
}
