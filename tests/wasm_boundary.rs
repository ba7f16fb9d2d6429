//! The boundary through real JavaScript values: `pkg-config/test --only wasm`.
#![cfg(target_arch = "wasm32")]

use boughline::wasm;
use js_sys::{Array, JSON, Object, Reflect};
use wasm_bindgen::prelude::*;
use wasm_bindgen_test::wasm_bindgen_test;

/// A JavaScript value, written as JavaScript writes it.
fn js(text: &str) -> JsValue {
    js_sys::eval(&format!("({text})")).expect("the test's own JavaScript")
}

fn get(value: &JsValue, path: &str) -> JsValue {
    path.split('.').fold(value.clone(), |value, key| Reflect::get(&value, &key.into()).unwrap_or(JsValue::UNDEFINED))
}

fn ask(draft: &str) -> JsValue {
    wasm::can_i_climb::can_i_climb(&js(draft), &JsValue::UNDEFINED, &JsValue::UNDEFINED)
}

/// The messages, by the fields they name.
fn errors(reply: &JsValue) -> Vec<(String, String)> {
    assert_eq!(get(reply, "ok"), JsValue::FALSE, "{}", JSON::stringify(reply).unwrap());
    let errors: Array = get(reply, "errors").unchecked_into();
    errors
        .iter()
        .map(|error| {
            let fields: Array = get(&error, "fields").unchecked_into();
            (fields.join(",").into(), get(&error, "message").as_string().unwrap())
        })
        .collect()
}

const PLAN: &str = "bodyMass: '80 kg', climbHeight: '11 m', rig: 'tail-3', measuredPull: '700 N', stature: 1.75";

#[wasm_bindgen_test]
fn a_plan_of_text_and_numbers_gets_an_answer_of_plain_objects() {
    let reply = ask(&format!("{{ {PLAN} }}"));
    assert_eq!(get(&reply, "ok"), JsValue::TRUE);
    assert_eq!(get(&reply, "answer.verdict.id").as_string().as_deref(), Some("at-limit"));
    assert_eq!(get(&reply, "answer.figures.0.id").as_string().as_deref(), Some("pullNeeded"));
    // What crosses is what JSON would hold, so nothing is lost in writing it down.
    let text = JSON::stringify(&reply).unwrap();
    let again = JSON::parse(&String::from(&text)).unwrap();
    assert_eq!(String::from(JSON::stringify(&again).unwrap()), String::from(text));
    assert!(Object::get_prototype_of(&get(&reply, "answer")).eq(&Object::get_prototype_of(&Object::new())));
}

#[wasm_bindgen_test]
fn what_javascript_would_quietly_take_for_a_number_is_refused() {
    let strange = [
        "''",
        "'  '",
        "null",
        "undefined",
        "true",
        "NaN",
        "Infinity",
        "-Infinity",
        "[80]",
        "{}",
        "'80'",
        "'1,200 kg'",
        "new Date()",
        "() => 80",
        "10n",
    ];
    for value in strange {
        let reply = ask(&format!("{{ {PLAN}, bodyMass: {value} }}"));
        let errors = errors(&reply);
        assert_eq!(errors.len(), 1, "{value}: {errors:?}");
        assert_eq!(errors[0].0, "bodyMass", "{value}");
        assert!(errors[0].1.starts_with("Body mass"), "{value}: {}", errors[0].1);
    }
}

#[wasm_bindgen_test]
fn everything_wrong_at_once_is_all_named() {
    let reply =
        ask("{ bodyMass: '', kitMass: null, stature: NaN, climbHeight: '1,200', rig: 7, hold: 'teeth', zzz: 1, \
         setback: '3 kg', hitchDrag: 2, testMass: '90 kg', gripLeft: true }");
    let named: Vec<String> = errors(&reply).into_iter().map(|(fields, _)| fields).collect();
    let in_order = [
        "bodyMass",
        "climbHeight",
        "rig",
        "gripLeft",
        "hold",
        "stature",
        "kitMass",
        "hitchDrag",
        "setback",
        "testMass,testPull",
        "zzz",
    ];
    assert_eq!(named, in_order);
    assert_eq!(get(&reply, "answer"), JsValue::UNDEFINED);
}

#[wasm_bindgen_test]
fn a_test_that_contradicts_the_rig_names_both_its_fields() {
    let reply = ask(&format!("{{ {PLAN}, testMass: '90 kg', testPull: '100 N' }}"));
    let errors = errors(&reply);
    assert_eq!(errors.len(), 1, "{errors:?}");
    assert_eq!(errors[0].0, "testMass,testPull");
}

#[wasm_bindgen_test]
fn what_is_no_draft_is_an_error_and_not_an_exception() {
    for value in ["null", "undefined", "7", "'text'", "[1]", "true"] {
        assert_eq!(errors(&ask(value)).len(), 1, "{value}");
    }
    const REVOKED: &str = "(() => { const it = Proxy.revocable({}, {}); it.revoke(); return it.proxy; })()";
    assert_eq!(errors(&ask(REVOKED)).len(), 1);
    assert_eq!(errors(&ask(&format!("{{ {PLAN}, bodyMass: {REVOKED} }}")))[0].0, "bodyMass");
    let throwing = ask(&format!("{{ {PLAN}, get bodyMass() {{ throw new Error('no') }} }}"));
    assert_eq!(errors(&throwing)[0].0, "bodyMass");
}

#[wasm_bindgen_test]
fn a_cord_has_its_answer_of_plain_objects_and_its_errors_at_once() {
    let cord = |draft: &str, view: &str| wasm::cord::cut_length(&js(draft), &js(view));
    let reply = cord("{ cordUse: 'hand-loop', slingCord: 0.006, finishedLength: '30 cm', climbHeight: '' }", "{}");
    assert_eq!(get(&reply, "ok"), JsValue::TRUE, "{}", JSON::stringify(&reply).unwrap());
    assert_eq!(
        get(&reply, "answer.first").as_string().as_deref(),
        Some("About 1 m of cord; 1.14 m if everything takes the most it may. Cut the longer.")
    );
    assert_eq!(get(&reply, "answer.figures.0.id").as_string().as_deref(), Some("cutLength"));
    assert_eq!(get(&reply, "answer.pieces.2.kind").as_string().as_deref(), Some("span"));
    assert_eq!(get(&reply, "answer.pieces.2.length.value").as_f64(), Some(0.6));
    assert_eq!(get(&reply, "answer.shape.closed"), JsValue::TRUE);
    let wrong =
        errors(&cord("{ cordUse: 'prusik', ropeDiameter: '1,200', hitchCord: null, cordCut: true, zzz: 1 }", "{}"));
    let named: Vec<String> = wrong.into_iter().map(|(fields, _)| fields).collect();
    assert_eq!(named, ["ropeDiameter", "hitchCord", "cordCut", "zzz"]);
}

#[wasm_bindgen_test]
fn a_rope_has_its_answer_of_plain_objects_and_its_errors_at_once() {
    let rope = |draft: &str, view: &str| wasm::rope_length::rope_length(&js(draft), &js(view));
    let reply = rope("{ crotchHeight: 12, anchor: 'base', bodyMass: '' }", "{ system: 'us' }");
    assert_eq!(get(&reply, "ok"), JsValue::TRUE, "{}", JSON::stringify(&reply).unwrap());
    assert_eq!(get(&reply, "answer.figures.0.id").as_string().as_deref(), Some("ropeNeeded"));
    assert_eq!(
        get(&reply, "answer.first").as_string().as_deref(),
        Some("About 93 ft of rope; 107 if everything takes the most it may.")
    );
    assert_eq!(get(&reply, "answer.states.3.id").as_string().as_deref(), Some("down"));
    assert_eq!(get(&reply, "answer.states.3.decides"), JsValue::TRUE);
    assert_eq!(get(&reply, "answer.states.3.items.0.value").as_f64(), Some(12.0));
    let wrong = errors(&rope("{ crotchHeight: '1,200', anchor: null, ropeTail: true, zzz: 1 }", "{}"));
    let named: Vec<&str> = wrong.iter().map(|(fields, _)| fields.as_str()).collect();
    assert_eq!(named, ["crotchHeight", "anchor", "ropeTail", "zzz"]);
    let high = errors(&rope("{ crotchHeight: 3, anchor: 'base', hitchHeight: 4 }", "{}"));
    assert_eq!(high[0].0, "crotchHeight,hitchHeight");
    assert_eq!(errors(&rope("null", "{}")).len(), 1);
}

#[wasm_bindgen_test]
fn a_way_down_has_its_answer_of_plain_objects_and_its_errors_at_once() {
    let down = |draft: &str| wasm::coming_down::coming_down(&js(draft), &js("{}"), &js("50"));
    let reply = down("{ bodyMass: 80, kitMass: 0, climbHeight: 20, rig: 'tail-3', brake: 'munter', gripRight: '' }");
    assert_eq!(errors(&reply)[0].0, "gripRight");
    let reply = down("{ bodyMass: 80, kitMass: 0, climbHeight: 20, rig: 'tail-3', brake: 'munter' }");
    assert_eq!(get(&reply, "ok"), JsValue::TRUE, "{}", JSON::stringify(&reply).unwrap());
    assert_eq!(get(&reply, "answer.steps.0.id").as_string().as_deref(), Some("rest"));
    assert_eq!(get(&reply, "answer.steps.6.id").as_string().as_deref(), Some("move-knot"));
    assert_eq!(get(&reply, "answer.steps.2.rope.1.moved"), JsValue::TRUE);
    assert_eq!(get(&reply, "answer.figures.0.id").as_string().as_deref(), Some("holdForce"));
    assert_eq!(get(&reply, "answer.none").as_string().as_deref(), Some(""));
    let named: Vec<String> = errors(&down("{ bodyMass: '1,200', rig: null, brake: 'teeth', zzz: 1 }"))
        .into_iter()
        .map(|(fields, _)| fields)
        .collect();
    assert_eq!(named, ["bodyMass", "climbHeight", "rig", "brake", "zzz"]);
    assert_eq!(errors(&down("null")).len(), 1);
}

#[wasm_bindgen_test]
fn a_rescue_has_its_answer_of_plain_objects_and_its_errors_at_once() {
    let stuck = |draft: &str| wasm::rescue::rescue(&js(draft), &js("{}"));
    let reply = stuck(
        "{ bodyMass: 80, climbHeight: 10, rig: 'tail-3', anchor: 'base-lowerable', secondPerson: 'rescuer', age: '' }",
    );
    assert_eq!(get(&reply, "ok"), JsValue::TRUE, "{}", JSON::stringify(&reply).unwrap());
    assert_eq!(get(&reply, "answer.figures.0.id").as_string().as_deref(), Some("rescueClock"));
    assert_eq!(get(&reply, "answer.figures.0.value").as_f64(), Some(420.0));
    assert_eq!(get(&reply, "answer.ways.1.id").as_string().as_deref(), Some("let-down"));
    assert_eq!(get(&reply, "answer.ways.1.best"), JsValue::TRUE);
    assert_eq!(get(&reply, "answer.ways.2.total"), JsValue::NULL);
    let named: Vec<String> = errors(&stuck("{ bodyMass: '', climbHeight: NaN, anchor: 7, footTurns: 'many', zzz: 1 }"))
        .into_iter()
        .map(|(fields, _)| fields)
        .collect();
    assert_eq!(named, ["bodyMass", "climbHeight", "rig", "anchor", "footTurns", "zzz"]);
    assert_eq!(errors(&stuck("null")).len(), 1);
}

#[wasm_bindgen_test]
fn a_strange_view_or_effort_is_as_if_it_were_not_said() {
    let plain = JSON::stringify(&ask(&format!("{{ {PLAN} }}"))).unwrap();
    for strange in ["null", "7", "{}", "{ system: 'imperial' }", "[]", "NaN"] {
        let reply = wasm::can_i_climb::can_i_climb(&js(&format!("{{ {PLAN} }}")), &js(strange), &JsValue::NULL);
        assert_eq!(String::from(JSON::stringify(&reply).unwrap()), String::from(plain.clone()), "{strange}");
    }
    let least = wasm::can_i_climb::can_i_climb(&js(&format!("{{ {PLAN} }}")), &JsValue::NULL, &js("-1"));
    assert_eq!(get(&least, "answer.effort.samples").as_f64(), Some(50.0));
    let nan = wasm::can_i_climb::can_i_climb(&js(&format!("{{ {PLAN} }}")), &JsValue::NULL, &js("NaN"));
    assert_eq!(get(&nan, "answer.effort.samples").as_f64(), Some(50.0));
}

/// Asked for more of the same, it goes on where it stopped; asked for less, or of another plan, it begins again.
#[wasm_bindgen_test]
fn however_an_effort_was_come_to_the_answer_is_the_same() {
    let at = |plan: &str, effort: f64| {
        let reply = wasm::can_i_climb::can_i_climb(&js(&format!("{{ {plan} }}")), &JsValue::UNDEFINED, &effort.into());
        String::from(JSON::stringify(&reply).unwrap())
    };
    let other = PLAN.replace("80 kg", "81 kg");
    let at_once = at(PLAN, 400.0);
    let before = at(&other, 100.0);
    assert_ne!(at(PLAN, 100.0), at_once);
    assert_eq!(at(PLAN, 400.0), at_once, "in two steps");
    assert_eq!(at(&other, 100.0), before, "another plan");
    at(PLAN, 1000.0);
    assert_eq!(at(PLAN, 400.0), at_once, "less than it had come to");
}

#[wasm_bindgen_test]
fn a_link_goes_there_and_back() {
    let us = js("{ system: 'us', decimal: ',' }");
    let link = wasm::links::write_link(&"can-i-climb".into(), &js(&format!("{{ {PLAN} }}")), &us);
    let read = wasm::links::read_link(&link);
    assert_eq!(get(&read, "question").as_string().as_deref(), Some("can-i-climb"));
    assert_eq!(get(&read, "view.system").as_string().as_deref(), Some("us"));
    assert_eq!(get(&read, "view.decimal").as_string().as_deref(), Some(","));
    assert_eq!(get(&read, "draft.bodyMass").as_string().as_deref(), Some("80kg"));
    let again = wasm::links::write_link(&"can-i-climb".into(), &get(&read, "draft"), &us);
    assert_eq!(again, link);
    assert_eq!(wasm::links::write_link(&"no-question".into(), &js("{}"), &us), JsValue::from(""));
    assert_eq!(get(&wasm::links::read_link(&JsValue::NULL), "question"), JsValue::NULL);
}

#[wasm_bindgen_test]
fn a_bare_number_gets_its_unit_and_nothing_else_is_touched() {
    let tidy = |id: &str, text: &str, view: &str| wasm::tidy(&id.into(), &text.into(), &js(view)).as_string().unwrap();
    assert_eq!(tidy("bodyMass", "80", "{}"), "80 kg");
    assert_eq!(tidy("bodyMass", "176", "{ system: 'us' }"), "176 lb");
    assert_eq!(tidy("bodyMass", "1,200", "{}"), "1,200");
    assert_eq!(tidy("nobody", "80", "{}"), "80");
}

#[wasm_bindgen_test]
fn a_rig_of_ones_own_is_read_into_rows_and_written_again() {
    let text = "tied tree, hitch upper, hitch climber, turn climber, turn upper 0.85, hand climber";
    let read = wasm::own_rig::read_rig(&text.into(), &JsValue::UNDEFINED);
    assert_eq!(get(&read, "ok"), JsValue::TRUE);
    assert_eq!(get(&read, "text").as_string().as_deref(), Some(text));
    let written = wasm::own_rig::write_rig(&get(&read, "ropes")).as_string();
    let filled = "tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper 0.85, hand climber";
    assert_eq!(written.as_deref(), Some(filled));
    let wrong = wasm::own_rig::write_rig(&js(
        "[[{ does: 'tied', on: 'trea' }], [{}, 3, null, { does: 'hand', on: 'climber', with: '' }]]",
    ));
    assert_eq!(wrong.as_string().as_deref(), Some("tied trea\n, , , hand climber"));
    let sentence = "“trea” in line 1, stop 1, is no place. Write tree, ground, climber or upper.";
    assert_eq!(errors(&wasm::own_rig::read_rig(&wrong, &JsValue::NULL)), [("ownRig".to_owned(), sentence.to_owned())]);
    for strange in ["null", "3", "[]", "{}", "'rope'", "[null]", "[[]]", "({ get length() { throw 1; } })"] {
        let text = wasm::own_rig::write_rig(&js(strange)).as_string();
        assert_eq!(text.as_deref(), Some(""), "{strange}");
        assert_eq!(errors(&wasm::own_rig::read_rig(&js(strange), &JsValue::NULL)).len(), 1, "{strange}");
    }
    let words = wasm::lists::rig_words();
    assert_eq!(get(&words, "does.0.id").as_string().as_deref(), Some("tied"));
    assert_eq!(get(&words, "with.4.id").as_string().as_deref(), Some("bark"));
}
