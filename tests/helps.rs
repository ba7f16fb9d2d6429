//! What would help most: one thing at a time, on the same samples.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::unwrap_used, reason = "a plan that is out of order fails the test")]

use boughline::Draft;
use boughline::quantity::{System, View};
use boughline::question::Effort;
use boughline::question::can_i_climb::{Change, Compared, Helps, Inputs, ask, helps};
use boughline::words::helps_report;

fn person(more: &[(&str, &str)]) -> Draft {
    more.iter().fold(
        Draft::new()
            .set("bodyMass", "80 kg")
            .set("climbHeight", "11 m")
            .set("rig", "tail-3")
            .set("handTravel", "70 cm"),
        |draft, (id, text)| draft.set(id, text),
    )
}

fn helped(draft: &Draft) -> Helps {
    helps(&Inputs::of(draft).unwrap(), Effort::samples(400)).expect("the strength is known")
}

fn with(helps: &Helps, change: Change) -> Option<Compared> {
    helps.changes.iter().find(|help| help.change == change).map(|help| help.with)
}

/// The pull was taken on a bar, so it says nothing against the hands on bare rope but what the grip says.
#[test]
fn a_hand_loop_matters_where_the_hand_is_the_tighter_gate_and_not_where_the_arm_is() {
    let weak_hands = helped(&person(&[("measuredPull", "1100 N"), ("pullHeld", "hand-loop"), ("gripRight", "230 N")]));
    let loops = with(&weak_hands, Change::HandLoop).unwrap();
    assert!(loops.chance > weak_hands.as_it_is.chance + 0.3, "{loops:?} and {:?}", weak_hands.as_it_is);
    assert!(loops.share < weak_hands.as_it_is.share);
    let weak_arms = helped(&person(&[("measuredPull", "540 N"), ("gripRight", "700 N")]));
    let loops = with(&weak_arms, Change::HandLoop).unwrap();
    assert_eq!(loops.chance.to_bits(), weak_arms.as_it_is.chance.to_bits());
    assert_eq!(loops.share.to_bits(), weak_arms.as_it_is.share.to_bits());
}

/// What is called a change is one, and none makes it worse but the time that a greater rig takes.
#[test]
fn every_change_but_the_next_rig_helps_or_does_nothing() {
    for more in [
        &[("measuredPull", "560 N"), ("upperTurn", "carabiner")][..],
        &[("age", "45"), ("sex", "female"), ("stature", "165 cm"), ("kitMass", "12 kg")],
        &[("measuredPull", "700 N"), ("trialStrokes", "10"), ("trialTime", "90 s"), ("trialHeight", "1.5 m")],
        &[("rig", "hand-over-hand"), ("measuredPull", "1300 N")],
        &[("rig", "ground-3"), ("helperPull", "400 N")],
    ] {
        let helps = helped(&person(more));
        for help in helps.changes.iter().filter(|help| help.change != Change::NextRig) {
            assert!(help.with.chance >= helps.as_it_is.chance, "{more:?}: {help:?} after {:?}", helps.as_it_is);
        }
        for pair in helps.changes.windows(2) {
            let (one, other) = (pair[0].with, pair[1].with);
            assert!(one.chance > other.chance || one.chance >= other.chance && one.share <= other.share);
        }
    }
}

/// Nothing is compared with other samples than the answer's own.
#[test]
fn as_it_is_is_what_the_answer_says() {
    let draft = person(&[("measuredPull", "600 N")]);
    let inputs = Inputs::of(&draft).unwrap();
    let verdict = ask(&inputs, Effort::samples(400)).verdict.unwrap();
    assert_eq!(Some(helped(&draft).as_it_is.chance), verdict.reaches);
    // What the answer itself comes to with the change made by hand.
    let lower = helped(&draft);
    let by_hand = ask(&Inputs::of(&draft.set("climbHeight", "8.25 m")).unwrap(), Effort::samples(400)).verdict.unwrap();
    assert_eq!(with(&lower, Change::LowerClimb).map(|with| with.chance), by_hand.reaches);
}

#[test]
fn what_is_so_already_is_no_change() {
    let helps =
        helped(&person(&[("measuredPull", "900 N"), ("hold", "hand-loop"), ("kitMass", "0 kg"), ("legs", "none")]));
    for change in [Change::HandLoop, Change::LighterKit, Change::Pulleys, Change::MoreTime, Change::LeaningBack] {
        assert_eq!(with(&helps, change), None, "{change:?}");
    }
    assert_eq!(helped(&person(&[("rig", "tail-7"), ("measuredPull", "900 N")])).next, None);
}

#[test]
fn it_is_told_in_words() {
    let us = View { system: System::Us, ..View::default() };
    let told = |draft: &Draft, view| helps_report(Some(&helped(draft)), view);
    let tired = told(&person(&[("measuredPull", "540 N"), ("upperTurn", "carabiner")]), View::default());
    assert!(tired.first.starts_with("Most would help: "), "{}", tired.first);
    assert!(tired.first.contains(" of the reckoned climbs come to the height in time, and not "), "{}", tired.first);
    let strong = told(&person(&[("measuredPull", "1600 N"), ("timeAllowed", "2 h")]), us);
    assert!(
        strong.first.starts_with("No one of these raises the chance by as much as one climb in a hundred."),
        "{}",
        strong.first
    );
    let helper = strong.changes.iter().find(|line| line.id == "helper-on-tail").unwrap();
    assert_eq!(helper.noun, "a helper who pulls 22 lbf on the tail");
    let unknown = helps_report(None, us);
    assert_eq!(
        (unknown.first.as_str(), unknown.now),
        ("How strong you are is not known, so nothing can be compared.", None)
    );
    let one = Draft::new()
        .set("bodyMass", "80 kg")
        .set("climbHeight", "11 m")
        .set("rig", "tail-3")
        .set("measuredPull", "500 N");
    assert_eq!(told(&one, us).of, "chance of one pull");
}
