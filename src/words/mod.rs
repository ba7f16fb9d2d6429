//! Facts to sentences, for a [`View`]. The only storey that words anything a person reads as an answer.

mod can_i_climb;
mod caution;
mod drawing;
mod error;
mod figure;
mod part;
mod report;
mod row;
mod verdict;

pub use can_i_climb::report;
pub use error::message;
pub use report::{
    CautionLine, Drawing, DrawnRope, DrawnStop, ErrorLine, Figure, Level, PartLine, Report, SourceLine, Strand,
    Tension, VerdictLine, WorkDone,
};
pub use row::{ChoiceLine, RowLine, row_line};

use crate::error::Error;
use crate::quantity::{Dimension, View, written};
use crate::source::Source;

/// The errors as people read them.
#[must_use]
pub fn error_lines(errors: &[Error], view: View) -> Vec<ErrorLine> {
    errors.iter().map(|error| ErrorLine { fields: error.fields.clone(), message: message(error, view) }).collect()
}

/// A source as people read it.
#[must_use]
pub fn source_line(source: &Source) -> SourceLine {
    SourceLine { id: source.id, text: format!("{} ({}).", source.title, source.obtained.words()) }
}

/// What people call a field, for use inside a sentence.
fn noun(field: &str) -> String {
    crate::question::field(field).map_or_else(|| field.to_owned(), |row| row.noun.to_owned())
}

fn newtons(value: f64, view: View) -> String {
    written(value, Dimension::Force, view)
}

fn metres(value: f64, view: View) -> String {
    written(value, Dimension::Length, view)
}

/// The words with a capital to begin with.
fn sentence(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// "one", "one and two", "one, two and three".
fn listed(words: &[String]) -> String {
    match words {
        [] => String::new(),
        [one] => one.clone(),
        [start @ .., last] => format!("{} and {last}", start.join(", ")),
    }
}

/// What a link could not say, in a sentence.
#[must_use]
pub fn notice(notice: &crate::link::Notice) -> String {
    use crate::link::Notice;
    match notice {
        Notice::UnknownForm(form) => format!(
            "This link is of form {form}, which this page is too old to know; some of it may be missing. Look for a newer page."
        ),
        Notice::OtherFigures(figures) => format!(
            "This link was made with version {figures} of the figures; the answer here may differ from the one that was shared."
        ),
        Notice::UnknownQuestion(question) => format!("This link asks “{question}”, which this page cannot answer."),
        Notice::UnknownPart(part) => format!("The part “{part}” of this link was not understood and is left out."),
        Notice::Twice(field) => format!("This link says {} twice; the first is used.", noun(field)),
        Notice::NoValue(part) => format!("The part “{part}” of this link has no value and is left out."),
    }
}
