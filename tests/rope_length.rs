//! How much rope: what must hold of every plan, and what is refused.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unreachable,
    reason = "what is missing fails the test"
)]

#[path = "rope_length/checks.rs"]
mod checks;
#[path = "rope_length/laws.rs"]
mod laws;
#[path = "laws/plans.rs"]
mod plans;
#[path = "rope_length/reverse.rs"]
mod reverse;
#[path = "rope_length/plans.rs"]
mod rope_plans;
#[path = "rope_length/shown.rs"]
mod shown;

use boughline::question::rope_length::{Answer, Inputs, ask};
use plans::{Plan, draft};

fn answer(plan: &Plan) -> Answer {
    ask(&Inputs::of(&draft(plan)).expect("the plan is in order"))
}
