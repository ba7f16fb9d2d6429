//! What somebody at the foot of the tree holds, pulls and takes in.

use super::share::{BRAKE_NOUN, Kept, share};
use crate::field::Spread;
use crate::reeving::{
    Backup, BodyKind, Phase, Rig, RigName, State, Stop, What, WhyNot, in_state, kinematics, made_fast_at_the_foot,
};

/// The share of the climber's weight that somebody at the foot holds while they give rope past a brake.
///
/// # Guarantees
/// From the general model: the rig made fast at the foot, in the state of being lowered, with one turn more for the brake.
///
/// # Errors
/// Why nobody can be lowered on it.
pub fn lowering_share(rig: &Rig, kept: Kept) -> Result<f64, WhyNot> {
    let footed = if rig.is_hauled() { Ok(rig.clone()) } else { at_the_foot(rig) }?;
    let (rig, phase) = in_state(&footed, State::Lowered)?;
    let braked = with_brake(&rig).ok_or(WhyNot::NothingOnTheGround)?;
    share(&braked, &phase, kept).ok_or(WhyNot::NothingOnTheGround)
}

fn at_the_foot(rig: &Rig) -> Result<Rig, WhyNot> {
    if crate::reeving::is_made_fast_at_the_foot(rig) {
        return Ok(rig.clone());
    }
    made_fast_at_the_foot(rig).and_then(Result::ok).ok_or(WhyNot::NothingOnTheGround)
}

/// The rig with its rope round one thing more on the ground, before it comes to the hand there.
fn with_brake(rig: &Rig) -> Option<Rig> {
    let mut ropes = rig.ropes().to_vec();
    for rope in &mut ropes {
        let Some(hand) = rope.stops.iter().position(|stop| stop.what == What::Hand) else { continue };
        let ground = rope.stops.get(hand)?.body?;
        // The hand is at the end: the rope comes to it from the tree.
        let from_start = rope.stops.iter().take(hand).any(|stop| rig.kind_at(stop) == Some(BodyKind::Tree));
        rope.stops.insert(if from_start { hand } else { hand + 1 }, Stop::turn(ground, BRAKE_NOUN));
    }
    Rig::new(rig.bodies().to_vec(), ropes).ok()
}

/// Somebody on the ground hauls the climber up over the crotch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Haul {
    /// The rig.
    pub rig: RigName,
    /// The share of the climber's weight that is pulled; the high end is to plan on.
    pub share: Spread,
    /// The rope that is pulled for each metre of rise, in metres.
    pub rope: f64,
}

/// What each of the helpers' rigs takes, of turns that keep so much.
///
/// # Guarantees
/// Friction counts from its unfavourable end in the high share: little kept.
#[must_use]
pub fn hauls(crotch: Spread, other: Spread) -> Vec<Haul> {
    let mut hauls = Vec::new();
    for name in RigName::CATALOGUE {
        let Ok(rig) = name.rig(Backup::None) else { continue };
        if !rig.is_hauled() {
            continue;
        }
        let phase = Phase::pull(&rig);
        let rope = kinematics(&rig, &phase).ok().and_then(|motion| motion.rope_per_rise);
        let of = |crotch: f64, other: f64| share(&rig, &phase, Kept { crotch, brake: other, other });
        if let (Some(low), Some(likely), Some(high), Some(rope)) =
            (of(crotch.high, other.high), of(crotch.likely, other.likely), of(crotch.low, other.low), rope)
        {
            hauls.push(Haul { rig: *name, share: Spread::new(low, likely, high), rope: rope.in_f64() });
        }
    }
    hauls
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Angle;
    use crate::tree::ratio;

    const FREE: Spread = Spread::point(1.0);

    /// Raising over lowering is exp(2 mu beta): Delaney 2022 p. 88 makes his friction of it.
    #[test]
    fn what_raises_over_what_lowers_is_the_capstan_both_ways() {
        let rig = RigName::HandOverHand.rig(Backup::None).unwrap();
        for mu in [0.0, 0.15, 0.36, 0.60] {
            let e = 1.0 / ratio(mu, Angle::degrees(180.0));
            let lower = lowering_share(&rig, Kept { crotch: e, brake: 1.0, other: 1.0 }).unwrap();
            let raise = hauls(Spread::point(e), FREE).into_iter().find(|haul| haul.rig == RigName::GroundOne).unwrap();
            let wanted = ratio(2.0 * mu, Angle::degrees(180.0));
            assert!((raise.share.likely / lower / wanted - 1.0).abs() < 1e-12, "{mu}");
        }
    }

    /// By hand: e in the crotch, then one turn round the brake.
    #[test]
    fn crotch_and_brake_each_take_their_share_of_what_is_held_at_the_foot() {
        for name in [RigName::HandOverHand, RigName::TailThree, RigName::CordFive] {
            let rig = name.rig(Backup::None).unwrap();
            let share = lowering_share(&rig, Kept { crotch: 0.5, brake: 0.2, other: 1.0 }).unwrap();
            assert!((share - 0.1).abs() < 1e-12, "{name:?} {share}");
        }
        let moving = RigName::MovingRope.rig(Backup::None).unwrap();
        assert_eq!(
            lowering_share(&moving, Kept { crotch: 0.5, brake: 0.2, other: 1.0 }),
            Err(WhyNot::NothingOnTheGround)
        );
    }

    /// By hand: e(1 + p + p q) at e = 0.5 and p = q = 0.9; three metres of rope a metre.
    #[test]
    fn a_helpers_rigs_come_to_the_table_made_by_hand() {
        let hauls = hauls(Spread::point(0.5), Spread::point(0.9));
        let found: Vec<_> = hauls.iter().map(|haul| (haul.rig, haul.rope)).collect();
        assert_eq!(
            found,
            [
                (RigName::GroundOne, 1.0),
                (RigName::GroundThree, 3.0),
                (RigName::GroundFive, 5.0),
                (RigName::GroundNine, 9.0)
            ]
        );
        let three = 0.5 * (1.0 + 0.9 + 0.9 * 0.9);
        assert!((hauls[1].share.likely * three - 1.0).abs() < 1e-12);
        assert!((hauls[3].share.likely * three / 0.5 * three - 1.0).abs() < 1e-12);
    }

    /// By hand: without other losses the hand on a haul of ideal n holds W e / (n r), and never less for its pulleys' being
    /// brakes too.
    #[test]
    fn the_brake_is_one_turn_and_no_pulley_is_another() {
        for (name, ideal) in [(RigName::GroundOne, 1.0), (RigName::GroundThree, 3.0), (RigName::GroundNine, 9.0)] {
            let rig = name.rig(Backup::None).unwrap();
            let share = lowering_share(&rig, Kept { crotch: 0.5, brake: 0.2, other: 1.0 }).unwrap();
            assert!((share - 0.5 * 0.2 / ideal).abs() < 1e-12, "{name:?} {share}");
        }
    }
}
