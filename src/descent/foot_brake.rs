//! What holds the rope at the foot of the tree.

use super::Brake;
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Angle, Count, Dimension};
use crate::tree::{BARK_FRICTION, ratio};

choice! {
    /// What the rope runs round at the foot, before it comes to a helper's hand.
    FootBrake {
        /// A Munter hitch on an anchor.
        Munter = "munter", "Munter hitch on an anchor", "A crossing turn round a wide carabiner that is slung to the stem.";
        /// Turns round a bar or device.
        Turns = "turns", "turns round a device or bar", "Turns round smooth metal that is slung to the stem.";
        /// Turns round the stem.
        Stem = "stem", "turns round the stem", "The rope goes round the stem itself: bark holds much, and unevenly.";
    }
}

/// What the rope runs round at the foot.
pub static FOOT_BRAKE: Field<FootBrake> = Field::new(Row {
    id: "footBrake",
    noun: "friction at the foot",
    hint: "What the rope runs round at the foot of the tree before it comes to the hand of whoever lets you down.",
    kind: Kind::Choice { options: FootBrake::OPTIONS, likely: Some("munter") },
    why: "The one that holds least for sure where a device is not named (judged).",
    private: false,
});

/// How often it goes round.
pub static FOOT_TURNS: Field<Count> = Field::new(Row {
    id: "footTurns",
    noun: "turns at the foot",
    hint: "Whole turns, or halves as 1.5.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Count,
        least: 0.5,
        most: 6.0,
        example: 2.0,
        likely: Some(Spread::point(2.0)),
        bare: None,
    }),
    why: "Two turns are usual round a stem or a bar (common practice, no source).",
    private: false,
});

impl FootBrake {
    /// The tension above it over what the hand holds: the low end is to plan on.
    ///
    /// # Source
    /// As for the same brake at the harness; bark by its friction and the capstan equation.
    #[must_use]
    pub fn ratio(self, turns: f64) -> Spread {
        match self {
            Self::Munter => Brake::Munter.ratio(turns),
            Self::Turns => Brake::Turns.ratio(turns),
            Self::Stem => {
                let past = |friction: f64| ratio(friction, Angle::degrees(360.0 * turns));
                Spread::new(past(BARK_FRICTION.low), past(BARK_FRICTION.likely), past(BARK_FRICTION.high))
            }
        }
    }
}
