//! Plans of any question, drawn from the table of fields alone.
#![allow(dead_code, reason = "each test file uses some of it")]

use super::plans::{Plan, draft, value};
use super::told::errors;
use boughline::error::Reason;
use boughline::field::Said;
use boughline::question::Question;
use proptest::prelude::*;

/// Any plan of a question, a few or most of its fields said, as it comes: often with errors.
pub(crate) fn any_plan(question: Question) -> impl Strategy<Value = Plan> {
    drawn(question).prop_map(|(all, said)| said_of(&all, &said))
}

/// The same, with what stands against it left out and what it needs said: nearly always in order.
pub(crate) fn plan_of(question: Question) -> impl Strategy<Value = Plan> {
    drawn(question).prop_map(move |(all, said)| mended(question, &all, said, ""))
}

/// A plan of a question in which a field is said, whatever else must give way to it.
pub(crate) fn plan_with(question: Question, id: &'static str, value: &Said) -> impl Strategy<Value = Plan> {
    let value = value.clone();
    drawn(question).prop_map(move |(all, mut said)| {
        let all =
            all.into_iter().map(|(known, said)| (known, if known == id { value.clone() } else { said })).collect();
        for (field, said) in std::iter::zip::<&Plan, _>(&all, &mut said) {
            *said |= field.0 == id;
        }
        mended(question, &all, said, id)
    })
}

/// Something for every field, and which of them are said.
fn drawn(question: Question) -> impl Strategy<Value = (Plan, Vec<bool>)> {
    let all: Vec<_> = question.fields().iter().map(|row| value(row).prop_map(|said| (row.id, said))).collect();
    let draws = prop::collection::vec(0.0..1.0_f64, all.len());
    (all, draws, prop::sample::select(vec![0.1, 0.35, 0.7, 1.0])).prop_map(|(all, draws, share)| {
        let said = draws.into_iter().map(|draw| draw < share).collect();
        (all, said)
    })
}

fn said_of(all: &Plan, said: &[bool]) -> Plan {
    all.iter().zip(said).filter(|(_, said)| **said).map(|(field, _)| field.clone()).collect()
}

/// Error by error: what is needed is said, else the last field that an error names is left out, but for one that is to stay.
fn mended(question: Question, all: &Plan, mut said: Vec<bool>, stays: &str) -> Plan {
    for _ in 0..all.len() {
        let found = errors(question, &draft(&said_of(all, &said)));
        let Some(error) = found.first() else { break };
        let is_needed = error.reason == Reason::Needed;
        let place = |id: &String| all.iter().position(|(known, _)| known == id);
        let places: Vec<usize> = error.fields.iter().filter(|id| *id != stays).filter_map(place).collect();
        let Some(at) = places.into_iter().rev().find(|at| said.get(*at) == Some(&!is_needed)) else { break };
        if let Some(said) = said.get_mut(at) {
            *said = is_needed;
        }
    }
    said_of(all, &said)
}
