//! What must hold of every rope, whatever the figures.

use super::answer;
use super::plans::{Plan, draft, with};
use super::rope_plans::rope_plans;
use boughline::field::{Said, Spread};
use boughline::link;
use boughline::quantity::{Decimal, System, View};
use boughline::question::Question;
use boughline::question::rope_length::{Answer, Inputs};
use boughline::reeving::RigName;
use boughline::rope::{Anchor, State};
use boughline::words::rope_report;
use proptest::prelude::*;
use proptest::test_runner::Config;

const VIEWS: [View; 3] = [
    View { system: System::Si, decimal: Decimal::Point },
    View { system: System::Us, decimal: Decimal::Point },
    View { system: System::Us, decimal: Decimal::Comma },
];

/// Whether no end of one spread is above that of the other. Heights taken from heights differ in the last places.
fn at_most(one: Spread, other: Spread) -> bool {
    let below = |one: f64, other: f64| one <= other + other.abs() * 1e-12;
    below(one.low, other.low) && below(one.likely, other.likely) && below(one.high, other.high)
}

fn numbers(plan: &Plan, id: &'static str, one: f64, other: f64) -> (Answer, Answer) {
    let say = |value: f64| answer(&with(plan, id, Said::Number(value)));
    (say(one.min(other)), say(one.max(other)))
}

fn chosen(plan: &Plan, id: &'static str, option: &str) -> Answer {
    answer(&with(plan, id, Said::Text(option.to_owned())))
}

fn is_ordered(spread: Spread) -> bool {
    0.0 <= spread.low && spread.low <= spread.likely && spread.likely <= spread.high && spread.high.is_finite()
}

proptest! {
    #![proptest_config(Config { cases: 512, failure_persistence: None, ..Config::default() })]

    #[test]
    fn every_length_is_a_number_between_its_ends(plan in rope_plans()) {
        let answer = answer(&plan);
        prop_assert!(is_ordered(answer.need) && answer.need.low > 0.0);
        for course in &answer.courses {
            prop_assert!(is_ordered(course.total));
            prop_assert!(course.pieces.iter().all(|(_, length)| is_ordered(*length) && length.high > 0.0));
        }
    }

    /// The facts: added up in their order, to the last bit.
    #[test]
    fn pieces_add_up_to_the_total_exactly(plan in rope_plans()) {
        for course in answer(&plan).courses {
            let mut sum = Spread::point(0.0);
            for (_, one) in &course.pieces {
                sum = Spread::new(sum.low + one.low, sum.likely + one.likely, sum.high + one.high);
            }
            prop_assert_eq!(sum, course.total, "{:?}", course.state);
        }
    }

    #[test]
    fn the_need_is_that_of_the_greatest_state(plan in rope_plans()) {
        let answer = answer(&plan);
        let greatest = |end: fn(Spread) -> f64| answer.courses.iter().map(|course| end(course.total)).fold(0.0, f64::max);
        prop_assert_eq!(answer.need.low, greatest(|total| total.low));
        prop_assert_eq!(answer.need.likely, greatest(|total| total.likely));
        prop_assert_eq!(answer.need.high, greatest(|total| total.high));
        let report = rope_report(&answer, View::default());
        let deciding: Vec<_> = report.states.iter().filter(|state| state.decides).collect();
        prop_assert_eq!(deciding.len(), 1);
        prop_assert!(deciding.iter().all(|state| state.total.value == Some(answer.need.likely)));
    }

    /// Topping out and bringing the rope down are shown, and never ask for more than what came before.
    #[test]
    fn topping_out_and_bringing_the_rope_down_never_decide(plan in rope_plans()) {
        let answer = answer(&plan);
        prop_assert!(![State::Top, State::Retrieve].contains(&answer.decides), "{:?}", answer.decides);
        let lowers = answer.courses.iter().any(|course| course.state == State::Lowered);
        prop_assert!(!answer.anchor.is_some_and(Anchor::is_lowerable) || lowers && answer.decides == State::Lowered);
    }

    #[test]
    fn a_higher_crotch_never_needs_less(plan in rope_plans(), one in 10.1..=120.0_f64, other in 10.1..=120.0_f64) {
        let (low, high) = numbers(&plan, "crotchHeight", one, other);
        prop_assert!(at_most(low.need, high.need));
    }

    #[test]
    fn a_longer_tail_or_knot_or_spare_never_needs_less(
        plan in rope_plans(),
        id in prop::sample::select(vec!["ropeTail", "anchorKnot", "overCrotch", "ropeSpare", "stemGirth", "footOffset", "redirectRope"]),
        one in 0.0..=10.0_f64,
        other in 0.0..=10.0_f64,
    ) {
        let (short, long) = numbers(&plan, id, one, other);
        prop_assert!(at_most(short.need, long.need));
    }

    #[test]
    fn a_higher_start_never_needs_more(plan in rope_plans(), one in 0.2..=10.0_f64, other in 0.2..=10.0_f64) {
        let plan = with(&plan, "crotchHeight", Said::Number(25.0));
        let (low, high) = numbers(&plan, "hitchHeight", one, other);
        prop_assert!(at_most(high.need, low.need));
    }

    /// With knots alike; round a thick stem a tie may take more than a low crotch is high.
    #[test]
    fn a_canopy_anchor_never_needs_less_than_a_base_anchor(plan in rope_plans(), knot in 0.0..=30.0_f64) {
        let plan = with(&plan, "anchorKnot", Said::Number(knot));
        prop_assert!(at_most(chosen(&plan, "anchor", "base").need, chosen(&plan, "anchor", "canopy").need));
    }

    #[test]
    fn a_rig_on_the_rope_s_own_tail_never_needs_less_than_none(plan in rope_plans()) {
        prop_assert!(at_most(chosen(&plan, "rig", "hand-over-hand").need, chosen(&plan, "rig", "tail-3").need));
    }

    /// Two sides of the tree always, three where the tail hangs beside them.
    #[test]
    fn a_rope_is_never_shorter_than_its_way_over_the_crotch(plan in rope_plans()) {
        let answer = answer(&plan);
        let three = matches!(answer.anchor, Some(Anchor::Canopy | Anchor::BaseLowerable));
        let sides = if three { 3.0 } else { 2.0 };
        prop_assert!(answer.need.low >= sides * answer.crotch);
    }

    #[test]
    fn nothing_that_is_written_is_no_number(plan in rope_plans(), view in prop::sample::select(VIEWS.to_vec())) {
        let report = rope_report(&answer(&plan), view);
        let mut texts = vec![report.first, report.second.clone()];
        let shown = report.states.into_iter().flat_map(|state| state.items.into_iter().chain([state.total]));
        texts.extend(shown.chain(report.figures).flat_map(|figure| {
            figure.workings.into_iter().chain(figure.range).chain([figure.text])
        }));
        texts.extend(report.cautions.into_iter().map(|caution| caution.text));
        texts.extend([report.buy, report.owned].into_iter().filter(|text| !text.is_empty()));
        for text in texts {
            let odd = text.split([' ', '(', ')', ',']).find(|word| ["NaN", "inf", "-inf", "—", "−0", "-0"].contains(word));
            prop_assert!(odd.is_none() && !text.contains("  ") && !text.is_empty(), "{}", text);
            prop_assert!(!text.contains('−'), "no rope is shorter than none: {}", text);
        }
    }

    #[test]
    fn a_plan_comes_back_from_a_link_to_the_same_answer(plan in rope_plans(), view in prop::sample::select(VIEWS.to_vec())) {
        let sent = draft(&plan);
        let fragment = link::write(Question::RopeLength, &sent, view).expect("it can be read");
        let link = link::read(&fragment);
        prop_assert_eq!(&link.notices, &[]);
        prop_assert_eq!((link.question, link.view), (Some(Question::RopeLength), view));
        prop_assert_eq!(Inputs::of(&link.draft), Inputs::of(&sent));
        prop_assert_eq!(link::write(Question::RopeLength, &link.draft, view), Some(fragment), "written again");
    }
}

/// Whatever rig is in the catalogue.
#[test]
fn every_rig_has_its_rope() {
    for rig in RigName::CATALOGUE.iter().map(|name| name.named()) {
        for anchor in Anchor::OPTIONS.iter().map(|option| option.id) {
            let say = |id, text: &str| (id, Said::Text(text.to_owned()));
            let plan = vec![say("crotchHeight", "12 m"), say("anchor", anchor), say("rig", rig.id)];
            let answer = answer(&plan);
            assert!(answer.need.low >= 24.0, "{}: {:?}", rig.id, answer.need);
            let start = answer.courses.iter().find(|course| course.state == State::Start).expect("it starts");
            // A loop at the crotch leaves one side of it to start on, and its tail, if it has one.
            let sides = if answer.anchor.is_some_and(Anchor::needs_retrieval_cord) { 10.0 } else { 20.0 };
            assert!(start.total.likely > sides, "{}: {start:?}", rig.id);
        }
    }
}
