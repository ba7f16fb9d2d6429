//! Valdotain tresse.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{CORD_MEMORY, JUDGED};

/// Coils above, and under them both legs braided round the rope: in each braid both go half way round.
///
/// ```text
///   ((((  coils
///   )x(   braids
///   )x(
///    o o  eyes
/// ```
///
/// # Source
/// Four coils and four braids: from memory, within what is usual. With 0.25 m of legs in all (judged, from 0.15 to 0.4) 9 mm
/// cord comes out at 71 to 84 cm from eye to eye (from memory).
pub const VALDOTAIN: Pattern = Pattern {
    coils: Some(4),
    lay: Lay::Single,
    beside: 0.0,
    crossings: 4,
    crossing: 2,
    legs: 2,
    ends: &[Ends::Scaffold, Ends::DoubleOverhand, Ends::Sewn],
    eyes: 2,
    usual: 0.25,
    sources: &[CORD_MEMORY, JUDGED],
};
