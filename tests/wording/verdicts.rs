//! Every verdict, what decides it, and what would move it.

use super::{SI, US, answer, told, variant, variants};
use boughline::words::report;
use std::collections::BTreeSet;

const NEXT: &str =
    "Plan the way down and who stays on the ground before anything else; then try it at knee height first.";

/// What is said on top of the common plan; the verdict's id; the first sentence in either system; the second.
type Row = (&'static str, &'static str, &'static str, &'static str, &'static str);

#[rustfmt::skip]
const ROWS: &[Row] = &[
    ("hold=bare-rope", "none",
        "One pull takes about 328 N (33 kgf). How strong you are is not known, so there is nothing to hold it against.",
        "One pull takes about 74 lbf. How strong you are is not known, so there is nothing to hold it against.",
        "Measure your pull with a luggage scale or a bathroom scale, somebody beside you, and enter it; or enter your grip, or age and sex."),
    ("measuredPull=520N", "out-of-reach",
        "Your arms tire before the height: one pull takes about 328 N (33 kgf), 90 % of what they give, and the climb is about 76 such pulls. Within 30 min they last to it in about 6 of 100 reckoned climbs.",
        "Your arms tire before the height: one pull takes about 74 lbf, 90 % of what they give, and the climb is about 76 such pulls. Within 30 min they last to it in about 6 of 100 reckoned climbs.",
        "Arms a little stronger, or a pull that takes a little less (less kit, better turns), would let one climb in five come to the height. So may more time."),
    ("measuredPull=700N", "at-limit",
        "It is not yet a plan: no way down and no second person. One pull takes about 328 N (33 kgf), 67 % of what your arms give and 58 % of what your hands hold; the climb is about 76 such pulls, and about 12 min with the rests that strength needs to last. In about 98 of 100 reckoned climbs you come to the height within 30 min.",
        "It is not yet a plan: no way down and no second person. One pull takes about 74 lbf, 67 % of what your arms give and 58 % of what your hands hold; the climb is about 76 such pulls, and about 12 min with the rests that strength needs to last. In about 98 of 100 reckoned climbs you come to the height within 30 min.",
        NEXT),
    ("measuredPull=560N", "at-limit",
        "Your arms tire before the height: one pull takes about 328 N (33 kgf), 84 % of what they give, and the climb is about 76 such pulls. Within 30 min they last to it in about 38 of 100 reckoned climbs.",
        "Your arms tire before the height: one pull takes about 74 lbf, 84 % of what they give, and the climb is about 76 such pulls. Within 30 min they last to it in about 38 of 100 reckoned climbs.",
        "Arms 8 % stronger, or a pull that takes 8 % less (less kit, better turns), would let four climbs in five come to the height. So may more time."),
    ("measuredPull=350N&upperTurn=carabiner", "out-of-reach",
        "One pull is too hard: it takes about 432 N (44 kgf), and your arms give about 245 N (25 kgf) through a whole stroke.",
        "One pull is too hard: it takes about 97 lbf, and your arms give about 55 lbf through a whole stroke.",
        "Arms 2.0 times as strong, or a pull that takes 51 % less (less kit, better turns), would let one climb in five come to the height."),
    ("measuredPull=200N", "out-of-reach",
        "One pull is too hard: it takes about 328 N (33 kgf), and your arms give about 140 N (14 kgf) through a whole stroke.",
        "One pull is too hard: it takes about 74 lbf, and your arms give about 31 lbf through a whole stroke.",
        "Arms 2.7 times as strong, or a pull that takes 63 % less (less kit, better turns), would let one climb in five come to the height."),
    ("measuredPull=360N&pullTaken=lowest-point&pullHeld=cross-handle&gripRight=100N", "out-of-reach",
        "Your hands would slip or open first: one pull takes about 328 N (33 kgf), and they hold about 214 N (22 kgf) on this.",
        "Your hands would slip or open first: one pull takes about 74 lbf, and they hold about 48 lbf on this.",
        "A hold 63 % better, or a pull that takes 39 % less, would let one climb in five come to the height; a hand loop or a handle is the usual way."),
    ("measuredPull=200N&gripRight=50N", "out-of-reach",
        "One pull is too hard for arms and hands: it takes about 328 N (33 kgf); your arms give about 140 N (14 kgf) through a whole stroke, and your hands hold about 119 N (12 kgf) on this.",
        "One pull is too hard for arms and hands: it takes about 74 lbf; your arms give about 31 lbf through a whole stroke, and your hands hold about 27 lbf on this.",
        "Arms and a hold 3.0 times as strong, or a pull that takes 66 % less (less kit, better turns), would let one climb in five come to the height."),
    ("measuredPull=900N&handTravel=15cm", "out-of-reach",
        "In most reckoned climbs you would not rise: the hitch gives back 5 cm at every stroke, at least as much as a stroke brings.",
        "In most reckoned climbs you would not rise: the hitch gives back 2 in at every stroke, at least as much as a stroke brings.",
        "Less setback, a longer pull (leaning back, a hand loop) or a rig with less advantage would move it."),
    ("trunk=cervical&measuredPull=520N&pullHeld=hand-loop", "none",
        "One pull takes about 328 N (33 kgf), 90 % of what your arms give. What your hands hold on this has not been measured, so whether they keep it is not known.",
        "One pull takes about 74 lbf, 90 % of what your arms give. What your hands hold on this has not been measured, so whether they keep it is not known.",
        "Measure your grip, or your pull with what you will hold, and enter it."),
    ("trunk=cervical&gripRight=400N", "none",
        "One pull takes about 328 N (33 kgf), 58 % of what your hands hold. Your pull has not been measured, so whether your arms give it is not known.",
        "One pull takes about 74 lbf, 58 % of what your hands hold. Your pull has not been measured, so whether your arms give it is not known.",
        "Measure your pull with a luggage scale or a bathroom scale, somebody beside you, and enter it."),
    ("gripRight=250N", "out-of-reach",
        "One pull is too hard: it takes about 328 N (33 kgf), and your arms give about 309 N (31 kgf) through a whole stroke.",
        "One pull is too hard: it takes about 74 lbf, and your arms give about 69 lbf through a whole stroke.",
        "Arms 11 % stronger, or a pull that takes 10 % less (less kit, better turns), would let one climb in five come to the height."),
    ("age=45&sex=female", "at-limit",
        "Your arms tire before the height: one pull takes about 328 N (33 kgf), 78 % of what they give, and the climb is about 76 such pulls. Within 30 min they last to it in about 56 of 100 reckoned climbs. By age and sex alone, plan on no more than 372 N (38 kgf) of pull: the grip of one in five like you is weaker still.",
        "Your arms tire before the height: one pull takes about 74 lbf, 78 % of what they give, and the climb is about 76 such pulls. Within 30 min they last to it in about 56 of 100 reckoned climbs. By age and sex alone, plan on no more than 84 lbf of pull: the grip of one in five like you is weaker still.",
        "Arms 22 % stronger, or a pull that takes 18 % less (less kit, better turns), would let four climbs in five come to the height. So may more time."),
    ("age=78&sex=female&gloves=slick", "out-of-reach",
        "Your hands would slip or open first: one pull takes about 328 N (33 kgf), and they hold about 236 N (24 kgf) on this. By age and sex alone, plan on no more than 271 N (28 kgf) of pull: the grip of one in five like you is weaker still.",
        "Your hands would slip or open first: one pull takes about 74 lbf, and they hold about 53 lbf on this. By age and sex alone, plan on no more than 61 lbf of pull: the grip of one in five like you is weaker still.",
        "A hold 41 % better, or a pull that takes 29 % less, would let one climb in five come to the height; a hand loop or a handle is the usual way."),
    ("measuredPull=900N&handTravel=15cm&setback=30cm", "out-of-reach",
        "You would not rise: the hitch gives back 30 cm at every stroke, at least as much as a stroke brings.",
        "You would not rise: the hitch gives back 11.8 in at every stroke, at least as much as a stroke brings.",
        "Less setback, a longer pull (leaning back, a hand loop) or a rig with less advantage would move it."),
    ("measuredPull=900N&pullHeld=hand-loop&gripRight=280N", "at-limit",
        "Your hands tire before the height: one pull takes about 328 N (33 kgf), 82 % of what they hold, and the climb is about 76 such pulls. Within 30 min they last to it in about 61 of 100 reckoned climbs.",
        "Your hands tire before the height: one pull takes about 74 lbf, 82 % of what they hold, and the climb is about 76 such pulls. Within 30 min they last to it in about 61 of 100 reckoned climbs.",
        "A hold 7 % better, or a pull that takes 6 % less, would let four climbs in five come to the height; a hand loop or a handle is the usual way. So may more time."),
    ("gripRight=240N&training=trained-pulling&timeAllowed=2h", "at-limit",
        "Your hands decide: one pull takes about 328 N (33 kgf); they hold about 342 N (35 kgf), more or less, and it succeeds in about 55 of 100 reckoned climbs. The height is reached within 2 h in about 36 of 100.",
        "Your hands decide: one pull takes about 74 lbf; they hold about 77 lbf, more or less, and it succeeds in about 55 of 100 reckoned climbs. The height is reached within 2 h in about 36 of 100.",
        "A hold 17 % better, or a pull that takes 14 % less, would let four climbs in five come to the height; a hand loop or a handle is the usual way."),
    ("gripRight=280N&gripLeft=280N&training=trained-pulling", "at-limit",
        "Your hands tire before the height: one pull takes about 328 N (33 kgf), 78 % of what they hold, and the climb is about 76 such pulls. Within 30 min they last to it in about 64 of 100 reckoned climbs.",
        "Your hands tire before the height: one pull takes about 74 lbf, 78 % of what they hold, and the climb is about 76 such pulls. Within 30 min they last to it in about 64 of 100 reckoned climbs.",
        "A hold 7 % better, or a pull that takes 7 % less, would let four climbs in five come to the height; a hand loop or a handle is the usual way. So may more time."),
    ("measuredPull=900N&armPower=15W", "out-of-reach",
        "The power of your arms decides: coming to the height within 30 min takes about 8.1 W all the way, and they keep up about 7.5 W. About 16 of 100 reckoned climbs come to the height in that time.",
        "The power of your arms decides: coming to the height within 30 min takes about 8.1 W all the way, and they keep up about 7.5 W. About 16 of 100 reckoned climbs come to the height in that time.",
        "Arms a little stronger, or a pull that takes a little less (less kit, better turns), would let one climb in five come to the height. So may more time."),
    ("measuredPull=900N&timeAllowed=9min", "out-of-reach",
        "The time is too short: about 76 strokes take about 12 min without any rest, and you allow 9 min. About 8 of 100 reckoned climbs come to the height in that time.",
        "The time is too short: about 76 strokes take about 12 min without any rest, and you allow 9 min. About 8 of 100 reckoned climbs come to the height in that time.",
        "More time, a longer pull, less setback or a rig with less advantage would move it."),
    ("measuredPull=1200N&trunk=unsteady&wayDown=descend&secondPerson=rescuer", "at-limit",
        "The time in the harness decides, not your strength: it is about 12 min until you are down again. Where legs do not move, more than 10 min is at best your limit.",
        "The time in the harness decides, not your strength: it is about 12 min until you are down again. Where legs do not move, more than 10 min is at best your limit.",
        "A seat board under level thighs, legs raised, a stop on a platform, a lower climb or a rig with fewer strokes changes it."),
    ("measuredPull=900N&crotchHeight=11m", "out-of-reach",
        "The crotch is too low for this: with the hitches closed up under it your seat ends about 10.2 m above the ground, 1.2 m short of the height you ask for.",
        "The crotch is too low for this: with the hitches closed up under it your seat ends about 33 ft 6 in above the ground, 3 ft 11 in short of the height you ask for.",
        "A higher crotch, hitches and connectors that stack shorter, or a lower climb would move it."),
    ("measuredPull=900N&crotchHeight=14m&platformHeight=13.6m", "out-of-reach",
        "The crotch is too low for this: with the hitches closed up under it your seat ends about 13.2 m above the ground, 40 cm below the edge of the platform.",
        "The crotch is too low for this: with the hitches closed up under it your seat ends about 43 ft 4 in above the ground, 15.7 in below the edge of the platform.",
        "A higher crotch, hitches and connectors that stack shorter, or a lower climb would move it."),
    ("measuredPull=900N&ratedMass=80kg", "out-of-reach",
        "You and what you carry weigh about 88 kg, more than the 80 kg that the labels of your gear allow.",
        "You and what you carry weigh about 194 lb, more than the 176 lb that the labels of your gear allow.",
        "Gear of which every part is rated for more, or less kit, would move it."),
    ("measuredPull=900N&wayDown=descend&secondPerson=rescuer", "within-reach",
        "One pull takes about 328 N (33 kgf), 52 % of what your arms give and 45 % of what your hands hold; the climb is about 76 such pulls, and about 12 min with the rests that strength needs to last. In over 99 of 100 reckoned climbs you come to the height within 30 min. What comes nearest to failing: the time you allow. This is of strength and time alone: what the parts carry, the way down and the rescue are questions of their own.",
        "One pull takes about 74 lbf, 52 % of what your arms give and 45 % of what your hands hold; the climb is about 76 such pulls, and about 12 min with the rests that strength needs to last. In over 99 of 100 reckoned climbs you come to the height within 30 min. What comes nearest to failing: the time you allow. This is of strength and time alone: what the parts carry, the way down and the rescue are questions of their own.",
        "Try it at knee height first."),
    ("measuredPull=900N&wayDown=descend&secondPerson=rescuer&trialStrokes=10", "at-limit",
        "It is not yet a plan: only part of a trial. One pull takes about 328 N (33 kgf), 52 % of what your arms give and 45 % of what your hands hold; the climb is about 76 such pulls, and about 12 min with the rests that strength needs to last. In over 99 of 100 reckoned climbs you come to the height within 30 min.",
        "It is not yet a plan: only part of a trial. One pull takes about 74 lbf, 52 % of what your arms give and 45 % of what your hands hold; the climb is about 76 such pulls, and about 12 min with the rests that strength needs to last. In over 99 of 100 reckoned climbs you come to the height within 30 min.",
        "Enter what is missing; then try it at knee height first."),
    ("wayDown=descend&secondPerson=rescuer&trialStrokes=10&trialTime=90s&trialHeight=150cm&trialMore=10", "within-reach",
        "One pull takes about 328 N (33 kgf), 76 % of what your arms give and 66 % of what your hands hold; the climb is about 74 such pulls, and about 15 min with the rests that strength needs to last. In over 99 of 100 reckoned climbs you come to the height within 30 min. What comes nearest to failing: your arms, which tire. This is of strength and time alone: what the parts carry, the way down and the rescue are questions of their own.",
        "One pull takes about 74 lbf, 76 % of what your arms give and 66 % of what your hands hold; the climb is about 74 such pulls, and about 15 min with the rests that strength needs to last. In over 99 of 100 reckoned climbs you come to the height within 30 min. What comes nearest to failing: your arms, which tire. This is of strength and time alone: what the parts carry, the way down and the rescue are questions of their own.",
        "Try it at knee height first."),
];

#[test]
fn every_verdict_has_its_two_sentences() {
    for (more, id, si, us, second) in ROWS {
        for (view, first) in [(SI, si), (US, us)] {
            let told = told(more, view);
            assert_eq!((told.verdict.id, told.first.as_str(), told.second.as_str()), (*id, *first, *second), "{more}");
        }
    }
}

/// What is said of a rig that a helper hauls; the verdict's id; its two sentences.
const HAULED: &[(&str, &str, &str, &str)] = &[
    (
        "rig=ground-9",
        "out-of-reach",
        "The haul is too hard: it takes about 367 N (37 kgf), and the helper pulls about 250 N (25 kgf) again and again.",
        "Helpers together 18 % stronger, or a pull that takes 15 % less (less kit, a rig with more advantage), would let one haul in five succeed.",
    ),
    (
        "rig=ground-5&topTurn=ring&helperPull=400N",
        "at-limit",
        "The helper decides: the haul takes about 405 N (41 kgf); they pull about 400 N (41 kgf), more or less, and it succeeds in about 44 of 100 reckoned hauls.",
        "Helpers together 7 % stronger, or a pull that takes 7 % less (less kit, a rig with more advantage), would let four hauls in five succeed.",
    ),
    (
        "rig=ground-5&topTurn=ring&helperPull=900N",
        "at-limit",
        "It is not yet a plan: no way down. The haul takes about 405 N (41 kgf), 45 % of what the helper pulls.",
        NEXT,
    ),
    (
        "rig=ground-5&topTurn=ring&helperPull=900N&wayDown=lowered",
        "at-limit",
        "Nothing in this rig holds you once a hand lets go of the rope, so it is at best your limit, whatever the strength.",
        "A hitch at the harness that grips the rope, or something at the foot of the tree that does, would move it.",
    ),
    (
        "rig=ground-5&topTurn=ring&helperPull=900N&wayDown=lowered&ratedMass=60kg",
        "out-of-reach",
        "You and what you carry weigh about 88 kg, more than the 60 kg that the labels of your gear allow.",
        "Gear of which every part is rated for more, or less kit, would move it.",
    ),
];

#[test]
fn a_haul_is_the_helpers() {
    for (more, id, first, second) in HAULED {
        let told = report(&answer(&format!("bodyMass=80kg&climbHeight=11m&{more}")), SI);
        assert_eq!((told.verdict.id, told.first.as_str(), told.second.as_str()), (*id, *first, *second), "{more}");
        let strength_of_the_climber = ["handHold", "handShare", "strokes", "gain"];
        assert!(told.figures.iter().all(|figure| !strength_of_the_climber.contains(&figure.id)), "{more}");
    }
}

#[test]
fn without_the_length_of_a_pull_that_is_named_too() {
    let told = report(&answer("bodyMass=80kg&climbHeight=11m&rig=tail-3&measuredPull=900N"), SI);
    let beginning = "It is not yet a plan: no length of pull, no way down and no second person. ";
    assert!(told.first.starts_with(beginning), "{}", told.first);
}

/// Nobody chose the rig: it is said in words what stands in for it, and that it is not yet a plan.
#[test]
fn without_a_rig_the_usual_one_is_named() {
    let unsaid = |more: &str| report(&answer(&format!("bodyMass=80kg&climbHeight=11m&stature=1.75m&{more}")), SI);
    let strong = unsaid("measuredPull=900N&wayDown=descend&secondPerson=rescuer");
    assert_eq!(strong.verdict.id, "at-limit");
    assert!(strong.first.starts_with("It is not yet a plan: no rig chosen. "), "{}", strong.first);
    let usual = "Reckoned on a 3:1 on the rope’s own tail until you choose a rig. Reckoned with, unless";
    assert!(strong.assumed.starts_with(usual), "{}", strong.assumed);
    let [line] = strong.missing.as_slice() else { panic!("{:?}", strong.missing) };
    assert_eq!(line.fields, ["rig"]);
    assert_eq!(
        line.message,
        "Which rig you will climb on: until you choose one this is reckoned on a 3:1 on the rope’s own tail."
    );
    let weak = unsaid("measuredPull=200N");
    assert_eq!((weak.verdict.id, weak.verdict.text), ("out-of-reach", "Out of reach on a 3:1"));
    assert!(weak.second.contains("(less kit, a rig with more advantage)"), "{}", weak.second);
}

/// Past most ratings, with nothing read off a label.
#[test]
fn past_most_ratings_the_labels_decide() {
    let told = report(
        &answer(
            "bodyMass=135kg&kitMass=8kg&climbHeight=11m&rig=tail-3&stature=1.75m&measuredPull=1400N&wayDown=descend&secondPerson=rescuer",
        ),
        SI,
    );
    assert_eq!(told.verdict.id, "at-limit");
    assert_eq!(
        told.first,
        "You and what you carry weigh about 143 kg, past most ratings, and what the labels of your gear allow has not been entered."
    );
    assert_eq!(
        told.second,
        "Read the labels of harness, connectors, pulleys and devices, and enter the least that they allow."
    );
}

#[test]
fn every_level_and_every_gate_has_a_row() {
    let (mut levels, mut gates) = (BTreeSet::new(), BTreeSet::new());
    let mut texts = BTreeSet::new();
    for (more, ..) in ROWS {
        let answer = answer(&format!("{}&{more}", super::COMMON));
        texts.insert(report(&answer, SI).verdict.text);
        if let Some(verdict) = answer.verdict {
            levels.insert(variant(&verdict.level));
            gates.insert(variant(&verdict.decided));
        }
    }
    // Only rigs that hold nobody come to this; see `HAULED`.
    gates.insert("NothingHolds".to_owned());
    let gate = include_str!("../../src/ascent/decided.rs");
    assert_eq!(levels, variants(include_str!("../../src/ascent/level.rs"), "Level"));
    assert_eq!(gates, variants(gate, "Decided"));
    assert_eq!(
        texts.into_iter().collect::<Vec<_>>(),
        ["At your limit", "No verdict yet", "Out of reach as rigged", "Within reach on paper"]
    );
}
