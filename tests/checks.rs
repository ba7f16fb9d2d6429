//! What was said is checked: every error at once, no answer with one, and never a panic.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, clippy::unreachable, reason = "what is missing fails the test")]

#[path = "checks/fuzz.rs"]
mod fuzz;
#[path = "checks/limits.rs"]
mod limits;
#[path = "checks/together.rs"]
mod together;

use boughline::Draft;
use boughline::field::{Row, Said};
use boughline::question::Question;

fn fields() -> &'static [&'static Row] {
    Question::CanIClimb.fields()
}

fn text(text: &str) -> Said {
    Said::Text(text.to_owned())
}

/// A plan that is in order, and no more than is needed.
fn in_order() -> Draft {
    Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "tail-3")
}

fn with(id: &str, said: Said) -> Draft {
    let mut draft = in_order();
    draft.put(id, said);
    draft
}
