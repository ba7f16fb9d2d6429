//! Can I climb this, and what would help.

use super::{effort_of, reply};
use crate::question::Effort;
use crate::question::can_i_climb::{self, Reckoning};
use crate::words::{self, IsPlain};
use std::cell::RefCell;
use wasm_bindgen::prelude::*;

/// Can I climb this? See `can_i_climb::ask`.
#[wasm_bindgen(js_name = canIClimb, skip_typescript)]
#[must_use]
pub fn can_i_climb(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = can_i_climb::Inputs::of(draft)?;
        Ok(words::report(&reckoned(inputs, effort_of(effort)), view).plain())
    })
}

thread_local! {
    /// The reckoning that was asked for last: whoever asks for more of the same goes on where it stopped.
    static LAST: RefCell<Option<Reckoning>> = const { RefCell::new(None) };
}

/// The answer, from where the last reckoning stopped if it was of the same inputs.
fn reckoned(inputs: can_i_climb::Inputs, effort: Effort) -> can_i_climb::Answer {
    let last = LAST.take().filter(|last| last.leads_to(&inputs, effort));
    let mut reckoning = last.unwrap_or_else(|| Reckoning::of(inputs));
    reckoning.go_on(effort);
    let answer = reckoning.so_far();
    if answer.more {
        LAST.set(Some(reckoning));
    }
    answer
}

/// What would help most? See `can_i_climb::helps`.
#[wasm_bindgen(js_name = whatHelps, skip_typescript)]
#[must_use]
pub fn what_helps(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = can_i_climb::Inputs::of(draft)?;
        Ok(words::helps_report(can_i_climb::helps(&inputs, effort_of(effort)).as_ref(), view).plain())
    })
}
