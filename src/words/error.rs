//! Errors as sentences that somebody tired can act on.

use super::ErrorLine;
use super::cut_list::list_mistake;
use super::own_rig::{fault_words, mistake_words};
use super::phrase::{listed, noun, sentence};
use super::refusal::{inside, limit, refused, wanted};
use super::template::{said, worded};
use crate::error::{Error, Reason};
use crate::field::{Refusal, Spread};
use crate::quantity::{Dimension, Ratio, View, plain};
use crate::reeving::OWN_RIG;
use crate::reeving::notation::read;
use crate::rope::{ROPE_STOCK, STOCK_LENGTH, read_ladder};

/// The errors as people read them.
#[must_use]
pub fn error_lines(errors: &[Error], view: View) -> Vec<ErrorLine> {
    let mut lines = Vec::new();
    for error in errors {
        lines.push(ErrorLine { fields: error.fields.clone(), message: message(error, view) });
    }
    lines
}

/// The sentence for an error.
///
/// # Guarantees
/// It names the field, says what is wrong, and says what would be taken.
#[must_use]
pub fn message(error: &Error, view: View) -> String {
    let mut nouns = Vec::new();
    for field in &error.fields {
        nouns.push(noun(field));
    }
    let name = sentence(&listed(&nouns));
    let id = error.fields.first().map_or("", String::as_str);
    let row = crate::question::field(id);
    match &error.reason {
        Reason::Needed => worded("{} is needed. {}", &[&name, &wanted(row, view)]),
        Reason::UnknownField => {
            worded("“{}” is not a field of any question here; check how it is spelt, or leave it out.", &[id])
        }
        Reason::Refused(refusal) => match refusal {
            Refusal::Miswritten { said } if id == ROPE_STOCK.row.id => match read_ladder(said) {
                Err((piece, refusal)) => {
                    refused(&worded("“{}” among the lengths", &[&piece]), &refusal, Some(&STOCK_LENGTH), view)
                }
                Ok(_) => String::new(),
            },
            Refusal::Miswritten { said } if let Some(wrong) = list_mistake(id, said, view) => wrong,
            Refusal::Miswritten { said }
                if id == OWN_RIG.row.id
                    && let Err(mistake) = read(said) =>
            {
                mistake_words(&mistake, view)
            }
            _ => refused(&name, refusal, row, view),
        },
        Reason::TestOutOfRange { measured, least, ideal } => {
            test_out_of_range(&name, *measured, [*least, *ideal], view)
        }
        Reason::TestWithoutTurns => worded(
            "{} tell nothing about this rig, which has no turns. Leave them empty, or choose the rig you tested.",
            &[&name],
        ),
        Reason::HalfATest => {
            "A test has two halves, the mass and the pull: fill in both, or leave both empty.".to_owned()
        }
        Reason::UnworkableRig => "This rig cannot be worked out. Choose another.".to_owned(),
        Reason::ImpossibleRig { said, fault } => fault_words(said, *fault, view),
        Reason::NoCrotch => {
            "No rope of your own rig comes to the tree, so how much of it hangs there cannot be told. Write tree where one does, or choose another rig.".to_owned()
        }
        Reason::ClimbAboveCrotch => {
            "At the top of this climb the lower hitch would be as high as the crotch, or higher: climb less, or measure the crotch again.".to_owned()
        }
        Reason::HitchAboveCrotch => {
            "The lower hitch must be below the crotch: measure both heights from the ground.".to_owned()
        }
        Reason::RopeTooShort => {
            "With its knots and all this rope goes over no crotch if everything takes the most it may. Enter a longer one, or a height, and the answer says how much rope it takes.".to_owned()
        }
        Reason::EndsOfAnother { noun, ends } => {
            let mut nouns = Vec::new();
            for ends in *ends {
                nouns.push(ends.named().noun);
            }
            worded("Such ends do not go with this: {}. Choose {}.", &[noun, &nouns.join(", or ")])
        }
        Reason::TwoLengths => worded("{} follow from each other: say one of them.", &[&name]),
        Reason::CutAndWanted => worded(
            "{} cannot both be given: say what you want, or what you cut. With what it came out at, all three go together.",
            &[&name],
        ),
        Reason::CameOutAlone => worded("{} tell something only together: fill in both, or leave both empty.", &[&name]),
        Reason::SewnIsBought => {
            "Sewn or spliced eyes are bought by their finished length, and nothing is cut: leave this empty, or choose tied ends.".to_owned()
        }
        Reason::OddFit { share } => said(
            "With these your coils and knots would take {%} of what they usually do, and between half and twice is believed. Measure both again.",
            &[&Spread::point(*share)],
            &[],
            view,
        ),
        Reason::TooShort { least } => {
            let least = limit(*least, [*least, f64::INFINITY], Dimension::Length, view);
            worded("{} must be over {}: so much goes before anything hangs.", &[&name, &least])
        }
        Reason::WorkingEnd { least, most } => {
            let end = |at: f64| inside(at, [*least, *most], Dimension::Length, view);
            match (end(*least), end(*most)) {
                (Some(least), Some(most)) if least != most => worded(
                    "{} must be between {} and {} here: its knot and tail are in it, and the other end needs the rest.",
                    &[&name, &least, &most],
                ),
                _ => worded(
                    "{} follows from the rest here: hardly any cord is left to hang. Leave it empty.",
                    &[&name],
                ),
            }
        }
        Reason::NoHaulCord => {
            "Choose a rig that has a haul cord, or say how long the finished cord is to be.".to_owned()
        }
    }
}

fn test_out_of_range(name: &str, measured: Ratio, ends: [Ratio; 2], view: View) -> String {
    let (measured, [least, ideal]) = (measured.value(), ends.map(Ratio::value));
    let mut decimals = 2;
    let text = |number: f64, decimals: usize| plain(number, decimals, view);
    // As many as show that it is none of what the rig can give.
    while decimals < 9 && [least, ideal].iter().any(|end| text(measured, decimals) == text(*end, decimals)) {
        decimals += 1;
    }
    worded(
        "{} come to a real advantage of {}, and this rig can only give between {} and {}. Measure again, with the scale in the rope at the hand and nothing else holding you.",
        &[name, &text(measured, decimals), &text(least, 0), &text(ideal, 0)],
    )
}
