//! What rigs come to that are in no catalogue.

use super::{climb, climbing, rope};
use boughline::Draft;
use boughline::error::Reason;
use boughline::question::can_i_climb::{By, Caution, Inputs};
use boughline::question::{Effort, advantage};
use boughline::reeving::RigName;
use boughline::reeving::notation::read;
use boughline::reeving::{Drive, Losses, Phase, kinematics, statics};
use boughline::rope::State;

/// What a hand's pull of one lifts, with the shares that are written down.
fn advantage(text: &str) -> f64 {
    let own = read(text).expect(text);
    let motion = kinematics(&own.rig, &Phase::pull(&own.rig)).expect(text);
    let mut losses = Losses::none(&own.rig);
    for (kept, turn) in losses.turns.iter_mut().zip(&own.turns) {
        *kept = turn.own.expect("a share is written down").value();
    }
    statics(&own.rig, &motion, &losses, &Drive::Pull(1.0, Vec::new())).expect(text).load.low
}

/// A tackle of so many parts, its lead line off the upper block.
fn tackle(parts: usize) -> String {
    let mut stops = vec![if parts.is_multiple_of(2) { "tied tree" } else { "tied climber" }];
    let climber = if parts.is_multiple_of(2) { 0 } else { 1 };
    for turn in 0..parts {
        stops.push(if turn % 2 == climber { "turn climber 0.917" } else { "turn tree 0.917" });
    }
    stops.push("hand ground");
    stops.join(", ")
}

/// *Pipeline Rules of Thumb Handbook*, p. 6: E(1 - E^n)/(1 - E) for n parts and a lead line off the upper block; printed
/// 3.25 for four parts at E = 0.917, 3.236 exactly.
#[test]
fn a_tackle_of_any_parts_comes_to_the_sum_of_its_powers() {
    let mut met = Vec::new();
    for parts in 2..=7 {
        let found = advantage(&tackle(parts));
        let e: f64 = 0.917;
        let wanted = e * (1.0 - std::iter::repeat_n(e, parts).product::<f64>()) / (1.0 - e);
        assert!((found - wanted).abs() < 1e-12, "{parts}: {found} for {wanted}");
        met.push(found);
    }
    assert!(met.get(2).is_some_and(|four| (four - 3.236).abs() < 0.0005), "{met:?}");
}

/// Delaney, *Physics for Roping Technicians* (quoted): the fixed-point 3:1 gives 1 + p + pq, p nearest the hand.
#[test]
fn a_fixed_point_three_to_one_tells_its_turns_apart() {
    let haul = |q: &str, p: &str| {
        format!("tied climber, turn tree 1, hitch upper, turn ground {q}, turn upper {p}, hand ground")
    };
    for (q, p, wanted) in [("0.9", "0.5", 1.95), ("0.5", "90 %", 2.35)] {
        let found = advantage(&haul(q, p));
        assert!((found - wanted).abs() < 1e-12, "{found} for {wanted}");
    }
}

/// By hand: two strands of helper's rope lift 100 + 90 N with 0.9 kept at the block, so the climber lifts the rest.
#[test]
fn a_helper_takes_what_they_lift_off_the_pull() {
    let text = "tied tree, hand climber, hitch climber\ntied tree, turn climber 0.9, turn tree 1, helper ground 100 N";
    let (alone, helped) =
        (climb(&climbing("own", "tied tree, hand climber, hitch climber")), climb(&climbing("own", text)));
    assert!((alone.need.likely - helped.need.likely - 190.0).abs() < 1e-9, "{:?} {:?}", alone.need, helped.need);
    assert!(helped.helped.is_some_and(|lifted| (lifted.likely - 190.0).abs() < 1e-9));
    assert_eq!((alone.helped, alone.advantage), (None, helped.advantage));
    // The tension of every strand is what the hand and the helper put on it.
    let last = helped.tensions.get(1).and_then(|rope| rope.last()).map(|tension| tension.likely);
    assert_eq!(last, Some(0.0), "beyond the helper the rope is slack");
    let crotch: Vec<f64> = helped.tensions.iter().flatten().map(|tension| tension.likely).collect();
    assert!((crotch.iter().sum::<f64>() - (helped.need.likely + 290.0)).abs() < 1e-9, "{crotch:?}");
}

#[test]
fn nobody_pulls_less_than_nothing() {
    let text = "tied tree, hand climber, hitch climber\ntied tree, turn climber, turn tree ring, helper ground 1500 N";
    let answer = climb(&climbing("own", text));
    assert_eq!(answer.need.likely.to_bits(), 0.0_f64.to_bits(), "{:?}", answer.need);
    assert!(answer.arms.is_some_and(|gate| gate.share.likely == 0.0));
}

#[test]
fn whose_hand_it_is_says_whether_somebody_hauls() {
    let own = |hand: &str| climb(&climbing("own", &format!("tied climber, turn tree ring, {hand}, hitch climber")));
    assert!(!own("hand climber").hauled);
    let hauled = climb(&climbing("own", "tied climber, turn tree ring, hitch ground, hand ground"));
    assert!(hauled.hauled && hauled.evidence.is_none() && hauled.strokes.is_none());
    // A hitch at the foot slides while somebody hauls, and holds when they let go; under a climber it is an anchor.
    assert!(hauled.drags && !hauled.cautions.contains(&Caution::NothingHolds), "{:?}", hauled.cautions);
    let anchored = climb(&climbing("own", "hitch ground, turn tree, hitch climber, hand climber"));
    assert!(!anchored.hauled && anchored.ideal.to_bits() == 1.0_f64.to_bits());
}

/// Its own turns count, and no field that tells of a catalogue's.
#[test]
fn its_turns_are_those_that_are_written_down() {
    let text = "tied tree, hitch upper, hitch climber, turn climber ring, turn upper 0.77, hand climber";
    let plain = climb(&climbing("own", text));
    let fields = [("upperTurn", "carabiner"), ("lowerEfficiency", "0.5"), ("topTurn", "ring"), ("backup", "tail-knot")];
    let mut draft = climbing("own", text);
    for (id, said) in fields {
        draft = draft.set(id, said);
    }
    assert_eq!(climb(&draft), plain);
    let assumed: Vec<&str> = plain.assumed.iter().map(|row| row.id).collect();
    assert!(fields.iter().all(|(id, _)| !assumed.contains(id)), "{assumed:?}");
    assert!(assumed.contains(&"hitchDrag"), "{assumed:?}");
    let [ring, share] = plain.turns.as_slice() else { panic!("{:?}", plain.turns) };
    assert!(ring.by == By::Kind && ring.kept.low < ring.kept.high);
    assert!(share.by == By::Own && (share.kept.likely, share.kept.low, share.kept.high) == (0.77, 0.77, 0.77));
    // By hand: 1 + 0.77 + 0.77 x 0.52 x 0.9.
    let wanted = 1.0 + 0.77 + 0.77 * 0.52 * 0.9;
    assert!((plain.advantage.likely - wanted).abs() < 1e-12, "{:?}", plain.advantage);
}

/// A rig that is not chosen travels along, and is an error only where it cannot be read.
#[test]
fn a_rig_that_is_not_chosen_changes_nothing() {
    let text = "tied tree, turn climber, hand ground";
    let with = climb(&climbing("tail-3", text));
    assert_eq!(with, climb(&climbing("tail-3", "tied tree, hand climber")));
    let errors = Inputs::of(&climbing("tail-3", "tied trea")).expect_err("it cannot be read");
    assert!(matches!(errors.as_slice(), [error] if matches!(error.reason, Reason::Refused(_))), "{errors:?}");
}

/// Beside the catalogue's, with what it comes to alone.
#[test]
fn it_stands_beside_the_others_where_it_is_written_down() {
    let text = "tied tree, hitch upper, hitch climber, turn climber ring, turn upper 0.77, hand climber";
    let draft = climbing("tail-3", text);
    let beside = |draft: &Draft| {
        let inputs = advantage::Inputs::of(draft).expect("in order");
        advantage::ask(&inputs, Effort::QUICK).rigs.into_iter().map(|rig| rig.ascent).collect::<Vec<_>>()
    };
    let own: Vec<_> = beside(&draft).into_iter().filter(|ascent| ascent.rig_name == RigName::Own).collect();
    assert_eq!(own.iter().map(|ascent| ascent.need).collect::<Vec<_>>(), [climb(&climbing("own", text)).need]);
    let without = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m");
    assert!(beside(&without).iter().all(|ascent| ascent.rig_name != RigName::Own));
}

/// By hand: with the crotch at 12 m and the climber at 1.5 m four strands are between, the last of them to the hand.
#[test]
fn a_rope_that_goes_up_twice_is_reckoned_twice() {
    let answer = rope("own", "tied climber, turn tree ring, turn climber, turn tree ring, hand climber");
    let start = answer.courses.iter().find(|course| course.state == State::Start).expect("it starts");
    let run: f64 = start
        .pieces
        .iter()
        .filter(|(piece, _)| {
            let noun = format!("{piece:?}");
            ["Up", "Down", "InRig"].contains(&noun.as_str())
        })
        .map(|(_, length)| length.likely)
        .sum();
    let hitch = boughline::rope::HITCH_HEIGHT.row.kind;
    let boughline::field::Kind::Quantity(limits) = hitch else { panic!("a length") };
    let climber = limits.likely.expect("a default").likely;
    assert!((run - 4.0 * (12.0 - climber)).abs() < 1e-9, "{run} {start:?}");
}
