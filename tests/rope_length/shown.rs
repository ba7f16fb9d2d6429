//! What is shown adds up, and is never less than what is needed, in either system of units.

use super::answer;
use super::plans::with;
use super::rope_plans::rope_plans;
use boughline::field::{Said, Spread};
use boughline::quantity::{CENTIMETRE, Decimal, Dimension, INCH, System, View, read};
use boughline::rope::need_begun;
use boughline::words::{Figure, rope_report};
use proptest::prelude::*;
use proptest::test_runner::Config;

/// The steps, of a centimetre or an inch, that a text says.
fn steps(text: &str, view: View) -> i64 {
    let si = if text == "0 m" || text == "0 ft" { 0.0 } else { read(text, Dimension::Length, None).expect(text) };
    let steps = si / step(view);
    assert!((steps - steps.round()).abs() < 1e-6, "{text} is no whole step");
    steps.round() as i64
}

fn step(view: View) -> f64 {
    if view.system == System::Si { 0.01 } else { 0.0254 }
}

/// The low end, the likely value and the high end, as shown.
fn shown(figure: &Figure, view: View) -> [i64; 3] {
    let likely = steps(&figure.text, view);
    match figure.range.as_deref().and_then(|range| range.split_once(" to ")) {
        Some((low, high)) => [steps(low, view), likely, steps(high, view)],
        None => [likely; 3],
    }
}

fn views() -> impl Strategy<Value = View> {
    let systems = prop::sample::select(vec![System::Si, System::Us]);
    let marks = prop::sample::select(vec![Decimal::Point, Decimal::Comma]);
    (systems, marks).prop_map(|(system, decimal)| View { system, decimal })
}

fn ends(spread: Spread) -> [f64; 3] {
    [spread.low, spread.likely, spread.high]
}

proptest! {
    #![proptest_config(Config { cases: 1024, failure_persistence: None, ..Config::default() })]

    /// Every total that is shown is the sum of the items that are shown with it, at each end, and no less than the exact one.
    #[test]
    fn items_as_shown_add_up_to_the_total_as_shown(plan in rope_plans(), view in views()) {
        let answer = answer(&plan);
        let report = rope_report(&answer, view);
        let mut most = [0; 3];
        for (state, course) in report.states.iter().zip(&answer.courses) {
            let mut sum = [0; 3];
            for item in &state.items {
                let [low, likely, high] = shown(item, view);
                prop_assert!(low <= likely && likely <= high, "{}: {:?}", item.id, item.range);
                sum = [sum[0] + low, sum[1] + likely, sum[2] + high];
            }
            let total = shown(&state.total, view);
            prop_assert_eq!(sum, total, "{}", state.id);
            for (steps, exact) in total.iter().zip(ends(course.total)) {
                let over = *steps as f64 - exact / step(view);
                prop_assert!((-1e-3..state.items.len() as f64 + 1e-3).contains(&over), "{} over", over);
            }
            most = [most[0].max(total[0]), most[1].max(total[1]), most[2].max(total[2])];
        }
        let need = report.figures.iter().find(|figure| figure.id == "ropeNeeded").expect("always");
        prop_assert_eq!(shown(need, view), most);
        // The headline has whole metres or feet, the last one begun.
        let to_one = if view.system == System::Si { 100 } else { 12 };
        let told: Vec<i64> = report.first.split([' ', ';', '.']).filter_map(|word| word.parse().ok()).collect();
        let mut wanted = vec![(most[1] + to_one - 1) / to_one, (most[2] + to_one - 1) / to_one];
        wanted.dedup();
        prop_assert_eq!(told, wanted, "{}", report.first);
    }

    /// The length to buy is one of those there are, long enough to be sure, and none shorter is.
    #[test]
    fn the_length_to_buy_is_the_shortest_that_is_enough(plan in rope_plans()) {
        let answer = answer(&plan);
        for (stock, unit) in answer.stock.iter().zip([CENTIMETRE, INCH]) {
            let need = need_begun(&answer.courses, unit);
            prop_assert!(need.low >= answer.need.low - 1e-6 && need.high >= answer.need.high - 1e-6);
            let enough = |need: f64| stock.ladder.0.iter().copied().filter(|length| *length >= need - 1e-6).reduce(f64::min);
            prop_assert_eq!(stock.buy, enough(need.high));
            prop_assert_eq!(stock.might_do.or(stock.buy), enough(need.likely));
        }
    }

    /// What is left over and what is needed come to the length to buy.
    #[test]
    fn what_is_left_over_and_what_is_needed_are_the_length_to_buy(plan in rope_plans(), view in views()) {
        let plan = with(&plan, "ropeStock", Said::Text("366 m; 1200 ft".to_owned()));
        let report = rope_report(&answer(&plan), view);
        let figure = |id: &str| report.figures.iter().find(|figure| figure.id == id).map(|figure| shown(figure, view));
        if let (Some(need), Some([buy, ..]), Some(left)) = (figure("ropeNeeded"), figure("ropeToBuy"), figure("ropeLeftOver")) {
            let sums = [left[0] + need[2], left[1] + need[1], left[2] + need[0]];
            prop_assert_eq!(sums, [buy; 3]);
        }
    }
}
