//! What has caught the climber once the hitch that held them is gone.

use super::held::drop_without_hands;
use super::{Part, Phase, Rig, Stop, What, drop_after, is_held};
use crate::quantity::Length;

/// A rig whose backup has caught the climber.
#[derive(Debug, Clone, PartialEq)]
pub struct Caught {
    /// The rig without the hitch that failed.
    pub rig: Rig,
    /// What grips then: the backups, and the knots if rope had to run first.
    pub phase: Phase,
    /// How far the climber dropped.
    pub drop: Length,
}

/// The rig once the hitch that holds the climber has failed, or where only a knot holds once the hand has let go.
///
/// # Guarantees
/// None where nothing backs that hitch up. Rope stretch and what hitches give back come on top of the drop.
///
/// # Source
/// Geometry.
///
/// # Example
/// ```
/// use boughline::quantity::Length;
/// use boughline::reeving::{Backup, catalogue, caught};
///
/// let rig = catalogue::tail_three_to_one(Backup::TailKnot { slack: Length::metres(2.0) })?;
/// assert_eq!(caught(&rig).map(|caught| caught.drop), Some(Length::metres(1.0)));
/// assert_eq!(caught(&catalogue::tail_three_to_one(Backup::None)?), None);
/// # Ok::<(), boughline::reeving::Fault>(())
/// ```
#[must_use]
pub fn caught(rig: &Rig) -> Option<Caught> {
    let without_hands = drop_without_hands(rig)?;
    let mut left = rig.clone();
    let mut drop = without_hands;
    if without_hands == Length::metres(0.0) {
        let (rope, stop) = main_hitch(rig)?;
        let gone = rig.ropes.get(rope)?.stops.get(stop)?.clone();
        drop = drop_after(rig, Part::Stop { rope, stop })?;
        left.ropes.get_mut(rope)?.stops.remove(stop);
        if !is_held(&left) {
            // Some backups stop a hitch that slips and not one whose cord is gone: its rope slides past, as past a hand.
            left.ropes.get_mut(rope)?.stops.insert(stop, Stop { what: What::Hand, ..gone });
        }
    }
    let phase = Phase { knots: drop > Length::metres(0.0), ..Phase::hold(&left) };
    Some(Caught { rig: left, phase, drop })
}

/// The hitch that holds the climber, by rope and stop.
fn main_hitch(rig: &Rig) -> Option<(usize, usize)> {
    for (at, rope) in rig.ropes.iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            if rig.is_main_hitch(stop) {
                return Some((at, place));
            }
        }
    }
    None
}
