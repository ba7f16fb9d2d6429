//! The rigs of the catalogue against what each comes to by hand, and against printed numbers.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a rig that cannot be worked out fails the test"
)]

use boughline::reeving::{
    Backup, Body, BodyKind, Drive, Fraction, Losses, Part, Phase, Rig, RigName, Rope, Stop, drop_in_hand, is_held,
    kinematics, statics,
};
use proptest::prelude::*;

mod rigs;
use rigs::hand_derived::hand_derived;

/// Every rig of the catalogue, by what it is called in the table derived by hand.
const BY_HAND: &[(RigName, &str)] = &[
    (RigName::HandOverHand, "hand over hand"),
    (RigName::MovingRope, "moving rope"),
    (RigName::TailThree, "tail 3:1"),
    (RigName::TailFive, "tail 5:1"),
    (RigName::TailSeven, "tail 7:1"),
    (RigName::CordTwo, "haul cord 2:1"),
    (RigName::CordThree, "haul cord 3:1"),
    (RigName::CordFour, "haul cord 4:1"),
    (RigName::CordFive, "haul cord 5:1"),
    (RigName::GroundOne, "ground 1:1"),
    (RigName::GroundThree, "ground 3:1"),
    (RigName::GroundFive, "ground 5:1"),
    (RigName::GroundNine, "ground 9:1"),
];

fn advantage(rig: &Rig, losses: &Losses) -> (f64, Fraction) {
    let motion = kinematics(rig, &Phase::pull(rig)).unwrap();
    let forces = statics(rig, &motion, losses, &Drive::Pull(1.0, vec![])).unwrap();
    assert_eq!(forces.load.low.to_bits(), forces.load.high.to_bits());
    (forces.load.low, motion.rope_per_rise.expect("the hand moves"))
}

#[test]
fn every_rig_of_the_catalogue_is_in_the_table() {
    let is_in = |rig: &RigName| BY_HAND.iter().any(|(name, _)| name == rig);
    let missing: Vec<&RigName> = RigName::CATALOGUE.iter().filter(|rig| !is_in(rig)).collect();
    assert!(missing.is_empty(), "work out by hand in tests/rigs/hand_derived.rs, and name in BY_HAND, {missing:?}");
}

proptest! {
    #[test]
    fn every_rig_of_the_catalogue_matches_its_hand_derived_advantage(
        kept in prop::collection::vec(0.05_f64..=1.0, 8),
    ) {
        let table = hand_derived();
        for &(name, by_hand) in BY_HAND {
            let row = table.iter().find(|row| row.name == by_hand).expect(by_hand);
            let rig = name.rig(Backup::None).unwrap();
            let (found, rope) = advantage(&rig, &(row.losses)(&kept));
            let wanted = (row.advantage)(&kept);
            prop_assert!((found - wanted).abs() <= 1e-12 * wanted, "{by_hand}: {found} for {wanted}");
            prop_assert_eq!(rope, Fraction::from(row.ideal), "{}", by_hand);
        }
    }
}

#[test]
fn without_loss_every_rig_gives_the_whole_number_of_its_name() {
    for name in RigName::CATALOGUE {
        let rig = name.rig(Backup::None).unwrap();
        let (found, rope) = advantage(&rig, &Losses::none(&rig));
        assert_eq!(found.to_bits(), rope.in_f64().to_bits(), "{name:?}");
        assert!(name.named().noun.ends_with(&format!("{found}:1")), "{name:?}: {found}");
    }
}

/// Whoever hauls holds: with every hand off, nothing in such a rig stops the rope. In every other rig a hitch does,
/// with each backup too.
#[test]
fn every_rig_but_a_helpers_holds_its_climber() {
    for name in RigName::CATALOGUE {
        for backup in [Backup::None, Backup::SecondHitch, rigs::knot()] {
            let rig = name.rig(backup).unwrap();
            assert_eq!(is_held(&rig), rig.body(BodyKind::Ground).is_none(), "{name:?} {backup:?}");
        }
    }
}

/// By hand: with one rope from the climber over the crotch to the helper, whatever goes drops the climber. Of a 3:1
/// between hitch and foot the rope still comes to the hands when a turn of it goes; without the hitch nothing holds the
/// turn that moves up against its two strands.
#[test]
fn what_a_helper_holds_hangs_on_the_hands_the_rope_the_crotch_and_the_tie() {
    let names: [(RigName, &[&str]); 2] = [
        (RigName::GroundOne, &["harness tie", "crotch", "helper"]),
        (RigName::GroundThree, &["harness tie", "crotch", "hauling hitch", "helper"]),
    ];
    for (name, wanted) in names {
        let rig = name.rig(Backup::None).unwrap();
        let mut single = Vec::new();
        for (stop, what) in rig.ropes()[0].stops.iter().enumerate() {
            let fails = what.can_fail() || what.noun == "helper";
            if fails && drop_in_hand(&rig, Part::Stop { rope: 0, stop }).is_none() {
                single.push(what.noun.to_string());
            }
        }
        assert_eq!(single, wanted, "{name:?}");
        assert_eq!(drop_in_hand(&rig, Part::Rope { rope: 0 }), None);
    }
}

/// A backup is not there to haul with.
#[test]
fn a_backup_changes_no_advantage() {
    for name in RigName::CATALOGUE {
        let bare = name.rig(Backup::None).unwrap();
        let losses = |rig: &Rig| {
            let mut losses = Losses::none(rig);
            losses.turns.fill(0.8);
            losses
        };
        let wanted = advantage(&bare, &losses(&bare));
        for backup in [Backup::SecondHitch, rigs::knot()] {
            let rig = name.rig(backup).unwrap();
            assert_eq!(advantage(&rig, &losses(&rig)), wanted, "{name:?} {backup:?}");
        }
    }
}

/// A tackle of four working parts with the lead line off the upper block, E = 0.917: a load of 3,250 lb takes about
/// 1,000 lb (*Pipeline Rules of Thumb Handbook*, p. 6, printed 3.25; E(1 - E^4)/(1 - E) is 3.236 exactly).
#[test]
fn a_tackle_with_its_lead_line_off_the_upper_block_comes_to_3_236() {
    let stops = vec![
        Stop::tied(0, "becket"),
        Stop::turn(1, "lower block"),
        Stop::turn(0, "upper block"),
        Stop::turn(1, "lower block"),
        Stop::turn(0, "upper block"),
        Stop::hand(2, "lead line"),
        Stop::free(),
    ];
    let bodies = vec![
        Body::new(BodyKind::Tree, "beam"),
        Body::new(BodyKind::Climber, "load"),
        Body::new(BodyKind::Ground, "ground"),
    ];
    let rig = Rig::new(bodies, vec![Rope::new("fall", stops)]).unwrap();
    let (found, rope) = advantage(&rig, &Losses { turns: vec![0.917; 4], hitches: vec![] });
    assert!((found - 3.236).abs() <= 0.0005, "{found}");
    assert_eq!(rope, Fraction::from(4));
    assert!((3250.0 / found - 1004.0).abs() <= 0.5, "{found}");
}
