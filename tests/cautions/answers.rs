//! Answers as they cross to JavaScript, and as text.

use super::told::told;
use boughline::Draft;
use boughline::error::Error;
use boughline::quantity::View;
use boughline::question::{Effort, Question};
use boughline::words::{Format, Subject, as_text};
use serde_json::Value;

/// Few samples: which cautions there are hangs on no sample.
pub(crate) fn effort() -> Effort {
    Effort::samples(50)
}

/// The answer, or what is wrong with the plan.
pub(crate) fn answer(question: Question, draft: &Draft, view: View) -> Result<Value, Vec<Error>> {
    told(question, draft, &[view], effort()).map(|told| told.reports.into_iter().next().expect("one a view"))
}

/// Id and text of every caution of an answer, or of a rig in it.
pub(crate) fn cautions(told: &Value) -> Vec<(String, String)> {
    let text = |caution: &Value, key: &str| caution[key].as_str().expect("a text").to_owned();
    let list = told["cautions"].as_array().expect("a list");
    list.iter().map(|caution| (text(caution, "id"), text(caution, "text"))).collect()
}

/// The answer or sheet as lines of text, and as Markdown without its escapes.
pub(crate) fn texts(subject: Subject, draft: &Draft, view: View) -> [String; 2] {
    [Format::Text, Format::Markdown]
        .map(|format| as_text(subject, draft, view, effort(), format, "https://example.org/").replace('\\', ""))
}
