//! No answer lacks its cautions, whatever the plan: the usual ones always, others whenever what was entered calls for them.
//!
//! When a caution is called for is said here a second time, of the plan as it was entered and of nothing reckoned.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, clippy::indexing_slicing, reason = "what is missing fails the test")]

#[path = "cautions/answers.rs"]
mod answers;
#[path = "cautions/plans.rs"]
mod plans;
#[path = "cautions/rules.rs"]
mod rules;
#[path = "every_question/told.rs"]
mod told;

use answers::{answer, cautions, effort, texts};
use boughline::quantity::{Decimal, System, View};
use boughline::question::Question;
use boughline::words::{Format, Subject, as_text};
use plans::{Plan, plans};
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;
use rules::RULES;
use serde_json::Value;
use std::collections::BTreeMap;

const VIEWS: [View; 2] =
    [View { system: System::Si, decimal: Decimal::Point }, View { system: System::Us, decimal: Decimal::Point }];

/// The same random plans every time: a rule that none of them meets is found too.
fn every(question: Question, count: usize) -> Vec<Plan> {
    let mut runner = TestRunner::deterministic();
    let all = plans(question);
    (0..count).map(|_| all.new_tree(&mut runner).expect("a plan").current()).collect()
}

#[test]
fn every_answer_has_the_cautions_that_its_plan_calls_for() {
    let mut met: BTreeMap<(usize, &str), usize> = BTreeMap::new();
    let mut loads = 0;
    for question in Question::ALL {
        let mut answered = 0;
        for plan in every(*question, 400) {
            let Ok(told) = answer(*question, &plan.0, VIEWS[answered % 2]) else { continue };
            answered += 1;
            let given = cautions(&told);
            if *question == Question::Loads {
                loads += usize::from(names_what_is_overloaded(&told));
            }
            for (at, rule) in RULES.iter().enumerate() {
                if rule.of.contains(question) && (rule.when)(&plan) {
                    *met.entry((at, question.id())).or_default() += 1;
                    let has = rule.any.iter().any(|id| given.iter().any(|(given, _)| given == id));
                    assert!(has, "{}: {:?} is not in {given:?}\n{:?}", question.id(), rule.any, plan.0);
                }
            }
        }
        assert!(answered >= 60, "{}: only {answered} plans could be answered", question.id());
    }
    assert!(loads > 5, "parts were loaded past what they bear: {loads}");
    let unmet: Vec<_> = RULES
        .iter()
        .enumerate()
        .flat_map(|(at, rule)| rule.of.iter().map(move |question| (at, question.id(), rule.any)))
        .filter(|(at, question, _)| !met.contains_key(&(*at, *question)))
        .collect();
    assert!(unmet.is_empty(), "no plan calls for {unmet:?}");
}

/// Whether a part of these loads bears less than its peak; then a caution says so. A limb that no sum rules out is for
/// somebody qualified to look at.
fn names_what_is_overloaded(told: &Value) -> bool {
    let limb = told["limb"]["text"].as_str().expect("a text");
    assert!(limb.contains("arborist") || limb.contains("Choose"), "{limb}");
    let states = told["states"].as_array().expect("the states");
    let parts = states.iter().flat_map(|state| state["parts"].as_array().expect("the parts"));
    let over = parts.filter(|part| part["ratio"]["low"].as_f64().is_some_and(|times| times < 0.999)).count() > 0;
    assert!(!over || cautions(told).iter().any(|(id, _)| id == "short"), "{told}");
    over
}

/// A rig stands with its own in the list of all of them.
#[test]
fn every_rig_side_by_side_has_the_cautions_of_that_rig() {
    let (mut untended, mut hard, mut single) = (0, 0, 0);
    for plan in every(Question::Advantage, 100) {
        let Ok(told) = answer(Question::Advantage, &plan.0, VIEWS[0]) else { continue };
        for rig in told["rigs"].as_array().expect("the rigs") {
            let (id, given) = (rig["id"].as_str().expect("an id"), cautions(rig));
            let has = |caution: &str| given.iter().any(|(id, _)| id == caution);
            if id.starts_with("haul-cord") {
                assert!(has("untended-hitch"), "{id}: {given:?}");
                untended += 1;
            }
            if id == "ground-5" || id == "ground-9" {
                assert!(has("haul-hard"), "{id}: {given:?}");
                hard += 1;
            }
            if rules::is_self_haul(id) && plan.is_or_open("backup", "none") {
                assert!(has("single-hitch"), "{id}: {given:?}");
                single += 1;
            }
        }
    }
    assert!(untended > 50 && hard > 50 && single > 50, "{untended} {hard} {single}");
}

/// What is missing, overloaded or out of reach keeps the best verdict away, and is said.
#[test]
fn no_plan_is_within_reach_without_a_way_down_somebody_there_and_gear_that_is_rated_for_it() {
    let (mut lacking, mut over) = (0, 0);
    for plan in every(Question::CanIClimb, 400) {
        let Ok(told) = answer(Question::CanIClimb, &plan.0, VIEWS[0]) else { continue };
        let verdict = told["verdict"]["id"].as_str().expect("a verdict");
        let missing = told["missing"].to_string();
        for (id, noun) in [("wayDown", "How you come down again"), ("secondPerson", "A second person on the ground")] {
            if plan.says(id).is_none() && !plan.is_hauled() {
                assert!(verdict != "within-reach" && missing.contains(noun), "{id}: {verdict} {missing}\n{:?}", plan.0);
                lacking += 1;
            }
        }
        if plan.si("ratedMass").is_some_and(|rated| plan.least_mass() > rated + 2.0) {
            assert!(["out-of-reach", "none"].contains(&verdict), "{verdict}\n{:?}", plan.0);
            over += 1;
        }
        if verdict == "within-reach" {
            assert_eq!(told["verdict"]["text"], "Within reach on paper");
            assert_eq!(told["second"], "Try it at knee height first.");
        }
    }
    assert!(lacking > 50 && over > 20, "{lacking} {over}");
}

/// Lines of text, Markdown, and the trip sheet of the whole plan.
#[test]
fn every_text_of_an_answer_has_all_its_cautions() {
    let mut told_of = 0;
    for question in Question::ALL {
        for (at, plan) in every(*question, 40).into_iter().enumerate() {
            let view = VIEWS[at % 2];
            let Ok(told) = answer(*question, &plan.0, view) else {
                for text in texts(Subject::Answer(*question), &plan.0, view) {
                    let verdict = ["Within reach", "At your limit", "Out of reach"];
                    assert!(verdict.iter().all(|verdict| !text.contains(verdict)), "no answer, and yet\n{text}");
                }
                continue;
            };
            let mut subjects = vec![Subject::Answer(*question)];
            // The trip sheet leaves out what length one cord has, and the other rigs.
            if at < 10 && !matches!(question, Question::CutLength | Question::Advantage) {
                subjects.push(Subject::TripSheet);
            }
            for subject in subjects {
                for text in texts(subject, &plan.0, view) {
                    for (id, caution) in cautions(&told) {
                        assert!(text.contains(&caution), "{subject:?} {id}: {caution}\nis not in\n{text}");
                        told_of += 1;
                    }
                }
            }
        }
    }
    assert!(told_of > 2000, "{told_of}");
}

#[test]
fn one_that_can_kill_is_marked_so_on_paper() {
    for plan in every(Question::CanIClimb, 20) {
        let Ok(told) = answer(Question::CanIClimb, &plan.0, VIEWS[0]) else { continue };
        let text = as_text(
            Subject::Answer(Question::CanIClimb),
            &plan.0,
            VIEWS[0],
            effort(),
            Format::Text,
            "https://example.org/",
        );
        for caution in told["cautions"].as_array().expect("cautions") {
            let text_of = caution["text"].as_str().expect("a text");
            let marked = text.contains(&format!("- Warning: {text_of}\n"));
            assert_eq!(marked, caution["grave"] == Value::Bool(true), "{text_of}\n{text}");
        }
    }
}
