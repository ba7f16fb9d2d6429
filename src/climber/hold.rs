//! What the hands can hold on to.

use super::Arms;
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Dimension, Force, KILOGRAM_FORCE, POUND_FORCE};
use crate::source::{JUDGED, Source, YOUNG};

choice! {
    /// What a hand holds.
    Hold {
        /// The rope itself.
        BareRope = "bare-rope", "bare rope", "The rope itself, 9 to 13 mm thick.";
        /// A handle along the rope.
        VerticalHandle = "vertical-handle", "handle along the rope", "A handle that runs along the rope.";
        /// A handle across the rope.
        CrossHandle = "cross-handle", "handle across the rope", "A bar or stick across the rope.";
        /// A loop the hand goes through.
        HandLoop = "hand-loop", "hand loop", "A loop of cord or webbing round the hand.";
    }
}

impl Hold {
    /// The pull that a hand can hold, over its grip.
    ///
    /// # Source
    /// Young 2009: 1.58 ± 0.25 times grip on a grippy bar across the pull, 1.26 ± 0.19 on a slick one; 435 N on an
    /// upright one against 668 N, so about 1.03 (its range, 16 % either way, taken from the bar's). The slick bar is
    /// likely, less one deviation low, the grippy bar high. Bare rope: judged.
    #[must_use]
    pub const fn over_grip(self) -> Spread {
        match self {
            Self::BareRope => Spread::new(0.60, 0.75, 1.0),
            Self::VerticalHandle => Spread::new(0.87, 1.03, 1.19),
            Self::CrossHandle | Self::HandLoop => Spread::new(1.07, 1.26, 1.58),
        }
    }

    /// Whether a hand holds no more on anything else here.
    #[must_use]
    pub const fn is_best(self) -> bool {
        matches!(self, Self::CrossHandle | Self::HandLoop)
    }

    /// Where [`over_grip`](Self::over_grip) comes from.
    #[must_use]
    pub const fn source(self) -> Source {
        match self {
            Self::BareRope => JUDGED,
            _ => YOUNG,
        }
    }
}

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

/// What two arms pull down over the grip of both hands, for somebody untrained.
///
/// # Source
/// Judged, between two lines of evidence: pull-down maxima (Johnson 2009) over the grip of a national survey give 0.60
/// for women and 0.78 for men; an isometric strength field (La Delfa and Potvin 2017) 0.36 to 0.55.
pub const PULL_OVER_GRIP: Spread = Spread::new(0.50, 0.65, 0.85);

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

    /// What counts: both hands together, or the weaker where they take turns.
    #[must_use]
    pub fn used(self, hands: Arms) -> f64 {
        match hands {
            Arms::Two => self.left + self.right,
            Arms::One => self.left.min(self.right),
        }
    }
}

/// What the hands are known to hold: by grip, or because a measured pull went through them, whichever is more.
///
/// # Units
/// Newtons. `over_grip` is for what is held on the climb, `over_grip_then` for what was held at the measurement.
#[must_use]
pub fn held_by(
    hands: Arms,
    over_grip: f64,
    grip: Option<Grip>,
    proof: Option<(f64, Arms)>,
    over_grip_then: f64,
) -> Option<f64> {
    let by_grip = grip.map(|grip| grip.used(hands) * over_grip);
    let by_proof = proof.map(|(pull, then)| pull / then.count() * hands.count() * over_grip / over_grip_then);
    match (by_grip, by_proof) {
        (Some(one), Some(other)) => Some(one.max(other)),
        (one, other) => one.or(other),
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

/// What the hands hold on the climb.
pub static HOLD: Field<Hold> = Field::new(Row {
    id: "hold",
    noun: "what your hands hold",
    hint: "Hands tire and slip on bare rope; a loop or a handle spares them.",
    kind: Kind::Choice { options: Hold::OPTIONS, likely: Some("bare-rope") },
    why: "Bare rope is the cautious default.",
    private: false,
});

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pull_proves_the_hands_on_what_they_held() {
        let same = held_by(Arms::Two, 0.8, None, Some((500.0, Arms::Two)), 0.8);
        assert!(same.is_some_and(|held| (held - 500.0).abs() < 1e-9));
        let barer = held_by(Arms::Two, 0.75, None, Some((500.0, Arms::Two)), 1.26);
        assert!(barer.is_some_and(|held| (held - 297.619).abs() < 1e-3));
        let one_at_a_time = held_by(Arms::One, 0.8, None, Some((500.0, Arms::Two)), 0.8);
        assert!(one_at_a_time.is_some_and(|held| (held - 250.0).abs() < 1e-9));
    }

    #[test]
    fn the_better_proof_counts_and_none_is_no_figure() {
        let grip = Grip::of(Some(400.0), None);
        assert_eq!(grip, Some(Grip { left: 400.0, right: 360.0 }));
        let both = held_by(Arms::Two, 0.75, grip, Some((900.0, Arms::Two)), 0.75);
        assert!(both.is_some_and(|held| (held - 900.0).abs() < 1e-9));
        assert_eq!(held_by(Arms::Two, 0.75, None, None, 1.0), None);
    }
}
