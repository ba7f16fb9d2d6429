//! The plan that examples are taken from.

use crate::draft::Draft;
use crate::question::Effort;
use crate::question::can_i_climb::{Answer, Inputs, ask};

/// What is said of it.
const PLAN: [(&str, &str); 7] = [
    ("bodyMass", "80 kg"),
    ("climbHeight", "11 m"),
    ("rig", "tail-3"),
    ("stature", "1.75 m"),
    ("measuredPull", "500 N"),
    ("pullTaken", "lowest-point"),
    ("crotchHeight", "13 m"),
];

/// What it comes to at likely values.
pub(super) fn climb() -> Option<Answer> {
    let mut draft = Draft::new();
    for (id, text) in PLAN {
        draft = draft.set(id, text);
    }
    Some(ask(&Inputs::of(&draft).ok()?, Effort::samples(50)))
}
