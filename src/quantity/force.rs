//! Forces.

use super::figures::{at_most, rounded};
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
const GRAVITY_FRACTION: (f64, f64) = (980_665.0, 100_000.0);

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

impl Force {
    /// The force of so many newtons.
    #[must_use]
    pub const fn newtons(number: f64) -> Self {
        Self(NEWTON.si(number))
    }

    /// The force of so many kilonewtons.
    #[must_use]
    pub const fn kilonewtons(number: f64) -> Self {
        Self(KILONEWTON.si(number))
    }

    /// The force of so many pounds-force.
    #[must_use]
    pub const fn pounds_force(number: f64) -> Self {
        Self(POUND_FORCE.si(number))
    }

    /// The force of so many kilograms-force.
    #[must_use]
    pub const fn kilograms_force(number: f64) -> Self {
        Self(KILOGRAM_FORCE.si(number))
    }

    /// How many newtons it is.
    #[must_use]
    pub const fn in_newtons(self) -> f64 {
        NEWTON.count(self.0)
    }

    /// How many kilonewtons it is.
    #[must_use]
    pub const fn in_kilonewtons(self) -> f64 {
        KILONEWTON.count(self.0)
    }

    /// How many pounds-force it is.
    #[must_use]
    pub const fn in_pounds_force(self) -> f64 {
        POUND_FORCE.count(self.0)
    }

    /// How many kilograms-force it is.
    #[must_use]
    pub const fn in_kilograms_force(self) -> f64 {
        KILOGRAM_FORCE.count(self.0)
    }
}

fn written(si: f64, view: View) -> String {
    match view.system {
        System::Si if rounded(si, 0) >= 1000.0 => {
            format!("{} kN", at_most(KILONEWTON.count(si), 2, view))
        }
        System::Si => format!("{} N", whole_from_ten(si, view)),
        System::Us => format!("{} lbf", whole_from_ten(POUND_FORCE.count(si), view)),
    }
}

/// The number without decimals from ten on, with one at most below.
fn whole_from_ten(number: f64, view: View) -> String {
    let decimals = if number < 10.0 { 1 } else { 0 };
    at_most(number, decimals, view)
}
