//! The things that vary from climb to climb.

use crate::chance::Pick;
use crate::field::Spread;

// Each thing that varies has a number of its own for ever: see `Draws`.
pub(super) const KIT: u32 = 0;
pub(super) const THROUGH_THE_STROKE: u32 = 2;
pub(super) const SHARE_OF_REACH: u32 = 3;
pub(super) const REACH: u32 = 4;
pub(super) const BACK: u32 = 5;
pub(super) const STACK: u32 = 6;
pub(super) const PULLING: u32 = 7;
pub(super) const RESETTING: u32 = 8;
pub(super) const ROUGHNESS: u32 = 9;
pub(super) const GRIP: u32 = 10;
pub(super) const ONE_OF_TWO: u32 = 11;
pub(super) const DAY: u32 = 12;
pub(super) const HELPING: u32 = 13;
pub(super) const PERSON: u32 = 14;
pub(super) const NORM: u32 = 15;
pub(super) const TRUNK_SHARE: u32 = 16;
pub(super) const TIRES: u32 = 17;
pub(super) const MODULUS: u32 = 18;
pub(super) const BELOW: u32 = 19;
pub(super) const HOLDS: u32 = 20;
pub(super) const PEAK: u32 = 33;
pub(super) const KEEPS_UP: u32 = 34;
pub(super) const SURE: u32 = 32;
pub(super) const SHOULDERS: u32 = 30;
pub(super) const SEAT: u32 = 35;
pub(super) const TURNS: u32 = 100;
pub(super) const HITCHES: u32 = 200;

/// A value of a spread, which is copied here alone.
#[inline(never)]
pub(super) fn drawn(pick: &dyn Pick, thing: u32, spread: &Spread) -> f64 {
    pick.of(thing, *spread)
}

/// No number, and so is what is worked out from it; only a room that is not known ends no stroke.
pub(crate) const UNKNOWN: f64 = f64::NAN;
