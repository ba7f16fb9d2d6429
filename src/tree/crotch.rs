//! What a crotch carries.

use super::capstan::ratio;
use crate::field::{Field, Kind, Limits, Row};
use crate::float;
use crate::quantity::{Angle, DEGREE, Dimension, Force};

/// The load on the crotch of a base anchor over the weight that hangs from it, to plan on.
///
/// # Source
/// Close to twice the weight: Arboriculture Australia, Tree rescue manual (2022), p. 84. Friction would leave less, and is
/// guaranteed only once the rope has moved.
pub const BASE_ANCHOR_PLAN: f64 = 2.0;

/// The angle between the strands at a redirect.
pub static REDIRECT_ANGLE: Field<Angle> = Field::new(Row {
    id: "redirectAngle",
    noun: "angle at a redirect",
    hint: "If the rope runs over a second limb on its way: the angle between its two strands there. 180° is straight on.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Angle,
        least: 0.0,
        most: std::f64::consts::PI,
        example: DEGREE.si(120.0),
        likely: None,
        bare: Some([DEGREE, DEGREE]),
    }),
    why: "Two strands stand at no more than 180°: geometry.",
    private: false,
});

/// What two tensions pull together, at an angle between them.
///
/// ```text
///   \ a /        sqrt(a^2 + b^2 + 2 a b cos(angle))      angle 0: side by side, a + b
///    \ /                                                angle 180: against each other
///     o
/// ```
///
/// # Source
/// Geometry.
#[must_use]
pub fn resultant(one: Force, other: Force, between: Angle) -> Force {
    let (a, b) = (one.in_newtons(), other.in_newtons());
    let square = a * a + b * b + 2.0 * a * b * float::cos(between.in_radians());
    // Rounding can leave next to nothing less than nought; what is not known stays so.
    Force::newtons(if square <= 0.0 { 0.0 } else { square.sqrt() })
}

/// What a redirect carries, of a rope with this tension that leaves it at an angle to where it came from.
///
/// # Source
/// Geometry: 2 T cos(angle / 2), the angle being that between its two strands.
#[must_use]
pub fn redirect(tension: Force, between: Angle) -> Force {
    resultant(tension, tension, between)
}

/// What the crotch of a base anchor carries standing still, by friction once the rope has moved.
///
/// ```text
///   weight x (1 + e^(-friction x pi))     to   weight x (1 + e^(friction x pi)) where the tie was drawn tight
/// ```
///
/// # Example
/// ```
/// use boughline::quantity::Mass;
/// use boughline::tree::base_anchor;
///
/// // 80 kg on a crotch without friction load it with 160 kg.
/// let load = base_anchor(Mass::kilograms(80.0).weight(), 0.0);
/// assert_eq!(load, Mass::kilograms(160.0).weight());
/// ```
#[must_use]
pub fn base_anchor(weight: Force, friction: f64) -> Force {
    Force::newtons(weight.in_newtons() * (1.0 + 1.0 / ratio(friction, Angle::degrees(180.0))))
}

/// What a crotch carries while a weight is hauled up over it from the ground.
#[must_use]
pub fn hauled_over(weight: Force, friction: f64) -> Force {
    Force::newtons(weight.in_newtons() * (1.0 + ratio(friction, Angle::degrees(180.0))))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Side by side both strands add up; square to each other by Pythagoras; against each other nothing is left.
    #[test]
    fn a_redirect_carries_twice_the_tension_times_the_cosine_of_half_the_angle() {
        let tension = Force::newtons(500.0);
        for (degrees, carried) in [(0.0, 1000.0), (90.0, 707.106_781), (120.0, 500.0), (180.0, 0.0)] {
            let found = redirect(tension, Angle::degrees(degrees)).in_newtons();
            assert!((found - carried).abs() < 1e-5, "{degrees}: {found}");
            let half = 2.0 * 500.0 * float::cos(Angle::degrees(degrees / 2.0).in_radians());
            assert!((found - half).abs() < 1e-5, "{degrees}: {half}");
        }
        let three_four = resultant(Force::newtons(3.0), Force::newtons(4.0), Angle::degrees(90.0)).in_newtons();
        assert!((three_four - 5.0).abs() < 1e-9);
        assert!(redirect(Force::newtons(f64::NAN), Angle::degrees(90.0)).in_newtons().is_nan());
    }

    /// One friction moves the load both ways from twice the weight.
    #[test]
    fn friction_lightens_what_hangs_and_loads_what_is_hauled() {
        let weight = Force::newtons(800.0);
        for friction in [0.0, 0.1, 0.36, 0.6] {
            let (hangs, hauled) =
                (base_anchor(weight, friction).in_newtons(), hauled_over(weight, friction).in_newtons());
            assert!(hangs <= BASE_ANCHOR_PLAN * 800.0 && hauled >= BASE_ANCHOR_PLAN * 800.0, "{friction}");
            assert!(hangs > 800.0);
        }
    }
}
