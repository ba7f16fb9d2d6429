//! What the length of a rope depends on.

use crate::field::Spread;

/// What the length of a rope depends on, beside rig and anchor. All in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sizes {
    /// The height of the crotch.
    pub crotch: f64,
    /// The height of the lower hitch at the start.
    pub hitch: Spread,
    /// How far from under the crotch people stand, tie and haul.
    pub aside: f64,
    /// The rope that lies over the crotch.
    pub over: Spread,
    /// What redirects take.
    pub redirect: f64,
    /// The rope in the knot or tie that makes it fast.
    pub knot: Spread,
    /// The stopper and the tail below it.
    pub end: Spread,
    /// What is to lie on the ground.
    pub spare: Spread,
}

/// What a strand takes more than straight down from so high, to end so far aside: at the most all of that, along the
/// ground; at the least what it is longer aslant. More than aslant is never needed, and more than straight down and along
/// never taken.
pub(super) fn aslant(high: f64, aside: f64) -> Spread {
    Spread::new((high * high + aside * aside).sqrt() - high, aside, aside)
}
