//! How much rope.

use super::reply;
use crate::question::rope_length;
use crate::words::{self, IsPlain};
use wasm_bindgen::prelude::*;

/// How much rope? See `rope_length::ask`.
#[wasm_bindgen(js_name = ropeLength, skip_typescript)]
#[must_use]
pub fn rope_length(draft: &JsValue, view: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = rope_length::Inputs::of(draft)?;
        Ok(words::rope_report(&rope_length::ask(&inputs), view).plain())
    })
}
