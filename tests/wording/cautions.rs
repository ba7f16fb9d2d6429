//! Every caution, and every line about what has not been entered.

use super::{SI, US, answer, variant, variants};
use boughline::question::can_i_climb::{Caution, Missing};
use boughline::words::report;
use std::collections::BTreeSet;

const HAND_OVER_HAND: &str = "bodyMass=80kg&climbHeight=11m&rig=hand-over-hand";
const TAIL: &str = "bodyMass=80kg&climbHeight=11m&rig=tail-3";

const MOVING_ROPE: &str = "bodyMass=80kg&climbHeight=11m&rig=moving-rope";
const HAULED: &str = "bodyMass=80kg&climbHeight=11m&rig=ground-5";
const OWN: &str = "bodyMass=80kg&climbHeight=11m&rig=own";
const HEAVY: &str = "bodyMass=150kg&climbHeight=11m&rig=tail-3";

/// A plan, what is said on top of it, the caution it brings, whether
/// that can kill, and its sentence in either system.
type Row = (&'static str, &'static str, &'static str, bool, &'static str, &'static str);

const TOLD_ALIKE: &str = "";

#[rustfmt::skip]
const ROWS: &[Row] = &[
    (TAIL, "", "arithmetic", true, "This is arithmetic, not training. A qualified climber checks the rig and the tree; makers' instructions and labels, local codes and licensed practice win over any number here.", TOLD_ALIKE),
    (TAIL, "", "one-pull-only", true, "The verdict is about one pull, not many. Strength that is there once may not be there again.", TOLD_ALIKE),
    (TAIL, "measuredPull=520N&stature=1.7m", "rests-reckoned", true, "How arms and hands tire is reckoned from muscles that were tested, not from yours, which may need longer rests or give out. Turn back while you still have the strength to change over.", TOLD_ALIKE),
    (TAIL, "measuredPull=520N", "hard-pull", true, "One pull takes more than 80 % of what your arms give. At 80 % most people manage about ten pulls; nearer to 100 % fewer, and past it not one.", TOLD_ALIKE),
    (TAIL, "measuredPull=1000N", "pull-over-weight", true, "The pull you entered is more than you weigh. Check how it was measured.", TOLD_ALIKE),
    (TAIL, "backup=second-hitch", "stacked-hitches", true, "Two hitches on one rope, grabbed together, both let go. Keep hands off them while you hang.", TOLD_ALIKE),
    (TAIL, "", "single-hitch", true, "One hitch alone holds you. Set it, dress it and test it low down each time, and back it up.", TOLD_ALIKE),
    (TAIL, "backup=tail-knot&knotSlack=3m", "drop-to-knot", true, "If the hitch that holds you fails you drop about 1.5 m before the knot catches, and the jerk is several times your weight. Near the ground you may land first. Tie the knot again often.", "If the hitch that holds you fails you drop about 4 ft 11 in before the knot catches, and the jerk is several times your weight. Near the ground you may land first. Tie the knot again often."),
    (HAND_OVER_HAND, "", "untended-hitch", true, "Nothing pulls the hitch up as you rise: a hand or a tether must do it at every pull, or slack grows under it and you fall on it.", TOLD_ALIKE),
    (TAIL, "upperTurn=carabiner", "sliding-turn", false, "A ring or carabiner eats nearly half of the pull at that turn, and wears the rope. A pulley there, rated for you, is the cheapest help.", TOLD_ALIKE),
    (MOVING_ROPE, "", "over-bark", false, "Bark eats half of the pull or more, wears the rope and hurts the tree. A ring or a pulley at the top is the usual way.", TOLD_ALIKE),
    (HAULED, "", "nothing-holds", true, "Nothing in this rig holds you once the helper lets go. Before you leave the ground, something at the foot that grips the rope by itself must be in it.", TOLD_ALIKE),
    (OWN, "ownRig=tied.tree--hand.climber", "nothing-grips", true, "Nothing in this rig holds you once your hands let go. Before you leave the ground, a hitch that grips the rope by itself must be in it.", TOLD_ALIKE),
    (HAULED, "", "haul-hard", true, "With this much advantage one helper can break gear, or crush you under a limb. They must see or hear you, and stop at any resistance.", TOLD_ALIKE),
    (TAIL, "age=85&sex=male", "past-survey", false, "The survey of grip counts everybody over 80 alike, so past that age the guess is too kind. Measure.", TOLD_ALIKE),
    (TAIL, "measuredPull=520N&pullHeld=bare-rope&gripRight=100N", "grip-and-pull", true, "Your grip says your hands could not have held the pull you entered. Measure both again.", TOLD_ALIKE),
    (TAIL, "cadence=20", "fast-cadence", false, "You count more strokes a minute than there is time for: pulling and moving the hitch leave about 6.", TOLD_ALIKE),
    (TAIL, "gripRight=400N", "predicted", false, "Your pull was not measured but guessed, good to about 30 % for one person. A luggage scale tells more in a minute.", TOLD_ALIKE),
    (TAIL, "crotchHeight=11m&seatHeight=0.5m", "crotch-too-low", true, "The crotch is too low for the height you want to climb: pulled up as far as the rig goes, you are still about 1.3 m, and up to 1.51 m, short. A higher crotch or a shorter stack helps. Stop before anything jams under the crotch: what is jammed and loaded may not come free.", "The crotch is too low for the height you want to climb: pulled up as far as the rig goes, you are still about 4 ft 3 in, and up to 4 ft 11 in, short. A higher crotch or a shorter stack helps. Stop before anything jams under the crotch: what is jammed and loaded may not come free."),
    (TAIL, "crotchHeight=12.4m&seatHeight=0.5m", "crotch-near", true, "The crotch may be up to 11 cm too low for the height you want to climb. Stop before anything jams under it: what is jammed and loaded may not come free.", "The crotch may be up to 4.2 in too low for the height you want to climb. Stop before anything jams under it: what is jammed and loaded may not come free."),
    (TAIL, "crotchHeight=14m&platformHeight=14m", "below-edge", false, "Your seat does not come above the edge: pulled up as far as the rig goes, it stays about 80 cm, and up to 1.01 m, below. A higher crotch, a lower edge or a shorter stack helps.", "Your seat does not come above the edge: pulled up as far as the rig goes, it stays about 2 ft 7 in, and up to 3 ft 4 in, below. A higher crotch, a lower edge or a shorter stack helps."),
    (TAIL, "crotchHeight=14m&platformHeight=13m", "edge-near", false, "Your seat may not come above the edge: pulled up as far as the rig goes, it may stay up to 8.3 mm below.", "Your seat may not come above the edge: pulled up as far as the rig goes, it may stay up to 0.3 in below."),
    (TAIL, "kitMass=25kg", "over-test-mass", true, "All-up you may be over 100 kg, the mass harnesses are tested with. Check the label of every part.", "All-up you may be over 220 lb, the mass harnesses are tested with. Check the label of every part."),
    (HEAVY, "", "past-ratings", true, "All-up you may be over 140 kg, past most ratings. Every part must carry a label that says it may hold you.", "All-up you may be over 309 lb, past most ratings. Every part must carry a label that says it may hold you."),
    (TAIL, "", "hanging-still", true, "Hanging still in a harness makes people faint, some within minutes and without warning, sooner if their legs do not move. Somebody who can get you down at once must be there, and starts to get you down the moment you stop moving.", TOLD_ALIKE),
    (TAIL, "", "surroundings", false, "Keep rope, tools and body at least 3 m from any power line, and stay down in wind or lightning.", "Keep rope, tools and body at least 10 ft from any power line, and stay down in wind or lightning."),
    (TAIL, "", "knee-height", false, "Whatever it says here, try it at knee height first: ten strokes with a trained second person beside you, helmet on, a phone that has reception, and a way to be lowered.", TOLD_ALIKE),
];

fn plan(base: &str, more: &str) -> String {
    if more.is_empty() { base.to_owned() } else { format!("{base}&{more}") }
}

#[test]
fn every_caution_has_its_sentence() {
    let mut met = BTreeSet::new();
    for (base, more, id, grave, si, us) in ROWS {
        let answer = answer(&plan(base, more));
        for (view, wanted) in [(SI, si), (US, if *us == TOLD_ALIKE { si } else { us })] {
            let lines = report(&answer, view).cautions;
            let found = lines.iter().find(|line| line.id == *id).unwrap_or_else(|| panic!("{id} is wanted: {lines:?}"));
            assert_eq!((found.text.as_str(), found.grave), (*wanted, *grave));
        }
        // Those of a body have a table of their own.
        met.extend(answer.cautions.iter().filter(|caution| !matches!(caution, Caution::Body(_))).map(variant));
    }
    let mut all = variants(include_str!("../../src/ascent/caution.rs"), "Caution");
    assert!(all.remove("Body"));
    assert_eq!(met, all);
    let ids: BTreeSet<&str> = ROWS.iter().map(|row| row.2).collect();
    assert_eq!(ids.len(), met.len(), "every caution has a row");
}

#[test]
fn a_caution_is_there_only_where_it_holds() {
    let ids = |plan: &str| report(&answer(plan), SI).cautions.iter().map(|line| line.id).collect::<Vec<_>>();
    let always = ["arithmetic", "one-pull-only", "stacked-hitches", "hanging-still", "surroundings", "knee-height"];
    assert_eq!(ids(&plan(TAIL, "backup=second-hitch&kitMass=0kg")), always);
    let all_up = |kit: &str| ids(&plan(TAIL, &format!("kitMass={kit}&backup=second-hitch")));
    assert!(!all_up("19.9kg").contains(&"over-test-mass"));
    assert!(!all_up("20kg").contains(&"over-test-mass"), "100 kg is not over 100 kg");
    assert!(all_up("20.1kg").contains(&"over-test-mass"));
    assert!(all_up("60kg").contains(&"over-test-mass"));
    let heavy = ids(&plan("bodyMass=90kg&climbHeight=11m&rig=tail-3&kitMass=50.1kg", "backup=second-hitch"));
    assert!(heavy.contains(&"past-ratings") && !heavy.contains(&"over-test-mass"));
    // 80 kg weigh 784.5 N.
    assert!(!ids(&plan(TAIL, "measuredPull=784N")).contains(&"pull-over-weight"));
}

#[rustfmt::skip]
const MISSING: &[(&[&str], &str)] = &[
    (&["measuredPull", "trialStrokes", "gripRight", "gripLeft", "age", "sex"], "How strong you are: best ten strokes at knee height, else a pull you have measured, else your grip, else age and sex. Without it there is no verdict, only the pull that is needed."),
    (&["stature", "handTravel"], "How long your pull is: enter your stature, or the rope you pull in a stroke. Without it there is no count of strokes."),
    (&["wayDown"], "How you come down again, tried low down first. Without a way down nothing is within reach."),
    (&["secondPerson"], "A second person on the ground, able and equipped to get you down at once."),
];

/// What is said, and what is still missing of the strength.
const STRENGTH: &[(&str, &str, &str)] = &[
    (
        "trunk=cervical&gripRight=300N",
        "measuredPull trialStrokes",
        "How strong you are: after an injury at the neck only a measured pull counts.",
    ),
    ("age=45", "sex", "Age and sex tell something only together. A measured pull or a grip tells more."),
    ("sex=male", "age", "Age and sex tell something only together. A measured pull or a grip tells more."),
];

#[test]
fn everything_missing_has_its_line() {
    let answer = answer(TAIL);
    for view in [SI, US] {
        let lines = report(&answer, view).missing;
        let lines: Vec<(Vec<&str>, &str)> = lines
            .iter()
            .map(|line| (line.fields.iter().map(String::as_str).collect(), line.message.as_str()))
            .collect();
        let wanted: Vec<(Vec<&str>, &str)> = MISSING.iter().map(|(fields, text)| (fields.to_vec(), *text)).collect();
        assert_eq!(lines, wanted);
    }
    let mut met: BTreeSet<String> = answer.missing.iter().map(variant).collect();
    for (more, fields, message) in STRENGTH {
        let answer = super::answer(&plan(TAIL, more));
        let lines = report(&answer, SI).missing;
        let line = lines.first().expect("strength is missing");
        assert_eq!((line.fields.join(" ").as_str(), line.message.as_str()), (*fields, *message));
        met.extend(answer.missing.iter().map(variant));
    }
    // Whoever wants to get over an edge needs to know how high the crotch is.
    let edge = super::answer(&plan(TAIL, "platformHeight=10m"));
    let lines = report(&edge, SI).missing;
    let line = lines.iter().find(|line| line.fields == ["crotchHeight"]).expect("the crotch is missing");
    assert_eq!(
        line.message,
        "How high the crotch is: without it nobody can tell whether your seat comes above the edge of the platform."
    );
    met.extend(edge.missing.iter().map(variant));
    met.extend(super::answer("bodyMass=80kg&climbHeight=11m").missing.iter().map(variant));
    // A loop proves only itself, and from an injury at the neck nothing is predicted.
    let looped = super::answer(&plan(TAIL, "trunk=cervical&measuredPull=520N&pullHeld=hand-loop"));
    let line = report(&looped, SI).missing.into_iter().next().expect("the hold is missing");
    assert_eq!(line.fields, ["gripRight", "gripLeft", "pullHeld", "hold"]);
    assert_eq!(
        line.message,
        "What your hands hold: after an injury at the neck only what was measured counts, and a loop round the hand proves only itself. Measure your grip, or your pull with what you will hold."
    );
    met.extend(looped.missing.iter().map(variant));
    let tried = super::answer(&plan(TAIL, "measuredPull=520N&trialHeight=1.5m"));
    let line = report(&tried, SI).missing.into_iter().next().expect("the rest of the trial is missing");
    assert_eq!(line.fields, ["trialStrokes", "trialTime", "trialHeight"]);
    assert_eq!(
        line.message,
        "Your trial at knee height counts once its strokes, its time and its height are all there."
    );
    met.extend(tried.missing.iter().map(variant));
    let lowered = super::answer(&plan(TAIL, "measuredPull=520N&wayDown=lowered"));
    let line = report(&lowered, SI).missing.into_iter().find(|line| line.fields.contains(&"anchor".to_owned()));
    assert_eq!(
        line.expect("a rope tied at the crotch lets nobody down").message,
        "To be lowered, the rope must be made fast at the foot of the tree, in a device that lets it out; yours is tied. Make it fast so, or come down otherwise."
    );
    met.extend(lowered.missing.iter().map(variant));
    let tied = super::answer(&plan(TAIL, "measuredPull=520N&wayDown=lowered&anchor=base"));
    assert!(tied.missing.contains(&Missing::Lowering), "a plain tie pays out nothing");
    let at_the_foot = super::answer(&plan(TAIL, "measuredPull=520N&wayDown=lowered&anchor=base-lowerable"));
    assert!(at_the_foot.missing.iter().all(|missing| !matches!(missing, Missing::Lowering | Missing::WayDown)));
    assert_eq!(met, variants(include_str!("../../src/ascent/answer.rs"), "Missing"));
}
