//! Which advantage? What must hold of the list and of the map, whatever the figures.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unreachable,
    clippy::unwrap_used,
    reason = "a plan that is out of order fails the test"
)]

#[path = "laws/plans.rs"]
mod plans;

use boughline::field::Said;
use boughline::gear::TurnKind;
use boughline::question::advantage::{Answer, Beside, Inputs, Map, Standing, ask, map};
use boughline::question::can_i_climb::By;
use boughline::question::{Effort, can_i_climb};
use boughline::reeving::RigName;
use boughline::words::{advantage_report, map_report, report};
use boughline::{Draft, quantity::View};
use plans::{Plan, draft, with, without};
use proptest::prelude::*;
use proptest::test_runner::Config;

fn cases(cases: u32) -> Config {
    Config { cases, failure_persistence: None, ..Config::default() }
}

fn inputs(draft: &Draft) -> Inputs {
    Inputs::of(draft).expect("the plan is in order")
}

fn answer(plan: &Plan) -> Answer {
    ask(&inputs(&draft(plan)), Effort::samples(60))
}

/// Any plan without one's own test and without a trial, which belong to one rig.
fn plan() -> impl Strategy<Value = Plan> {
    plans::plans().prop_map(|plan| {
        without(&plan, &["testMass", "testPull", "trialStrokes", "trialTime", "trialHeight", "trialMore"])
    })
}

fn person(more: &[(&str, &str)]) -> Draft {
    more.iter().fold(
        Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("stature", "1.75 m"),
        |draft, (id, text)| draft.set(id, text),
    )
}

proptest! {
    #![proptest_config(cases(60))]

    #[test]
    fn every_rig_says_what_can_i_climb_says_of_it(plan in plan()) {
        let list = answer(&plan);
        for beside in &list.rigs {
            let id = beside.ascent.rig_name.named().id;
            let one = with(&plan, "rig", Said::Text(id.to_owned()));
            let alone = can_i_climb::ask(&can_i_climb::Inputs::of(&draft(&one)).unwrap(), Effort::samples(60));
            let of = |ascent| report(ascent, View::default()).figures;
            prop_assert_eq!(of(&alone), of(&beside.ascent), "{}", id);
        }
    }

    /// Nothing that is to be careful about is lost beside a rig, and every source of it stands below.
    #[test]
    fn every_caution_of_a_rig_stands_beside_it_or_over_all(plan in plan()) {
        let list = answer(&plan);
        let told = advantage_report(&list, View::default());
        for (beside, line) in list.rigs.iter().zip(&told.rigs) {
            let alone = report(&beside.ascent, View::default());
            let here: Vec<_> = told.cautions.iter().chain(&line.cautions).map(|caution| caution.id).collect();
            for caution in &alone.cautions {
                prop_assert!(here.contains(&caution.id), "{}: {}", line.id, caution.id);
                prop_assert!(caution.sources.iter().all(|id| told.sources.iter().any(|source| source.id == *id)));
            }
        }
    }

    #[test]
    fn the_list_is_in_order_and_names_the_least_that_works(plan in plan()) {
        let list = answer(&plan);
        // Of the height where the strokes are known, else of one pull.
        let chance = |at: usize| list.rigs[at].ascent.verdict.map(|verdict| verdict.reaches.unwrap_or(verdict.chance));
        for at in 1..list.rigs.len() {
            let (one, other) = (&list.rigs[at - 1], &list.rigs[at]);
            // By the thresholds of the verdict: four in five, one in five; what is not known stands before what fails.
            let group = |at: usize| chance(at).map_or(2, |chance| if chance >= 0.8 { 0 } else if chance >= 0.2 { 1 } else { 3 });
            prop_assert!(group(at - 1) <= group(at), "{:?} before {:?}", chance(at - 1), chance(at));
            if group(at - 1) == group(at) {
                prop_assert!(!one.ascent.hauled || other.ascent.hauled, "whoever needs nobody comes first");
                if one.ascent.hauled == other.ascent.hauled {
                    let turns = |beside: &Beside| beside.kit.turns.iter().map(|(_, count)| count).sum::<usize>();
                    prop_assert!(turns(one) <= turns(other));
                }
            }
        }
        let works = |at: &usize| list.rigs[*at].standing() == Standing::Works && !list.rigs[*at].ascent.hauled;
        prop_assert_eq!(list.least, (0..list.rigs.len()).find(works));
    }

    /// Whoever weighs more, or pulls less, never comes by with less kit.
    #[test]
    fn a_column_up_and_a_row_to_the_left_never_takes_more_kit(plan in plan()) {
        let Map { cells, .. } = map(&inputs(&draft(&plan)), 12, 12);
        let rank = |cell: &Option<usize>| cell.unwrap_or(usize::MAX);
        for row in &cells {
            prop_assert!(row.windows(2).all(|pair| rank(&pair[0]) <= rank(&pair[1])));
        }
        for pair in cells.windows(2) {
            prop_assert!(pair[0].iter().zip(&pair[1]).all(|(weaker, stronger)| rank(weaker) >= rank(stronger)));
        }
    }
}

#[test]
fn every_rig_of_the_catalogue_is_there_once_and_ones_own_when_it_is_written_down() {
    let ids = |draft: &Draft| {
        let mut ids: Vec<&str> = Vec::new();
        ids.extend(ask(&inputs(draft), Effort::QUICK).rigs.iter().map(|beside| beside.ascent.rig_name.named().id));
        ids.sort_unstable();
        ids
    };
    let mut all: Vec<&str> = RigName::OPTIONS.iter().map(|option| option.id).collect();
    all.sort_unstable();
    let without_own: Vec<&str> = all.iter().copied().filter(|id| *id != "own").collect();
    assert_eq!(ids(&person(&[])), without_own);
    assert_eq!(ids(&person(&[("ownRig", "tied tree, hitch climber, hand climber")])), all);
}

/// The cell in which somebody stands says of likely values what the list does, as far as one pull goes.
#[test]
fn the_place_of_a_person_on_the_map_agrees_with_the_list() {
    for pull in (60..=1100).step_by(40) {
        let draft = person(&[("measuredPull", &format!("{pull} N")), ("pullTaken", "lowest-point")]);
        let (list, map) = (ask(&inputs(&draft), Effort::QUICK), map(&inputs(&draft), 40, 40));
        let (_, y, place) = map.you.unwrap();
        assert!((y - f64::from(pull)).abs() < 1e-9);
        let passes = |name: RigName| {
            let ascent = &list.rigs.iter().find(|beside| beside.ascent.rig_name == name).unwrap().ascent;
            let (arms, hands) = (ascent.arms.unwrap().share.likely, ascent.grasp.unwrap().share.likely);
            arms <= 1.0 && hands <= 1.0 && ascent.gain.unwrap().likely > 0.0
        };
        // What the map names passes in the list; what it passes over on the way fails there, or is too much for long.
        let named = place.map(|place| map.rigs[place]);
        assert!(named.is_none_or(passes), "{pull} N: {named:?}");
        for lesser in map.rigs.iter().take(place.unwrap_or(map.rigs.len())).filter(|name| passes(**name)) {
            let ascent = &list.rigs.iter().find(|beside| beside.ascent.rig_name == *lesser).unwrap().ascent;
            assert!(ascent.arms.unwrap().share.likely > 0.59, "{pull} N: {lesser:?}");
        }
    }
}

/// A pull that was never made proves nothing of the hands: with a weak grip the map stops where the list stops.
#[test]
fn the_place_of_somebody_whose_pull_was_not_measured_rests_on_their_own_hands() {
    for grip in (60..=900).step_by(60) {
        let draft = person(&[("gripLeft", &format!("{grip} N")), ("gripRight", &format!("{grip} N"))]);
        let (list, map) = (ask(&inputs(&draft), Effort::QUICK), map(&inputs(&draft), 40, 40));
        let (_, pull, place) = map.you.unwrap();
        let named = place.map(|place| map.rigs[place]);
        let ascent = |name: RigName| &list.rigs.iter().find(|beside| beside.ascent.rig_name == name).unwrap().ascent;
        assert!(named.is_none_or(|name| ascent(name).grasp.unwrap().share.likely <= 1.0), "{grip} N: {named:?}");
        // The cell below says the same as the person's own point, at the same weight and the same pull.
        let row = (0..40).min_by_key(|row| {
            let (from, to) = map.pulls;
            (((from + (to - from) * f64::from(*row) / 39.0) - pull).abs() * 1e6) as u64
        });
        let (from, to) = map.masses;
        let column = (((map.you.unwrap().0 - from) / (to - from)) * 39.0).round() as usize;
        let cell = map.cells[usize::try_from(row.unwrap()).unwrap()][column];
        let rank = |place: Option<usize>| place.unwrap_or(map.rigs.len()) as i64;
        assert!((rank(cell) - rank(place)).abs() <= 2, "{grip} N: {cell:?} and {place:?}");
    }
}

/// After an injury at the neck a loop round the hand proves only itself: bare hands are not known.
#[test]
fn where_hands_are_not_known_nothing_works_and_nobody_is_shown() {
    let unknown = [("trunk", "cervical"), ("measuredPull", "700 N"), ("pullHeld", "hand-loop"), ("hold", "bare-rope")];
    let draft = person(&unknown);
    let map = map(&inputs(&draft), 20, 20);
    assert_eq!(map.you, None);
    assert!(map.cells.iter().flatten().all(Option::is_none));
    let known = draft.set("hold", "hand-loop");
    let loops = boughline::question::advantage::map(&inputs(&known), 20, 20);
    assert!(loops.you.is_some() && loops.cells.iter().flatten().any(Option::is_some));
}

/// By hand: hands that hold less than the arms give tire too, at half of the time to the published 0.524.
#[test]
fn hands_tire_like_arms_on_the_map() {
    // Hand over hand is pulled half of the time with one hand: its need is the weight.
    let draft = person(&[("measuredPull", "1900 N"), ("pullTaken", "lowest-point"), ("pullHeld", "bare-rope")]);
    let map = map(&inputs(&draft), 2, 2);
    let list = ask(&inputs(&draft), Effort::QUICK);
    let hand = list.rigs.iter().find(|beside| beside.ascent.rig_name == RigName::HandOverHand).unwrap();
    let share = hand.ascent.grasp.unwrap().share.likely;
    // Within one pull's strength, past what lasts.
    assert!((0.524..1.0).contains(&share), "{share}");
    assert_ne!(map.you.unwrap().2.map(|at| map.rigs[at]), Some(RigName::HandOverHand));
}

/// A stroke that gains nothing takes nobody up, however little it asks.
#[test]
fn a_stroke_that_gains_nothing_never_works_on_the_map() {
    let lifted =
        "tied tree, hitch upper, hitch climber, turn climber 0.9, turn upper 0.9, hand climber, helper ground 900 N";
    let stuck = person(&[("ownRig", lifted), ("setback", "0.5 m"), ("handTravel", "0.3 m"), ("measuredPull", "400 N")]);
    let map = map(&inputs(&stuck), 10, 10);
    assert!(map.cells.iter().flatten().all(Option::is_none), "{:?}", map.cells);
}

#[test]
fn somebody_stronger_never_needs_a_greater_rig_and_somebody_heavier_never_a_lesser_one() {
    let kit = |mass: i32, pull: i32| {
        let (mass, pull) = (format!("{mass} kg"), format!("{pull} N"));
        let list = ask(&inputs(&person(&[("bodyMass", &mass), ("measuredPull", &pull)])), Effort::samples(400));
        list.least.map_or((usize::MAX, 0, 0), |at| {
            let kit = &list.rigs[at].kit;
            (kit.count(), kit.hitches, kit.cords)
        })
    };
    for mass in [50, 65, 80, 95, 110] {
        for pull in [200, 350, 500, 650, 800] {
            assert!(kit(mass, pull) >= kit(mass, pull + 100), "{mass} kg, {pull} N");
            assert!(kit(mass, pull) <= kit(mass + 10, pull), "{mass} kg, {pull} N");
        }
    }
}

/// Nobody is to wonder where the rig went that they wrote down.
#[test]
fn an_own_rig_that_cannot_be_is_told_of_whichever_rig_was_chosen() {
    let impossible = person(&[("ownRig", "tied tree, hitch climber")]);
    for draft in [impossible.clone(), impossible.set("rig", "tail-3")] {
        let errors = Inputs::of(&draft).expect_err("no hand pulls it");
        assert_eq!(errors.iter().map(|error| error.fields.join(",")).collect::<Vec<_>>(), ["ownRig"]);
    }
}

/// A test of one's own belongs to the rig it was made on.
#[test]
fn a_test_of_ones_own_needs_its_rig() {
    let tested = person(&[("testMass", "94.3 kg"), ("testPull", "400 N")]);
    let errors = Inputs::of(&tested).expect_err("no rig is said");
    assert_eq!(errors.iter().map(|error| error.fields.join(",")).collect::<Vec<_>>(), ["rig"]);
    assert!(Inputs::of(&tested.set("rig", "tail-3")).is_ok());
}

/// One reading of a rig with pulleys tells of pulleys. Bark keeps its own range, and so does a hitch that the test did not
/// drag along.
#[test]
fn a_test_of_ones_own_tells_of_what_the_tested_rig_has() {
    for (rig, pull, dragged) in [("tail-3", "400 N", true), ("haul-cord-3", "400 N", false)] {
        let draft = person(&[("rig", rig), ("testMass", "94.3 kg"), ("testPull", pull), ("topTurn", "bark")]);
        let list = ask(&inputs(&draft), Effort::samples(60));
        for beside in &list.rigs {
            for turn in &beside.ascent.turns {
                let bark = turn.kind == TurnKind::Bark;
                assert_eq!(turn.by, if bark { By::Kind } else { By::Test }, "{:?}", beside.ascent.rig_name);
                assert_eq!(turn.kept.low < turn.kept.high, bark);
            }
        }
        let on = |id: &str| list.rigs.iter().find(|beside| beside.ascent.rig_name.named().id == id).unwrap();
        let bark = on("ground-1").ascent.advantage;
        assert!(bark.low < bark.likely && bark.likely < bark.high, "{bark:?}");
        assert_eq!(on("tail-5").ascent.drags, !dragged);
        // What the test came to is what the tested rig gives.
        let given = on(rig).ascent.advantage;
        assert!((given.likely - 94.3 * 9.80665 / 400.0).abs() < 1e-9 && given.low == given.high, "{given:?}");
    }
}

/// A turn that no rope passes tells nothing of the test, and one said to lose nothing can still account for a loss.
#[test]
fn the_power_of_a_test_is_that_of_turns_that_rope_passes() {
    let footed =
        "tied ground, turn tree ring, hitch upper, hitch climber, turn climber 0.95, turn upper 1, hand climber";
    let draft = person(&[("rig", "own"), ("ownRig", footed), ("testMass", "94.3 kg"), ("testPull", "400 N")]);
    let list = ask(&inputs(&draft), Effort::QUICK);
    let own = list.rigs.iter().find(|beside| beside.ascent.rig_name == RigName::Own).unwrap();
    let [crotch, lower, upper] = own.ascent.turns.as_slice() else { panic!("{:?}", own.ascent.turns) };
    assert_eq!((crotch.by, lower.by, upper.by), (By::Kind, By::Test, By::Test));
    assert!(lower.kept.likely < 0.95 && upper.kept.likely < 1.0, "{:?}", own.ascent.turns);
    assert!((own.ascent.advantage.likely - 94.3 * 9.80665 / 400.0).abs() < 1e-9);
}

#[test]
fn a_map_of_any_size_has_its_cells_and_letters() {
    for (columns, rows, wide, high) in [(0, 0, 2, 2), (7, 5, 7, 5), (200, 200, 200, 200), (usize::MAX, 201, 200, 200)] {
        let map = map_report(&map(&inputs(&person(&[])), columns, rows), View::default());
        assert_eq!((map.rows.len(), map.rows[0].len()), (high, wide));
        let letters: Vec<&str> = map.rigs.iter().map(|rig| rig.letter.as_str()).collect();
        let known = |letter: char| letter == '.' || letters.contains(&letter.to_string().as_str());
        assert!(map.rows.iter().all(|row| row.chars().all(known)));
        assert_eq!(map.you, None);
    }
}

/// Two strands and a knot at either end, each as long as somebody of 1.75 m reaches from the lap (1.108 m).
#[test]
fn the_cord_of_a_rig_is_reckoned_from_its_stops() {
    let list = ask(&inputs(&person(&[])), Effort::QUICK);
    let cord = |id: &str| list.rigs.iter().find(|beside| beside.ascent.rig_name.named().id == id).unwrap().kit.cord;
    for (id, strands) in [("haul-cord-2", 2.0), ("haul-cord-3", 3.0), ("haul-cord-4", 4.0), ("haul-cord-5", 5.0)] {
        let expected = strands * (0.6940 * 1.75 - 0.1061) + 2.0 * 0.3;
        assert!((cord(id).unwrap().likely - expected).abs() < 1e-9, "{id}: {:?}", cord(id));
    }
    assert_eq!(cord("tail-3"), None);
}

/// What somebody's own rig takes: a rope made fast in the tree is no haul cord, and a backup is one more hitch.
#[test]
fn a_rope_up_to_the_tree_is_no_haul_cord_and_a_backup_is_one_more_hitch() {
    let kit = |more: &[(&str, &str)], id: &str| {
        let list = ask(&inputs(&person(more)), Effort::QUICK);
        list.rigs.iter().find(|beside| beside.ascent.rig_name.named().id == id).unwrap().kit.clone()
    };
    let two_ropes = "tied tree, hitch climber\ntied climber, turn tree bearing-pulley, hand climber";
    let own = kit(&[("rig", "own"), ("ownRig", two_ropes)], "own");
    assert_eq!((own.key(), own.cord), ((1, 0, 0), None));
    let cord = "tied tree, hitch upper, hitch climber\ntied climber, turn upper bearing-pulley, hand climber";
    assert_eq!(kit(&[("rig", "own"), ("ownRig", cord)], "own").key(), kit(&[], "haul-cord-2").key());
    assert_eq!((kit(&[], "tail-3").hitches, kit(&[("backup", "second-hitch")], "tail-3").hitches), (1, 2));
}

/// One arm pulls with one hand, and the words say so.
#[test]
fn the_band_says_with_how_many_hands() {
    for (arms, with) in [("one", "with one hand."), ("two", "with both hands.")] {
        let list = ask(&inputs(&person(&[("measuredPull", "520 N"), ("climbArms", arms)])), Effort::QUICK);
        let text = advantage_report(&list, View::default()).chart.text;
        assert!(text.ends_with(with), "{arms}: {text}");
    }
}

#[test]
fn the_chart_is_the_weight_over_the_advantage_in_the_shown_unit() {
    let list = ask(&inputs(&person(&[("measuredPull", "520 N")])), Effort::QUICK);
    let us = View { system: boughline::quantity::System::Us, ..View::default() };
    let chart = advantage_report(&list, us).chart;
    assert_eq!((chart.x.unit, chart.y.unit, chart.lines.len(), chart.bands.len()), ("lb", "lbf", 9, 1));
    let line = chart.lines.iter().find(|line| line.id == "tail-3").unwrap();
    for point in &line.points {
        // Pounds and pounds-force share one gravity.
        assert!((point.x / 2.629 - point.y).abs() < 1e-9 * point.x, "{point:?}");
    }
}
