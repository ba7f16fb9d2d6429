//! What each part carries.

use super::{effort_of, reply};
use crate::question::loads;
use crate::words::{self, IsPlain};
use wasm_bindgen::prelude::*;

/// What does each part carry? See `loads::ask`.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn loads(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = loads::Inputs::of(draft)?;
        Ok(words::loads_report(&loads::ask(&inputs, effort_of(effort)), view).plain())
    })
}
