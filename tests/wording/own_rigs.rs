//! What is wrong with somebody's own rig, as sentences.

use super::{SI, US, variant, variants};
use boughline::Draft;
use boughline::error::{Error, Reason};
use boughline::field::Refusal;
use boughline::quantity::{Decimal, View};
use boughline::question::{can_i_climb, rope_length};
use boughline::reeving::Fault;
use boughline::reeving::notation::{Does, read};
use boughline::words::message;
use std::collections::BTreeSet;

const TOLD_ALIKE: &str = "";

/// A text, and the sentence that comes of it in either system.
type Row = (&'static str, &'static str, &'static str);

/// What cannot be read.
#[rustfmt::skip]
const MISTAKES: &[Row] = &[
    ("tied trea, hand climber", "“trea” in line 1, stop 1, is no place. Write tree, ground, climber or upper.", TOLD_ALIKE),
    ("tied tree\n\nhnad climber", "“hnad” in line 3, stop 1, is nothing that a rope does. Write tied, turn, hitch, backup, knot, hand or helper, and then where.", TOLD_ALIKE),
    ("tied.tree--hnad.climber", "“hnad” in line 1, stop 2, is nothing that a rope does. Write tied, turn, hitch, backup, knot, hand or helper, and then where.", TOLD_ALIKE),
    ("tied tree, hand", "“hand” in line 1, stop 2, needs a place behind it. Write tree, ground, climber or upper.", TOLD_ALIKE),
    ("tied tree,, hand climber", "Stop 2 in line 1 is empty. Write what the rope does there, or take a comma away.", TOLD_ALIKE),
    ("tied tree, turn upper-2, hand climber", "“upper-2” in line 1, stop 2, leaves one out. What moves is counted from the top down: upper, upper-2, upper-3, upper-4.", TOLD_ALIKE),
    ("tied climber, hand tree", "“tree” in line 1, stop 2, is no place for the hand that pulls. Write hand climber, or hand ground.", TOLD_ALIKE),
    ("tied tree, helper climber 100 N, hand climber", "“climber” in line 1, stop 2, is no place for a helper. Write helper ground or helper tree, and what they pull.", TOLD_ALIKE),
    ("tied tree, tied climber, hand climber", "“tied” in line 1, stop 2, is on the way, and a rope is tied only at its ends. Write hitch, turn or knot there, or begin a new line.", TOLD_ALIKE),
    ("tied tree, turn climber wheel, hand climber", "“wheel” in line 1, stop 2, is nothing that a rope turns round here. Write bearing-pulley, bush-pulley, ring, carabiner or bark, or the share it keeps, like 0.85.", TOLD_ALIKE),
    ("tied tree, turn climber 2, hand climber", "“2” in line 1, stop 2: 2 is outside 0.05 to 1.00.", TOLD_ALIKE),
    ("tied tree, turn climber 85, hand climber", "“85” in line 1, stop 2: 85 is outside 0.05 to 1.00. Did you mean 85 %?", TOLD_ALIKE),
    ("tied tree, knot climber 2, hand climber", "“2” in line 1, stop 2: write the unit too: 2 m or 2 ft.", TOLD_ALIKE),
    ("tied tree, knot climber 40 m, hand climber", "“40 m” in line 1, stop 2: 40 m is outside 0 m to 30 m.", "“40 m” in line 1, stop 2: 40 m is outside 0 ft to 98 ft 5 in."),
    ("tied tree, hand climber, helper ground 15 kg", "“15 kg” in line 1, stop 3: “15 kg” is a mass, and a pull is a force. If it is the reading of a scale, write 15 kgf.", TOLD_ALIKE),
    ("tied tree, knot climber, hand climber", "“knot” in line 1, stop 2, needs an amount behind its place. Write it like “2 m”.", "“knot” in line 1, stop 2, needs an amount behind its place. Write it like “7 ft”."),
    ("tied tree, hand climber, helper ground", "“helper” in line 1, stop 3, needs an amount behind its place. Write it like “15 kgf”.", "“helper” in line 1, stop 3, needs an amount behind its place. Write it like “34 lbf”."),
    ("tied tree, hitch upper carabiner, hand climber", "“carabiner” in line 1, stop 2, is too much. Only a turn, a knot and a helper take more than a place.", TOLD_ALIKE),
    ("tied tree, hand climber\ntied tree, hand ground", "“hand” in line 2, stop 2, is a second hand, and one drives a rig. For anybody else write helper ground, and what they pull.", TOLD_ALIKE),
    ("tied tree, turn ground, turn upper", "None of these ropes comes to the climber. Write climber where a rope comes to their harness.", TOLD_ALIKE),
    ("tied tree, hand climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree, turn climber, turn tree", "This is more rope than can be worked out exactly: 32 strands are the most. Leave something out.", TOLD_ALIKE),
];

/// What can be read and is no rig to climb on.
#[rustfmt::skip]
const FAULTS: &[(&str, &str)] = &[
    ("tied tree, hitch climber", "No hand pulls this rig. Write hand climber where you pull, or hand ground where somebody hauls."),
    ("tied tree, hand climber, tied ground", "A hand in line 1 pulls nothing. To one side of it the rope must come to a tie or a hitch that grips; to the other it must run out loose, with neither between."),
    ("tied tree, hand climber\n\ntied tree, helper ground 100 N, tied climber", "A hand in line 3 pulls nothing. To one side of it the rope must come to a tie or a hitch that grips; to the other it must run out loose, with neither between."),
    ("tied tree, turn upper, hand climber", "Nothing tells where “upper” goes when the hand pulls. Let a rope that is held come to it with a hitch, a tie or a turn."),
    ("hand ground, tied upper\nhitch climber, tied tree", "Nothing tells where “climber” goes when the hand pulls. Let a rope that is held come to it with a hitch, a tie or a turn."),
    ("tied tree, tied climber\ntied tree, hand climber", "The rope in line 2 cannot move: to let the hand take rope it would have to grow longer. Leave out one of the ties and hitches that hold it."),
    ("tied climber, hand ground", "The pull does not lift the climber. See on which side of each hand the rope is held, and that it comes to the climber from above."),
    ("tied tree, hand climber, hitch climber\ntied tree, turn climber, helper ground 300 N", "The pull does not lift the climber. See on which side of each hand the rope is held, and that it comes to the climber from above."),
    ("tied tree, hitch tree, hand climber", "What the rope carries between “tied tree” and “hitch tree” in line 1 cannot be told: the load can be shared in more ways than one. Leave out a tie or a hitch."),
    ("hand climber, hitch upper, tied ground", "The rope would have to push between “hitch upper” and “tied ground” in line 1, and it can only pull. Leave out what is on it there, or turn it round."),
    ("tied upper, hand climber\ntied tree, turn upper, turn tree, turn upper, turn tree, turn upper, turn tree, turn upper, turn tree, turn upper, tied tree", "More than eight turns and hitches stand still under load, too many to work out. Leave some out."),
];

/// What no text comes to: the shape of the rig is looked at before, and where every body has its one way to go, every
/// load has its tensions (the two are each other's transposes).
#[rustfmt::skip]
const BEYOND: &[(Fault, &str)] = &[
    (Fault::Unbalanced { body: 1 }, "“upper” cannot balance: what pulls it one way is never matched by what pulls it the other. Give it a hitch, a tie or a turn on the other side."),
    (Fault::NotOneClimber, UNWORKABLE),
    (Fault::OutOfOrder { body: 0 }, UNWORKABLE),
    (Fault::SecondHand { rope: 0 }, UNWORKABLE),
    (Fault::OutOfRange, UNWORKABLE),
    (Fault::NoSuchEnd { rope: 0 }, UNWORKABLE),
    (Fault::NoSuchBody { rope: 0, stop: 0 }, UNWORKABLE),
];

const UNWORKABLE: &str = "Your own rig cannot be worked out. Change it, or choose another.";

fn climb(text: &str) -> Error {
    let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "own").set("ownRig", text);
    let errors = can_i_climb::Inputs::of(&draft).expect_err(text);
    let [error] = errors.as_slice() else { panic!("one error is wanted for {text}: {errors:?}") };
    error.clone()
}

fn check(error: &Error, si: &str, us: &str) {
    assert_eq!(error.fields, ["ownRig"], "{si}");
    assert_eq!(message(error, SI), si);
    assert_eq!(message(error, US), if us == TOLD_ALIKE { si } else { us });
}

#[test]
fn every_mistake_has_its_sentence() {
    let mut met = BTreeSet::new();
    for (text, si, us) in MISTAKES {
        check(&climb(text), si, us);
        let mistake = read(text).expect_err(text);
        assert!(text.contains(&mistake.word), "{text}: {mistake:?}");
        met.insert(variant(&mistake.wrong));
    }
    assert_eq!(met, variants(include_str!("../../src/reeving/notation/mistake.rs"), "Wrong"));
}

/// Whoever wrote a word that is none is told every word that is one.
#[test]
fn every_word_is_named_where_none_was_found() {
    let told = message(&climb("tied tree, hnad climber"), SI);
    let unnamed: Vec<&str> = Does::OPTIONS.iter().map(|word| word.id).filter(|word| !told.contains(word)).collect();
    assert!(unnamed.is_empty(), "name {unnamed:?} in src/words/own_rig.rs: {told}");
}

#[test]
fn every_fault_has_its_sentence() {
    let mut met = BTreeSet::new();
    for (text, sentence) in FAULTS {
        let error = climb(text);
        check(&error, sentence, TOLD_ALIKE);
        let Reason::ImpossibleRig { fault, .. } = error.reason else { panic!("{text}: {error:?}") };
        met.insert(variant(&fault));
    }
    for (fault, sentence) in BEYOND {
        let reason = Reason::ImpossibleRig { said: "tied tree, turn upper, hand climber".to_owned(), fault: *fault };
        check(&Error::of("ownRig", reason), sentence, TOLD_ALIKE);
        met.insert(variant(fault));
    }
    assert_eq!(met, variants(include_str!("../../src/reeving/fault.rs"), "Fault"));
}

#[test]
fn what_is_not_said_or_hangs_nowhere_has_its_sentence() {
    let draft = Draft::new().set("crotchHeight", "11 m").set("anchor", "base").set("rig", "own");
    let error = |draft: &Draft| rope_length::Inputs::of(draft).expect_err("something is wrong").remove(0);
    let needed = "Your own rig is needed. Write it like “tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper carabiner, hand climber”.";
    check(&error(&draft), needed, TOLD_ALIKE);
    check(
        &error(&draft.set("ownRig", "tied climber, hand ground")),
        "No rope of your own rig comes to the tree, so how much of it hangs there cannot be told. Write tree where one does, or choose another rig.",
        TOLD_ALIKE,
    );
    let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "own");
    let errors = can_i_climb::Inputs::of(&draft).expect_err("it is needed");
    assert_eq!(errors.iter().map(|error| message(error, SI)).collect::<Vec<_>>(), [needed]);
}

/// What can be read after all, and a decimal mark as somebody reads it.
#[test]
fn a_refusal_of_what_can_be_read_still_has_a_sentence() {
    let refusal = Refusal::Miswritten { said: "tied tree, hand climber".to_owned() };
    check(&Error::of("ownRig", Reason::Refused(refusal)), "Your own rig cannot be read.", TOLD_ALIKE);
    let comma = View { decimal: Decimal::Comma, ..SI };
    let told = message(&climb("tied tree, turn climber 1,5, hand climber"), comma);
    assert_eq!(told, "“1,5” in line 1, stop 2: 1,5 is outside 0,05 to 1,00.");
}
