//! An upper hitch that opens.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{COMMON_PRACTICE, JUDGED};

/// Wound on double from its middle and closed like a soft shackle: the bight goes over a button that both ends are tied into.
/// Two strands hang from the bight's side and two from the button's.
///
/// ```text
///   ((((
///   ((((
///     bight--(@)  button
/// ```
///
/// # Source
/// Common practice, no source: about 6 ft of 6 mm. Four coils and 0.90 m of free leg in all, four strands of 0.22 m: judged, to
/// agree with that on 9.5 mm rope.
pub const OPENABLE: Pattern = Pattern {
    coils: Some(4),
    lay: Lay::Double,
    beside: 0.0,
    crossings: 1,
    crossing: 1,
    legs: 4,
    ends: &[Ends::Button],
    eyes: 0,
    usual: 0.9,
    sources: &[COMMON_PRACTICE, JUDGED],
};
