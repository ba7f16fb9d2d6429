//! Bending of a limb where it leaves the stem.

use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::float;
use crate::quantity::{Angle, CENTIMETRE, DEGREE, Dimension, FOOT, Force, INCH, Length, METRE};

/// The thinnest bole that anyone climbs above unsecured in a conifer, which is no tie-in point either: 4 inches.
///
/// # Source
/// Oregon OAR 437-007-1530 (quoted).
pub const LEAST_BOLE: Length = Length::metres(INCH.si(4.0));

/// The share of the low strength of its wood from which on the peak stress rules a limb out (judged: clear wood is an upper
/// bound, and a limb has knots, taper and a union).
pub const SHARE_THAT_RULES_OUT: f64 = 0.25;

choice! {
    /// Whether a limb lives.
    Wood {
        /// It does.
        Living = "living", "living", "Leaves or buds to its end, bark whole.";
        /// It does not.
        Dead = "dead", "dead or decayed", "Dead, cracked, hollow, or with fungi on it.";
    }
}

const fn across(id: &'static str, noun: &'static str, hint: &'static str, most: f64, example: f64) -> Field<Length> {
    Field::new(Row {
        id,
        noun,
        hint,
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Length,
            least: 0.01,
            most,
            example,
            likely: None,
            bare: Some([CENTIMETRE, INCH]),
        }),
        why: "Below a centimetre it is a twig; the most is the thickest there is (judged).",
        private: false,
    })
}

/// How thick the limb is where it leaves the stem.
pub static LIMB_DIAMETER: Field<Length> =
    across("limbDiameter", "thickness of the limb", "Where it leaves the stem, without swelling.", 2.0, 0.2);

/// The girth of the climber's forearm.
pub static FOREARM_GIRTH: Field<Length> = {
    let mut field = across(
        "forearmGirth",
        "girth of your forearm",
        "Round its thickest part: a limb is to be thicker than it.",
        0.6,
        0.27,
    );
    field.row.private = true;
    field
};

/// How far out along the limb the rope lies.
pub static LIMB_REACH: Field<Length> = Field::new(Row {
    id: "limbReach",
    noun: "rope out along the limb",
    hint: "From the stem to where the rope lies on the limb. Round the stem it is nothing, and better.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.0,
        most: 15.0,
        example: 0.3,
        likely: Some(Spread::new(0.1, 0.3, 0.5)),
        bare: Some([METRE, FOOT]),
    }),
    why: "A rope set from the ground lies a hand or two from the stem: 0.3 m, from 0.1 to 0.5, is judged.",
    private: false,
});

/// The angle between the limb and the pull.
pub static LIMB_ANGLE: Field<Angle> = Field::new(Row {
    id: "limbAngle",
    noun: "angle of the limb from upright",
    hint: "90° for a limb that grows level, 45° for one that grows half up.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Angle,
        least: 0.0,
        most: std::f64::consts::PI,
        example: DEGREE.si(45.0),
        likely: Some(Spread::point(DEGREE.si(90.0))),
        bare: Some([DEGREE, DEGREE]),
    }),
    why: "A level limb bends most.",
    private: false,
});

/// Whether the limb lives.
pub static LIMB_WOOD: Field<Wood> = Field::new(Row {
    id: "limbWood",
    noun: "wood of the limb",
    hint: "Look from the ground, with glasses, before anybody trusts it.",
    kind: Kind::Choice { options: Wood::OPTIONS, likely: None },
    why: "Only somebody who looked can tell.",
    private: false,
});

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
    /// It is thinner than the climber's forearm or than the least bole: no sum is asked.
    TooThin,
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
