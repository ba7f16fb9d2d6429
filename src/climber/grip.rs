//! How hard the hands squeeze.

use super::Arms;
use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{Dimension, Force, KILOGRAM_FORCE, POUND_FORCE};

/// Grip strength of the two hands; a hand without a figure has none here.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grip {
    /// Left hand, in newtons.
    pub left: f64,
    /// Right hand, in newtons.
    pub right: f64,
}

/// The other hand of someone who has measured one.
///
/// # Source
/// Crosby 1994: the dominant hand is about 10 % stronger in right-handers.
pub const OTHER_HAND: f64 = 0.9;

impl Grip {
    /// The grip of both hands from one or two figures, in newtons.
    #[must_use]
    pub fn of(left: Option<f64>, right: Option<f64>) -> Option<Self> {
        match (left, right) {
            (Some(left), Some(right)) => Some(Self { left, right }),
            (Some(left), None) => Some(Self { left, right: left * OTHER_HAND }),
            (None, Some(right)) => Some(Self { left: right * OTHER_HAND, right }),
            (None, None) => None,
        }
    }

    /// The grip of somebody who uses one hand only: the stronger of the figures, in newtons, whichever hand it stands for.
    #[must_use]
    pub fn of_one_hand(left: Option<f64>, right: Option<f64>) -> Option<Self> {
        let hand = left.into_iter().chain(right).reduce(f64::max)?;
        Some(Self { left: hand, right: hand })
    }

    /// The grip of somebody whose two arms pull so much, each hand alike, in newtons.
    #[must_use]
    pub fn reckoned(two_arm_pull: f64, pull_over_grip: f64) -> Self {
        let hand = two_arm_pull / pull_over_grip / 2.0;
        Self { left: hand, right: hand }
    }

    /// The two hands of somebody of whom only the sum is known, in newtons: one [`OTHER_HAND`] of the other. Which is
    /// the stronger is not known; here it is the right.
    #[must_use]
    pub fn combined(sum: f64) -> Self {
        let right = sum / (1.0 + OTHER_HAND);
        Self { left: sum - right, right }
    }

    /// The grip of both hands, which a pull is foretold from; of arms that take turns, twice that of the weaker.
    #[must_use]
    pub fn of_both(self, hands: Arms) -> f64 {
        match hands {
            Arms::Two => self.used(Arms::Two),
            Arms::One => 2.0 * self.used(Arms::One),
        }
    }

    /// What counts: both hands together, or the weaker where they take turns.
    #[must_use]
    pub fn used(self, hands: Arms) -> f64 {
        match hands {
            Arms::Two => self.left + self.right,
            Arms::One => self.left.min(self.right),
        }
    }
}

const fn grip(id: &'static str, noun: &'static str) -> Row {
    Row {
        id,
        noun,
        hint: "Your best squeeze on a dynamometer. One that reads kilograms gives kgf, one that reads pounds lbf.",
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Force,
            least: 5.0,
            most: 1200.0,
            example: 390.0,
            likely: None,
            bare: Some([KILOGRAM_FORCE, POUND_FORCE]),
        }),
        why: "Beyond the strongest hands surveyed (judged).",
        private: true,
    }
}

/// Grip of the right hand.
pub static GRIP_RIGHT: Field<Force> = Field::new(grip("gripRight", "grip, right hand"));

/// Grip of the left hand.
pub static GRIP_LEFT: Field<Force> = Field::new(grip("gripLeft", "grip, left hand"));

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arms_that_take_turns_are_as_strong_as_the_weaker() {
        let grip = Grip { left: 200.0, right: 400.0 };
        assert!((grip.of_both(Arms::One) - 400.0).abs() < 1e-9 && (grip.of_both(Arms::Two) - 600.0).abs() < 1e-9);
    }

    #[test]
    fn a_hand_that_was_not_measured_counts_nine_tenths() {
        assert_eq!(Grip::of(Some(400.0), None), Some(Grip { left: 400.0, right: 360.0 }));
        assert_eq!(Grip::of(None, None), None);
    }

    /// 380 N are 200 N and nine tenths of it.
    #[test]
    fn a_sum_is_shared_out_and_whole_again() {
        let grip = Grip::combined(380.0);
        assert!((grip.right - 200.0).abs() < 1e-9 && (grip.left - 180.0).abs() < 1e-9);
        assert!((grip.used(Arms::Two) - 380.0).abs() < 1e-9 && (grip.used(Arms::One) - 180.0).abs() < 1e-9);
    }
}
