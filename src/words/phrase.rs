//! Small words that sentences are made of.

use crate::field::Spread;
use crate::quantity::{CENTIMETRE, Dimension, INCH, KILOGRAM_FORCE, System, View, plain, written};

/// What people call a field, for use inside a sentence.
pub(super) fn noun(field: &str) -> String {
    crate::question::field(field).map_or(field, |row| row.noun).to_owned()
}

pub(super) fn newtons(value: f64, view: View) -> String {
    written(value, Dimension::Force, view)
}

/// A pull, also as scales show it: "321 N (33 kgf)", "72 lbf".
pub(super) fn pull(value: f64, view: View) -> String {
    let text = newtons(value, view);
    if view.system == System::Us {
        text
    } else {
        format!("{text} ({} kgf)", plain(KILOGRAM_FORCE.count(value), 0, view))
    }
}

pub(super) fn metres(value: f64, view: View) -> String {
    written(value, Dimension::Length, view)
}

/// A short length in one small unit, with this many decimals.
pub(super) fn small_length(value: f64, decimals: usize, view: View) -> String {
    let unit = if view.system == System::Si { CENTIMETRE } else { INCH };
    format!("{} {}", plain(unit.count(value), decimals, view), unit.symbol)
}

/// A short length with one figure more than people need, so that a sum with it comes out as shown.
pub(super) fn fine_length(value: f64, view: View) -> String {
    small_length(value, if view.system == System::Si { 1 } else { 2 }, view)
}

/// The number with as many decimals as it has, six at most.
pub(super) fn short(number: f64, view: View) -> String {
    let (mut scaled, mut decimals) = (number, 0);
    while decimals < 6 && (scaled - scaled.round()).abs() > 1e-9 {
        scaled *= 10.0;
        decimals += 1;
    }
    // With three it could be read as thousands.
    plain(number, if decimals == 3 { 4 } else { decimals }, view)
}

/// "0.70 (0.65 to 0.74)", or one number where there is no range.
pub(super) fn ranged(spread: Spread, decimals: usize, view: View) -> String {
    let likely = plain(spread.likely, decimals, view);
    if spread.low < spread.high {
        format!("{likely} ({} to {})", plain(spread.low, decimals, view), plain(spread.high, decimals, view))
    } else {
        likely
    }
}

/// A place in a list, for an id.
pub(super) fn counted(place: usize) -> String {
    plain(place as f64, 0, View::default())
}

/// The words with a capital to begin with; they begin with a plain letter.
pub(super) fn sentence(words: &str) -> String {
    let mut letters = words.chars();
    let mut sentence = String::new();
    if let Some(first) = letters.next() {
        sentence.push(first.to_ascii_uppercase());
        sentence.push_str(letters.as_str());
    }
    sentence
}

/// "one", "one and two", "one, two and three".
pub(super) fn listed(words: &[String]) -> String {
    match words {
        [] => String::new(),
        [one] => one.clone(),
        [start @ .., last] => {
            let mut text = String::new();
            let mut before = "";
            for word in start {
                text += before;
                text += word;
                before = ", ";
            }
            text + " and " + last
        }
    }
}
