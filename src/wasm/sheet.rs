//! Answers on paper.

use super::{draft_of, effort_of, reply, view_of};
use crate::words::{self, IsPlain};
use wasm_bindgen::prelude::*;

/// The whole plan in short. See `words::trip_sheet`.
#[wasm_bindgen(js_name = tripSheet, skip_typescript)]
#[must_use]
pub fn trip_sheet(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| Ok(words::trip_sheet(draft, view, effort_of(effort)).plain()))
}

/// An answer or the trip sheet as text; nothing for a question or a format that nobody knows. See `words::as_text`.
#[wasm_bindgen(js_name = asText, skip_typescript)]
#[must_use]
pub fn as_text(
    question: &JsValue,
    draft: &JsValue,
    view: &JsValue,
    format: &JsValue,
    address: &JsValue,
    effort: &JsValue,
) -> JsValue {
    let subject = question.as_string().and_then(|id| words::Subject::of(&id));
    let format = format.as_string().and_then(|id| words::Format::of(&id));
    let address = address.as_string().unwrap_or_default();
    let text = subject.zip(format).zip(draft_of(draft).ok()).map(|((subject, format), draft)| {
        words::as_text(subject, &draft, view_of(view), effort_of(effort), format, &address)
    });
    text.unwrap_or_default().into()
}
