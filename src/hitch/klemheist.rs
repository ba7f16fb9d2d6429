//! Klemheist.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{JUDGED, MOYER};

/// A closed loop wound on double, its legs put down through the bight that is left at the top.
///
/// ```text
///   bight--.
///   ((((   |
///   ((((   |
///      legs through the bight
/// ```
///
/// # Source
/// Three, four and five wraps tested (Moyer 2000): the middle is taken. Free leg as for the prusik loop (judged).
pub const KLEMHEIST: Pattern = Pattern {
    coils: Some(4),
    lay: Lay::Double,
    beside: 0.0,
    crossings: 1,
    crossing: 1,
    legs: 2,
    ends: &[Ends::Loop, Ends::Sewn],
    eyes: 0,
    usual: 0.2,
    sources: &[MOYER, JUDGED],
};
