//! The limits of a cord that follow from the rest of its plan, as a sentence names them.

use super::cases;
use super::drawn::plan_of;
use super::plans::{Plan, draft, with, without};
use super::told::errors;
use super::views::VIEWS;
use boughline::error::{Error, Reason};
use boughline::field::Said;
use boughline::quantity::View;
use boughline::question::Question;
use boughline::words::message;
use proptest::prelude::*;

/// The limits in a sentence about a cord that leaves nothing to hang, or about its working end.
fn named(message: &str) -> Vec<&str> {
    let between = |from: &str, to: &str| message.split_once(from).and_then(|(_, rest)| rest.split_once(to));
    match (between("must be over ", ":"), between("must be between ", " here:")) {
        (Some((least, _)), _) => vec![least],
        (_, Some((ends, _))) => ends.split(" and ").collect(),
        _ => Vec::new(),
    }
}

/// What is wrong with a cord that follows from the rest of its plan.
fn limits_of(plan: &Plan) -> Vec<Error> {
    let mut errors = errors(Question::CutLength, &draft(plan));
    errors.retain(|error| matches!(error.reason, Reason::TooShort { .. } | Reason::WorkingEnd { .. }));
    errors
}

/// What a refusal says to do is taken: either limit that it names, or nothing where it names none.
fn is_taken_as_told(plan: &Plan, error: &Error, view: View) -> Result<(), TestCaseError> {
    let id = error.fields[0].as_str();
    let told = message(error, view);
    let is_refused = |plan: &Plan| limits_of(plan).iter().any(|error| error.fields == [id]);
    let plan_with = |length: &str| match plan.iter().find(|(known, _)| *known == id) {
        Some((known, _)) => with(plan, known, Said::Text(length.to_owned())),
        None => plan.clone(),
    };
    let lengths = named(&told);
    for length in &lengths {
        prop_assert!(!is_refused(&plan_with(length)), "{}, and {} is refused", told, length);
    }
    if lengths.is_empty() {
        prop_assert!(told.ends_with("Leave it empty."), "{}", told);
        prop_assert!(!is_refused(&without(plan, &[id])), "{}, and that is refused", told);
    }
    Ok(())
}

const LENGTHS: [&str; 4] = ["cordCut", "cameOut", "freeLeg", "finishedLength"];

proptest! {
    #![proptest_config(cases(512))]

    #[test]
    fn a_limit_of_a_cord_that_is_named_is_taken(
        plan in plan_of(Question::CutLength),
        id in prop::sample::select(vec!["cordCut", "finishedLength", "workingEnd"]),
        si in 0.01..1.0_f64,
        view in prop::sample::select(VIEWS.to_vec()),
    ) {
        let plan = with(&without(&plan, &LENGTHS), id, Said::Number(si));
        for error in limits_of(&plan).iter().filter(|error| error.fields == [id]) {
            is_taken_as_told(&plan, error, view)?;
        }
    }

    /// With hardly any cord left to hang the two limits lie near each other, and no figure between them.
    #[test]
    fn a_cord_of_hardly_more_than_its_least_names_no_limit_that_is_refused(
        plan in plan_of(Question::CutLength),
        id in prop::sample::select(vec!["cordCut", "finishedLength"]),
        more in 0.0..0.05_f64,
        end in 0.01..1.0_f64,
        view in prop::sample::select(VIEWS.to_vec()),
    ) {
        let plan = without(&without(&plan, &LENGTHS), &["workingEnd"]);
        let least = limits_of(&with(&plan, id, Said::Number(0.01))).into_iter().find_map(|error| match error.reason {
            Reason::TooShort { least } => Some(least),
            _ => None,
        });
        let Some(least) = least else { return Ok(()) };
        let plan = with(&with(&plan, id, Said::Number(least + more)), "workingEnd", Said::Number(end));
        for error in limits_of(&plan) {
            is_taken_as_told(&plan, &error, view)?;
        }
    }
}
