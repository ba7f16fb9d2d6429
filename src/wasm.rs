//! The boundary to JavaScript: decode, call, encode. The only file that names `wasm_bindgen`.

use crate::draft::Draft;
use crate::error::{Error, Reason};
use crate::field::{Said, Value};
use crate::link;
use crate::quantity::{Decimal, System, View};
use crate::question::can_i_climb::Reckoning;
use crate::question::{
    Effort, Question, advantage, all_fields, can_i_climb, coming_down, cut_length, cut_plan, field, loads, rescue,
    rope_length,
};
use crate::reeving::{OWN_RIG, OwnRig};
use crate::words::{self, ErrorLine, IsPlain, Plain};
use js_sys::{Array, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use std::cell::RefCell;
use wasm_bindgen::prelude::*;

#[cfg(target_arch = "wasm32")]
#[global_allocator]
static ALLOCATOR: rlsf::SmallGlobalTlsf = rlsf::SmallGlobalTlsf::new();

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("wasm.d.ts");

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

/// Which advantage? See `advantage::ask`.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn advantage(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = advantage::Inputs::of(draft)?;
        Ok(words::advantage_report(&advantage::ask(&inputs, effort_of(effort)), view).plain())
    })
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

/// What does each part carry? See `loads::ask`.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn loads(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = loads::Inputs::of(draft)?;
        Ok(words::loads_report(&loads::ask(&inputs, effort_of(effort)), view).plain())
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

/// Out of which hanks? See `cut_plan::ask`.
#[wasm_bindgen(js_name = cutPlan, skip_typescript)]
#[must_use]
pub fn cut_plan(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = cut_plan::Inputs::of(draft)?;
        Ok(words::cut_report(&planned(inputs, effort_of(effort)), view).plain())
    })
}

thread_local! {
    /// The plan that was asked for last.
    static LAST_PLAN: RefCell<Option<cut_plan::Reckoning>> = const { RefCell::new(None) };
}

/// The answer, from where the last plan stopped if it was of the same inputs.
fn planned(inputs: cut_plan::Inputs, effort: Effort) -> cut_plan::Answer {
    let last = LAST_PLAN.take().filter(|last| last.leads_to(&inputs, effort));
    let mut reckoning = last.unwrap_or_else(|| cut_plan::Reckoning::of(inputs));
    reckoning.go_on(effort);
    let answer = reckoning.so_far();
    if answer.more {
        LAST_PLAN.set(Some(reckoning));
    }
    answer
}

/// The rows of a list of cords or hanks, right or wrong, for an editor.
#[wasm_bindgen(js_name = readRows, skip_typescript)]
#[must_use]
pub fn read_rows(id: &JsValue, text: &JsValue) -> JsValue {
    let mut rows = Vec::new();
    for parts in words::list_rows(&id.as_string().unwrap_or_default(), &text.as_string().unwrap_or_default()) {
        let mut row = Vec::new();
        for part in parts {
            row.push((part.id, part.text.plain()));
        }
        rows.push(Plain::Object(row));
    }
    encoded(&Plain::List(rows))
}

/// Can I get down again? See `coming_down::ask`.
#[wasm_bindgen(js_name = comingDown, skip_typescript)]
#[must_use]
pub fn coming_down(draft: &JsValue, view: &JsValue, effort: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = coming_down::Inputs::of(draft)?;
        Ok(words::descent_report(&coming_down::ask(&inputs, effort_of(effort)), view).plain())
    })
}

/// What if I am stuck? See `rescue::ask`.
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn rescue(draft: &JsValue, view: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = rescue::Inputs::of(draft)?;
        Ok(words::rescue_report(&rescue::ask(&inputs), view).plain())
    })
}

/// How much rope? See `rope_length::ask`.
#[wasm_bindgen(js_name = ropeLength, skip_typescript)]
#[must_use]
pub fn rope_length(draft: &JsValue, view: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = rope_length::Inputs::of(draft)?;
        Ok(words::rope_report(&rope_length::ask(&inputs), view).plain())
    })
}

/// What length of cord? See `cut_length::ask`.
#[wasm_bindgen(js_name = cutLength, skip_typescript)]
#[must_use]
pub fn cut_length(draft: &JsValue, view: &JsValue) -> JsValue {
    reply(draft, view, &|draft, view| {
        let inputs = cut_length::Inputs::of(draft)?;
        Ok(words::cord_report(&cut_length::ask(&inputs), view).plain())
    })
}

/// Every field, as a form shows it; text alone, which the package has.
#[cfg(not(boughline_terse))]
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
#[cfg(not(boughline_terse))]
fn choices(options: &'static [crate::field::Named]) -> Plain {
    let mut lines = Vec::new();
    for option in options {
        lines.push(words::ChoiceLine::from(option).plain());
    }
    Plain::List(lines)
}

/// The words that somebody's own rig is written in; text alone, which the package has.
#[cfg(not(boughline_terse))]
#[wasm_bindgen(js_name = rigWords, skip_typescript)]
#[must_use]
pub fn rig_words() -> JsValue {
    encoded(&Plain::Object(vec![
        ("does", choices(crate::reeving::notation::Does::OPTIONS)),
        ("on", choices(crate::reeving::notation::Place::OPTIONS)),
        ("with", choices(crate::gear::TurnKind::OPTIONS)),
    ]))
}

/// The rigs and turns to choose from; text alone, which the package has.
#[cfg(not(boughline_terse))]
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn catalogue() -> JsValue {
    encoded(&Plain::Object(vec![
        ("rigs", choices(crate::reeving::RigName::OPTIONS)),
        ("turns", choices(crate::gear::TurnKind::OPTIONS)),
    ]))
}

/// Every source; text alone, which the package has.
#[cfg(not(boughline_terse))]
#[wasm_bindgen(skip_typescript)]
#[must_use]
pub fn sources() -> JsValue {
    let mut lines = Vec::new();
    for source in crate::source::SOURCES {
        lines.push(words::source_line(source).plain());
    }
    encoded(&Plain::List(lines))
}

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

/// What is kept under a key; a getter that throws has nothing there.
fn got(value: &JsValue, key: &str) -> JsValue {
    Reflect::get(value, &key.into()).unwrap_or(JsValue::UNDEFINED)
}

/// What a link says.
#[wasm_bindgen(js_name = readLink, skip_typescript)]
#[must_use]
pub fn read_link(text: &JsValue) -> JsValue {
    let link = link::read(&text.as_string().unwrap_or_default());
    let mut draft = Vec::new();
    for row in all_fields() {
        if let Some(Said::Text(text)) = link.draft.get(row.id) {
            draft.push((row.id, text.plain()));
        }
    }
    let system = if link.view.system == System::Si { "si" } else { "us" };
    let decimal = if link.view.decimal == Decimal::Point { "." } else { "," };
    let mut notices = Vec::new();
    for notice in &link.notices {
        notices.push(Plain::Text(words::notice(notice)));
    }
    encoded(&Plain::Object(vec![
        ("question", link.question.map(Question::id).plain()),
        ("draft", Plain::Object(draft)),
        ("view", Plain::Object(vec![("system", system.plain()), ("decimal", decimal.plain())])),
        ("notices", Plain::List(notices)),
    ]))
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

fn effort_of(value: &JsValue) -> Effort {
    value.as_f64().map_or(Effort::FULL, |samples| Effort::samples(samples as u32))
}
