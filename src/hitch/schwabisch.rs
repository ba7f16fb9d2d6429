//! Schwabisch.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{CORD_MEMORY, HITCH_PAGES, JUDGED};

/// One coil below and four above, and one strand that goes down between them.
///
/// ```text
///   ((((  four above
///    /    one strand down
///   (     one below
/// ```
///
/// # Source
/// One turn below and four above: read. With 0.30 m of legs in all (judged, from 0.15 to 0.4) 9 mm cord comes out at 61 to 76 cm
/// from eye to eye (from memory).
pub const SCHWABISCH: Pattern = Pattern {
    coils: Some(5),
    lay: Lay::Single,
    beside: 0.0,
    crossings: 1,
    crossing: 1,
    legs: 2,
    ends: &[Ends::Scaffold, Ends::DoubleOverhand, Ends::Sewn],
    eyes: 2,
    usual: 0.30,
    sources: &[HITCH_PAGES, CORD_MEMORY, JUDGED],
};
