//! Rigs that people write down themselves, through the whole library.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, clippy::unwrap_used, reason = "what is missing fails the test")]

#[path = "own_rigs/answers.rs"]
mod answers;
#[path = "own_rigs/mutated.rs"]
mod mutated;
#[path = "own_rigs/round.rs"]
mod round;
#[path = "own_rigs/same.rs"]
mod same;

use boughline::Draft;
use boughline::question::can_i_climb::{Answer, Inputs, ask};
use boughline::question::{Effort, rope_length};
use boughline::words::error_lines;

/// Somebody of 80 kg and 1.75 m, 11 m, on this rig.
fn climbing(rig: &str, text: &str) -> Draft {
    let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("stature", "1.75 m");
    draft.set("measuredPull", "400 N").set("rig", rig).set("ownRig", text)
}

fn climb(draft: &Draft) -> Answer {
    let inputs = Inputs::of(draft).unwrap_or_else(|errors| panic!("{:?}", error_lines(&errors, Default::default())));
    ask(&inputs, Effort::QUICK)
}

fn rope(rig: &str, text: &str) -> rope_length::Answer {
    let draft = Draft::new().set("crotchHeight", "12 m").set("anchor", "base").set("rig", rig).set("ownRig", text);
    rope_length::ask(&rope_length::Inputs::of(&draft).expect(text))
}

/// The rigs of the catalogue, in the notation.
const CATALOGUE: &[(&str, &str)] = &[
    ("hand-over-hand", "tied tree, hand climber, hitch climber"),
    ("moving-rope", "tied climber, turn tree, hand climber, hitch climber"),
    ("tail-3", "tied tree, hitch upper, hitch climber, turn climber, turn upper, hand climber"),
    (
        "tail-5",
        "tied tree, hitch upper, hitch climber, turn climber, turn upper, turn climber, turn upper, hand climber",
    ),
    (
        "tail-7",
        "tied tree, hitch upper, hitch climber, turn climber, turn upper, turn climber, turn upper, turn climber, turn upper, hand climber",
    ),
    ("haul-cord-2", "tied tree, hitch upper, hitch climber\ntied climber, turn upper, hand climber"),
    ("haul-cord-3", "tied tree, hitch upper, hitch climber\ntied upper, turn climber, turn upper, hand climber"),
    (
        "haul-cord-4",
        "tied tree, hitch upper, hitch climber\ntied climber, turn upper, turn climber, turn upper, hand climber",
    ),
    (
        "haul-cord-5",
        "tied tree, hitch upper, hitch climber\ntied upper, turn climber, turn upper, turn climber, turn upper, hand climber",
    ),
    ("ground-1", "tied climber, turn tree, hand ground"),
    ("ground-3", "tied climber, turn tree, hitch upper, turn ground, turn upper, hand ground"),
    ("ground-5", "tied climber, turn tree, hitch upper, turn ground, turn upper, turn ground, turn upper, hand ground"),
    (
        "ground-9",
        "tied climber, turn tree, hitch upper, turn ground, turn upper, hitch upper-2, turn ground, turn upper-2, hand ground",
    ),
];
