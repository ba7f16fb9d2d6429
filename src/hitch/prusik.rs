//! Prusik loop.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{EVANS, JUDGED, MOYER};

/// A closed loop passed through itself: one strand winds up, the other down, and a bridge lies over them.
///
/// ```text
///   (((|   coils upwards
///    ---|   bridge
///   (((|   coils downwards, legs from the middle
/// ```
///
/// # Source
/// Three wraps tested (Moyer 2000) and cut for (Evans, ITRS). 0.20 m of free leg in all: the length with which the published
/// loops come out, 0.10 m to hang by (judged, from 0.1 to 0.6).
pub const PRUSIK: Pattern = Pattern {
    coils: Some(3),
    lay: Lay::Mirrored,
    beside: 0.0,
    crossings: 1,
    crossing: 1,
    legs: 2,
    ends: &[Ends::Loop, Ends::Sewn],
    eyes: 0,
    usual: 0.2,
    sources: &[MOYER, EVANS, JUDGED],
};
