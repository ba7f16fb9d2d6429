//! Out and back: the same rig, to the last bit.

use boughline::quantity::System;
use boughline::reeving::notation::{Wrong, canonical, read, tidy, written};
use proptest::prelude::*;
use proptest::test_runner::Config;

const SHARES: [&str; 9] = ["", "ring", "bush-pulley", "Carabiner", "0.85", "0,85", "85 %", "1/3", "99.9%"];
const SLACKS: [&str; 6] = ["2 m", "6 ft 3 in", "0 m", "1½ ft", "37.123456 cm", "29,9m"];
const PULLS: [&str; 5] = ["150 N", "15 kgf", "33.3 lbf", "1.2 kN", "20N"];

/// A stop on the way along a rope, in no particular case or spacing.
fn stop() -> impl Strategy<Value = String> {
    let on = prop::sample::select(vec!["tree", "upper", "upper-2", "climber", "ground", "Climber", "TREE"]);
    let standing = prop::sample::select(vec!["tree", "ground"]);
    prop_oneof![
        4 => (on.clone(), prop::sample::select(&SHARES)).prop_map(|(on, with)| format!("turn {on} {with}")),
        2 => on.clone().prop_map(|on| format!("HITCH  {on}")),
        1 => on.clone().prop_map(|on| format!("backup {on}")),
        1 => (on, prop::sample::select(&SLACKS)).prop_map(|(on, with)| format!("knot\t{on}  {with} ")),
        1 => (standing, prop::sample::select(&PULLS)).prop_map(|(on, with)| format!("helper {on} {with}")),
    ]
}

fn text() -> impl Strategy<Value = String> {
    let tie = prop::option::of(prop::sample::select(vec!["tied tree", "tied climber", "tied ground", "tied upper"]));
    let rope = (tie.clone(), prop::collection::vec(stop(), 1..6), tie).prop_map(|(start, stops, end)| {
        let stops = start.map(str::to_owned).into_iter().chain(stops).chain(end.map(str::to_owned));
        stops.collect::<Vec<_>>().join(" , ")
    });
    // Every body that may be skipped is there.
    prop::collection::vec(rope, 1..4)
        .prop_map(|ropes| ropes.join("\n\n") + "\nhand climber, turn upper, turn upper-2, tied tree")
}

proptest! {
    #![proptest_config(Config { cases: 512, failure_persistence: None, ..Config::default() })]

    #[test]
    fn a_rig_comes_back_from_a_link_and_from_its_text(text in text(), us in any::<bool>()) {
        let own = match read(&text) {
            Ok(own) => own,
            // Only a rig too large is none.
            Err(mistake) => {
                prop_assert!(matches!(mistake.wrong, Wrong::TooLarge), "{}: {:?}", text, mistake);
                return Ok(());
            }
        };
        let link = canonical(&text).expect("what can be read has a link");
        let tidied = tidy(&text, if us { System::Us } else { System::Si });
        for other in [&link, &tidied, &written(&own.ropes)] {
            let again = read(other).unwrap_or_else(|mistake| panic!("{other}: {mistake:?}"));
            prop_assert_eq!(&again.rig, &own.rig, "{}", other);
            prop_assert_eq!(&again.turns, &own.turns, "{}", other);
            prop_assert_eq!(again.help.iter().map(|pull| pull.to_bits()).collect::<Vec<_>>(),
                own.help.iter().map(|pull| pull.to_bits()).collect::<Vec<_>>(), "{}", other);
            prop_assert_eq!(canonical(other), Some(link.clone()), "{}", other);
        }
        prop_assert_eq!(tidy(&tidied, System::Si), tidied.clone(), "tidied once is tidied");
        prop_assert_eq!(tidy(&link, System::Si).lines().count(), own.ropes.len());
        let plain = |letter: char| letter.is_ascii_alphanumeric() || ".-".contains(letter);
        prop_assert!(link.chars().all(plain) && link.ends_with(|last: char| last.is_ascii_alphanumeric()), "{}", link);
    }
}

#[test]
fn both_forms_and_the_person_who_is_careless_say_the_same() {
    let tidied =
        "tied tree, hitch upper, turn climber 0.85, knot climber 2 m\nhand climber, turn upper ring, tied tree";
    let careless = "\n  Tied TREE,hitch   upper ,turn climber 0.85,knot climber 2 m \r\n\n hand climber , turn upper Ring,tied tree\n";
    let link = "tied.tree--hitch.upper--turn.climber.0.85--knot.climber.2m---hand.climber--turn.upper.ring--tied.tree";
    assert_eq!(read(careless).map(|own| own.rig), read(tidied).map(|own| own.rig));
    assert_eq!(canonical(careless).as_deref(), Some(link));
    assert_eq!(canonical(link).as_deref(), Some(link));
    assert_eq!(tidy(careless, System::Us), tidied.replace("Ring", "ring"));
    assert_eq!(
        tidy("tied tree, knot climber 6, hand climber", System::Us),
        "tied tree, knot climber 6 ft, hand climber"
    );
    for wrong in ["", "tied tree, hand", "knot tree 2", "tied.tree--", "80"] {
        assert_eq!((canonical(wrong), tidy(wrong, System::Si)), (None, wrong.to_owned()));
    }
}

/// Turns of which nothing is said are written out in a link, so that another default changes no old plan.
#[test]
fn a_link_says_what_was_taken_for_granted() {
    let text = "tied climber, turn tree, turn climber, hand ground";
    let link = canonical(text).expect("a rig");
    assert_eq!(link, "tied.climber--turn.tree.bark--turn.climber.bearing-pulley--hand.ground");
    assert_eq!(tidy(text, System::Si), text);
}
