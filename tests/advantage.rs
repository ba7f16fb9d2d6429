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
use boughline::question::advantage::{Answer, Inputs, Map, Standing, ask, map};
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

/// Any plan without one's own test, which belongs to one rig.
fn plan() -> impl Strategy<Value = Plan> {
    plans::plans().prop_map(|plan| without(&plan, &["testMass", "testPull"]))
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

    #[test]
    fn the_list_is_in_order_and_names_the_least_that_works(plan in plan()) {
        let list = answer(&plan);
        let key = |at: usize| {
            let beside = &list.rigs[at];
            (beside.standing(), beside.ascent.hauled, beside.kit.count(), beside.kit.hitches, beside.kit.cords)
        };
        for at in 1..list.rigs.len() {
            prop_assert!(key(at - 1) <= key(at));
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
