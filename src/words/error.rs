//! Errors as sentences that somebody tired can act on.

use super::ErrorLine;
use super::misread::misread_words;
use super::phrase::{listed, noun, sentence, short};
use super::template::worded;
use crate::error::{Error, Reason};
use crate::field::{Kind, Limits, Named, Refusal, Row};
use crate::quantity::{Dimension, Ratio, View, plain, si_unit, written};

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
        Reason::Refused(refusal) => refused(&name, refusal, row, view),
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
        Reason::HitchAboveCrotch => {
            "The lower hitch must be below the crotch: measure both heights from the ground.".to_owned()
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

fn refused(name: &str, refusal: &Refusal, row: Option<&Row>, view: View) -> String {
    let wrong = match refusal {
        Refusal::Empty => " is empty, and empty is not nought.".to_owned(),
        Refusal::WrongType { said } => worded(" cannot be {}.", &[said]),
        Refusal::NotFinite => " must be an ordinary number.".to_owned(),
        Refusal::Misread { said, misread } => {
            let (what, done) = misread_words(said, misread, row, view);
            if done {
                return worded("{}: {}", &[name, &what]);
            }
            worded(": {}", &[&what])
        }
        Refusal::OutOfRange { said, si, suggestion } => {
            let Some(Kind::Quantity(limits)) = row.map(|row| row.kind) else {
                return worded("{} is out of range.", &[name]);
            };
            let said = said.clone().unwrap_or_else(|| number_said(*si, limits.dimension, view));
            let meant = suggestion.as_ref().map_or_else(String::new, |other| worded(" Did you mean {}?", &[other]));
            return worded("{}: {} is outside {}.{}", &[name, &said, &range(limits, view), &meant]);
        }
        Refusal::UnknownChoice { said, options } => {
            return worded("{} cannot be “{}”. {}", &[name, said, &one_of(options, true)]);
        }
    };
    worded("{}{} {}", &[name, &wrong, &wanted(row, view)])
}

/// A number that a program said, in the SI unit that it stands for.
fn number_said(si: f64, dimension: Dimension, view: View) -> String {
    let number = short(si, view);
    match si_unit(dimension) {
        Some(unit) => worded("{} {}", &[&number, unit.symbol]),
        None => number,
    }
}

/// What would be taken.
fn wanted(row: Option<&Row>, view: View) -> String {
    match row.map(|row| (row, row.kind)) {
        Some((row, Kind::Quantity(limits))) => worded("Write it like “{}”.", &[&example(row, limits, view)]),
        Some((_, Kind::Choice { options, .. })) => one_of(options, false),
        None => String::new(),
    }
}

/// The most options that a sentence names for somebody who has them in a list beside it.
const NAMED: usize = 6;

/// The options, by what people call them; for somebody who writes ids, with their ids.
fn one_of(options: &[Named], with_ids: bool) -> String {
    let mut text = "Choose one".to_owned();
    let mut before = ": ";
    let shown = if with_ids || options.len() <= NAMED { options.len() } else { 2 };
    for option in options.iter().take(shown) {
        text.push_str(before);
        text.push_str(option.noun);
        if with_ids {
            text.push_str(" (");
            text.push_str(option.id);
            text.push(')');
        }
        before = "; ";
    }
    text.push_str(if shown < options.len() { "; or another of the list." } else { "." });
    text
}

/// A value of the field, in its own unit.
pub(super) fn example(row: &Row, limits: Limits, view: View) -> String {
    match row.bare_unit(view.system) {
        Some(unit) => worded("{} {}", &[&plain(unit.count(limits.example).round().max(1.0), 0, view), unit.symbol]),
        None => written(limits.example, limits.dimension, view),
    }
}

pub(super) fn range(limits: Limits, view: View) -> String {
    let end = |si: f64| written(si, limits.dimension, view);
    worded("{} to {}", &[&end(limits.least), &end(limits.most)])
}
