//! Energies.

use super::figures::{at_most, rounded, whole_from_ten};
use super::force::{GRAVITY_FRACTION, POUND_FRACTION};
use super::length::FOOT;
use super::newtype::{counted_in, newtype};
use super::unit::{Family, Unit};
use super::{Dimension, System, View};

newtype! {
    /// An energy: work done, height gained by a weight.
    ///
    /// # Units
    ///
    /// Joules inside.
    Energy
}

/// The joule.
pub const JOULE: &Unit =
    &Unit::row("J", &["joule", "joules"], Dimension::Energy, (1.0, 1.0), "by definition: the SI unit of energy");

/// The kilojoule.
pub const KILOJOULE: &Unit =
    &Unit::row("kJ", &["kilojoule", "kilojoules"], Dimension::Energy, (1000.0, 1.0), "by definition: SI prefix kilo");

/// The foot-pound, of force.
pub const FOOT_POUND: &Unit = &Unit::row(
    "ft-lbf",
    &[
        "ft·lbf",
        "ft⋅lbf",
        "ft lbf",
        "ft-lb",
        "ft·lb",
        "ft lb",
        "ft-lbs",
        "ft lbs",
        "foot-pound",
        "foot-pounds",
        "foot pound",
        "foot pounds",
        "foot-pound-force",
        "foot-pounds-force",
        "foot pound-force",
        "foot pounds-force",
    ],
    Dimension::Energy,
    FOOT_POUND_FRACTION,
    "by definition: a pound-force over a foot; NIST SP 811 (2008), appendix B",
);

/// 0.45359237 × 9.80665 × 0.3048, with shared factors taken out: so both wholes are below 2^53 and exact.
const FOOT_POUND_FRACTION: (f64, f64) = {
    let (pound, gravity, foot) = (POUND_FRACTION, GRAVITY_FRACTION, FOOT.fraction());
    (pound.0 * (gravity.0 / 5.0) * (foot.0 / 8.0), pound.1 * (gravity.1 / 5.0) * (foot.1 / 8.0))
};

pub(super) const FAMILY: Family = Family { units: &[JOULE, KILOJOULE, FOOT_POUND], si: Some(JOULE), written };

counted_in! {
    Energy:
    JOULE, joules, in_joules;
    KILOJOULE, kilojoules, in_kilojoules;
    FOOT_POUND, foot_pounds, in_foot_pounds;
}

/// Three figures: the work of a climb is known no better.
fn written(si: f64, view: View) -> String {
    match view.system {
        System::Si if rounded(si, 0) >= 1000.0 => {
            let decimals = if si < 10_000.0 { 2 } else { 1 };
            at_most(KILOJOULE.count(si), decimals, view) + " kJ"
        }
        System::Si => whole_from_ten(si, view) + " J",
        System::Us => {
            let number = FOOT_POUND.count(si);
            let number = if rounded(number, 0) < 1000.0 { number } else { rounded(number / 10.0, 0) * 10.0 };
            whole_from_ten(number, view) + " ft-lbf"
        }
    }
}
