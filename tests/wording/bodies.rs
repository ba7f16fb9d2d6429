//! Every caution that is a body's: its sentence, who is told it and who is not.

use super::{SI, US, answer, variant, variants};
use boughline::question::can_i_climb::Caution;
use boughline::words::report;
use std::collections::BTreeSet;

/// The caution; whether it can kill; its sentence in either system; plans that bring it; plans that do not.
type Row = (&'static str, bool, &'static str, &'static str, &'static [&'static str], &'static [&'static str]);

const TOLD_ALIKE: &str = "";

#[rustfmt::skip]
const ROWS: &[Row] = &[
    ("spinal-injury", true,
        "After a spinal injury ask a doctor who knows yours before you hang in a harness. Somebody beside you must know what can go wrong.", TOLD_ALIKE,
        &["trunk=unsteady", "trunk=cervical", "trunk=unsteady&legs=full", "rig=ground-5&trunk=unsteady"],
        &["", "legs=none", "legs=some"]),
    ("dysreflexia", true,
        "If your injury is at or above the sixth thoracic vertebra (T6), tight straps can send your blood pressure up at once (autonomic dysreflexia). Sit up, loosen every strap, get help.", TOLD_ALIKE,
        &["trunk=unsteady", "trunk=cervical", "rig=ground-5&trunk=cervical"],
        &["", "legs=none", "legs=full"]),
    ("harness-clock", true,
        "Legs that do not move send no blood back. Your time in the harness counts from leaving the seat until you are back in it: be careful from the first minute. Fit men hung still in sit harnesses, and 30 % of tests ended near fainting within the hour, suddenly, the earliest after 13.4 min; raised legs added about 10 min. Thighs level on a seat board, legs raised, a stop on a platform, a shorter climb or a faster rig help; no time is known to do no harm.", TOLD_ALIKE,
        &["legs=none", "trunk=unsteady", "trunk=cervical", "trunk=unsteady&legs=some", "rig=ground-5&legs=none"],
        &["", "legs=some", "legs=full", "trunk=unsteady&legs=full"]),
    ("numb-skin", false,
        "If some of your skin does not feel, straps hurt it unnoticed: take the pressure off often, and look at that skin after every try.", TOLD_ALIKE,
        &["legs=none", "trunk=unsteady", "trunk=unsteady&legs=full", "rig=ground-5&legs=none"],
        &["", "legs=some", "legs=full"]),
    ("thin-bones", false,
        "After a spinal injury bones below it grow thin: a foot that catches, or a knock against the stem, can break one unfelt. Keep legs from dangling, and look them over after every try.", TOLD_ALIKE,
        &["legs=none", "trunk=unsteady", "rig=ground-5&legs=none"],
        &["", "legs=some", "trunk=unsteady&legs=full"]),
    ("shoulder-overuse", false,
        "If you push a wheelchair, you need your shoulders every day: of wheelchair users 30 to 60 % have overused ones. Stop when it hurts, and leave days of rest between tries.", TOLD_ALIKE,
        &["legs=none", "trunk=cervical"],
        &["", "legs=some", "trunk=unsteady&legs=full", "rig=ground-5&legs=none"]),
    ("overhead-reach", false,
        "Of wheelchair users who can lift an empty can overhead, 20 to 25 % cannot with 2.27 kg in it. Try how far your arms go up with something in the hand, and enter it: the length of your pull is reckoned as if they went all the way.",
        "Of wheelchair users who can lift an empty can overhead, 20 to 25 % cannot with 5 lb in it. Try how far your arms go up with something in the hand, and enter it: the length of your pull is reckoned as if they went all the way.",
        &["legs=none&stature=1.7m", "trunk=unsteady&stature=1.7m"],
        &["stature=1.7m", "legs=none", "legs=none&stature=1.7m&shoulderReach=limited", "legs=none&stature=1.7m&shoulderReach=full", "legs=none&stature=1.7m&handTravel=60cm", "rig=ground-5&legs=none&stature=1.7m"]),
    ("trunk-reach", true,
        "The length of your pull is that of soldiers, whose trunk holds them. Measure the rope you pull in a stroke, sitting as you would climb.", TOLD_ALIKE,
        &["trunk=unsteady&stature=1.7m", "trunk=cervical&stature=1.7m"],
        &["stature=1.7m", "legs=none&stature=1.7m", "trunk=unsteady", "trunk=unsteady&handTravel=60cm"]),
    ("one-hand", true,
        "One hand does everything: while it pulls, none is left to push a hitch up or to steady you. The rope itself or a tether must push up the hitch that holds you. Try every step low down, above all the change to going down.", TOLD_ALIKE,
        &["climbArms=one", "measuredPull=400N&pullArms=one", "rig=hand-over-hand&climbArms=one"],
        &["", "rig=hand-over-hand", "measuredPull=400N&pullArms=one&climbArms=two", "rig=ground-5&climbArms=one"]),
];

fn plan(more: &str) -> String {
    let rig = if more.starts_with("rig=") { "" } else { "&rig=tail-3" };
    format!("bodyMass=80kg&climbHeight=11m{rig}&{more}").trim_end_matches('&').to_owned()
}

#[test]
fn a_body_is_told_what_is_its_own_and_nothing_else() {
    for (id, grave, si, us, with, without) in ROWS {
        for (view, wanted) in [(SI, si), (US, if *us == TOLD_ALIKE { si } else { us })] {
            for more in *with {
                let lines = report(&answer(&plan(more)), view).cautions;
                let found = lines.iter().find(|line| line.id == *id).unwrap_or_else(|| panic!("{id} for {more}"));
                assert_eq!((found.text.as_str(), found.grave), (*wanted, *grave));
            }
            for more in *without {
                let lines = report(&answer(&plan(more)), view).cautions;
                assert!(lines.iter().all(|line| line.id != *id), "{id} for {more}");
            }
        }
    }
}

#[test]
fn every_caution_of_a_body_has_a_row() {
    let mut met = BTreeSet::new();
    for more in ROWS.iter().flat_map(|row| row.4) {
        met.extend(answer(&plan(more)).cautions.iter().filter_map(|caution| match caution {
            Caution::Body(caution) => Some(variant(caution)),
            _ => None,
        }));
    }
    assert_eq!(met, variants(include_str!("../../src/ascent/body_caution.rs"), "BodyCaution"));
    assert_eq!(met.len(), ROWS.len());
}

/// Hands that differ, and one hand alone, in the lines of what they give and hold.
#[rustfmt::skip]
const HANDS: &[(&str, &str, &str)] = &[
    ("gripRight=400N&gripLeft=300N",
        "grip of both hands 700 N × 0.65 (0.50 to 0.85) = 455 N; one person in three is more than 25 % off",
        "From the grip you entered; a hand that was not measured counts 0.9 of the other."),
    ("rig=hand-over-hand&gripRight=400N&gripLeft=300N",
        "twice the grip of your weaker hand 600 N × 0.65 (0.50 to 0.85) × 0.58 (0.56 to 0.61) for one arm at a time = 226 N; one person in three is more than 25 % off",
        "From the grip you entered; a hand that was not measured counts 0.9 of the other. The hands take turns, so the weaker counts."),
    ("climbArms=one&gripRight=400N&gripLeft=300N",
        "twice the grip of your hand 800 N × 0.65 (0.50 to 0.85) × 0.58 (0.56 to 0.61) for one arm at a time = 302 N; one person in three is more than 25 % off",
        "From the grip you entered; of two hands, the stronger."),
];

#[test]
fn hands_that_differ_are_reckoned_as_it_is_told() {
    for (more, arms, hands) in HANDS {
        let told = report(&answer(&plan(more)), SI);
        let line = |id: &str| told.figures.iter().find(|figure| figure.id == id).expect(id).workings[0].clone();
        assert_eq!((line("armPull").as_str(), line("handHold").as_str()), (*arms, *hands), "{more}");
    }
}

/// A one-armed pull went through the stronger hand, for all that is known, so a weak other hand gives no alarm.
#[test]
fn a_weak_other_hand_does_not_belie_a_pull_of_one_arm() {
    let alarmed = |more: &str| report(&answer(&plan(more)), SI).cautions.iter().any(|line| line.id == "grip-and-pull");
    let one = "measuredPull=300N&pullArms=one&climbArms=two&pullHeld=bare-rope&gripLeft=100N";
    assert!(!alarmed(&format!("{one}&gripRight=400N")));
    assert!(alarmed(&format!("{one}&gripRight=200N")));
}
