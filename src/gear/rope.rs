//! Climbing ropes: how they give, and what they must bear.

use super::{LIFE_LINE, LIFE_PART, Minimum};
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Dimension, Force, KILONEWTON, Length, MILLIMETRE};
use crate::source::EN_1891;

choice! {
    /// A kind of climbing rope.
    RopeKind {
        /// Low-stretch, type A.
        LowStretchA = "low-stretch-a", "low-stretch, type A", "Kernmantel rope for work and rescue, the stronger type.";
        /// Low-stretch, type B.
        LowStretchB = "low-stretch-b", "low-stretch, type B", "Kernmantel rope, the thinner type, which asks for more care.";
        /// A tree climber's line.
        TreeLine = "tree-line", "tree climber’s line", "A braided line of 11 to 13 mm for climbing trees.";
        /// Dynamic.
        Dynamic = "dynamic", "dynamic", "Rope for lead climbing: it gives a third of itself in a fall.";
    }
}

/// The kind of the climbing rope.
pub static ROPE_KIND: Field<RopeKind> = Field::new(Row {
    id: "ropeKind",
    noun: "kind of rope",
    hint: "Its label says which.",
    kind: Kind::Choice { options: RopeKind::OPTIONS, likely: Some("low-stretch-b") },
    why: "The type that bears least, and stops a fall as hard as the other.",
    private: false,
});

/// How thick the rope is that a hitch goes round.
pub static ROPE_DIAMETER: Field<Length> = Field::new(Row {
    id: "ropeDiameter",
    noun: "diameter of the rope",
    hint: "Of the rope, or lanyard, that the hitch goes round: from its label.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: MILLIMETRE.si(5.0),
        most: MILLIMETRE.si(25.0),
        example: MILLIMETRE.si(11.0),
        likely: None,
        bare: Some([MILLIMETRE, MILLIMETRE]),
    }),
    why: "Ropes that people climb on are 9 to 14 mm; thinner and thicker ones are taken for trials (judged).",
    private: false,
});

impl RopeKind {
    /// The force at a strain of one, in newtons, were the rope to give evenly so far.
    ///
    /// # Source
    /// Static rope 71 to 89 kN, dynamic 18 to 36 kN (quoting Attaway, Rope System Analysis). EN 1891 lets low-stretch rope
    /// give 5 % between 50 and 150 kg, which is 19.6 kN at the least, and California Title 8 lets a climbing line give 7 %
    /// at 500 lbf, 31.8 kN: the ranges begin there. Likely values are judged: the cautious end of what is usual.
    #[must_use]
    pub const fn modulus(self) -> Spread {
        match self {
            Self::LowStretchA | Self::LowStretchB => Spread::new(19.6e3, 80.0e3, 89.0e3),
            Self::TreeLine => Spread::new(31.8e3, 60.0e3, 89.0e3),
            Self::Dynamic => Spread::new(18.0e3, 27.0e3, 36.0e3),
        }
    }

    /// What it must bear without a knot; none for dynamic rope, which is tested by falls and not by a strength.
    #[must_use]
    pub const fn minimum(self) -> Option<Minimum> {
        match self {
            Self::LowStretchA => Some(Minimum { force: Force::newtons(KILONEWTON.si(22.0)), source: EN_1891 }),
            Self::LowStretchB => Some(Minimum { force: Force::newtons(KILONEWTON.si(18.0)), source: EN_1891 }),
            Self::TreeLine => Some(LIFE_LINE),
            Self::Dynamic => None,
        }
    }

    /// Whether the kind's minimum is that of a line that may bear a tree worker.
    #[must_use]
    pub fn is_life_line(self) -> bool {
        self.minimum().is_some_and(|minimum| minimum.force >= LIFE_PART.force)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{POUND_FORCE, STANDARD_GRAVITY};

    /// EN 1891: 5 % between 50 and 150 kg; California Title 8: 7 % at 500 lbf. To the three figures that are written.
    #[test]
    fn limits_of_stretch_are_the_low_ends() {
        let en = 100.0 * STANDARD_GRAVITY / 0.05;
        let title = POUND_FORCE.si(500.0) / 0.07;
        assert!((RopeKind::LowStretchA.modulus().low / en - 1.0).abs() < 0.0026, "{en}");
        assert!((RopeKind::TreeLine.modulus().low / title - 1.0).abs() < 0.0026, "{title}");
    }

    /// 22 kN is a little under 5,000 lbf.
    #[test]
    fn type_a_is_not_quite_a_tree_workers_line() {
        assert!(!RopeKind::LowStretchA.is_life_line() && RopeKind::TreeLine.is_life_line());
    }
}
