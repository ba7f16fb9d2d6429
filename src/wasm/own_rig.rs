//! Somebody's own rig, from its text to rows and back.

use super::{encoded, got, said_of, view_of};
use crate::error::{Error, Reason};
use crate::field::Value;
use crate::reeving::{OWN_RIG, OwnRig};
use crate::words::{self, IsPlain, Plain};
use js_sys::Reflect;
use wasm_bindgen::prelude::*;

/// What a text says of somebody's own rig, in rows for an editor.
#[wasm_bindgen(js_name = readRig, skip_typescript)]
#[must_use]
pub fn read_rig(text: &JsValue, view: &JsValue) -> JsValue {
    let (view, row) = (view_of(view), &OWN_RIG.row);
    encoded(&Plain::Object(match row.reading(&said_of(text)) {
        Ok(reading) => vec![
            ("ok", Plain::Truth(true)),
            ("ropes", OwnRig::of(reading).map(|own| words::rig_rows(&own)).unwrap_or_default().plain()),
            ("text", row.tidied(&text.as_string().unwrap_or_default(), view.system).plain()),
        ],
        Err(refusal) => {
            let errors = words::error_lines(&[Error::of(row.id, Reason::Refused(refusal))], view);
            vec![("ok", Plain::Truth(false)), ("errors", errors.plain())]
        }
    }))
}

/// The text of rows that an editor holds, right or wrong.
#[wasm_bindgen(js_name = writeRig, skip_typescript)]
#[must_use]
pub fn write_rig(ropes: &JsValue) -> JsValue {
    let mut text = String::new();
    let mut between = "";
    for rope in items(ropes) {
        text.push_str(between);
        let mut before = "";
        for row in items(&rope) {
            text.push_str(before);
            let mut blank = "";
            for key in ["does", "on", "with"] {
                let word = got(&row, key).as_string().unwrap_or_default();
                if !word.is_empty() {
                    text.push_str(blank);
                    text.push_str(&word);
                    blank = " ";
                }
            }
            before = ", ";
        }
        between = "\n";
    }
    text.into()
}

/// The items of a list, as many as no rig has; none of what is no list.
fn items(value: &JsValue) -> Vec<JsValue> {
    let mut items = Vec::new();
    let length = got(value, "length").as_f64().filter(|_| value.is_object()).unwrap_or(0.0);
    for place in 0..length.min(1000.0) as u32 {
        items.push(Reflect::get(value, &place.into()).unwrap_or(JsValue::UNDEFINED));
    }
    items
}
