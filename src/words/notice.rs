//! What a link could not say, in a sentence.

use super::phrase::noun;
use super::template::said;
use crate::link::Notice;
use crate::quantity::View;

/// What a link could not say, in a sentence.
#[must_use]
pub fn notice(notice: &Notice) -> String {
    let (template, said_there) = match notice {
        Notice::UnknownForm(form) => (
            "This link (v={}) was made by a newer page, so some of it may be missing here. Open it in the newest page.",
            form,
        ),
        Notice::OtherFigures(figures) => (
            "This link was made with version {} of the figures; the answer here may differ from the one that was shared.",
            figures,
        ),
        Notice::UnknownQuestion(question) => ("This link asks “{}”, which this page cannot answer.", question),
        Notice::UnknownPart(part) => ("The part “{}” of this link was not understood and is left out.", part),
        Notice::Twice(key) => {
            let what = match key.as_str() {
                "q" => "its question",
                "f" => "its figures",
                "u" => "its units",
                "d" => "its decimal mark",
                id => &noun(id),
            };
            return said("This link says {} twice; the first is used.", &[], &[what], View::default());
        }
        Notice::TwoPlans => {
            return said("This link holds two plans; the first is shown here.", &[], &[], View::default());
        }
        Notice::NoValue(part) => ("The part “{}” of this link has no value and is left out.", part),
    };
    said(template, &[], &[said_there], View::default())
}
