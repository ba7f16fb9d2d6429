//! Friction that is added for the way down.

use super::going_down;
use super::share::{Kept, share};
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Angle, Count, Dimension, Ratio};
use crate::reeving::{Phase, Rig};
use crate::tree::ratio;

choice! {
    /// What the rope runs round below the hitch, on the way down.
    Brake {
        /// Nothing: the hitch alone.
        None = "none", "nothing: the hitch alone", "A hitch held in the hand counts as nothing: your hand would hold all your weight.";
        /// A Munter hitch on a carabiner.
        Munter = "munter", "Munter hitch on a carabiner", "A crossing turn round a wide carabiner at the harness.";
        /// Half a turn round a carabiner.
        Redirect = "redirect", "half a turn round a carabiner", "The rope goes round a carabiner at the harness and back up to the hand: little friction.";
        /// Turns round a bar or ring.
        Turns = "turns", "turns round a bar or ring", "Whole or half turns round smooth metal at the harness.";
    }
}

/// What the rope runs round below the hitch.
pub static BRAKE: Field<Brake> = Field::new(Row {
    id: "brake",
    noun: "friction added for the way down",
    hint: "What the rope runs round below the hitch, before it comes to your hand.",
    kind: Kind::Choice { options: Brake::OPTIONS, likely: Some("munter") },
    why: "The usual way to add friction without a device (common practice, no source).",
    private: false,
});

/// How often the rope goes round the bar or ring.
pub static BRAKE_TURNS: Field<Count> = Field::new(Row {
    id: "brakeTurns",
    noun: "turns round the bar or ring",
    hint: "Whole turns, or halves as 1.5.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Count,
        least: 0.5,
        most: 6.0,
        example: 2.0,
        likely: Some(Spread::point(1.0)),
        bare: None,
    }),
    why: "One turn is the least that holds anything to speak of; past six nothing runs any more (judged).",
    private: false,
});

/// One's own test of it.
pub static BRAKE_MEASURED: Field<Ratio> = Field::new(Row {
    id: "brakeMeasured",
    noun: "friction, measured",
    hint: "Only if you have measured it, low down: the weight that hung over the hand’s pull that held it, as 8.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Ratio,
        least: 1.0,
        most: 100.0,
        example: 8.0,
        likely: None,
        bare: None,
    }),
    why: "No turn gains force, so at least 1; what holds a hundred times the hand does not run (judged).",
    private: false,
});

/// The friction of rope on smooth metal.
///
/// # Source
/// 0.15 to 0.24 on bars of aluminium and steel (Delaney 2022, p. 88); likely as in his table of turns, 0.175.
pub const METAL_FRICTION: Spread = Spread::new(0.15, 0.175, 0.24);

impl Brake {
    /// The tension above it over what the hand holds: the low end is to plan on, the high one is what lets it run hardest.
    ///
    /// # Source
    /// A Munter 5 to 14, to plan on 5: judged, from 2.5 kN at a hand of 200 to 250 N (read, weak) and 12 to 15 from memory,
    /// and less where the hand is below the load, as here. Round metal: the capstan equation.
    #[must_use]
    pub fn ratio(self, turns: f64) -> Spread {
        let round = |turns: f64| {
            let past = |friction: f64| ratio(friction, Angle::degrees(360.0 * turns));
            Spread::new(past(METAL_FRICTION.low), past(METAL_FRICTION.likely), past(METAL_FRICTION.high))
        };
        match self {
            Self::None => Spread::point(1.0),
            Self::Munter => Spread::new(5.0, 5.0, 14.0),
            Self::Redirect => round(0.5),
            Self::Turns => round(turns),
        }
    }
}

/// The share of the climber's weight that the hand holds while rope runs out past a brake that keeps `kept` of the
/// tension and past turns that keep `turn`; none where nobody goes down on the rig.
///
/// # Guarantees
/// From the general model, of the rig as it is on the way down; the hitch, which the other hand tends, counts as nothing.
#[must_use]
pub fn hand_share(rig: &Rig, kept: f64, turn: f64) -> Option<f64> {
    let down = going_down(rig).ok()?;
    let mut phase = Phase::lower(&down);
    phase.grips.fill(false);
    share(&down, &phase, Kept { crotch: turn, brake: kept, other: turn })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::reeving::{Backup, RigName};

    /// Delaney 2022 p. 88: half a turn 1.73 and a whole one 3.00 at 0.175.
    #[test]
    fn turns_round_metal_are_as_published() {
        assert!((Brake::Redirect.ratio(9.0).likely - 1.73).abs() <= 0.005);
        assert!((Brake::Turns.ratio(1.0).likely - 3.00).abs() <= 0.005);
    }

    /// BMC, Summit 90: a hand is usually taken to hold 222 N. 80 kg over a Munter of 5 is 157 N.
    #[test]
    fn a_munter_lets_a_usual_hand_hold_a_usual_climber() {
        let weight = crate::quantity::Mass::kilograms(80.0).weight().in_newtons();
        let rig = RigName::TailThree.rig(Backup::None).unwrap();
        let share = hand_share(&rig, 1.0 / Brake::Munter.ratio(1.0).low, 1.0).unwrap();
        assert!((share * weight - 156.9064).abs() < 1e-4, "{}", share * weight);
        assert!(share * weight < 222.0 && weight > 222.0);
    }

    /// By hand: a rope over the crotch that comes back to the climber carries half each side; with e kept at the crotch,
    /// the hand's side is e of the other: W = T + e T, and the hand holds e T over the brake's ratio.
    #[test]
    fn a_moving_rope_leaves_the_hand_half_and_friction_in_the_crotch_leaves_it_less() {
        let rig = RigName::MovingRope.rig(Backup::None).unwrap();
        for (e, brake) in [(1.0, 5.0), (0.5, 5.0), (0.32, 8.0)] {
            let share = hand_share(&rig, 1.0 / brake, e).unwrap();
            assert!((share - e / (1.0 + e) / brake).abs() < 1e-12, "{e} {brake}: {share}");
        }
    }

    #[test]
    fn nobody_lets_themselves_down_who_is_hauled() {
        assert_eq!(hand_share(&RigName::GroundThree.rig(Backup::None).unwrap(), 0.2, 1.0), None);
    }
}
