//! The exact wording of everything a person is told: errors, verdicts, cautions, what is missing, links.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "what is missing fails the test"
)]

#[path = "wording/advantage.rs"]
mod advantage;
#[path = "wording/bodies.rs"]
mod bodies;
#[path = "wording/cautions.rs"]
mod cautions;
#[path = "wording/cut_length.rs"]
mod cut_length;
#[path = "wording/cut_plan.rs"]
mod cut_plan;
#[path = "wording/errors.rs"]
mod errors;
#[path = "wording/legs.rs"]
mod legs;
#[path = "wording/loads.rs"]
mod loads;
#[path = "wording/notices.rs"]
mod notices;
#[path = "wording/own_rigs.rs"]
mod own_rigs;
#[path = "wording/permission.rs"]
mod permission;
#[path = "wording/rope_length.rs"]
mod rope_length;
#[path = "wording/sense.rs"]
mod sense;
#[path = "wording/templates.rs"]
mod templates;
#[path = "wording/verdicts.rs"]
mod verdicts;

use boughline::link;
use boughline::quantity::{System, View};
use boughline::question::can_i_climb::{Answer, Inputs, ask};
use boughline::question::{Effort, Question};
use boughline::words::{Report, error_lines, report};
use std::collections::BTreeSet;
use std::fmt::Debug;

const SI: View = View { system: System::Si, decimal: boughline::quantity::Decimal::Point };
const US: View = View { system: System::Us, decimal: boughline::quantity::Decimal::Point };

/// Somebody of 80 kg and 1.75 m, 11 m, on the tail 3:1, unless the plan says otherwise.
const COMMON: &str = "bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m";

/// The answer to a plan in the form of a link.
fn answer(plan: &str) -> Answer {
    let link = link::read(plan);
    assert_eq!(link.notices, [], "{plan}");
    assert!(Question::ALL.contains(&link.question.unwrap_or(Question::CanIClimb)));
    let inputs = Inputs::of(&link.draft).unwrap_or_else(|errors| panic!("{plan}: {:?}", error_lines(&errors, SI)));
    ask(&inputs, Effort::samples(4000))
}

/// The words for [`COMMON`] with more said.
fn told(more: &str, view: View) -> Report {
    report(&answer(&format!("{COMMON}&{more}")), view)
}

/// The name of a variant: what its `Debug` begins with.
fn variant(value: &impl Debug) -> String {
    format!("{value:?}").chars().take_while(|letter| letter.is_alphanumeric()).collect()
}

/// The variants of an enum, read in its source: so that a new one without a row here fails.
fn variants(source: &str, name: &str) -> BTreeSet<String> {
    let (_, body) = source.split_once(&format!("pub enum {name} {{\n")).expect(name);
    let (body, _) = body.split_once("\n}").expect(name);
    let declared = body.lines().filter_map(|line| line.strip_prefix("    "));
    declared
        .filter(|line| line.starts_with(|first: char| first.is_ascii_uppercase()))
        .map(|line| line.chars().take_while(|letter| letter.is_alphanumeric()).collect())
        .collect()
}

#[test]
fn variants_are_read_from_the_source() {
    let source = "/// Kinds.\npub enum Kind {\n    /// One.\n    One,\n    /// Two.\n    Two {\n        /// So many.\n        Many: u8,\n    },\n    Three(u8),\n}\n";
    assert_eq!(variants(source, "Kind").into_iter().collect::<Vec<_>>(), ["One", "Three", "Two"]);
    assert_eq!(variant(&Some(1)), "Some");
}
