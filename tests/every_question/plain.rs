//! Nothing that is answered is no number, out of order or half written.

use super::drawn::{any_plan, plan_of};
use super::plans::{Plan, draft};
use super::told::{errors, told};
use super::{cases, questions};
use boughline::quantity::{Decimal, System, View};
use boughline::question::{Effort, Question};
use boughline::words::error_lines;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use serde_json::Value;

const VIEWS: [View; 2] =
    [View { system: System::Si, decimal: Decimal::Point }, View { system: System::Us, decimal: Decimal::Comma }];

/// What no text of an answer may have as a word.
const ODD: &[&str] = &["NaN", "nan", "inf", "-inf", "−inf", "Infinity", "undefined", "null"];

/// Nought with a sign before it.
fn is_signed_nought(word: &str) -> bool {
    word.strip_prefix(['-', '−'])
        .is_some_and(|size| size.contains('0') && size.chars().all(|letter| "0.,".contains(letter)))
}

/// What is wrong with a text that people read.
fn fault_of_text(text: &str) -> Option<&str> {
    let mut words = text.split(|letter: char| letter.is_whitespace() || "()/:;“”×".contains(letter));
    let odd = words.find(|word| {
        let word = word.trim_end_matches(['.', ',', '%', '°']);
        ODD.contains(&word) || is_signed_nought(word)
    });
    odd.or_else(|| ["  ", "{", "}"].into_iter().find(|mark| text.contains(mark)))
}

/// What is wrong with a report, and where.
fn fault_of_report(value: &Value, place: &str) -> Option<String> {
    match value {
        Value::String(text) => fault_of_text(text).map(|fault| format!("{place}: {fault:?} in {text:?}")),
        Value::Array(list) => list.iter().find_map(|one| fault_of_report(one, place)),
        Value::Object(map) => {
            let number = |key: &str| map.get(key).and_then(Value::as_f64);
            let ends = [number("low"), number("value"), number("high")];
            let known: Vec<f64> = ends.into_iter().flatten().collect();
            if known.windows(2).any(|pair| pair[0] > pair[1]) {
                return Some(format!("{place}: {value}"));
            }
            // What is endless has no number, and a text that says so.
            if map.get("value").is_some_and(Value::is_null) && map.contains_key("text") {
                let text = map.get("text").and_then(Value::as_str).unwrap_or_default();
                if text.chars().any(|letter| letter.is_ascii_digit()) || text.is_empty() {
                    return Some(format!("{place}: no number, and “{text}”"));
                }
            }
            map.iter().find_map(|(key, value)| fault_of_report(value, &format!("{place}/{key}")))
        }
        _ => None,
    }
}

/// What is wrong with facts: a number that is none, or a range that is out of order.
fn fault_of_facts(facts: &str) -> Option<String> {
    let words = || facts.split(|letter: char| !(letter.is_alphanumeric() || "-._".contains(letter)));
    if words().any(|word| word == "NaN") {
        return facts.find("NaN").map(|at| facts[at.saturating_sub(200)..(at + 3).min(facts.len())].to_owned());
    }
    facts.split("Spread { low: ").skip(1).find_map(|rest| {
        let text = rest.split(" }").next()?;
        let numbers: Vec<f64> = text.split(", ").filter_map(|part| part.split(": ").last()?.parse().ok()).collect();
        let is_ordered = numbers.len() == 3 && numbers.windows(2).all(|pair| pair[0] <= pair[1]);
        (!is_ordered).then(|| text.to_owned())
    })
}

/// Whether it was answered.
pub(crate) fn check(question: Question, plan: &Plan, effort: Effort) -> Result<bool, TestCaseError> {
    match told(question, &draft(plan), &VIEWS, effort) {
        Ok(told) => {
            let fault = fault_of_facts(&told.facts);
            prop_assert!(fault.is_none(), "{}: {:?}", question.id(), fault);
            for report in &told.reports {
                let fault = fault_of_report(report, question.id());
                prop_assert!(fault.is_none(), "{}", fault.unwrap_or_default());
            }
            Ok(true)
        }
        Err(errors) => {
            for line in VIEWS.iter().flat_map(|view| error_lines(&errors, *view)) {
                let message = line.message;
                prop_assert!(message.ends_with(['.', '?']) && message.len() > 20, "{}", message);
                prop_assert!(fault_of_text(&message).is_none(), "{}", message);
            }
            Ok(false)
        }
    }
}

proptest! {
    #![proptest_config(cases(1200))]

    #[test]
    fn every_figure_and_text_of_every_question_is_plain((question, plan) in questions().prop_flat_map(|question| (Just(question), plan_of(question)))) {
        check(question, &plan, Effort::samples(50))?;
    }

    #[test]
    fn whatever_is_said_is_answered_or_told_in_sentences((question, plan) in questions().prop_flat_map(|question| (Just(question), any_plan(question)))) {
        check(question, &plan, Effort::samples(50))?;
    }
}

/// The laws above are about answers, not about errors only.
#[test]
fn nine_plans_in_ten_are_in_order_and_each_field_is_said_in_some() {
    let mut runner = TestRunner::deterministic();
    for question in Question::ALL {
        let (mut answered, mut unsaid) = (0, question.fields().iter().map(|row| row.id).collect::<Vec<_>>());
        for _ in 0..200 {
            let plan = plan_of(*question).new_tree(&mut runner).expect("a plan").current();
            if errors(*question, &draft(&plan)).is_empty() {
                answered += 1;
                unsaid.retain(|id| plan.iter().all(|(said, _)| said != id));
            }
        }
        assert!(answered >= 180, "{}: {answered} of 200", question.id());
        assert!(unsaid.is_empty(), "{}: never {unsaid:?}", question.id());
    }
}
