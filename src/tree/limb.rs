//! Bending of a limb where it leaves the stem.

use crate::float;
use crate::quantity::{Angle, Force, INCH, Length};

/// The thinnest bole that anyone climbs above unsecured in a conifer, which is no tie-in point either: 4 inches.
///
/// # Source
/// Oregon OAR 437-007-1530 (quoted).
pub const LEAST_BOLE: Length = Length::metres(INCH.si(4.0));

/// The share of the low strength of its wood from which on the peak stress rules a limb out (judged: clear wood is an upper
/// bound, and a limb has knots, taper and a union).
pub const SHARE_THAT_RULES_OUT: f64 = 0.25;

/// The moment at a limb's union, in newton metres.
///
/// ```text
///          /  limb, r from the union to the rope
///    phi  /\
///   _____/  R = 2 F cos(theta / 2): what both strands pull together, theta between them;
///   stem    F alone where one strand hangs
///
///   M = r R sin(phi), phi between the limb and that pull
/// ```
///
/// # Source
/// Geometry; Arboriculture Australia, Tree rescue manual (2022), p. 121.
///
/// # Example
/// ```
/// use boughline::quantity::{Angle, Force, Length};
/// use boughline::tree::{moment, redirect};
///
/// // A branch of 5 m at 45 degrees, 1 kN on both strands side by side: 7.1 kN m.
/// let pull = redirect(Force::newtons(1000.0), Angle::degrees(0.0));
/// let moment = moment(pull, Length::metres(5.0), Angle::degrees(45.0));
/// assert_eq!((moment / 100.0).round(), 71.0);
/// ```
#[must_use]
pub fn moment(pull: Force, reach: Length, between: Angle) -> f64 {
    reach.in_metres() * pull.in_newtons() * float::sin(between.in_radians()).abs()
}

/// The greatest stress of a round section under a moment, in pascals.
///
/// ```text
///   32 M / (pi d^3)
/// ```
///
/// # Source
/// Geometry (a round section in bending).
#[must_use]
pub fn stress(moment: f64, diameter: Length) -> f64 {
    let d = diameter.in_metres();
    32.0 * moment / (std::f64::consts::PI * d * d * d)
}

/// The diameter of something round, from its girth.
#[must_use]
pub fn thickness(girth: Length) -> Length {
    Length::metres(girth.in_metres() / std::f64::consts::PI)
}

/// What bending says of a limb. It never says that a limb will do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Bending {
    /// Dead wood is always refused.
    DeadWood,
    /// Bending alone rules it out.
    RuledOut,
    /// Bending in sound, clear wood does not rule it out; decay, dead wood, cracks and a weak union are not seen.
    NotRuledOut,
}

/// What bending says of a limb with this peak stress and this low strength of its wood, both in pascals.
///
/// # Guarantees
/// What is not a number rules out.
#[must_use]
pub fn bending(peak: f64, strength: f64, dead: bool) -> Bending {
    if dead {
        Bending::DeadWood
    } else if peak <= SHARE_THAT_RULES_OUT * strength {
        Bending::NotRuledOut
    } else {
        Bending::RuledOut
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::FOOT;

    #[test]
    fn a_bole_of_four_inches_is_a_third_of_a_foot() {
        assert!((LEAST_BOLE.in_metres() * 3.0 - FOOT.si(1.0)).abs() < 1e-12);
    }

    /// Tree rescue manual 2022 p. 121: 5 m at 45 degrees, 1 kN on both strands, 7.1 kN m.
    #[test]
    fn the_published_branch_comes_to_its_moment() {
        let moment = moment(Force::newtons(2000.0), Length::metres(5.0), Angle::degrees(45.0));
        assert!((moment - 7100.0).abs() < 50.0, "{moment}");
    }

    /// Twice the thickness bears eight times the moment; a rod of 100 mm under 1 kN m is at 10.19 megapascals by hand.
    #[test]
    fn stress_goes_with_the_third_power_of_the_thickness() {
        let thin = stress(1000.0, Length::metres(0.1));
        assert!((thin - 10.186e6).abs() < 1e3, "{thin}");
        assert!((thin / stress(1000.0, Length::metres(0.2)) - 8.0).abs() < 1e-9);
    }

    #[test]
    fn dead_wood_is_refused_whatever_the_sum_and_a_quarter_is_the_line() {
        assert_eq!(bending(0.0, 40e6, true), Bending::DeadWood);
        assert_eq!(bending(10e6, 40e6, false), Bending::NotRuledOut);
        assert_eq!(bending(10.1e6, 40e6, false), Bending::RuledOut);
        assert_eq!(bending(f64::NAN, 40e6, false), Bending::RuledOut);
    }
}
