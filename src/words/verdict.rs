//! The verdict in words.

use super::VerdictLine;
use crate::question::can_i_climb::{Level, Verdict};

/// The id of the best verdict.
pub(super) const WITHIN_REACH: &str = "within-reach";

/// The verdict in words; nobody has rigged what they did not choose.
pub(super) fn verdict_line(verdict: Option<Verdict>, rig_is_usual: bool) -> VerdictLine {
    let (id, text) = match verdict.map(|verdict| verdict.level) {
        Some(Level::WithinReach) => (WITHIN_REACH, "Within reach on paper"),
        Some(Level::AtLimit) => ("at-limit", "At your limit"),
        Some(Level::OutOfReach) if rig_is_usual => ("out-of-reach", "Out of reach on a 3:1"),
        Some(Level::OutOfReach) => ("out-of-reach", "Out of reach as rigged"),
        None => ("none", "No verdict yet"),
    };
    VerdictLine { id, text }
}
