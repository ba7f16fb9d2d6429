//! Small words that sentences are made of.

use crate::quantity::{Dimension, View, written};

/// What people call a field, for use inside a sentence.
pub(super) fn noun(field: &str) -> String {
    crate::question::field(field).map_or_else(|| field.to_owned(), |row| row.noun.to_owned())
}

pub(super) fn newtons(value: f64, view: View) -> String {
    written(value, Dimension::Force, view)
}

pub(super) fn metres(value: f64, view: View) -> String {
    written(value, Dimension::Length, view)
}

/// The words with a capital to begin with.
pub(super) fn sentence(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// "one", "one and two", "one, two and three".
pub(super) fn listed(words: &[String]) -> String {
    match words {
        [] => String::new(),
        [one] => one.clone(),
        [start @ .., last] => format!("{} and {last}", start.join(", ")),
    }
}
