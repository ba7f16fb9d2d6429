//! Michoacan.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{CORD_MEMORY, JUDGED};

/// Coils of one end, and the other end under the lowest of them.
///
/// ```text
///   (((((  coils
///    /     one end across
///    o o
/// ```
///
/// # Source
/// Five coils and one crossing: from memory. Legs as for the Distel (judged).
pub const MICHOACAN: Pattern = Pattern {
    coils: Some(5),
    lay: Lay::Single,
    beside: 0.0,
    crossings: 1,
    crossing: 1,
    legs: 2,
    ends: &[Ends::Scaffold, Ends::DoubleOverhand, Ends::Sewn],
    eyes: 2,
    usual: 0.30,
    sources: &[CORD_MEMORY, JUDGED],
};
