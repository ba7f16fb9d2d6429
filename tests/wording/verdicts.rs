//! Every verdict, what decides it, and what would move it.

use super::{SI, US, answer, told, variant, variants};
use boughline::question::can_i_climb::{Decided, Level, Verdict};
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
    ("measuredPull=520N", "at-limit",
        "It is not yet a plan: no way down and no second person. One pull takes about 328 N (33 kgf), 90 % of what your arms give and 78 % of what your hands hold; the climb is about 76 such pulls, and about 46 min with the rests that strength needs to last.",
        "It is not yet a plan: no way down and no second person. One pull takes about 74 lbf, 90 % of what your arms give and 78 % of what your hands hold; the climb is about 76 such pulls, and about 46 min with the rests that strength needs to last.",
        NEXT),
    ("measuredPull=490N", "at-limit",
        "Your arms decide: one pull takes about 328 N (33 kgf); they give about 343 N (35 kgf), more or less, and it succeeds in about 62 of 100 reckoned climbs.",
        "Your arms decide: one pull takes about 74 lbf; they give about 77 lbf, more or less, and it succeeds in about 62 of 100 reckoned climbs.",
        "Arms a little stronger, or a pull that takes a little less (less kit, better turns), would let four pulls in five succeed."),
    ("measuredPull=550N&pullTaken=lowest-point&pullHeld=hand-loop&gripRight=235N", "at-limit",
        "Your hands decide: one pull takes about 328 N (33 kgf); they hold about 335 N (34 kgf), more or less, and it succeeds in about 62 of 100 reckoned climbs.",
        "Your hands decide: one pull takes about 74 lbf; they hold about 75 lbf, more or less, and it succeeds in about 62 of 100 reckoned climbs.",
        "A hold 6 % better, or a pull that takes 6 % less, would let four pulls in five succeed; a hand loop or a handle is the usual way."),
    ("measuredPull=350N&upperTurn=carabiner", "out-of-reach",
        "One pull is too hard: it takes about 432 N (44 kgf), and your arms give about 245 N (25 kgf) through a whole stroke.",
        "One pull is too hard: it takes about 97 lbf, and your arms give about 55 lbf through a whole stroke.",
        "Arms 73 % stronger, or a pull that takes 42 % less (less kit, better turns), would let one pull in five succeed, which is no climb."),
    ("measuredPull=200N", "out-of-reach",
        "One pull is too hard: it takes about 328 N (33 kgf), and your arms give about 140 N (14 kgf) through a whole stroke.",
        "One pull is too hard: it takes about 74 lbf, and your arms give about 31 lbf through a whole stroke.",
        "Arms 2.3 times as strong, or a pull that takes 57 % less (less kit, better turns), would let one pull in five succeed, which is no climb."),
    ("measuredPull=360N&pullTaken=lowest-point&pullHeld=cross-handle&gripRight=100N", "out-of-reach",
        "Your hands would slip or open first: one pull takes about 328 N (33 kgf), and they hold about 214 N (22 kgf) on this.",
        "Your hands would slip or open first: one pull takes about 74 lbf, and they hold about 48 lbf on this.",
        "A hold 37 % better, or a pull that takes 27 % less, would let one pull in five succeed, which is no climb; a hand loop or a handle is the usual way."),
    ("measuredPull=200N&gripRight=50N", "out-of-reach",
        "One pull is too hard for arms and hands: it takes about 328 N (33 kgf); your arms give about 140 N (14 kgf) through a whole stroke, and your hands hold about 119 N (12 kgf) on this.",
        "One pull is too hard for arms and hands: it takes about 74 lbf; your arms give about 31 lbf through a whole stroke, and your hands hold about 27 lbf on this.",
        "Arms and a hold 2.5 times as strong, or a pull that takes 60 % less (less kit, better turns), would let one pull in five succeed, which is no climb."),
    ("measuredPull=900N&handTravel=15cm", "at-limit",
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
    ("gripRight=250N", "at-limit",
        "Your arms decide: one pull takes about 328 N (33 kgf); they give about 309 N (31 kgf), more or less, and it succeeds in about 34 of 100 reckoned climbs.",
        "Your arms decide: one pull takes about 74 lbf; they give about 69 lbf, more or less, and it succeeds in about 34 of 100 reckoned climbs.",
        "Arms 33 % stronger, or a pull that takes 25 % less (less kit, better turns), would let four pulls in five succeed."),
    ("age=45&sex=female", "at-limit",
        "Your arms decide: one pull takes about 328 N (33 kgf); they give about 420 N (43 kgf), more or less, and it succeeds in about 78 of 100 reckoned climbs. By age and sex alone, plan on no more than 372 N (38 kgf) of pull: the grip of one in five like you is weaker still.",
        "Your arms decide: one pull takes about 74 lbf; they give about 94 lbf, more or less, and it succeeds in about 78 of 100 reckoned climbs. By age and sex alone, plan on no more than 84 lbf of pull: the grip of one in five like you is weaker still.",
        "Arms a little stronger, or a pull that takes a little less (less kit, better turns), would let four pulls in five succeed."),
    ("age=78&sex=female&gloves=slick", "out-of-reach",
        "Your hands would slip or open first: one pull takes about 328 N (33 kgf), and they hold about 236 N (24 kgf) on this. By age and sex alone, plan on no more than 271 N (28 kgf) of pull: the grip of one in five like you is weaker still.",
        "Your hands would slip or open first: one pull takes about 74 lbf, and they hold about 53 lbf on this. By age and sex alone, plan on no more than 61 lbf of pull: the grip of one in five like you is weaker still.",
        "A hold 19 % better, or a pull that takes 16 % less, would let one pull in five succeed, which is no climb; a hand loop or a handle is the usual way."),
    ("measuredPull=900N&handTravel=15cm&setback=30cm", "out-of-reach",
        "You would not rise: the hitch gives back 30 cm at every stroke, at least as much as a stroke brings.",
        "You would not rise: the hitch gives back 11.8 in at every stroke, at least as much as a stroke brings.",
        "Less setback, a longer pull (leaning back, a hand loop) or a rig with less advantage would move it."),
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

/// No plan is complete yet, so this is told of an answer made up for the purpose.
#[test]
fn within_reach_ends_with_knee_height() {
    let mut answer = answer("bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m&measuredPull=900N");
    answer.missing.clear();
    answer.verdict =
        Some(Verdict { level: Level::WithinReach, decided: Decided::Arms, chance: 0.97, stuck: 0.0, stronger: None });
    let told = report(&answer, SI);
    assert_eq!((told.verdict.id, told.verdict.text), ("within-reach", "Within reach on paper"));
    assert_eq!(
        told.first,
        "Your arms decide: one pull takes about 328 N (33 kgf); they give about 630 N (64 kgf), more or less, and it succeeds in about 97 of 100 reckoned climbs."
    );
    assert_eq!(told.second, "Try it at knee height first.");
}

#[test]
fn every_level_and_every_gate_has_a_row() {
    let (mut levels, mut gates) = (BTreeSet::from(["WithinReach".to_owned()]), BTreeSet::new());
    let mut texts = BTreeSet::new();
    for (more, ..) in ROWS {
        let answer = answer(&format!("{}&{more}", super::COMMON));
        texts.insert(report(&answer, SI).verdict.text);
        if let Some(verdict) = answer.verdict {
            levels.insert(variant(&verdict.level));
            gates.insert(variant(&verdict.decided));
        }
    }
    let source = include_str!("../../src/ascent/verdict.rs");
    assert_eq!(levels, variants(source, "Level"));
    assert_eq!(gates, variants(source, "Decided"));
    assert_eq!(texts.into_iter().collect::<Vec<_>>(), ["At your limit", "No verdict yet", "Out of reach as rigged"]);
}
