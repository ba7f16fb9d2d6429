//! Bachmann.

use super::coil::CONNECTOR_STOCK;
use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{JUDGED, MOYER};

/// A closed loop clipped to a carabiner and wound double round the rope and the carabiner's back.
///
/// ```text
///   ((((  round the rope O and the bar o
///   ((((
///     legs
/// ```
///
/// # Source
/// Four wraps tested (Moyer 2000). The carabiner's back judged 12 mm; free leg as for the prusik loop (judged).
pub const BACHMANN: Pattern = Pattern {
    coils: Some(4),
    lay: Lay::Double,
    beside: CONNECTOR_STOCK,
    crossings: 0,
    crossing: 0,
    legs: 2,
    ends: &[Ends::Loop, Ends::Sewn],
    eyes: 0,
    usual: 0.2,
    sources: &[MOYER, JUDGED],
};
