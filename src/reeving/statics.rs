//! The forces of one rig, with one set of losses and one drive.

use super::{Balance, Drive, Fault, Forces, Losses, Motion, Rig};

/// The forces in a rig that moves in a way.
///
/// ```text
///   a turn:      tension behind = efficiency x tension on the side the rope runs towards
///   a carriage:  sum of strands up = sum of strands down
///   the climber: sum of strands up - sum of strands down = load
/// ```
///
/// # Units
/// Forces are in the unit of the drive.
///
/// # Guarantees
/// No tension is negative. Where no rope passes a turn its ratio may be anything from its efficiency to the inverse,
/// and both ends are reported. A backup hitch, and with no hand on any hitch, drags only while rope runs past it.
///
/// # Errors
/// A [`Fault`] that names the slack, shared or unbalanced part; [`Fault::OutOfRange`] for a force that is not finite or
/// losses that do not fit the rig.
///
/// # Source
/// Geometry. Propagation from the hand: [`DELANEY`](crate::source::DELANEY).
pub fn statics(rig: &Rig, motion: &Motion, losses: &Losses, drive: &Drive) -> Result<Forces, Fault> {
    Balance::of(rig, motion).forces(losses, drive)
}
