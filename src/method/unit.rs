//! The units that figures are shown in, and what a field takes when nothing is said.

use super::Shown;
use crate::field::{Kind, Row, Spread};
use crate::quantity::{
    CENTIMETRE, DEGREE, KILOGRAM, KILOGRAM_FORCE, KILONEWTON, METRE, MILLIMETRE, MINUTE, NEWTON, SECOND, WATT,
};

pub(super) const RATIO: Shown = Shown::RATIO;
pub(super) const M: Shown = Shown::of(METRE);
pub(super) const CM: Shown = Shown::of(CENTIMETRE);
pub(super) const MM: Shown = Shown::of(MILLIMETRE);
pub(super) const KG: Shown = Shown::of(KILOGRAM);
pub(super) const N: Shown = Shown::of(NEWTON);
pub(super) const KN: Shown = Shown::of(KILONEWTON);
pub(super) const KGF: Shown = Shown::of(KILOGRAM_FORCE);
pub(super) const S: Shown = Shown::of(SECOND);
pub(super) const MIN: Shown = Shown::of(MINUTE);
pub(super) const W: Shown = Shown::of(WATT);
pub(super) const J: Shown = Shown::si("J");
pub(super) const KELVIN: Shown = Shown::si("K");
pub(super) const DEGREES: Shown = Shown::of(DEGREE);
pub(super) const RAD: Shown = Shown::si("rad");
pub(super) const MPA: Shown = Shown { symbol: "MPa", size: 1e6 };
pub(super) const PER_S: Shown = Shown::si("1/s");
pub(super) const M_PER_S: Shown = Shown::si("m/s");
pub(super) const COUNT: Shown = Shown::si("");

/// What a field takes when nothing is said; not a number where it takes nothing.
pub(super) const fn usual(row: &Row) -> Spread {
    match row.kind {
        Kind::Quantity(limits) => match limits.likely {
            Some(likely) => likely,
            None => Spread::point(f64::NAN),
        },
        _ => Spread::point(f64::NAN),
    }
}

/// A figure without a range.
pub(super) const fn one(value: f64) -> Spread {
    Spread::point(value)
}
