//! Knut.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{CORD_MEMORY, JUDGED};

/// Coils above, and both ends brought down through a crossing under them.
///
/// ```text
///   ((((  coils
///    x    both ends crossed
///    o o
/// ```
///
/// # Source
/// Four coils and one crossing of both ends: from memory. Legs as for the Distel (judged).
pub const KNUT: Pattern = Pattern {
    coils: Some(4),
    lay: Lay::Single,
    beside: 0.0,
    crossings: 1,
    crossing: 2,
    legs: 2,
    ends: &[Ends::Scaffold, Ends::DoubleOverhand, Ends::Sewn],
    eyes: 2,
    usual: 0.30,
    sources: &[CORD_MEMORY, JUDGED],
};
