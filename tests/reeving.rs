//! The reeving model against what people have published and what can be worked out by hand.

#![allow(clippy::expect_used, clippy::unwrap_used, reason = "a rig that cannot be worked out fails the test")]
#![allow(clippy::indexing_slicing, reason = "a strand that is not there fails the test")]

use boughline::quantity::Length;
use boughline::reeving::{Backup, Body, BodyKind, Drive, Fault, Fraction, Losses, Phase, Rig, Rope, Stop, catalogue};
use boughline::reeving::{kinematics, power_that_gives, raised, statics};
use proptest::prelude::*;

mod rigs;
use rigs::hand_derived::{Hand, hand_derived};

/// The load that one unit of pull holds up, and the rope taken for each metre of rise.
fn advantage(rig: &Rig, phase: &Phase, losses: &Losses) -> Result<(f64, Fraction), Fault> {
    let motion = kinematics(rig, phase)?;
    let forces = statics(rig, &motion, losses, &Drive::Pull(1.0, vec![]))?;
    assert!((forces.load.high - forces.load.low).abs() < 1e-12, "no turn at rest may change the advantage");
    Ok((forces.load.low, motion.rope_per_rise.expect("the hand moves")))
}

/// The tension of each strand of the first rope with no hand on, for a climber of weight 1.
fn tensions_without_hand(rig: &Rig, phase: &Phase, losses: &Losses) -> Vec<f64> {
    let motion = kinematics(rig, phase).unwrap();
    let forces = statics(rig, &motion, losses, &Drive::Load(1.0)).unwrap();
    assert!(forces.strands[0].iter().all(|tension| tension.low == tension.high), "{forces:?}");
    forces.strands[0].iter().map(|tension| tension.low).collect()
}

proptest! {
    /// Derived by hand from the rule "multiply by each turn's efficiency as the rope passes it, and add every strand
    /// that pulls on the load" (Delaney, *Physics for Roping Technicians*, as quoted in pulley notes).
    #[test]
    fn every_rig_matches_its_hand_derived_advantage(kept in prop::collection::vec(0.05_f64..=1.0, 8)) {
        for row in hand_derived() {
            let Hand { name, rig, phase, losses, advantage: by_hand, ideal } = row;
            let (found, rope) = advantage(&rig, &phase(&rig), &losses(&kept)).expect(name);
            let wanted = by_hand(&kept);
            prop_assert!((found - wanted).abs() <= 1e-12 * wanted, "{name}: {found} for {wanted}");
            prop_assert_eq!(rope, Fraction::from(ideal), "{}", name);
        }
    }

    /// What a rig gives with some losses is given back by losses that it is measured with.
    #[test]
    fn a_measured_advantage_gives_power_that_gives_it(
        kept in prop::collection::vec(0.3_f64..=0.99, 8),
        power in 0_usize..3,
    ) {
        for Hand { name, rig, phase, losses, .. } in hand_derived() {
            let pull = Phase::pull(&rig);
            if phase(&rig) != pull {
                continue;
            }
            let turns = losses(&kept).turns;
            let motion = kinematics(&rig, &pull).expect(name);
            let hitches = vec![1.0; losses(&kept).hitches.len()];
            let scaled = Losses { turns: turns.iter().map(|kept| [kept.sqrt(), *kept, kept * kept][power]).collect(), hitches };
            let (measured, _) = advantage(&rig, &pull, &scaled).expect(name);
            let Some(power) = power_that_gives(&rig, &motion, &turns, measured).expect(name) else {
                prop_assert!(turns.is_empty(), "{name}: {measured}");
                continue;
            };
            let found = Losses { turns: turns.iter().map(|kept| raised(*kept, power)).collect(), ..scaled };
            let (again, _) = advantage(&rig, &pull, &found).expect(name);
            prop_assert!((again - measured).abs() <= 1e-9 * measured, "{name}: {again} for {measured}");
            prop_assert!(found.turns.iter().all(|kept| (0.01..=1.0).contains(kept)), "{name}: {found:?}");
        }
    }
}

#[test]
fn without_loss_every_rig_is_exactly_its_whole_number() {
    for Hand { name, rig, phase, ideal, .. } in hand_derived() {
        let found = advantage(&rig, &phase(&rig), &Losses::none(&rig)).expect(name);
        assert_eq!(found, (ideal as f64, Fraction::from(ideal)), "{name}");
    }
}

/// Fixed-point 3:1: 1 + p + pq, p nearest the hand. Printed: q 0.9 and p 0.5 give 1.95, q 0.5 and p 0.9 give 2.35
/// (pulley notes citing Delaney, quoted). The tail 3:1 has the same strands.
#[test]
fn swapping_a_bad_turn_with_a_good_one_turns_1_95_into_2_35() {
    let rig = catalogue::tail_three_to_one(Backup::None).unwrap();
    let pull = Phase::pull(&rig);
    let at = |upper, lower| {
        advantage(&rig, &pull, &Losses { turns: vec![lower, upper], hitches: vec![1.0, 1.0] }).unwrap().0
    };
    assert_eq!(format!("{:.2}", at(0.5, 0.9)), "1.95");
    assert_eq!(format!("{:.2}", at(0.9, 0.5)), "2.35");
}

/// All turns alike, no drag; the sums are in the names of the rows by hand: 1 + e + e^2.
#[test]
fn three_to_one_with_like_turns_gives_1_853_and_2_313_and_2_710() {
    let rig = catalogue::tail_three_to_one(Backup::None).unwrap();
    for (kept, wanted) in [(0.55, 1.8525), (0.75, 2.3125), (0.90, 2.71)] {
        let (found, _) =
            advantage(&rig, &Phase::pull(&rig), &Losses { turns: vec![kept; 2], hitches: vec![1.0; 2] }).unwrap();
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
    let forces = statics(&rig, &motion, &losses, &Drive::Pull(300.0, vec![help])).unwrap();
    let load = 300.0 * (1.0 + p + p * q) + help * (p + p * q);
    assert!((forces.load.low - load).abs() < 1e-9);
    assert!((-forces.bodies[0].low - (load + help)).abs() < 1e-9);
}

/// The hand takes the rope up from the pulley, so that it wraps it, wherever the tail beyond the hand goes.
#[test]
fn a_pulley_at_the_hand_is_wrapped_though_a_tail_hangs_to_a_helper() {
    let stops = rigs::moving_rope_with_tending_pulley().ropes()[0].stops.clone();
    let (tail, stops) = stops.split_last().unwrap();
    let stops = stops.iter().cloned().chain([Stop::helper(2, "helper"), tail.clone()]).collect();
    let kinds = [BodyKind::Tree, BodyKind::Climber, BodyKind::Ground];
    let bodies = kinds.map(|kind| Body::new(kind, "body")).to_vec();
    let rig = Rig::new(bodies, vec![Rope::new("rope", stops)]).unwrap();
    let losses = Losses { turns: vec![0.8, 0.7], hitches: vec![0.9] };
    let (found, _) = advantage(&rig, &Phase::pull(&rig), &losses).unwrap();
    assert!((found - 0.9 * 0.7 * (1.0 + 0.8)).abs() < 1e-12, "{found}");
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
        let forces = statics(&rig, &motion, &losses, &Drive::Load(1.0)).unwrap();
        [-forces.bodies[0].high, -forces.bodies[0].low]
    };
    for (kept, wanted) in [(0.5, [1.5, 3.0]), (1.0, [2.0, 2.0])] {
        for (found, wanted) in on_crotch(kept).into_iter().zip(wanted) {
            assert!((found - wanted).abs() < 1e-12, "{found}");
        }
    }
}

/// Moved up, the upper hitch drags nothing that could be told: the climber's weight passes it, to the lower hitch.
#[test]
fn while_the_upper_hitch_is_moved_up_the_lower_one_holds_the_weight() {
    let dragging = |hitches| Losses { turns: vec![0.9; 2], hitches: vec![0.9; hitches] };
    for (backup, hitches, wanted) in [
        (Backup::None, 2, vec![1.0, 1.0, 0.0, 0.0, 0.0, 0.0]),
        (Backup::SecondHitch, 3, vec![1.0, 1.0, 1.0, 0.0, 0.0, 0.0, 0.0]),
    ] {
        let rig = catalogue::tail_three_to_one(backup).unwrap();
        assert_eq!(tensions_without_hand(&rig, &Phase::reset(&rig), &dragging(hitches)), wanted);
    }
    let rig = catalogue::hand_over_hand(Backup::None).unwrap();
    let losses = Losses { turns: vec![], hitches: vec![0.9] };
    assert_eq!(tensions_without_hand(&rig, &Phase::reset(&rig), &losses), [1.0, 1.0, 0.0]);
}

#[test]
fn a_backup_hitch_drags_only_while_rope_runs_past_it() {
    let rig = catalogue::hand_over_hand(Backup::SecondHitch).unwrap();
    let losses = Losses { turns: vec![], hitches: vec![0.8; 2] };
    assert_eq!(tensions_without_hand(&rig, &Phase::hold(&rig), &losses), [1.0, 1.0, 1.0, 0.0]);
    // Through both hitches and round both turns to the upper hitch: 1 + p + p q h h.
    let rig = catalogue::tail_three_to_one(Backup::SecondHitch).unwrap();
    let losses = Losses { turns: vec![0.9, 0.7], hitches: vec![1.0, 0.8, 0.6] };
    let (found, _) = advantage(&rig, &Phase::pull(&rig), &losses).unwrap();
    assert!((found - (1.0 + 0.7 + 0.7 * 0.9 * 0.8 * 0.6)).abs() < 1e-12);
}

#[test]
fn forces_and_losses_out_of_range_are_refused() {
    let rig = catalogue::tail_three_to_one(Backup::None).unwrap();
    let motion = kinematics(&rig, &Phase::pull(&rig)).unwrap();
    let fault = |turns, drive| statics(&rig, &motion, &Losses { turns, hitches: vec![1.0; 2] }, &drive).err();
    for kept in [0.0, -0.5, 1.01, f64::NAN, f64::INFINITY] {
        assert_eq!(fault(vec![0.9, kept], Drive::Pull(1.0, vec![])), Some(Fault::OutOfRange), "{kept}");
    }
    for turns in [vec![], vec![0.9], vec![0.9; 3]] {
        assert_eq!(fault(turns, Drive::Pull(1.0, vec![])), Some(Fault::OutOfRange));
    }
    for drive in [Drive::Pull(f64::NAN, vec![]), Drive::Pull(1.0, vec![f64::INFINITY]), Drive::Load(f64::NAN)] {
        assert_eq!(fault(vec![0.9; 2], drive), Some(Fault::OutOfRange));
    }
}

/// Rounding is to a share of the forces: neither what a mouse weighs nor what a lorry weighs is nought or unbalanced.
#[test]
fn forces_are_in_proportion_to_the_drive_whatever_its_size() {
    let rig = rigs::base_anchor();
    let motion = kinematics(&rig, &Phase::hold(&rig)).unwrap();
    let losses = Losses { turns: vec![0.7], hitches: vec![0.9] };
    let on_crotch = |load| -statics(&rig, &motion, &losses, &Drive::Load(load)).unwrap().bodies[0].low / load;
    for load in [1e-14, 1.0, 123_456.789, 1e14] {
        assert!((on_crotch(load) - (1.0 + 1.0 / 0.7)).abs() < 1e-12, "{load}");
    }
    let loose = rigs::over_the_crotch_and_loose();
    let motion = kinematics(&loose, &Phase::hold(&loose)).unwrap();
    for load in [1e-14, 1.0, 1e14] {
        let forces = statics(&loose, &motion, &Losses::none(&loose), &Drive::Load(load));
        assert_eq!(forces, Err(Fault::Unbalanced { body: 1 }), "{load}");
    }
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
    let two_hands = vec![Stop::tied(0, "a"), Stop::hand(1, "hand"), Stop::hand(1, "hand"), Stop::free()];
    assert_eq!(rig(two_hands), Err(Fault::SecondHand { rope: 0 }));
    let unending = vec![Stop::tied(0, "a"), Stop::knot(1, Length::metres(f64::NAN), "knot"), Stop::free()];
    assert_eq!(rig(unending), Err(Fault::OutOfRange));
}

#[test]
fn the_tree_is_above_and_the_ground_below_everything() {
    let rig = |kinds: &[BodyKind]| {
        let bodies = kinds.iter().map(|&kind| Body::new(kind, "body")).collect();
        let climber = kinds.iter().position(|&kind| kind == BodyKind::Climber).unwrap();
        Rig::new(bodies, vec![Rope::new("rope", vec![Stop::tied(climber, "tie"), Stop::free()])]).map(|_| ())
    };
    assert_eq!(rig(&[BodyKind::Climber, BodyKind::Tree]), Err(Fault::OutOfOrder { body: 1 }));
    assert_eq!(rig(&[BodyKind::Ground, BodyKind::Climber]), Err(Fault::OutOfOrder { body: 0 }));
    assert_eq!(rig(&[BodyKind::Tree, BodyKind::Climber, BodyKind::Ground]), Ok(()));
    assert_eq!(rig(&[BodyKind::Climber]), Ok(()));
}

#[test]
fn every_stop_but_a_loose_tail_is_on_a_body() {
    let rig = |tie: Stop, tail: Stop| {
        let bodies = vec![Body::new(BodyKind::Tree, "crotch"), Body::new(BodyKind::Climber, "climber")];
        Rig::new(bodies, vec![Rope::new("rope", vec![tie, Stop::hitch(1, "hitch"), tail])]).map(|_| ())
    };
    let tie = || Stop::tied(0, "tie");
    assert_eq!(rig(tie(), Stop::free()), Ok(()));
    assert_eq!(rig(Stop { body: None, ..tie() }, Stop::free()), Err(Fault::NoSuchBody { rope: 0, stop: 0 }));
    assert_eq!(rig(tie(), Stop { body: Some(1), ..Stop::free() }), Err(Fault::NoSuchBody { rope: 0, stop: 2 }));
}

#[test]
fn a_helper_pulls_only_where_one_side_ends_loose() {
    let fault = |stops: Vec<Stop>, phase: fn(&Rig) -> Phase| {
        for reverse in [false, true] {
            let mut stops = stops.clone();
            if reverse {
                stops.reverse();
            }
            let bodies = vec![Body::new(BodyKind::Tree, "crotch"), Body::new(BodyKind::Climber, "climber")];
            let main = vec![Stop::tied(0, "a"), Stop::hand(1, "hand"), Stop::hitch(1, "hitch"), Stop::free()];
            let rig = Rig::new(bodies, vec![Rope::new("rope", main), Rope::new("other", stops)]).unwrap();
            assert_eq!(kinematics(&rig, &phase(&rig)).err(), Some(Fault::HandPullsNothing { rope: 1 }), "{reverse}");
        }
    };
    for phase in [Phase::pull, Phase::hold] {
        fault(vec![Stop::tied(0, "a"), Stop::helper(1, "helper"), Stop::tied(1, "b")], phase);
        fault(vec![Stop::free(), Stop::turn(0, "turn"), Stop::helper(1, "helper"), Stop::free()], phase);
    }
    // While the climber rests the hitch grips, and the rope is held on both sides of the helper.
    fault(vec![Stop::tied(0, "a"), Stop::helper(1, "helper"), Stop::hitch(1, "b"), Stop::free()], Phase::hold);
}

/// The hand that drives is the hand, wherever and whichever way the ropes are written.
#[test]
fn a_helper_never_drives() {
    let rig = rigs::tail_three_to_one_with_helper();
    let mut stops = rig.ropes()[0].stops.clone();
    stops.reverse();
    let reversed = Rig::new(rig.bodies().to_vec(), vec![Rope::new("rope", stops)]).unwrap();
    for rig in [rig, reversed] {
        let motion = kinematics(&rig, &Phase::pull(&rig)).unwrap();
        let forces = statics(&rig, &motion, &Losses::none(&rig), &Drive::Pull(300.0, vec![100.0])).unwrap();
        assert!((forces.load.low - 1100.0).abs() < 1e-9, "{:?}", forces.load);
    }
}
