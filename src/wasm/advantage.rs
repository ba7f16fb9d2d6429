//! Which advantage, and the map of it.

use super::{effort_of, reply};
use crate::question::advantage;
use crate::words::{self, IsPlain};
use wasm_bindgen::prelude::*;

/// Which advantage? See `advantage::ask`.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn advantage(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = advantage::Inputs::of(draft)?;
        Ok(words::advantage_report(&advantage::ask(&inputs, effort_of(effort)), view).plain())
    })
}

/// The least rig that works for every weight and pull. See `advantage::map`.
#[wasm_bindgen(js_name = feasibilityMap, skip_typescript)]
#[must_use]
pub fn feasibility_map(draft: &JsValue, view: &JsValue, columns: &JsValue, rows: &JsValue) -> JsValue {
    let count = |value: &JsValue, usual: f64| value.as_f64().unwrap_or(usual) as usize;
    reply(draft, view, &|draft, view| {
        let inputs = advantage::Inputs::of(draft)?;
        Ok(words::map_report(&advantage::map(&inputs, count(columns, 60.0), count(rows, 40.0)), view).plain())
    })
}
