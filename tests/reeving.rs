//! The reeving model against what people have published and what can be worked out by hand.

#![allow(clippy::expect_used, reason = "a rig that cannot be worked out fails the test")]

use boughline::quantity::Length;
use boughline::reeving::{Backup, Body, BodyKind, Drive, Fault, Fraction, Losses, Phase, Rig, Rope, Stop, catalogue};
use boughline::reeving::{Part, drop_after, is_held, kinematics, statics};
use proptest::prelude::*;

mod rigs;
use rigs::{Hand, hand_derived};

/// The load that one unit of pull holds up, and the rope taken for each metre of rise.
fn advantage(rig: &Rig, losses: &Losses<f64>) -> Result<(f64, Fraction), Fault> {
    let phase = Phase::pull(rig);
    let motion = kinematics(rig, &phase)?;
    let forces = statics(rig, &phase, &motion, losses, &Drive::Pull(1.0, vec![]))?;
    assert!((forces.load.high - forces.load.low).abs() < 1e-12, "no turn at rest may change the advantage");
    Ok((forces.load.low, motion.rope_per_rise.expect("the hand moves")))
}

proptest! {
    /// Derived by hand from the rule "multiply by each turn's efficiency as the rope passes it, and add every strand
    /// that pulls on the load" (Delaney, *Physics for Roping Technicians*, as quoted in pulley notes).
    #[test]
    fn every_rig_matches_its_hand_derived_advantage(kept in prop::collection::vec(0.05_f64..=1.0, 8)) {
        for row in hand_derived() {
            let Hand { name, rig, losses, advantage: by_hand, ideal } = row;
            let (found, rope) = advantage(&rig, &losses(&kept)).expect(name);
            let wanted = by_hand(&kept);
            prop_assert!((found - wanted).abs() <= 1e-12 * wanted, "{name}: {found} for {wanted}");
            prop_assert_eq!(rope, Fraction::from(ideal), "{}", name);
        }
    }
}

#[test]
fn without_loss_every_rig_is_exactly_its_whole_number() {
    for Hand { name, rig, ideal, .. } in hand_derived() {
        let phase = Phase::pull(&rig);
        let motion = kinematics(&rig, &phase).expect(name);
        let one = Fraction::from(1);
        let forces = statics(&rig, &phase, &motion, &Losses::none(&rig), &Drive::Pull(one, vec![])).expect(name);
        assert_eq!(forces.load.low, Fraction::from(ideal), "{name}");
        assert_eq!(motion.rope_per_rise, Some(Fraction::from(ideal)), "{name}");
    }
}

/// Fixed-point 3:1: 1 + p + pq, p nearest the hand. Printed: q 0.9 and p 0.5 give 1.95, q 0.5 and p 0.9 give 2.35
/// (pulley notes citing Delaney, quoted). The tail 3:1 has the same strands.
#[test]
fn swapping_a_bad_turn_with_a_good_one_turns_1_95_into_2_35() {
    let rig = catalogue::tail_three_to_one(Backup::None).unwrap();
    let at = |upper, lower| advantage(&rig, &Losses { turns: vec![lower, upper], hitches: vec![1.0, 1.0] }).unwrap().0;
    assert_eq!(format!("{:.2}", at(0.5, 0.9)), "1.95");
    assert_eq!(format!("{:.2}", at(0.9, 0.5)), "2.35");
}

/// All turns alike, no drag; the sums are in the names of the rows by hand: 1 + e + e^2.
#[test]
fn three_to_one_with_like_turns_gives_1_853_and_2_313_and_2_710() {
    let rig = catalogue::tail_three_to_one(Backup::None).unwrap();
    for (kept, wanted) in [(0.55, 1.8525), (0.75, 2.3125), (0.90, 2.71)] {
        let (found, _) = advantage(&rig, &Losses { turns: vec![kept; 2], hitches: vec![1.0; 2] }).unwrap();
        assert!((found - wanted).abs() < 1e-12, "{found}");
    }
}

/// A helper's pull F on a 3:1's tail from the ground adds F(p + pq), ideal 2, and loads the anchor with W + F.
#[test]
fn a_helper_on_the_tail_adds_two_strands_and_loads_the_anchor() {
    let rig = rigs::tail_three_to_one_with_helper();
    let (p, q, help) = (0.9, 0.75, 100.0);
    let phase = Phase::pull(&rig);
    let motion = kinematics(&rig, &phase).unwrap();
    let losses = Losses { turns: vec![q, p], hitches: vec![1.0; 2] };
    let forces = statics(&rig, &phase, &motion, &losses, &Drive::Pull(300.0, vec![help])).unwrap();
    let load = 300.0 * (1.0 + p + p * q) + help * (p + p * q);
    assert!((forces.load.low - load).abs() < 1e-9);
    assert!((-forces.bodies[0].low - (load + help)).abs() < 1e-9);
}

/// Base anchor: the crotch carries W(1 + e) to W(1 + 1/e), and twice W without friction (Arboriculture Australia,
/// *Tree rescue manual*, 2022, p. 84: close to twice body weight).
#[test]
fn a_base_anchored_crotch_carries_a_span_around_twice_the_load() {
    let rig = rigs::base_anchor();
    let hold = Phase::hold(&rig);
    let motion = kinematics(&rig, &hold).unwrap();
    let on_crotch = |kept| {
        let losses = Losses { turns: vec![kept], hitches: vec![1.0] };
        let forces = statics(&rig, &hold, &motion, &losses, &Drive::Load(1.0)).unwrap();
        [-forces.bodies[0].high, -forces.bodies[0].low]
    };
    for (kept, wanted) in [(0.5, [1.5, 3.0]), (1.0, [2.0, 2.0])] {
        for (found, wanted) in on_crotch(kept).into_iter().zip(wanted) {
            assert!((found - wanted).abs() < 1e-12, "{found}");
        }
    }
}

#[test]
fn a_lowering_hand_meets_every_ratio_the_other_way_round() {
    let rig = rigs::ground_three_to_one();
    let lower = Phase::lower(&rig);
    let motion = kinematics(&rig, &lower).unwrap();
    let kept = [0.8, 0.7, 0.6];
    let losses = Losses { turns: kept.to_vec(), hitches: vec![1.0] };
    let lowered = statics(&rig, &lower, &motion, &losses, &Drive::Pull(1.0, vec![])).unwrap();
    let inverse = Losses { turns: kept.map(|e| 1.0 / e).to_vec(), hitches: vec![1.0] };
    let pull = Phase::pull(&rig);
    let raised = statics(&rig, &pull, &kinematics(&rig, &pull).unwrap(), &inverse, &Drive::Pull(1.0, vec![])).unwrap();
    assert!((lowered.load.low - raised.load.low).abs() < 1e-9);
}

#[test]
fn impossible_rigs_say_what_is_wrong() {
    let bodies = || vec![Body::new(BodyKind::Tree, "crotch"), Body::new(BodyKind::Climber, "climber")];
    let rig = |stops| Rig::new(bodies(), vec![Rope::new("rope", stops)]);
    let motion = |rig: Rig| kinematics(&rig, &Phase::pull(&rig));
    assert_eq!(rig(vec![Stop::tied(0, "a"), Stop::tied(1, "b")]).map(motion), Ok(Err(Fault::NoHand)));
    let held_twice = vec![Stop::tied(0, "a"), Stop::hand(1, "hand"), Stop::tied(1, "b")];
    assert_eq!(rig(held_twice).map(motion), Ok(Err(Fault::HandPullsNothing { rope: 0 })));
    let loose = vec![Stop::free(), Stop::turn(0, "crotch"), Stop::hand(1, "hand"), Stop::free()];
    assert_eq!(rig(loose).map(motion), Ok(Err(Fault::HandPullsNothing { rope: 0 })));
    assert_eq!(rig(vec![Stop::hand(1, "hand"), Stop::free()]), Err(Fault::NoSuchEnd { rope: 0 }));
    assert_eq!(rig(vec![Stop::tied(7, "a"), Stop::free()]), Err(Fault::NoSuchBody { rope: 0, stop: 0 }));
    let two = Rig::new(
        bodies(),
        vec![
            Rope::new("one", vec![Stop::tied(0, "a"), Stop::hand(1, "hand"), Stop::free()]),
            Rope::new("two", vec![Stop::tied(0, "a"), Stop::tied(1, "b")]),
        ],
    );
    assert_eq!(two.map(motion), Ok(Err(Fault::StuckRope { rope: 1 })));
}

#[test]
fn the_climber_is_held_by_both_ends_of_a_rope_over_a_crotch_or_not_at_all() {
    assert!(is_held(&rigs::base_anchor()));
    assert!(!is_held(&rigs::over_the_crotch_and_loose()));
}

/// Worked out by hand.
#[test]
fn single_parts_match_the_table_made_by_hand() {
    let tail = |backup| rigs::single_nouns(&catalogue::tail_three_to_one(backup).unwrap());
    assert_eq!(tail(Backup::None), ["anchor", "lower hitch", "climbing rope"]);
    assert_eq!(tail(Backup::SecondHitch), ["anchor", "climbing rope"]);
    assert_eq!(tail(rigs::knot()), ["anchor", "climbing rope"]);
    assert_eq!(rigs::single_nouns(&rigs::moving_rope()), ["tie", "crotch", "hitch", "climbing rope"]);
    assert_eq!(rigs::single_nouns(&rigs::base_anchor()), ["foot tie", "crotch", "hitch", "climbing rope"]);
    let hand = |backup| rigs::single_nouns(&catalogue::hand_over_hand(backup).unwrap());
    assert_eq!(hand(Backup::None), ["anchor", "lower hitch", "climbing rope"]);
    assert_eq!(hand(Backup::SecondHitch), ["anchor", "climbing rope"]);
}

/// Two strands lift the climber above a knot that jams at the upper turn: they drop half of what runs.
#[test]
fn a_knot_in_the_tail_catches_after_half_its_slack() {
    let rig = catalogue::tail_three_to_one(rigs::knot()).unwrap();
    let lower_hitch = Part::Stop { rope: 0, stop: 2 };
    assert_eq!(drop_after(&rig, lower_hitch).map(Length::in_metres), Some(1.0));
    let upper_hitch = Part::Stop { rope: 0, stop: 1 };
    assert_eq!(drop_after(&rig, upper_hitch).map(Length::in_metres), Some(0.0));
    let anchor = Part::Stop { rope: 0, stop: 0 };
    assert_eq!(drop_after(&rig, anchor), None);
}
