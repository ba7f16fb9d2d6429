//! Garda loop.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{CORD_MEMORY, JUDGED};

/// Two carabiners side by side in one loop of cord. It is the rope that winds round them, one and a half times, and jams one way:
/// the cord has no coils and hangs with both legs.
///
/// ```text
///   legs
///    |  |
///   (o)(o)  two carabiners
///    rope
/// ```
///
/// # Source
/// From memory. A loop of 15 cm inside (judged, from 10 to 30 cm).
pub const GARDA: Pattern = Pattern {
    coils: Some(0),
    lay: Lay::Single,
    beside: 0.0,
    crossings: 0,
    crossing: 0,
    legs: 2,
    ends: &[Ends::Loop, Ends::Sewn],
    eyes: 0,
    usual: 0.15,
    sources: &[CORD_MEMORY, JUDGED],
};
