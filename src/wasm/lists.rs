//! What only lists texts, which the npm package has beside the module.

use super::{encoded, view_of};
use crate::question::all_fields;
use crate::words::{self, IsPlain, Plain};
use wasm_bindgen::prelude::*;

/// Every field, as a form shows it.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn fields(view: &JsValue) -> JsValue {
    let view = view_of(view);
    let mut rows = Vec::new();
    for row in all_fields() {
        rows.push(words::row_line(row, view).plain());
    }
    encoded(&Plain::List(rows))
}

/// The options as people see them.
fn choices(options: &'static [crate::field::Named]) -> Plain {
    let mut lines = Vec::new();
    for option in options {
        lines.push(words::ChoiceLine::from(option).plain());
    }
    Plain::List(lines)
}

/// The words that somebody's own rig is written in.
#[wasm_bindgen(js_name = rigWords, skip_typescript)]
#[must_use]
pub fn rig_words() -> JsValue {
    encoded(&Plain::Object(vec![
        ("does", choices(crate::reeving::notation::Does::OPTIONS)),
        ("on", choices(crate::reeving::notation::Place::OPTIONS)),
        ("with", choices(crate::gear::TurnKind::OPTIONS)),
    ]))
}

/// The rigs and turns to choose from.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn catalogue() -> JsValue {
    encoded(&Plain::Object(vec![
        ("rigs", choices(crate::reeving::RigName::OPTIONS)),
        ("turns", choices(crate::gear::TurnKind::OPTIONS)),
    ]))
}

/// Every source.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn sources() -> JsValue {
    let mut lines = Vec::new();
    for source in crate::source::SOURCES {
        lines.push(words::source_line(source).plain());
    }
    encoded(&Plain::List(lines))
}

/// How it is reckoned, chapter by chapter: for the method page alone, which the build writes.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn method() -> JsValue {
    encoded(&words::method().plain())
}
