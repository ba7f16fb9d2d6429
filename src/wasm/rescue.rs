//! What if I am stuck.

use super::reply;
use crate::question::rescue;
use crate::words::{self, IsPlain};
use wasm_bindgen::prelude::*;

/// What if I am stuck? See `rescue::ask`.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn rescue(draft: &JsValue, view: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = rescue::Inputs::of(draft)?;
        Ok(words::rescue_report(&rescue::ask(&inputs), view).plain())
    })
}
