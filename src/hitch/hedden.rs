//! Hedden, or Kreuzklem.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{CORD_MEMORY, JUDGED};

/// A klemheist turned over: wound on double upwards, the legs put through the bight that is left below.
///
/// ```text
///   (((
///   (((   legs come from the top coil
///   bight--'
/// ```
///
/// # Source
/// Three wraps: from memory. Free leg as for the prusik loop (judged).
pub const HEDDEN: Pattern = Pattern {
    coils: Some(3),
    lay: Lay::Double,
    beside: 0.0,
    crossings: 1,
    crossing: 1,
    legs: 2,
    ends: &[Ends::Loop, Ends::Sewn],
    eyes: 0,
    usual: 0.2,
    sources: &[CORD_MEMORY, JUDGED],
};
