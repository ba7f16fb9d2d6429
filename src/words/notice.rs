//! What a link could not say, in a sentence.

use super::phrase::noun;
use crate::link::Notice;

/// What a link could not say, in a sentence.
#[must_use]
pub fn notice(notice: &Notice) -> String {
    match notice {
        Notice::UnknownForm(form) => format!(
            "This link (v={form}) was made by a newer page, so some of it may be missing here. Open it in the newest page."
        ),
        Notice::OtherFigures(figures) => format!(
            "This link was made with version {figures} of the figures; the answer here may differ from the one that was shared."
        ),
        Notice::UnknownQuestion(question) => format!("This link asks “{question}”, which this page cannot answer."),
        Notice::UnknownPart(part) => format!("The part “{part}” of this link was not understood and is left out."),
        Notice::Twice(key) => {
            let what = match key.as_str() {
                "v" => "its form",
                "q" => "its question",
                "f" => "its figures",
                "u" => "its units",
                "d" => "its decimal mark",
                id => &noun(id),
            };
            format!("This link says {what} twice; the first is used.")
        }
        Notice::NoValue(part) => format!("The part “{part}” of this link has no value and is left out."),
    }
}
