//! The verdict in words.

use super::VerdictLine;
use crate::question::can_i_climb::{Level, Verdict};

/// The verdict in words.
pub(super) fn verdict_line(verdict: Option<Verdict>) -> VerdictLine {
    let (id, text) = match verdict.map(|verdict| verdict.level) {
        Some(Level::WithinReach) => ("within-reach", "Within reach on paper"),
        Some(Level::AtLimit) => ("at-limit", "At your limit"),
        Some(Level::OutOfReach) => ("out-of-reach", "Out of reach as rigged"),
        None => ("none", "No verdict yet"),
    };
    VerdictLine { id, text }
}
