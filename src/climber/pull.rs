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

/// What one arm pulls over what two pull.
///
/// # Source
/// Judged, from a two-arm deficit of 10-18 %.
pub const ONE_ARM: f64 = 0.58;

/// What the arms pull through a stroke, from a measured pull.
///
/// # Units
/// Newtons; `through_the_stroke` is a ratio.
#[must_use]
pub fn arm_pull(measured: f64, through_the_stroke: f64, measured_with: Arms, pulls_with: Arms) -> f64 {
    let arms = match (measured_with, pulls_with) {
        (Arms::Two, Arms::One) => ONE_ARM,
        (Arms::One, Arms::Two) => 1.0 / ONE_ARM,
        _ => 1.0,
    };
    measured * through_the_stroke * arms
}

/// A pull that was measured.
pub static MEASURED_PULL: Field<Force> = Field::new(Row {
    id: "measuredPull",
    noun: "measured pull",
    hint: "Sit on a chair on a bathroom scale, pull down on a fixed rope: the drop of the reading is your pull. A scale that reads kilograms gives kgf, one that reads pounds lbf.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Force,
        least: 10.0,
        most: 2000.0,
        example: 400.0,
        likely: None,
        bare: Some([KILOGRAM_FORCE, POUND_FORCE]),
    }),
    why: "Below 10 N a scale shows nothing; above 2 kN no pair of arms is known to pull (judged).",
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
    hint: "",
    kind: Kind::Choice { options: Arms::OPTIONS, likely: Some("two") },
    why: "Two is the cautious reading: one arm counts for more.",
    private: false,
});

/// What the hands held while it was measured.
pub static PULL_HELD: Field<Hold> = Field::new(Row {
    id: "pullHeld",
    noun: "what the hands held then",
    hint: "What was held proves what the hands can hold.",
    kind: Kind::Choice { options: Hold::OPTIONS, likely: Some("cross-handle") },
    why: "A handle is the cautious reading: on bare rope the same pull would prove stronger hands.",
    private: false,
});

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_overhead_reading_is_worth_seven_tenths_through_the_stroke() {
        let taken = PullTaken::Overhead.through_the_stroke();
        assert!((arm_pull(500.0, taken.likely, Arms::Two, Arms::Two) - 350.0).abs() < 1e-9);
    }

    #[test]
    fn ten_repetitions_are_worth_a_quarter_more() {
        let taken = PullTaken::TenRepetitions.through_the_stroke();
        assert!((arm_pull(320.0, taken.likely, Arms::Two, Arms::Two) - 400.0).abs() < 1e-9);
    }

    #[test]
    fn one_arm_and_back_is_the_same_pull() {
        let one = arm_pull(400.0, 1.0, Arms::Two, Arms::One);
        assert!((one - 232.0).abs() < 1e-9);
        assert!((arm_pull(one, 1.0, Arms::One, Arms::Two) - 400.0).abs() < 1e-9);
    }
}
