//! What must hold of every question, whatever its fields: a new field, choice or question is drawn without being named.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::string_slice,
    clippy::panic,
    clippy::unreachable,
    reason = "what is missing fails the test"
)]

#[path = "every_question/choices.rs"]
mod choices;
#[path = "every_question/cord_and_down.rs"]
mod cord_and_down;
#[path = "every_question/cord_limits.rs"]
mod cord_limits;
#[path = "every_question/drawn.rs"]
mod drawn;
#[path = "every_question/limits.rs"]
mod limits;
#[path = "every_question/ordered.rs"]
mod ordered;
#[path = "every_question/plain.rs"]
mod plain;
#[path = "laws/plans.rs"]
mod plans;
#[path = "every_question/rig_and_body.rs"]
mod rig_and_body;
#[path = "every_question/told.rs"]
mod told;
#[path = "lib/views.rs"]
mod views;

use boughline::question::Question;
use proptest::prelude::*;
use proptest::test_runner::Config;

/// So many cases; a failing one is printed, not written beside the tests.
fn cases(cases: u32) -> Config {
    Config { cases, failure_persistence: None, max_shrink_iters: 300, ..Config::default() }
}

/// Any question.
fn questions() -> impl Strategy<Value = Question> {
    prop::sample::select(Question::ALL.to_vec())
}
