//! What a link could not say, in a sentence.

use super::phrase::noun;
use crate::link::Notice;

/// What a link could not say, in a sentence.
#[must_use]
pub fn notice(notice: &Notice) -> String {
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
