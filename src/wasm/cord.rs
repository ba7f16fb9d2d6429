//! What length of cord, out of which hanks, and the rows of both lists.

use super::{effort_of, encoded, reply};
use crate::question::{Effort, cut_length, cut_plan};
use crate::words::{self, IsPlain, Plain};
use std::cell::RefCell;
use wasm_bindgen::prelude::*;

/// Out of which hanks? See `cut_plan::ask`.
#[wasm_bindgen(js_name = cutPlan, skip_typescript)]
#[must_use]
pub fn cut_plan(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = cut_plan::Inputs::of(draft)?;
        Ok(words::cut_report(&planned(inputs, effort_of(effort)), view).plain())
    })
}

thread_local! {
    /// The plan that was asked for last.
    static LAST_PLAN: RefCell<Option<cut_plan::Reckoning>> = const { RefCell::new(None) };
}

/// The answer, from where the last plan stopped if it was of the same inputs.
fn planned(inputs: cut_plan::Inputs, effort: Effort) -> cut_plan::Answer {
    let last = LAST_PLAN.take().filter(|last| last.leads_to(&inputs, effort));
    let mut reckoning = last.unwrap_or_else(|| cut_plan::Reckoning::of(inputs));
    reckoning.go_on(effort);
    let answer = reckoning.so_far();
    if answer.more {
        LAST_PLAN.set(Some(reckoning));
    }
    answer
}

/// The rows of a list of cords or hanks, right or wrong, for an editor.
#[wasm_bindgen(js_name = readRows, skip_typescript)]
#[must_use]
pub fn read_rows(id: &JsValue, text: &JsValue) -> JsValue {
    let mut rows = Vec::new();
    for parts in words::list_rows(&id.as_string().unwrap_or_default(), &text.as_string().unwrap_or_default()) {
        let mut row = Vec::new();
        for part in parts {
            row.push((part.id, part.text.plain()));
        }
        rows.push(Plain::Object(row));
    }
    encoded(&Plain::List(rows))
}

/// What length of cord? See `cut_length::ask`.
#[wasm_bindgen(js_name = cutLength, skip_typescript)]
#[must_use]
pub fn cut_length(draft: &JsValue, view: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = cut_length::Inputs::of(draft)?;
        Ok(words::cord_report(&cut_length::ask(&inputs), view).plain())
    })
}
