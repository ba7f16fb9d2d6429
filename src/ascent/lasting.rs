//! How long somebody must rest between pulls to last to the top.

use super::things::{TIRES, UNKNOWN, drawn};
use crate::chance::Pick;
use crate::climber::{MOVING, Tiring, shortest_rest, strength_for};

/// The shortest rest after each pull with which arms and hands last, in seconds, and at least so many that the upper hitch
/// takes; endless where no rest is long enough, and unknown where a share or the count of pulls is.
pub(super) fn rest(pick: &dyn Pick, [arms, hands]: [f64; 2], pull: f64, reset: f64, pulls: f64) -> f64 {
    if arms.is_nan() || hands.is_nan() || pulls.is_nan() {
        return UNKNOWN;
    }
    if pulls.is_infinite() {
        return f64::INFINITY;
    }
    let faster = drawn(pick, TIRES, &MOVING);
    let mut rest = reset;
    for (muscles, share) in [(Tiring::ELBOW, arms), (Tiring::HAND, hands)] {
        let muscles = muscles.faster(faster);
        if share * strength_for(muscles, pull, rest, pulls) > 1.0 {
            rest = shortest_rest(muscles, share, pull, pulls).unwrap_or(f64::INFINITY);
        }
    }
    rest
}
