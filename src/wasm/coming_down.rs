//! Can I get down again.

use super::{effort_of, reply};
use crate::question::coming_down;
use crate::words::{self, IsPlain};
use wasm_bindgen::prelude::*;

/// Can I get down again? See `coming_down::ask`.
#[wasm_bindgen(js_name = comingDown, skip_typescript)]
#[must_use]
pub fn coming_down(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = coming_down::Inputs::of(draft)?;
        Ok(words::descent_report(&coming_down::ask(&inputs, effort_of(effort)), view).plain())
    })
}
