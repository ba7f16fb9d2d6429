//! What the arms pull, from a measurement, best evidence first.

use super::{Arms, Hold};
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Dimension, Force, KILOGRAM_FORCE, POUND_FORCE};

choice! {
    /// How a pull was measured.
    PullTaken {
        /// A still pull with the hands overhead.
        Overhead = "overhead", "still, hands overhead", "On a chair on a bathroom scale under a fixed rope, hands as high as they go: the drop of the reading.";
        /// A still pull at the bottom of the stroke.
        LowestPoint = "lowest-point", "still, hands at chest height", "The same with the hands where your pull ends.";
        /// The load of ten repetitions.
        TenRepetitions = "ten-repetitions", "ten repetitions", "The load that you can pull down ten times, no more.";
    }
}

impl PullTaken {
    /// The pull that lasts through a whole stroke, over the one measured.
    ///
    /// # Source
    /// Overhead 0.70 (0.65-0.74): isometric pull at chest height over that overhead (La Delfa and Potvin 2017).
    /// Repetitions 1.25: ten at 80 % of the greatest (Johnson 2009), which already contain the weakest point.
    /// At the lowest point: by definition.
    #[must_use]
    pub const fn through_the_stroke(self) -> Spread {
        match self {
            Self::Overhead => Spread::new(0.65, 0.70, 0.74),
            Self::LowestPoint => Spread::point(1.0),
            Self::TenRepetitions => Spread::point(1.25),
        }
    }
}

/// A pull that was measured, and how.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// The reading.
    pub pull: Force,
    /// How it was taken.
    pub taken: PullTaken,
    /// With how many arms.
    pub arms: Arms,
    /// What the hands held; none where that is not known, and then it proves nothing of them.
    pub held: Option<Hold>,
}

/// What one arm pulls over what two pull.
///
/// # Source
/// Judged, from a two-arm deficit of 10-18 %: 1/2 over 0.90 to 0.82.
pub const ONE_ARM: Spread = Spread::new(0.556, 0.58, 0.61);

/// What the same person pulls another day over what a scale showed once.
///
/// # Source
/// Judged: the reading of a scale and the day together.
pub const ANOTHER_DAY: Spread = Spread::new(0.95, 1.0, 1.05);

/// What the arms pull through a stroke, over the pull that was measured.
///
/// # Units
/// Ratios.
#[must_use]
pub fn for_arms(measured_with: Arms, pulls_with: Arms, one_arm: f64) -> f64 {
    match (measured_with, pulls_with) {
        (Arms::Two, Arms::One) => one_arm,
        (Arms::One, Arms::Two) => 1.0 / one_arm,
        _ => 1.0,
    }
}

/// A pull that was measured.
pub static MEASURED_PULL: Field<Force> = Field::new(Row {
    id: "measuredPull",
    noun: "measured pull",
    hint: "What a luggage scale in a fixed rope shows while you pull down smoothly, or by how much a scale under you drops. A scale that reads kg gives kgf, one that reads lb lbf. Stop if it hurts.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Force,
        least: 10.0,
        most: 2000.0,
        example: 400.0,
        likely: None,
        bare: Some([KILOGRAM_FORCE, POUND_FORCE]),
    }),
    why: "Less no scale shows, more no arms pull (judged).",
    private: true,
});

/// How it was measured.
pub static PULL_TAKEN: Field<PullTaken> = Field::new(Row {
    id: "pullTaken",
    noun: "how it was measured",
    hint: "Arms pull hardest overhead and weaker at the chest; the climb needs the weakest point.",
    kind: Kind::Choice { options: PullTaken::OPTIONS, likely: Some("overhead") },
    why: "Overhead is the cautious reading of a still pull.",
    private: false,
});

/// With how many arms it was measured.
pub static PULL_ARMS: Field<Arms> = Field::new(Row {
    id: "pullArms",
    noun: "arms that pulled",
    hint: "When it was measured.",
    kind: Kind::Choice { options: Arms::OPTIONS, likely: Some("two") },
    why: "Two is the cautious reading: one arm counts for more.",
    private: true,
});

/// With how many arms the climber climbs.
pub static CLIMB_ARMS: Field<Arms> = Field::new(Row {
    id: "climbArms",
    noun: "arms you climb with",
    hint: "Left open, as many as pulled when you measured; without a measured pull, both.",
    kind: Kind::Choice { options: Arms::OPTIONS, likely: None },
    why: "As many as were measured is the cautious default.",
    private: true,
});

/// What the hands held while it was measured.
pub static PULL_HELD: Field<Hold> = Field::new(Row {
    id: "pullHeld",
    noun: "what the hands held then",
    hint: "What was held proves what the hands can hold.",
    kind: Kind::Choice { options: Hold::OPTIONS, likely: Some("cross-handle") },
    why: "A handle is the cautious reading: the same pull on bare rope proves more.",
    private: false,
});

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_overhead_reading_is_worth_seven_tenths_and_ten_repetitions_a_quarter_more() {
        assert!((PullTaken::Overhead.through_the_stroke().likely * 500.0 - 350.0).abs() < 1e-9);
        assert!((PullTaken::TenRepetitions.through_the_stroke().likely * 320.0 - 400.0).abs() < 1e-9);
    }

    #[test]
    fn one_arm_and_back_is_the_same_pull() {
        let one = 400.0 * for_arms(Arms::Two, Arms::One, ONE_ARM.likely);
        assert!((one - 232.0).abs() < 1e-9);
        assert!((one * for_arms(Arms::One, Arms::Two, ONE_ARM.likely) - 400.0).abs() < 1e-9);
    }
}
