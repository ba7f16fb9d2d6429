//! What a rig carries in each state it can be in, by hand.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a rig that cannot be made fails the test"
)]

use boughline::reeving::{
    Backup, BodyKind, Drive, Forces, Losses, Rig, RigName, State, WhyNot, in_state, kinematics, made_fast_at_the_foot,
    single_parts, statics,
};

#[path = "states/every.rs"]
mod every;
mod rigs;

const WEIGHT: f64 = 800.0;
const KEPT: f64 = 0.6;

fn canopy(name: RigName) -> Rig {
    name.rig(Backup::None).unwrap()
}

fn base(name: RigName) -> Rig {
    made_fast_at_the_foot(&canopy(name)).unwrap().unwrap()
}

/// The forces in a state, every turn keeping 0.6, a hand pulling whatever lifts or lets down the weight.
fn forces(rig: &Rig, state: State) -> (Rig, Forces) {
    let (rig, phase) = in_state(rig, state).unwrap();
    let motion = kinematics(&rig, &phase).unwrap();
    let mut losses = Losses::none(&rig);
    losses.turns.fill(KEPT);
    let by = |drive| statics(&rig, &motion, &losses, &drive);
    let forces = if state == State::Resting {
        by(Drive::Load(WEIGHT))
    } else {
        let unit = by(Drive::Pull(1.0, Vec::new())).unwrap().load.low;
        by(Drive::Pull(WEIGHT / unit, Vec::new()))
    };
    (rig.clone(), forces.unwrap())
}

/// What ropes pull down on the tree.
fn on_tree((rig, forces): &(Rig, Forces)) -> [f64; 2] {
    let span = forces.bodies[rig.body(BodyKind::Tree).unwrap()];
    [-span.high, -span.low]
}

fn assert_close(found: [f64; 2], wanted: [f64; 2]) {
    assert!(
        found.iter().zip(wanted).all(|(found, wanted)| (found - wanted).abs() < 1e-6),
        "{found:?}, {wanted:?} wanted"
    );
}

/// A canopy anchor carries the weight, climbing or at rest, on every rig that hangs from it.
#[test]
fn a_canopy_anchor_carries_the_weight() {
    for name in RigName::CATALOGUE.iter().filter(|name| !canopy(**name).is_hauled() && **name != RigName::MovingRope) {
        for state in [State::Climbing, State::Resting] {
            assert_close(on_tree(&forces(&canopy(*name), state)), [WEIGHT, WEIGHT]);
        }
    }
}

/// With the rope tied at the foot nothing passes the crotch, so friction may work either way: W (1 + e) to W (1 + 1/e).
#[test]
fn the_crotch_of_a_base_anchor_carries_between_friction_one_way_and_the_other() {
    for name in RigName::CATALOGUE.iter().filter(|name| !canopy(**name).is_hauled() && **name != RigName::MovingRope) {
        for state in [State::Climbing, State::Resting] {
            let carried = on_tree(&forces(&base(*name), state));
            assert_close(carried, [WEIGHT * (1.0 + KEPT), WEIGHT * (1.0 + 1.0 / KEPT)]);
        }
    }
}

/// Somebody at the foot holds less than the weight when letting down, W e, and more when hauling, W / e.
#[test]
fn lowering_lightens_the_crotch_and_hauling_loads_it() {
    let rig = base(RigName::TailThree);
    assert_close(on_tree(&forces(&rig, State::Lowered)), [WEIGHT * (1.0 + KEPT), WEIGHT * (1.0 + KEPT)]);
    assert_close(on_tree(&forces(&rig, State::Hauled)), [WEIGHT * (1.0 + 1.0 / KEPT), WEIGHT * (1.0 + 1.0 / KEPT)]);
    let hauled = canopy(RigName::GroundOne);
    assert_close(on_tree(&forces(&hauled, State::Lowered)), [WEIGHT * (1.0 + KEPT), WEIGHT * (1.0 + KEPT)]);
    assert_close(on_tree(&forces(&hauled, State::Hauled)), [WEIGHT * (1.0 + 1.0 / KEPT), WEIGHT * (1.0 + 1.0 / KEPT)]);
}

/// A moving rope comes back to the climber: at rest its two strands share by friction, W in all.
#[test]
fn a_moving_rope_at_rest_loads_the_crotch_with_the_weight() {
    assert_close(on_tree(&forces(&canopy(RigName::MovingRope), State::Resting)), [WEIGHT, WEIGHT]);
}

#[test]
fn states_that_cannot_be_are_told_why() {
    let why = |rig: &Rig, state| in_state(rig, state).err();
    for name in RigName::CATALOGUE {
        let rig = canopy(*name);
        if rig.is_hauled() {
            assert_eq!(why(&rig, State::Climbing), Some(WhyNot::NotByTheClimber), "{name:?}");
            assert_eq!(why(&rig, State::Resting), Some(WhyNot::NothingHolds), "{name:?}");
        } else {
            for state in [State::Lowered, State::Hauled] {
                assert_eq!(why(&rig, state), Some(WhyNot::NothingOnTheGround), "{name:?}");
            }
            if *name != RigName::MovingRope {
                for state in State::ALL {
                    assert_eq!(why(&base(*name), *state), None, "{name:?} {state:?}");
                }
            }
        }
    }
    // Nothing of a moving rope is tied to the tree, so it cannot be tied at the foot instead.
    assert_eq!(made_fast_at_the_foot(&canopy(RigName::MovingRope)), None);
}

/// The same ropes with one more tie and one more turn, and both of them single: the table made by hand.
#[test]
fn a_base_anchor_adds_its_tie_and_the_crotch_to_the_single_parts() {
    for backup in [Backup::None, Backup::SecondHitch] {
        let rig = RigName::TailThree.rig(backup).unwrap();
        let nouns = rigs::single_nouns(&made_fast_at_the_foot(&rig).unwrap().unwrap());
        let wanted: &[&str] = match backup {
            Backup::None => &["foot tie", "crotch", "lower hitch", "climbing rope"],
            _ => &["foot tie", "crotch", "climbing rope"],
        };
        assert_eq!(nouns, wanted);
        assert!(!single_parts(&rig).is_empty());
    }
}
