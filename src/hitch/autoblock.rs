//! Autoblock.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{JUDGED, MOYER};

/// A closed loop wound on double, with both of its bights in one connector: four strands hang.
///
/// ```text
///   ((((  bight
///   ((((    \
///     bight--connector
/// ```
///
/// # Source
/// Four wraps tested (Moyer 2000). 0.40 m of free leg in all, four strands of 0.10 m (judged, from 0.2 to 0.8).
pub const AUTOBLOCK: Pattern = Pattern {
    coils: Some(4),
    lay: Lay::Double,
    beside: 0.0,
    crossings: 0,
    crossing: 0,
    legs: 4,
    ends: &[Ends::Loop, Ends::Sewn],
    eyes: 0,
    usual: 0.4,
    sources: &[MOYER, JUDGED],
};
