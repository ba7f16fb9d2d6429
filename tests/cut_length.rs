//! What length of cord: what must hold of every cord, and what is refused.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, clippy::unreachable, reason = "what is missing fails the test")]

#[path = "cut_length/checks.rs"]
mod checks;
#[path = "cut_length/plans.rs"]
mod cord_plans;
#[path = "cut_length/geometry.rs"]
mod geometry;
#[path = "cut_length/laws.rs"]
mod laws;
#[path = "laws/plans.rs"]
mod plans;

use boughline::question::cut_length::{Answer, Inputs, ask};
use plans::{Plan, draft};

fn answer(plan: &Plan) -> Answer {
    ask(&Inputs::of(&draft(plan)).expect("the plan is in order"))
}
