//! Of one answer: its figures are numbers in order, and the same whenever they are asked for.

use super::plans::plans;
use super::{answer, answer_with, cases, spreads};
use boughline::field::{Kind, Said};
use boughline::quantity::{System, View};
use boughline::question::can_i_climb::{Level, Missing};
use boughline::question::{Effort, Question};
use boughline::words::report;
use proptest::prelude::*;

proptest! {
    #![proptest_config(cases(256))]

    #[test]
    fn every_figure_is_a_number_between_its_ends(plan in plans()) {
        let answer = answer(&plan);
        for (name, spread) in spreads(&answer) {
            prop_assert!(spread.low <= spread.likely && spread.likely <= spread.high, "{}: {:?}", name, spread);
        }
        for (name, spread) in [("need", answer.need), ("weight", answer.weight), ("anchor", answer.anchor)] {
            prop_assert!(spread.low > 0.0 && spread.high.is_finite(), "{}: {:?}", name, spread);
        }
        for value in answer.turn_efficiency.into_iter().chain([answer.ideal, answer.height]) {
            prop_assert!(value.is_finite() && value > 0.0);
        }
        if let Some(verdict) = answer.verdict {
            prop_assert!((0.0..=1.0).contains(&verdict.chance));
            prop_assert!(verdict.stronger.is_none_or(|times| times > 1.0 && times.is_finite()));
        }
    }

    #[test]
    fn nothing_that_is_written_is_no_number(plan in plans()) {
        for system in [System::Si, System::Us] {
            let report = report(&answer(&plan), View { system, ..View::default() });
            for figure in &report.figures {
                let ordered = figure.low.unwrap_or(f64::NEG_INFINITY) <= figure.value.unwrap_or(f64::INFINITY)
                    && figure.value.unwrap_or(f64::NEG_INFINITY) <= figure.high.unwrap_or(f64::INFINITY);
                prop_assert!(ordered, "{:?}", figure);
            }
            let mut texts = vec![report.first, report.second, report.drawing.text];
            texts.extend(report.figures.into_iter().flat_map(|figure| {
                figure.workings.into_iter().chain(figure.range).chain([figure.text])
            }));
            texts.extend(report.cautions.into_iter().map(|caution| caution.text));
            texts.extend(report.parts.into_iter().map(|part| part.text));
            for text in texts {
                let odd = text.split([' ', '(', ')', ',']).find(|word| ["NaN", "inf", "-inf", "—", "−0", "-0"].contains(word));
                let blank = text.contains("  ") || text.is_empty();
                prop_assert!(odd.is_none() && !blank, "{}", text);
            }
        }
    }

    #[test]
    fn no_verdict_is_better_than_at_your_limit_while_something_is_missing(plan in plans()) {
        let answer = answer(&plan);
        let says = |id, text: &str| plan.iter().any(|(of, said)| *of == id && *said == Said::Text(text.to_owned()));
        let down = plan.iter().any(|(id, _)| *id == "wayDown");
        prop_assert_eq!(down, !answer.missing.contains(&Missing::WayDown));
        // From the crotch a rope lets nobody down.
        prop_assert!(!answer.missing.contains(&Missing::Lowering) || says("wayDown", "lowered") && !answer.hauled);
        prop_assert_eq!(
            answer.hauled || says("secondPerson", "rescuer"),
            !answer.missing.contains(&Missing::SecondPerson)
        );
        let within = answer.verdict.is_some_and(|verdict| verdict.level == Level::WithinReach);
        prop_assert!(!within || answer.missing.is_empty());
    }

    #[test]
    fn the_same_inputs_have_the_same_answer(plan in plans()) {
        let (one, other) = (answer(&plan), answer(&plan));
        for ((name, one), (_, other)) in spreads(&one).into_iter().zip(spreads(&other)) {
            for (one, other) in [(one.low, other.low), (one.likely, other.likely), (one.high, other.high)] {
                prop_assert_eq!(one.to_bits(), other.to_bits(), "{}", name);
            }
        }
        prop_assert_eq!(one, other);
    }

    #[test]
    fn effort_never_changes_a_likely_figure(plan in plans()) {
        let (little, full) = (answer_with(&plan, Effort::samples(50)), answer_with(&plan, Effort::samples(1000)));
        prop_assert!(little.more && full.more);
        for ((name, one), (_, other)) in spreads(&little).into_iter().zip(spreads(&full)) {
            prop_assert_eq!(one.likely.to_bits(), other.likely.to_bits(), "{}", name);
        }
        prop_assert_eq!(little.parts, full.parts);
        prop_assert_eq!(little.turn_efficiency, full.turn_efficiency);
    }

    /// What is listed as taken for granted is all that is: nothing else that could be chosen would change a figure, a
    /// part, a caution or the verdict.
    #[test]
    fn a_default_that_is_not_named_changes_nothing(plan in plans(), row in any::<prop::sample::Index>(), option in any::<prop::sample::Index>()) {
        let choices: Vec<_> = Question::CanIClimb.fields().iter().filter_map(|row| match row.kind {
            Kind::Choice { options, likely: Some(_) } => Some((row.id, options)),
            _ => None,
        }).collect();
        let (id, options) = *row.get(&choices);
        let plan = super::plans::without(&plan, &[id]);
        let assumed = Question::CanIClimb.assumed(&super::plans::draft(&plan)).expect("in order");
        if assumed.iter().all(|row| row.id != id) {
            let chosen = super::plans::with(&plan, id, Said::Text(option.get(options).id.to_owned()));
            let told = |plan| {
                let report = report(&answer(plan), View::default());
                // Whoever says of an injury is told of more; that reckons with nothing.
                let of_injury = ["spinal-injury", "dysreflexia", "harness-clock", "numb-skin", "thin-bones"];
                let cautions: Vec<_> =
                    report.cautions.into_iter().filter(|caution| !of_injury.contains(&caution.id)).collect();
                (report.verdict, report.figures, report.drawing, report.parts, cautions)
            };
            prop_assert!(told(&plan) == told(&chosen), "{} of {:?}", id, plan);
        }
    }

    /// An own test decides the real advantage, whatever else is said of turns and drag.
    #[test]
    fn an_own_test_gives_back_the_advantage_that_was_measured(
        plan in plans(),
        mass in 10.0..300.0_f64,
        advantage in 1.05..2.95_f64,
    ) {
        let pull = mass * boughline::quantity::STANDARD_GRAVITY / advantage;
        let plan = super::plans::with(&plan, "rig", Said::Text("tail-3".to_owned()));
        let plan = super::plans::with(&plan, "testMass", Said::Number(mass));
        let plan = super::plans::with(&plan, "testPull", Said::Number(pull));
        let found = answer(&plan).advantage;
        prop_assert!((found.likely - advantage).abs() < 1e-9, "{:?} for {}", found, advantage);
        prop_assert_eq!(found.low.to_bits(), found.high.to_bits());
    }
}
