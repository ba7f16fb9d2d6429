//! Lengths and heights.

use super::figures::{at_most, rounded};
use super::newtype::{counted_in, newtype};
use super::pieces::joined;
use super::unit::{Family, Unit};
use super::{Dimension, System, View};

newtype! {
    /// A length or height.
    ///
    /// # Units
    ///
    /// Metres inside.
    ///
    /// # Example
    ///
    /// ```
    /// use boughline::quantity::Length;
    ///
    /// assert_eq!(Length::feet(36.0), Length::metres(10.9728));
    /// ```
    Length
}

/// The metre.
pub const METRE: &Unit = &Unit::row(
    "m",
    &["metre", "metres", "meter", "meters"],
    Dimension::Length,
    (1.0, 1.0),
    "by definition: the SI unit of length",
);

/// The centimetre.
pub const CENTIMETRE: &Unit = &Unit::row(
    "cm",
    &["centimetre", "centimetres", "centimeter", "centimeters"],
    Dimension::Length,
    (1.0, 100.0),
    "by definition: SI prefix centi",
);

/// The millimetre.
pub const MILLIMETRE: &Unit = &Unit::row(
    "mm",
    &["millimetre", "millimetres", "millimeter", "millimeters"],
    Dimension::Length,
    (1.0, 1000.0),
    "by definition: SI prefix milli",
);

/// The international foot. The marks are a straight, a typographic and a phone keyboard's.
pub const FOOT: &Unit = &Unit::row(
    "ft",
    &["foot", "feet", "'", "′", "’"],
    Dimension::Length,
    (3048.0, 10_000.0),
    "by definition: 0.3048 m (NIST SP 811, appendix B)",
);

/// The international inch.
pub const INCH: &Unit = &Unit::row(
    "in",
    &["inch", "inches", "\"", "″", "”"],
    Dimension::Length,
    (FOOT.fraction().0, FOOT.fraction().1 * INCHES_TO_A_FOOT),
    "by definition: a twelfth of a foot (NIST SP 811, appendix B)",
)
.within(FOOT, INCHES_TO_A_FOOT);

/// By definition.
const INCHES_TO_A_FOOT: f64 = 12.0;

pub(super) const FAMILY: Family =
    Family { units: &[METRE, CENTIMETRE, MILLIMETRE, FOOT, INCH], si: Some(METRE), written };

counted_in! {
    Length:
    METRE, metres, in_metres;
    CENTIMETRE, centimetres, in_centimetres;
    MILLIMETRE, millimetres, in_millimetres;
    FOOT, feet, in_feet;
    INCH, inches, in_inches;
}

/// Where the unit changes, the step is taken on the rounded figure, so that nothing is ever "100 cm" or "5 ft 12 in".
fn written(si: f64, view: View) -> String {
    match view.system {
        System::Si => metric(si, view),
        System::Us => feet_and_inches(si, view),
    }
}

fn metric(si: f64, view: View) -> String {
    let millimetres = rounded(MILLIMETRE.count(si), 1);
    let centimetres = CENTIMETRE.count(si);
    if millimetres == 0.0 {
        "0 m".to_owned()
    } else if millimetres < 10.0 {
        at_most(millimetres, 1, view) + " mm"
    } else if centimetres < 10.0 {
        at_most(centimetres, 1, view) + " cm"
    } else if rounded(centimetres, 0) < 100.0 {
        at_most(centimetres, 0, view) + " cm"
    } else if si < 10.0 {
        at_most(si, 2, view) + " m"
    } else {
        at_most(si, 1, view) + " m"
    }
}

fn feet_and_inches(si: f64, view: View) -> String {
    let inches = rounded(INCH.count(si), 1);
    if inches == 0.0 {
        return "0 ft".to_owned();
    }
    if inches < 2.0 * INCHES_TO_A_FOOT {
        return at_most(inches, 1, view) + " in";
    }
    let whole = rounded(INCH.count(si), 0);
    let feet = (whole / INCHES_TO_A_FOOT).floor();
    let left = whole - feet * INCHES_TO_A_FOOT;
    // Where feet are so many that inches are lost in rounding, what is left can come out below nothing.
    if left <= 0.0 {
        at_most(feet, 0, view) + " ft"
    } else {
        joined(&[&at_most(feet, 0, view), " ft ", &at_most(left, 0, view), " in"])
    }
}
