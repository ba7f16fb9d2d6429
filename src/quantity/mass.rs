//! Masses.

use super::figures::at_most;
use super::force::{Force, KILOGRAM_FORCE, POUND_FRACTION};
use super::newtype::{counted_in, newtype};
use super::unit::{Family, Unit};
use super::{Dimension, System, View};

newtype! {
    /// A mass: of a body, of gear. What the tree and the hands feel is its [`weight`](Mass::weight).
    ///
    /// # Units
    ///
    /// Kilograms inside.
    Mass
}

/// By definition.
const POUNDS_TO_A_STONE: f64 = 14.0;

/// The kilogram.
pub const KILOGRAM: &Unit = &Unit::row(
    "kg",
    &["kilogram", "kilograms", "kilo", "kilos"],
    Dimension::Mass,
    (1.0, 1.0),
    "by definition: the SI unit of mass",
);

/// The stone.
pub const STONE: &Unit = &Unit::row(
    "st",
    &["stone", "stones"],
    Dimension::Mass,
    (POUNDS_TO_A_STONE * POUND_FRACTION.0, POUND_FRACTION.1),
    "by definition: 14 pounds",
);

/// The avoirdupois pound, a mass. The force is [`POUND_FORCE`](super::POUND_FORCE).
pub const POUND: &Unit = &Unit::row(
    "lb",
    &["lbs", "pound", "pounds"],
    Dimension::Mass,
    POUND_FRACTION,
    "by definition: 0.45359237 kg (NIST SP 811, appendix B)",
)
.within(STONE, POUNDS_TO_A_STONE);

pub(super) const FAMILY: Family = Family { units: &[KILOGRAM, STONE, POUND], si: Some(KILOGRAM), written };

counted_in! {
    Mass:
    KILOGRAM, kilograms, in_kilograms;
    POUND, pounds, in_pounds;
}

impl Mass {
    /// The force it hangs with: the one bridge from mass to force.
    ///
    /// # Source
    ///
    /// [`STANDARD_GRAVITY`](super::STANDARD_GRAVITY), by definition. Gravity on the ground differs from it by 0.3 % at
    /// most, less than any other figure here is known.
    ///
    /// # Example
    ///
    /// ```
    /// use boughline::quantity::{Force, Mass};
    ///
    /// assert_eq!(Mass::kilograms(80.0).weight(), Force::newtons(784.532));
    /// ```
    #[must_use]
    pub const fn weight(self) -> Force {
        Force::newtons(KILOGRAM_FORCE.si(self.0))
    }
}

fn written(si: f64, view: View) -> String {
    match view.system {
        System::Si if si < 100.0 => at_most(si, 1, view) + " kg",
        System::Si => at_most(si, 0, view) + " kg",
        System::Us => at_most(POUND.count(si), 0, view) + " lb",
    }
}
