//! Of two answers: what is better never makes it worse.

use super::plans::{Plan, plans, with, without};
use super::{answer, cases};
use boughline::field::{Said, Spread};
use boughline::question::can_i_climb::{Answer, Level};
use proptest::prelude::*;

fn chance(answer: &Answer) -> Option<f64> {
    answer.verdict.map(|verdict| verdict.chance)
}

fn reaches(answer: &Answer) -> Option<f64> {
    answer.verdict.and_then(|verdict| verdict.reaches)
}

fn rank(answer: &Answer) -> Option<u8> {
    answer.verdict.map(|verdict| match verdict.level {
        Level::OutOfReach => 0,
        Level::AtLimit => 1,
        Level::WithinReach => 2,
    })
}

/// Whether no end of one spread is above that of the other. Elimination may differ in the last places.
pub(crate) fn at_most(one: Spread, other: Spread) -> bool {
    let below = |one: f64, other: f64| one <= other + other.abs() * 1e-12;
    below(one.low, other.low) && below(one.likely, other.likely) && below(one.high, other.high)
}

pub(crate) fn numbers(plan: &Plan, id: &'static str, one: f64, other: f64) -> (Answer, Answer) {
    let say = |value: f64| answer(&with(plan, id, Said::Number(value)));
    (say(one.min(other)), say(one.max(other)))
}

pub(crate) fn words(plan: &Plan, id: &'static str, one: &str, other: &str) -> (Answer, Answer) {
    let say = |word: &str| answer(&with(plan, id, Said::Text(word.to_owned())));
    (say(one), say(other))
}

/// Nothing about the second is worse for the climber than about the first.
fn no_worse(worse: &Answer, better: &Answer) -> Result<(), TestCaseError> {
    prop_assert!(at_most(better.need, worse.need), "{:?} then {:?}", worse.need, better.need);
    prop_assert!(chance(worse) <= chance(better), "{:?} then {:?}", worse.verdict, better.verdict);
    // Whether a count of pulls is known may change with what is said of them.
    if let (Some(worse), Some(better)) = (reaches(worse), reaches(better)) {
        prop_assert!(worse <= better, "{worse} then {better}");
    }
    prop_assert!(rank(worse) <= rank(better));
    Ok(())
}

/// Whether one need not rest longer than the other, to the last step of halving.
fn rests_no_longer(one: &Answer, other: &Answer) -> bool {
    let no_longer = |one: f64, other: f64| one <= other + 1e-3;
    one.rest.zip(other.rest).is_none_or(|(one, other)| {
        no_longer(one.low, other.low) && no_longer(one.likely, other.likely) && no_longer(one.high, other.high)
    })
}

/// From most loss to least, each end of the range above that of the one before.
const TURNS: [&str; 3] = ["carabiner", "bush-pulley", "bearing-pulley"];

/// Every field of a turn, and of one's own figure for it.
const KINDS: [&str; 7] = ["topTurn", "upperTurn", "upperTurn2", "upperTurn3", "lowerTurn", "lowerTurn2", "lowerTurn3"];
const OWN: [&str; 7] = [
    "topEfficiency",
    "upperEfficiency",
    "upperEfficiency2",
    "upperEfficiency3",
    "lowerEfficiency",
    "lowerEfficiency2",
    "lowerEfficiency3",
];

/// Rigs of one family, each with more advantage than the one before.
const FAMILIES: [&[&str]; 4] = [
    &["hand-over-hand", "tail-3", "tail-5", "tail-7"],
    &["hand-over-hand", "moving-rope"],
    &["hand-over-hand", "haul-cord-2", "haul-cord-3", "haul-cord-4", "haul-cord-5"],
    &["ground-1", "ground-3", "ground-5"],
];

proptest! {
    #![proptest_config(cases(192))]

    #[test]
    fn more_kit_never_lowers_the_pull(plan in plans(), one in 0.0..=60.0_f64, other in 0.0..=60.0_f64) {
        let (light, heavy) = numbers(&plan, "kitMass", one, other);
        no_worse(&heavy, &light)?;
        prop_assert!(at_most(light.anchor, heavy.anchor));
    }

    #[test]
    fn a_heavier_body_never_helps(plan in plans(), one in 20.0..=250.0_f64, other in 20.0..=250.0_f64) {
        let (light, heavy) = numbers(&plan, "bodyMass", one, other);
        no_worse(&heavy, &light)?;
    }

    #[test]
    fn better_turns_never_hurt(
        plan in plans(),
        kinds in (0..3_usize, 0..3_usize),
        id in prop::sample::select(KINDS.to_vec()),
    ) {
        let plan = without(&without(&plan, &OWN), &["testMass", "testPull"]);
        let kind = |at: usize| TURNS.get(at).copied().expect("three kinds");
        let (worse, better) = words(&plan, id, kind(kinds.0.min(kinds.1)), kind(kinds.0.max(kinds.1)));
        no_worse(&worse, &better)?;
    }

    #[test]
    fn turns_and_hitches_that_keep_more_never_hurt(
        plan in plans(),
        one in 0.3..=1.0_f64,
        other in 0.3..=1.0_f64,
        id in prop::sample::select([&OWN[..], &["hitchDrag"]].concat()),
    ) {
        let (worse, better) = numbers(&without(&plan, &["testMass", "testPull"]), id, one, other);
        no_worse(&worse, &better)?;
    }

    #[test]
    fn the_stronger_never_have_less_chance(plan in plans(), one in 10.0..=2000.0_f64, other in 10.0..=2000.0_f64) {
        let (weak, strong) = numbers(&plan, "measuredPull", one, other);
        prop_assert!(rests_no_longer(&strong, &weak), "{:?} then {:?}", weak.rest, strong.rest);
        no_worse(&weak, &strong)?;
    }

    #[test]
    fn more_grip_never_lowers_the_chance(
        plan in plans(),
        one in 5.0..=1200.0_f64,
        other in 5.0..=1200.0_f64,
        id in prop::sample::select(vec!["gripRight", "gripLeft"]),
    ) {
        let (weak, strong) = numbers(&plan, id, one, other);
        no_worse(&weak, &strong)?;
    }

    /// Training, gloves that grip, a handle or a loop, and a trunk that holds never hurt.
    #[test]
    fn what_helps_the_hands_and_arms_never_lowers_the_chance(plan in plans(), row in 0..7_usize) {
        let (id, options) = [
            ("training", &["untrained", "trained-pulling"][..]),
            ("gloves", &["slick", "none", "rubbered"]),
            // What a bar and a loop hold is drawn apart from one range, so of these two either may come out ahead.
            ("hold", &["bare-rope", "cross-handle"]),
            ("hold", &["bare-rope", "hand-loop"]),
            ("hold", &["bare-rope", "foot-loop"]),
            ("trunk", &["cervical", "unsteady", "steady"]),
            ("shoulderReach", &["limited", "full"]),
        ].get(row).copied().expect("seven of them");
        for pair in options.windows(2) {
            let &[worse, better] = pair else { unreachable!("two of them") };
            let (worse, better) = words(&plan, id, worse, better);
            no_worse(&worse, &better)?;
        }
    }

    /// A loop that was tied for a foot holds a hand to the last bit as one that was tied for a hand does.
    #[test]
    fn a_foot_loop_is_a_hand_loop(plan in plans(), id in prop::sample::select(vec!["hold", "pullHeld"])) {
        let (mut hand, foot) = words(&plan, id, "hand-loop", "foot-loop");
        hand.hold = foot.hold;
        hand.measured = foot.measured;
        prop_assert_eq!(hand, foot);
    }

    /// Legs are told of beside the arms, and change nothing of what arms can do.
    #[test]
    fn legs_leave_the_arms_as_they_are(plan in plans(), legs in prop::sample::select(vec!["none", "some", "full"])) {
        let (mut said, unsaid) = (answer(&with(&plan, "legs", Said::Text(legs.to_owned()))), answer(&without(&plan, &["legs"])));
        // What legs that do not move bring is the clock: when to turn back, what caps the verdict, and cautions.
        said.legs = unsaid.legs;
        said.hangs_still = unsaid.hangs_still;
        said.cautions.clone_from(&unsaid.cautions);
        said.going.clone_from(&unsaid.going);
        prop_assert_eq!((chance(&said), reaches(&said)), (chance(&unsaid), reaches(&unsaid)));
        said.verdict = unsaid.verdict;
        prop_assert_eq!(said, unsaid);
    }

    #[test]
    fn a_longer_pull_and_less_setback_never_lower_the_chance(
        plan in plans(),
        travel in (0.05..=1.5_f64, 0.05..=1.5_f64),
        setback in (0.0..=0.5_f64, 0.0..=0.5_f64),
    ) {
        // What a trial gained it gained, whatever was given back.
        let plan = without(&plan, &["trialStrokes", "trialTime", "trialHeight", "trialMore"]);
        let (short, long) = numbers(&plan, "handTravel", travel.0, travel.1);
        no_worse(&short, &long)?;
        let (small, big) = numbers(&plan, "setback", setback.0, setback.1);
        no_worse(&big, &small)?;
    }

    #[test]
    fn a_higher_climb_never_takes_fewer_strokes(plan in plans(), one in 0.2..=120.0_f64, other in 0.2..=120.0_f64) {
        let (low, high) = numbers(&plan, "climbHeight", one, other);
        prop_assert!(rests_no_longer(&low, &high), "{:?} then {:?}", low.rest, high.rest);
        for (lower, higher) in [(low.strokes, high.strokes), (low.time, high.time), (low.rope_handled, high.rope_handled)] {
            prop_assert_eq!(lower.is_some(), higher.is_some());
            prop_assert!(lower.zip(higher).is_none_or(|(lower, higher)| at_most(lower, higher)));
        }
        // One pull is one pull, however high.
        prop_assert_eq!(low.need, high.need);
        prop_assert_eq!(chance(&low), chance(&high));
        prop_assert!(reaches(&high) <= reaches(&low), "{:?} then {:?}", low.verdict, high.verdict);
    }

    /// A rig of more advantage asks for no more pull, and pays in rope.
    #[test]
    fn advantage_lowers_the_pull_and_never_the_rope(plan in plans(), family in prop::sample::select(FAMILIES.to_vec())) {
        let plan = without(&plan, &["testMass", "testPull"]);
        for pair in family.windows(2) {
            let &[less, more] = pair else { unreachable!("two of them") };
            let (less, more) = words(&plan, "rig", less, more);
            prop_assert!(at_most(more.need, less.need), "{:?}: {:?} then {:?}", pair, less.need, more.need);
            prop_assert!(less.ideal < more.ideal);
            let gains = less.gain.zip(more.gain);
            prop_assert!(gains.is_none_or(|(less, more)| at_most(more, less)));
        }
    }

    /// What a backup is for: it takes the lower hitch off the list of what drops the climber. It never helps to pull.
    /// A helper's rig has no such hitch, and somebody's own has what is written in it.
    #[test]
    fn a_second_hitch_takes_the_lower_one_off_the_single_parts(plan in plans()) {
        prop_assume!(!plan.contains(&("rig", Said::Text("own".to_owned()))));
        let (none, second) = words(&plan, "backup", "none", "second-hitch");
        let single =
            |answer: &Answer| answer.parts.iter().filter(|part| part.single && part.is_hitch(&answer.rig)).count();
        if none.hauled {
            prop_assert_eq!(single(&none), single(&second));
        } else {
            prop_assert_eq!((single(&none), single(&second)), (1, 0));
        }
        no_worse(&second, &none)?;
    }
}
