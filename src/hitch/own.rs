//! A hitch of one's own.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::JUDGED;

/// One strand round and round; its coils have to be said.
///
/// # Source
/// Legs as for the hitches with eyes (judged, from 0.15 to 0.4).
pub const OWN: Pattern = Pattern {
    coils: None,
    lay: Lay::Single,
    beside: 0.0,
    crossings: 0,
    crossing: 1,
    legs: 2,
    ends: &[Ends::Scaffold, Ends::DoubleOverhand, Ends::Loop, Ends::Sewn],
    eyes: 2,
    usual: 0.30,
    sources: &[JUDGED],
};
