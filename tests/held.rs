//! Who is held by what, and how far they drop, against what can be worked out by hand.

#![allow(clippy::unwrap_used, reason = "a rig that cannot be made fails the test")]

use boughline::quantity::Length;
use boughline::reeving::{Backup, Part, catalogue, drop_after, is_held};

mod rigs;

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
    // A knot below the hitch has no turn to jam at: it helps where the hitch slips, not where its cord fails.
    assert_eq!(hand(rigs::knot()), ["anchor", "lower hitch", "climbing rope"]);
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

/// The first knot to jam ends the drop, whichever comes first along the tail; two strands halve it.
#[test]
fn of_two_knots_in_one_tail_the_tighter_one_catches() {
    for slacks in [[1.0, 4.0], [4.0, 1.0]] {
        let rig = rigs::tail_three_to_one_with_knots(&slacks);
        let drop = drop_after(&rig, Part::Stop { rope: 0, stop: 2 });
        assert_eq!(drop.map(Length::in_metres), Some(0.5), "{slacks:?}");
        let rig = rigs::ropes_with_knots(&[&slacks]);
        let drop = drop_after(&rig, Part::Stop { rope: 0, stop: 1 });
        assert_eq!(drop.map(Length::in_metres), Some(1.0), "{slacks:?}");
    }
}

#[test]
fn of_knots_on_two_ropes_the_tighter_one_catches() {
    for (one, other) in [(2.0, 3.0), (3.0, 2.0), (2.0, 2.0)] {
        let rig = rigs::ropes_with_knots(&[&[one], &[other]]);
        let lower_hitch = Part::Stop { rope: 0, stop: 1 };
        assert_eq!(drop_after(&rig, lower_hitch).map(Length::in_metres), Some(2.0));
        // Only the other rope is left.
        let anchor = Part::Stop { rope: 0, stop: 0 };
        assert_eq!(drop_after(&rig, anchor).map(Length::in_metres), Some(other));
    }
}

/// One metre of cord on two strands, before two metres of rope on one.
#[test]
fn a_knotted_haul_cord_catches_after_half_its_slack() {
    let rig = rigs::haul_cord_with_knots();
    let lower_hitch = Part::Stop { rope: 0, stop: 2 };
    assert_eq!(drop_after(&rig, lower_hitch).map(Length::in_metres), Some(0.5));
}
