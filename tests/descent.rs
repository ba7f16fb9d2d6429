//! Coming down and being stuck: what must hold of every plan.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    dead_code,
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unreachable,
    reason = "a plan that is out of order fails the test"
)]

#[path = "descent/legs.rs"]
mod legs;
#[path = "laws/plans.rs"]
mod plans;
#[path = "descent/published.rs"]
mod published;

use boughline::field::Said;
use boughline::quantity::View;
use boughline::question::{Effort, Question, coming_down, rescue};
use boughline::reeving::What;
use boughline::words::{CautionLine, descent_report, rescue_report};
use plans::{Plan, draft, value, with, without};
use proptest::prelude::*;
use proptest::test_runner::Config;

fn cases(cases: u32) -> Config {
    Config { cases, failure_persistence: None, ..Config::default() }
}

fn down(plan: &Plan) -> coming_down::Answer {
    coming_down::ask(&coming_down::Inputs::of(&draft(plan)).expect("the plan is in order"), Effort::samples(40))
}

fn stuck(plan: &Plan) -> rescue::Answer {
    rescue::ask(&rescue::Inputs::of(&draft(plan)).expect("the plan is in order"))
}

/// Every field of a question said or not, but those that are needed always, and one's own test.
fn plans_of(question: Question) -> impl Strategy<Value = Plan> {
    let needed = ["bodyMass", "climbHeight", "rig", "ownRig", "anchor"];
    let tested = ["testMass", "testPull"];
    let fields: Vec<BoxedStrategy<Option<(&'static str, Said)>>> = question
        .fields()
        .iter()
        .filter(|row| !tested.contains(&row.id))
        .map(|row| {
            let said = value(row).prop_map(|said| (row.id, said));
            if needed.contains(&row.id) { said.prop_map(Some).boxed() } else { prop::option::of(said).boxed() }
        })
        .collect();
    fields.prop_map(|fields| fields.into_iter().flatten().collect())
}

fn number(value: f64) -> Said {
    Said::Number(value)
}

/// No word of an answer gives leave, and there is always something to be careful about.
fn is_careful(sentences: &[&str], cautions: &[CautionLine]) -> Result<(), TestCaseError> {
    prop_assert!(cautions.iter().any(|caution| caution.id == "arithmetic"));
    prop_assert!(cautions.iter().filter(|caution| caution.grave).count() >= 2);
    for sentence in sentences {
        let said = sentence.to_lowercase().replace("no time is safe", "");
        for leave in ["safe", "no risk", "guarantee", "you can go"] {
            prop_assert!(!said.contains(leave), "{sentence}");
        }
        prop_assert!(!sentence.contains('{') && !sentence.contains("NaN"), "{sentence}");
    }
    Ok(())
}

proptest! {
    #![proptest_config(cases(1500))]

    #[test]
    fn more_friction_never_asks_more_of_the_hand(plan in plans_of(Question::ComingDown), one in 1.0..100.0_f64, other in 1.0..100.0_f64) {
        let held = |ratio: f64| down(&with(&plan, "brakeMeasured", number(ratio))).hold;
        if let (Some(less), Some(more)) = (held(one.min(other)), held(one.max(other))) {
            prop_assert!(more.low <= less.low && more.likely <= less.likely && more.high <= less.high);
        }
    }

    #[test]
    fn more_turns_never_ask_more_of_the_hand(plan in plans_of(Question::ComingDown), one in 0.5..6.0_f64, other in 0.5..6.0_f64) {
        let plan = with(&without(&plan, &["brakeMeasured"]), "brake", Said::Text("turns".to_owned()));
        let held = |turns: f64| down(&with(&plan, "brakeTurns", number(turns))).hold;
        if let (Some(less), Some(more)) = (held(one.min(other)), held(one.max(other))) {
            prop_assert!(more.high <= less.high);
        }
    }

    #[test]
    fn heavier_never_asks_less_of_the_hand_nor_leaves_anything_cooler(plan in plans_of(Question::ComingDown), one in 40.0..180.0_f64, other in 40.0..180.0_f64) {
        // At one speed: left open, whoever is heavier goes slower.
        let plan = with(&plan, "descentSpeed", number(0.3));
        let answer = |mass: f64| down(&with(&plan, "bodyMass", number(mass)));
        let (light, heavy) = (answer(one.min(other)), answer(one.max(other)));
        if let (Some(less), Some(more)) = (light.hold, heavy.hold) {
            prop_assert!(less.low <= more.low && less.likely <= more.likely && less.high <= more.high);
        }
        prop_assert!(light.energy.likely <= heavy.energy.likely && light.power.likely <= heavy.power.likely);
        if let (Some(less), Some(more)) = (light.cord, heavy.cord) {
            prop_assert!(less.face.high <= more.face.high && less.even.likely <= more.even.likely && less.standing <= more.standing);
        }
        prop_assert!(heavy.sensible.0 <= light.sensible.0);
    }

    #[test]
    fn nobody_is_told_to_go_faster_than_is_sensible(plan in plans_of(Question::ComingDown)) {
        let answer = down(&plan);
        prop_assert!(0.0 < answer.sensible.0 && answer.sensible.0 <= 0.5);
    }

    #[test]
    fn every_step_of_every_change_over_is_sound_and_counts_on_no_hand(plan in plans_of(Question::ComingDown)) {
        if let Ok(steps) = down(&plan).steps {
            for step in steps {
                prop_assert!(step.is_sound(), "{:?} {:?} of {:?}", step.does, step.attached(), step.rig);
                prop_assert!(step.rig.stops().all(|stop| !step.holding().contains(&stop.noun.to_string()) || matches!(stop.what, What::Hitch(_) | What::Knot(_))));
            }
        }
    }

    #[test]
    fn no_way_down_is_without_its_cautions(plan in plans_of(Question::ComingDown)) {
        for view in [View::default(), View { system: boughline::quantity::System::Us, ..View::default() }] {
            let report = descent_report(&down(&plan), view);
            is_careful(&[&report.first, &report.second], &report.cautions)?;
        }
    }

    /// What may kill is never without its own caution.
    #[test]
    fn what_may_kill_on_the_way_down_is_said(plan in plans_of(Question::ComingDown)) {
        let answer = down(&plan);
        let says = |caution: coming_down::Caution| answer.cautions.contains(&caution);
        let word = |id: &str| plan.iter().find(|(known, _)| *known == id).map(|(_, said)| said.clone());
        let chose = |id: &str, option: &str| word(id) == Some(Said::Text(option.to_owned()));
        prop_assert_eq!(chose("cordFibre", "hmpe"), says(coming_down::Caution::SlipsAndMelts));
        prop_assert!(says(coming_down::Caution::Stopper));
        if let Some(Some(above)) = answer.end {
            let said = says(coming_down::Caution::RopeEndsAbove { by: above });
            prop_assert!(above.high > 0.0 && said);
        }
        if answer.hold.is_some() && answer.hand.is_none() {
            prop_assert!(says(coming_down::Caution::UnknownHand));
        }
        if let Some(cord) = answer.cord {
            prop_assert!(cord.face.high <= cord.fibre.warmth().fails);
            prop_assert!((cord.diameter >= 0.008) != says(coming_down::Caution::ThinLifeCord));
        }
    }

    /// Whoever can only call lets nobody down.
    #[test]
    fn nobody_untrained_is_counted_on(plan in plans_of(Question::Rescue)) {
        for person in ["nobody", "caller"] {
            let answer = stuck(&with(&plan, "secondPerson", Said::Text(person.to_owned())));
            if !plan.iter().any(|(id, said)| *id == "rig" && matches!(said, Said::Text(rig) if rig.starts_with("ground") || rig == "own")) {
                prop_assert_eq!(answer.best, None);
                prop_assert!(answer.cautions.contains(&rescue::Caution::NoRescue));
            }
        }
    }

    #[test]
    fn no_rescue_is_without_its_cautions(plan in plans_of(Question::Rescue)) {
        let report = rescue_report(&stuck(&plan), View::default());
        is_careful(&[&report.first, &report.second], &report.cautions)?;
        for line in &report.before {
            is_careful(&[&line.text], &report.cautions)?;
        }
        prop_assert!(!report.before.is_empty() && report.plan.len() >= 6);
    }

    #[test]
    fn higher_never_takes_less_time_and_the_best_way_is_the_quickest(plan in plans_of(Question::Rescue), one in 1.0..80.0_f64, other in 1.0..80.0_f64) {
        let answer = |height: f64| stuck(&with(&plan, "climbHeight", number(height)));
        let (low, high) = (answer(one.min(other)), answer(one.max(other)));
        let best = |answer: &rescue::Answer| answer.best.and_then(|best| answer.ways[best].total);
        prop_assert_eq!(best(&low).is_some(), best(&high).is_some());
        if let (Some(low), Some(high)) = (best(&low), best(&high)) {
            prop_assert!(low.likely <= high.likely && low.high <= high.high);
        }
        for way in &low.ways {
            prop_assert_eq!(way.stages.is_ok(), way.total.is_some());
            if let (Some(total), Some(best), true) = (way.total, best(&low), way.how != rescue::How::Oneself) {
                prop_assert!(best.likely <= total.likely);
            }
        }
    }

    #[test]
    fn more_turns_at_the_foot_never_ask_more_of_the_hand_there(plan in plans_of(Question::Rescue), one in 0.5..6.0_f64, other in 0.5..6.0_f64, stem in any::<bool>()) {
        let brake = if stem { "stem" } else { "turns" };
        let plan = with(&plan, "footBrake", Said::Text(brake.to_owned()));
        let held = |turns: f64| stuck(&with(&plan, "footTurns", number(turns))).lowering;
        if let (Some(less), Some(more)) = (held(one.min(other)), held(one.max(other))) {
            prop_assert!(more.low <= less.low && more.likely <= less.likely && more.high <= less.high);
        }
    }
}
