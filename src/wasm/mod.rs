//! The boundary to JavaScript: decode, call, encode. The only storey that names `wasm_bindgen`.
//!
//! A feature a page: a module built with one of them alone answers what that page asks, and is half as big.

#[cfg(feature = "advantage")]
pub mod advantage;
#[cfg(feature = "can-i-climb")]
pub mod can_i_climb;
#[cfg(feature = "coming-down")]
pub mod coming_down;
#[cfg(feature = "cord")]
pub mod cord;
pub mod links;
#[cfg(not(boughline_terse))]
pub mod lists;
#[cfg(feature = "loads")]
pub mod loads;
pub mod own_rig;
#[cfg(feature = "rescue")]
pub mod rescue;
#[cfg(feature = "rope-length")]
pub mod rope_length;
// A sheet is of every question, so only a module that has them all has it.
#[cfg(all(
    feature = "advantage",
    feature = "can-i-climb",
    feature = "coming-down",
    feature = "cord",
    feature = "loads",
    feature = "rescue",
    feature = "rope-length"
))]
pub mod sheet;

use crate::draft::Draft;
use crate::error::Error;
use crate::field::Said;
use crate::link;
use crate::quantity::{Decimal, System, View};
use crate::question::{Effort, field};
use crate::words::{self, ErrorLine, IsPlain, Plain};
use js_sys::{Array, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::prelude::*;

#[cfg(target_arch = "wasm32")]
#[global_allocator]
static ALLOCATOR: rlsf::SmallGlobalTlsf = rlsf::SmallGlobalTlsf::new();

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("../wasm.d.ts");

/// What is kept under a key; a getter that throws has nothing there.
fn got(value: &JsValue, key: &str) -> JsValue {
    Reflect::get(value, &key.into()).unwrap_or(JsValue::UNDEFINED)
}

/// What a box should hold once it is left.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn tidy(id: &JsValue, text: &JsValue, view: &JsValue) -> JsValue {
    let text = text.as_string().unwrap_or_default();
    let row = id.as_string().and_then(|id| field(&id));
    row.map_or_else(|| text.clone(), |row| row.tidied(&text, view_of(view).system)).into()
}

/// This program's version, and that of its figures.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn version() -> JsValue {
    encoded(&Plain::Object(vec![("version", env!("CARGO_PKG_VERSION").plain()), ("figures", link::FIGURES.plain())]))
}

/// The answer to a question as people read it, or everything that is wrong with the draft.
type Answered = Result<Plain, Vec<Error>>;

/// The answer to a question, or every error at once.
fn reply(draft: &JsValue, view: &JsValue, question: &dyn Fn(&Draft, View) -> Answered) -> JsValue {
    let view = view_of(view);
    let answer =
        draft_of(draft).and_then(|draft| question(&draft, view).map_err(|errors| words::error_lines(&errors, view)));
    encoded(&Plain::Object(match answer {
        Ok(answer) => vec![("ok", Plain::Truth(true)), ("answer", answer)],
        Err(errors) => vec![("ok", Plain::Truth(false)), ("errors", errors.plain())],
    }))
}

fn encoded(value: &Plain) -> JsValue {
    // Plain objects and null, so that what crosses is what JSON would hold. It cannot fail for these shapes.
    value.serialize(&Serializer::json_compatible()).unwrap_or(JsValue::NULL)
}

/// A plain object as a draft. What JavaScript would quietly take for a number or for text is kept for what it is.
fn draft_of(value: &JsValue) -> Result<Draft, Vec<ErrorLine>> {
    let Some(keys) = Reflect::own_keys(value).ok().filter(|_| !Array::is_array(value)) else {
        let message = "Give the fields as one plain object, like { bodyMass: \"80 kg\" }.".to_owned();
        return Err(vec![ErrorLine { fields: Vec::new(), message }]);
    };
    let mut draft = Draft::new();
    for id in keys.iter().filter_map(|key| key.as_string()) {
        draft.put(&id, said_of(&got(value, &id)));
    }
    Ok(draft)
}

fn said_of(value: &JsValue) -> Said {
    if let Some(text) = value.as_string() {
        Said::Text(text)
    } else if let Some(number) = value.as_f64() {
        Said::Number(number)
    } else if value.is_null() {
        Said::Other("null")
    } else if value.is_undefined() {
        Said::Other("undefined")
    } else if value.as_bool().is_some() {
        Said::Other("true or false")
    } else if Reflect::own_keys(value).is_ok_and(|_| Array::is_array(value)) {
        Said::Other("a list")
    } else {
        Said::Other("an object")
    }
}

/// The view; whatever is not said or not known is as by default.
fn view_of(value: &JsValue) -> View {
    let get = |key: &str| value.is_object().then(|| Reflect::get(value, &key.into()).ok()?.as_string()).flatten();
    View {
        system: if get("system").as_deref() == Some("us") { System::Us } else { System::Si },
        decimal: if get("decimal").as_deref() == Some(",") { Decimal::Comma } else { Decimal::Point },
    }
}

#[allow(dead_code, reason = "two of the pages count nothing in samples")]
fn effort_of(value: &JsValue) -> Effort {
    value.as_f64().map_or(Effort::FULL, |samples| Effort::samples(samples as u32))
}
