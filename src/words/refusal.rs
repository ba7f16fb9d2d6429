//! Why what was said is no value of a field, in words, and what would be taken.

use super::misread::misread_words;
use super::phrase::short;
use super::template::worded;
use crate::field::{Kind, Limits, Named, Refusal, Row};
use crate::quantity::{Dimension, View, canonical_si, plain, read, si_unit, written};

/// Why it is no value, in a sentence or two.
pub(super) fn refused(name: &str, refusal: &Refusal, row: Option<&Row>, view: View) -> String {
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
            let said = said.clone().unwrap_or_else(|| number_said(*si, limits, view));
            let meant = suggestion.as_ref().map_or_else(String::new, |other| worded(" Did you mean {}?", &[other]));
            return worded("{}: {} is outside {}.{}", &[name, &said, &range(limits, view), &meant]);
        }
        // Where it goes wrong is told by whoever knows the form.
        Refusal::Miswritten { .. } => return worded("{} cannot be read.", &[name]),
        Refusal::UnknownChoice { said, options } => {
            return worded("{} cannot be “{}”. {}", &[name, said, &one_of(options, true)]);
        }
    };
    worded("{}{} {}", &[name, &wrong, &wanted(row, view)])
}

/// A number that a program said, in the SI unit that it stands for; to the last digit where fewer would be taken.
fn number_said(si: f64, limits: Limits, view: View) -> String {
    let number = short(si, view);
    let text = match si_unit(limits.dimension) {
        Some(unit) => worded("{} {}", &[&number, unit.symbol]),
        None => number,
    };
    let is_taken = read(&text, limits.dimension, None).is_ok_and(|read| is_between(read, ends(limits)));
    if is_taken { canonical_si(si, limits.dimension) } else { text }
}

/// What would be taken.
pub(super) fn wanted(row: Option<&Row>, view: View) -> String {
    match row.map(|row| (row, row.kind)) {
        Some((row, Kind::Quantity(limits))) => worded("Write it like “{}”.", &[&example(row, limits, view)]),
        Some((_, Kind::Choice { options, .. })) => one_of(options, false),
        Some((_, Kind::Text(form))) => worded("Write it like “{}”.", &[form.example]),
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

/// The limits.
pub(super) fn range(limits: Limits, view: View) -> String {
    let end = |at: f64| limit(at, ends(limits), limits.dimension, view);
    worded("{} to {}", &[&end(limits.least), &end(limits.most)])
}

const fn ends(limits: Limits) -> [f64; 2] {
    [limits.least, limits.most]
}

fn is_between(si: f64, [least, most]: [f64; 2]) -> bool {
    least <= si && si <= most
}

/// A limit as a sentence names it, so that what is named is taken.
pub(super) fn limit(at: f64, ends: [f64; 2], dimension: Dimension, view: View) -> String {
    inside(at, ends, dimension, view).unwrap_or_else(|| canonical_si(at, dimension))
}

/// The figure nearest to a limit; where that would be refused, the next one inside. None where no figure lies inside.
pub(super) fn inside(at: f64, ends: [f64; 2], dimension: Dimension, view: View) -> Option<String> {
    let mut text = written(at, dimension, view);
    let outside = |text: &str| read(text, dimension, None).ok().filter(|si| !is_between(*si, ends));
    // Twice as far inside each time comes to the next figure and never to the one behind it.
    let mut further = at - outside(&text).unwrap_or(at);
    while outside(&text).is_some() {
        if !is_between(at + further, ends) {
            return None;
        }
        text = written(at + further, dimension, view);
        further *= 2.0;
    }
    Some(text)
}
