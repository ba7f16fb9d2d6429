//! Forces.

use super::figures::{at_most, rounded, whole_from_ten};
use super::newtype::{counted_in, newtype};
use super::unit::{Family, Unit};
use super::{Dimension, System, View};

newtype! {
    /// A force: a pull, a weight, a tension, a strength.
    ///
    /// # Units
    ///
    /// Newtons inside.
    Force
}

/// Standard gravity as a fraction of whole numbers.
pub(super) const GRAVITY_FRACTION: (f64, f64) = (980_665.0, 100_000.0);

/// The pound in kilograms, 0.45359237, as a fraction of whole numbers: here because the pound-force and the pound both
/// rest on it.
///
/// # Source
///
/// By definition: international yard and pound agreement of 1959; NIST SP 811 (2008), appendix B.
pub(super) const POUND_FRACTION: (f64, f64) = (45_359_237.0, 100_000_000.0);

/// Standard gravity, 9.80665 m/s².
///
/// # Source
///
/// By definition: third General Conference on Weights and Measures, 1901; NIST SP 811 (2008), appendix B.
pub const STANDARD_GRAVITY: f64 = GRAVITY_FRACTION.0 / GRAVITY_FRACTION.1;

/// The newton.
pub const NEWTON: &Unit =
    &Unit::row("N", &["newton", "newtons"], Dimension::Force, (1.0, 1.0), "by definition: the SI unit of force");

/// The kilonewton.
pub const KILONEWTON: &Unit =
    &Unit::row("kN", &["kilonewton", "kilonewtons"], Dimension::Force, (1000.0, 1.0), "by definition: SI prefix kilo");

/// The pound-force.
pub const POUND_FORCE: &Unit = &Unit::row(
    "lbf",
    &["pound-force", "pounds-force", "pound force", "pounds force"],
    Dimension::Force,
    (POUND_FRACTION.0 * GRAVITY_FRACTION.0, POUND_FRACTION.1 * GRAVITY_FRACTION.1),
    "by definition: a pound under standard gravity; NIST SP 811 (2008), appendix B",
);

/// The kilogram-force.
pub const KILOGRAM_FORCE: &Unit = &Unit::row(
    "kgf",
    &["kilogram-force", "kilograms-force", "kilogram force", "kilograms force"],
    Dimension::Force,
    GRAVITY_FRACTION,
    "by definition: a kilogram under standard gravity; NIST SP 811 (2008), appendix B",
);

pub(super) const FAMILY: Family =
    Family { units: &[NEWTON, KILONEWTON, POUND_FORCE, KILOGRAM_FORCE], si: Some(NEWTON), written };

counted_in! {
    Force:
    NEWTON, newtons, in_newtons;
    KILONEWTON, kilonewtons, in_kilonewtons;
    POUND_FORCE, pounds_force, in_pounds_force;
    KILOGRAM_FORCE, kilograms_force, in_kilograms_force;
}

fn written(si: f64, view: View) -> String {
    match view.system {
        System::Si if rounded(si, 0) >= 1000.0 => at_most(KILONEWTON.count(si), 2, view) + " kN",
        System::Si => whole_from_ten(si, view) + " N",
        System::Us => whole_from_ten(POUND_FORCE.count(si), view) + " lbf",
    }
}
