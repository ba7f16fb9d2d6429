//! Distel.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{CORD_MEMORY, JUDGED};

/// One coil below and four above, both of the same hand, and its legs crossed between them.
///
/// ```text
///   ((((  four above
///    x    crossed
///   (     one below
/// ```
///
/// # Source
/// One below and four above: from memory. With 0.30 m of legs in all (judged, from 0.15 to 0.4) 9 mm cord comes out at 61 to
/// 76 cm from eye to eye (from memory).
pub const DISTEL: Pattern = Pattern {
    coils: Some(5),
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
