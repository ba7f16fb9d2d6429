//! What the hands can hold on to.

use super::{Arms, Gloves, Grip};
use crate::field::{Field, Kind, Row, Spread, choice};

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
        /// A loop that was tied for a foot.
        FootLoop = "foot-loop", "foot loop used as a hand loop", "A foot loop with the hand through it: the same as a hand loop.";
    }
}

impl Hold {
    /// The hold that holds a hand just as well, and feels the same: a loop is a loop, whatever it was tied for (judged:
    /// in either, cord or webbing goes round the hand and takes the pull).
    #[must_use]
    pub const fn alike(self) -> Self {
        match self {
            Self::FootLoop => Self::HandLoop,
            other => other,
        }
    }

    /// Whether it goes round the hand, so that it holds without a grip.
    #[must_use]
    pub const fn is_loop(self) -> bool {
        matches!(self.alike(), Self::HandLoop)
    }

    /// The pull that a hand can hold, over its grip.
    ///
    /// # Source
    /// Young 2009: 1.58 ± 0.25 times grip on a grippy bar across the pull, 1.26 ± 0.19 on a slick one; 435 N on an
    /// upright one against 668 N, so about 1.03 (its range, 16 % either way, taken from the bar's). For a bare hand the
    /// slick bar is likely, less one deviation low, the grippy bar high; a slick glove makes it the slick bar, a
    /// rubbered one the grippy bar (judged). Bare rope: judged. Along the rope friction holds, so what is held is in
    /// proportion to it (judged); on bare rope never more than the grip, whatever the glove (judged: nobody has
    /// measured it on rope).
    #[must_use]
    pub const fn over_grip(self, gloves: Gloves) -> Spread {
        match (self, gloves) {
            (Self::BareRope, _) => rubbed(Spread::new(0.60, 0.75, 1.0), gloves, 1.0),
            (Self::VerticalHandle, _) => rubbed(Spread::new(0.87, 1.03, 1.19), gloves, f64::INFINITY),
            (_, Gloves::None) => Spread::new(1.07, 1.26, 1.58),
            (_, Gloves::Slick) => Spread::new(1.07, 1.26, 1.45),
            (_, Gloves::Rubbered) => Spread::new(1.33, 1.58, 1.83),
        }
    }

    /// Whether a hand holds no more on anything else here.
    #[must_use]
    pub const fn is_best(self) -> bool {
        matches!(self.alike(), Self::CrossHandle | Self::HandLoop)
    }
}

/// What a bare hand holds by friction, with gloves, and never more than `most`.
const fn rubbed(bare: Spread, gloves: Gloves, most: f64) -> Spread {
    let more = gloves.friction() / Gloves::None.friction();
    Spread::new((bare.low * more).min(most), (bare.likely * more).min(most), (bare.high * more).min(most))
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

    /// 0.32, 0.50 and 0.74 of friction: 0.75 times 0.64 is 0.48, and 0.75 times 1.48 is past the grip.
    #[test]
    fn gloves_change_what_friction_holds_and_no_rope_is_held_better_than_a_hand_squeezes() {
        let likely = |hold: Hold, gloves| hold.over_grip(gloves).likely;
        assert!((likely(Hold::BareRope, Gloves::Slick) - 0.48).abs() < 1e-12);
        assert!((Hold::BareRope.over_grip(Gloves::Rubbered).low - 0.888).abs() < 1e-12);
        assert_eq!(likely(Hold::BareRope, Gloves::Rubbered).to_bits(), 1.0_f64.to_bits());
        assert!((likely(Hold::VerticalHandle, Gloves::Rubbered) - 1.5244).abs() < 1e-12);
        assert_eq!(Hold::BareRope.over_grip(Gloves::None), Spread::new(0.60, 0.75, 1.0));
    }

    #[test]
    fn more_friction_never_holds_less_and_nothing_beats_a_bar_across() {
        for hold in Hold::ALL {
            let mut before = Spread::point(0.0);
            for gloves in [Gloves::Slick, Gloves::None, Gloves::Rubbered] {
                let held = hold.over_grip(gloves);
                assert!(held.low <= held.likely && held.likely <= held.high, "{hold:?} {gloves:?}");
                assert!(held.low >= before.low && held.likely >= before.likely && held.high >= before.high);
                let best = Hold::CrossHandle.over_grip(gloves);
                assert!(held.low <= best.low && held.likely <= best.likely && held.high <= best.high);
                before = held;
            }
        }
    }

    /// Judged: a foot loop with the hand through it is a hand loop.
    #[test]
    fn a_loop_is_a_loop_whatever_it_was_tied_for() {
        for gloves in Gloves::ALL {
            assert_eq!(Hold::FootLoop.over_grip(*gloves), Hold::HandLoop.over_grip(*gloves));
        }
        for hold in Hold::ALL {
            assert_eq!(hold.is_loop(), matches!(hold, Hold::HandLoop | Hold::FootLoop));
            assert_eq!(hold.alike().is_best(), hold.is_best());
        }
    }

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
        let both = held_by(Arms::Two, 0.75, grip, Some((900.0, Arms::Two)), 0.75);
        assert!(both.is_some_and(|held| (held - 900.0).abs() < 1e-9));
        assert_eq!(held_by(Arms::Two, 0.75, None, None, 1.0), None);
    }
}
