//! Links, from text to a draft and back.

use super::{draft_of, encoded, view_of};
use crate::field::Said;
use crate::link;
use crate::quantity::{Decimal, System};
use crate::question::{Question, all_fields};
use crate::words::{self, IsPlain, Plain};
use wasm_bindgen::prelude::*;

/// What a link says.
#[wasm_bindgen(js_name = readLink, skip_typescript)]
#[must_use]
pub fn read_link(text: &JsValue) -> JsValue {
    let link = link::read(&text.as_string().unwrap_or_default());
    let mut draft = Vec::new();
    for row in all_fields() {
        if let Some(Said::Text(text)) = link.draft.get(row.id) {
            draft.push((row.id, text.plain()));
        }
    }
    let system = if link.view.system == System::Si { "si" } else { "us" };
    let decimal = if link.view.decimal == Decimal::Point { "." } else { "," };
    let mut notices = Vec::new();
    for notice in &link.notices {
        notices.push(Plain::Text(words::notice(notice)));
    }
    encoded(&Plain::Object(vec![
        ("question", link.question.map(Question::id).plain()),
        ("draft", Plain::Object(draft)),
        ("view", Plain::Object(vec![("system", system.plain()), ("decimal", decimal.plain())])),
        ("notices", Plain::List(notices)),
    ]))
}

/// The link for a draft; nothing for a question nobody knows.
#[wasm_bindgen(js_name = writeLink, skip_typescript)]
#[must_use]
pub fn write_link(question: &JsValue, draft: &JsValue, view: &JsValue) -> JsValue {
    let subject = question.as_string().and_then(|id| words::Subject::of(&id));
    let written = subject.zip(draft_of(draft).ok()).and_then(|(subject, draft)| match subject {
        words::Subject::Answer(question) => link::write(question, &draft, view_of(view)),
        words::Subject::TripSheet => link::write_sheet(&draft, view_of(view)),
    });
    written.unwrap_or_default().into()
}
