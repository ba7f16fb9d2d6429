//! Angles.

use super::figures::whole_from_ten;
use super::newtype::{counted_in, newtype};
use super::unit::{Family, Unit};
use super::{Dimension, View};

newtype! {
    /// An angle.
    ///
    /// # Units
    ///
    /// Radians inside.
    Angle
}

/// The radian: for links, where nothing may be rounded.
pub const RADIAN: &Unit = &Unit::row(
    "rad",
    &["radian", "radians"],
    Dimension::Angle,
    (1.0, 1.0),
    "by definition: the SI unit of plane angle",
);

/// π as a fraction of whole numbers, of its continued fraction: 8e-20 off, nearer than any `f64`, so that degrees too are
/// converted with one rounding.
const PI_FRACTION: (f64, f64) = (6_167_950_454.0, 1_963_319_607.0);

/// The degree.
pub const DEGREE: &Unit = &Unit::row(
    "deg",
    &["°", "degs", "degree", "degrees"],
    Dimension::Angle,
    (PI_FRACTION.0, PI_FRACTION.1 * 180.0),
    "by definition: π/180 rad (NIST SP 811, table 6)",
);

pub(super) const FAMILY: Family = Family { units: &[RADIAN, DEGREE], si: Some(RADIAN), written };

counted_in! {
    Angle:
    RADIAN, radians, in_radians;
    DEGREE, degrees, in_degrees;
}

/// In degrees in either system.
fn written(si: f64, view: View) -> String {
    whole_from_ten(DEGREE.count(si), view) + "°"
}
