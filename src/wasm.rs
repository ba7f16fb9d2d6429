//! The boundary to JavaScript: decode, call, encode. The only file that names `wasm_bindgen`.

use crate::draft::Draft;
use crate::field::Said;
use crate::quantity::{Decimal, System, View};
use crate::question::{Effort, Question, all_fields, can_i_climb, field};
use crate::words::{self, ErrorLine, records};
use crate::{gear, link, reeving, source};
use js_sys::{Array, Object, Reflect};
use serde::ser::SerializeMap;
use serde::{Serialize, Serializer};
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("wasm.d.ts");

records! {
    /// A list of the things a rig can be made of.
    struct Catalogue {
        rigs: Vec<words::ChoiceLine>,
        turns: Vec<words::ChoiceLine>,
    }

    /// What a link says, for JavaScript.
    struct LinkLine {
        question: Option<&'static str>,
        draft: Pairs,
        view: ViewLine,
        notices: Vec<String>,
    }

    /// A view, for JavaScript.
    struct ViewLine {
        system: &'static str,
        decimal: &'static str,
    }

    /// This program's version and that of its figures.
    struct Version {
        version: &'static str,
        figures: u32,
    }
}

/// What a question comes to: an answer, or every error.
struct Reply<T>(Result<T, Vec<ErrorLine>>);

impl<T: Serialize> Serialize for Reply<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("ok", &self.0.is_ok())?;
        match &self.0 {
            Ok(answer) => map.serialize_entry("answer", answer)?,
            Err(errors) => map.serialize_entry("errors", errors)?,
        }
        map.end()
    }
}

/// Keys and values of a plain object.
#[derive(Debug, Clone, PartialEq)]
struct Pairs(Vec<(String, String)>);

impl Serialize for Pairs {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(key, value)| (key, value)))
    }
}

/// Can I climb this? See `can_i_climb::ask`.
#[wasm_bindgen(js_name = canIClimb, skip_typescript)]
#[must_use]
pub fn can_i_climb(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    let view = view_of(view);
    let answer = draft_of(draft).and_then(|draft| {
        let inputs = can_i_climb::Inputs::of(&draft).map_err(|errors| words::error_lines(&errors, view))?;
        Ok(words::report(&can_i_climb::ask(&inputs, effort_of(effort)), view))
    });
    encoded(&Reply(answer))
}

/// Every field, as a form shows it.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn fields(view: &JsValue) -> JsValue {
    let view = view_of(view);
    encoded(&all_fields().into_iter().map(|row| words::row_line(row, view)).collect::<Vec<_>>())
}

/// The rigs and turns to choose from.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn catalogue() -> JsValue {
    encoded(&Catalogue {
        rigs: reeving::RigName::OPTIONS.iter().map(Into::into).collect(),
        turns: gear::TurnKind::OPTIONS.iter().map(Into::into).collect(),
    })
}

/// Every source.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn sources() -> JsValue {
    encoded(&source::SOURCES.iter().map(words::source_line).collect::<Vec<_>>())
}

/// What a link says.
#[wasm_bindgen(js_name = readLink, skip_typescript)]
#[must_use]
pub fn read_link(text: &JsValue) -> JsValue {
    let link = link::read(&text.as_string().unwrap_or_default());
    let said = |id: &str| match link.draft.get(id) {
        Some(Said::Text(text)) => text.clone(),
        _ => String::new(),
    };
    encoded(&LinkLine {
        question: link.question.map(Question::id),
        draft: Pairs(link.draft.ids().map(|id| (id.to_owned(), said(id))).collect()),
        view: ViewLine {
            system: if link.view.system == System::Si { "si" } else { "us" },
            decimal: if link.view.decimal == Decimal::Point { "." } else { "," },
        },
        notices: link.notices.iter().map(words::notice).collect(),
    })
}

/// The link for a draft; nothing for a question nobody knows.
#[wasm_bindgen(js_name = writeLink, skip_typescript)]
#[must_use]
pub fn write_link(question: &JsValue, draft: &JsValue, view: &JsValue) -> JsValue {
    let question = question.as_string().and_then(|id| Question::of(&id));
    let written =
        question.zip(draft_of(draft).ok()).and_then(|(question, draft)| link::write(question, &draft, view_of(view)));
    written.unwrap_or_default().into()
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
    encoded(&Version { version: env!("CARGO_PKG_VERSION"), figures: link::FIGURES })
}

fn encoded<T: Serialize>(value: &T) -> JsValue {
    // Plain objects and null, so that what crosses is what JSON would hold. It cannot fail for these shapes.
    value.serialize(&serde_wasm_bindgen::Serializer::json_compatible()).unwrap_or(JsValue::NULL)
}

/// A plain object as a draft. What JavaScript would quietly take for a number or for text is kept for what it is.
fn draft_of(value: &JsValue) -> Result<Draft, Vec<ErrorLine>> {
    if !value.is_object() || Array::is_array(value) {
        let message = "Give the fields as one plain object, like { bodyMass: \"80 kg\" }.".to_owned();
        return Err(vec![ErrorLine { fields: Vec::new(), message }]);
    }
    let mut draft = Draft::new();
    for id in Object::keys(value.unchecked_ref::<Object>()).iter().filter_map(|key| key.as_string()) {
        // A getter that throws is a value that is not there.
        let value = Reflect::get(value, &id.as_str().into()).unwrap_or(JsValue::UNDEFINED);
        draft.put(&id, said_of(&value));
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
    } else if Array::is_array(value) {
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

fn effort_of(value: &JsValue) -> Effort {
    value.as_f64().map_or(Effort::FULL, |samples| Effort::samples(samples as u32))
}
