//! Small words that sentences are made of.

use crate::quantity::{View, plain};

/// What people call a field, for use inside a sentence.
pub(super) fn noun(field: &str) -> String {
    crate::question::field(field).map_or(field, |row| row.noun).to_owned()
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
