//! Of two answers about cords, the way down and a rescue: what physics orders, the answers have in that order.

use super::drawn::plan_of;
use super::ordered::{Compared, holds, less_and_more, said_so_far, shares};
use super::plans::{Plan, draft, with, without};
use boughline::field::Said;
use boughline::question::cut_plan::{KindPlan, Outcome};
use boughline::question::{Effort, Question, coming_down, cut_length, cut_plan, rescue};
use proptest::prelude::*;

fn is_near(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * other.abs().max(1.0)
}

/// The proved cost of the best plan of each kind of cord.
fn costs(answer: &cut_plan::Answer) -> Vec<Option<u32>> {
    let cost = |kind: &KindPlan| match &kind.outcome {
        Outcome::Plan(best) if best.proved => Some(best.cost),
        _ => None,
    };
    answer.kinds.iter().map(cost).collect()
}

/// Whether no kind of cord costs more by the one than by the other.
fn buys_no_more(compared: &mut Compared, what: &'static str, one: &cut_plan::Answer, other: &cut_plan::Answer) -> bool {
    let pairs = costs(one).into_iter().zip(costs(other)).filter_map(|(one, other)| one.zip(other));
    one.kinds.len() == other.kinds.len()
        && pairs.fold(true, |all, (one, other)| compared.in_order(what, one, other) && all)
}

/// The plan with another row of a list.
fn with_row(plan: &Plan, id: &'static str, row: &str) -> Option<Plan> {
    let said = plan.iter().find_map(|(known, said)| if *known == id { Some(said) } else { None })?;
    let Said::Text(text) = said else { return None };
    Some(with(plan, id, Said::Text(format!("{text}\n{row}"))))
}

/// A thicker cord of the same make takes no less cord and bears no less; a heavier climber loads it no less.
#[test]
fn cord_thicker_is_longer_and_stronger() {
    let least = [("the length", 80, 20), ("the strength", 8, 1), ("the load", 20, 20)];
    holds(256, &least, (plan_of(Question::CutLength), shares()), |(plan, shares), compared| {
        let bare = without(&plan, &["hitchCordStrength", "haulCordStrength", "cordCut", "cameOut"]);
        for id in ["hitchCord", "slingCord", "haulCord"] {
            let Some((thin, thick)) = less_and_more!(cut_length, bare, id, shares) else { continue };
            let holds = compared.at_most("the length", thin.cut.total, thick.cut.total);
            prop_assert!(holds, "{}: {:?} then {:?}", id, thin.cut, thick.cut);
            if let Some((thin, thick)) = thin.strength.zip(thick.strength) {
                prop_assert!(compared.at_most("the strength", thin, thick), "{}: {:?} then {:?}", id, thin, thick);
            }
        }
        if let Some((light, heavy)) = less_and_more!(cut_length, plan, "bodyMass", shares)
            && let Some((light, heavy)) = light.peak.zip(heavy.peak)
        {
            prop_assert!(compared.at_most("the load", light, heavy), "{:?} then {:?}", light, heavy);
        }
        Ok(())
    });
}

/// Cord that one has already never makes one buy more; more cords to cut never make one buy less.
#[test]
fn cords_owned_never_cost_and_cords_wanted_never_save() {
    let least = [("one more hank", 4, 2), ("more cords", 30, 10)];
    holds(256, &least, plan_of(Question::CutPlan), |plan, compared| {
        let ask = |plan: Plan| {
            cut_plan::Inputs::of(&draft(&plan)).ok().map(|inputs| cut_plan::ask(&inputs, Effort::samples(200)))
        };
        let Some(before) = ask(plan.clone()) else { return Ok(()) };
        // Where no hanks were said the usual ones stand for them, until some are.
        let is_said = before.kinds.iter().all(|kind| !kind.kind.is_usual);
        if let Some(richer) = with_row(&plan, "hanks", "any ~ 7 m ~ 0 ~ x1").and_then(ask).filter(|_| is_said) {
            let holds = buys_no_more(compared, "one more hank", &richer, &before);
            prop_assert!(holds, "{:?} then {:?}", costs(&before), costs(&richer));
        }
        if let Some(more) = with_row(&plan, "cords", "9 ~ 6 mm ~ 1.1 m").and_then(ask) {
            let is_another_kind = before.kinds.len() < more.kinds.len();
            let holds = is_another_kind || buys_no_more(compared, "more cords", &before, &more);
            prop_assert!(holds, "{:?} then {:?}", costs(&before), costs(&more));
        }
        Ok(())
    });
}

/// What every cut or every hank loses is never won back.
#[test]
fn cords_waste_never_saves() {
    let ids = prop::sample::select(vec!["kerf", "endAllowance"]);
    holds(256, &[("the cost", 50, 5)], (plan_of(Question::CutPlan), ids, shares()), |(plan, id, shares), compared| {
        let Some((less, more)) = less_and_more!(cut_plan, plan, id, shares, Effort::samples(200)) else {
            return Ok(());
        };
        let holds = buys_no_more(compared, "the cost", &less, &more);
        prop_assert!(holds, "{:?} then {:?}", costs(&less), costs(&more));
        Ok(())
    });
}

/// All the height comes out as heat: energy is weight times height, and power weight times speed.
#[test]
fn down_heat_is_weight_times_height() {
    holds(256, &[("heat and height", 80, 80)], plan_of(Question::ComingDown), |plan, compared| {
        let Ok(inputs) = coming_down::Inputs::of(&draft(&plan)) else { return Ok(()) };
        let answer = coming_down::ask(&inputs, Effort::samples(50));
        for (weight, energy, power) in [
            (answer.weight.low, answer.energy.low, answer.power.low),
            (answer.weight.likely, answer.energy.likely, answer.power.likely),
            (answer.weight.high, answer.energy.high, answer.power.high),
        ] {
            compared.note("heat and height", energy > 0.0 && power > 0.0);
            prop_assert!(is_near(energy, weight * answer.height), "{:?}", answer.energy);
            prop_assert!(is_near(power, weight * answer.speed), "{:?}", answer.power);
        }
        prop_assert!(answer.time >= answer.height / answer.speed * (1.0 - 1e-9));
        Ok(())
    });
}

/// Faster, with more of the heat in the cord, heavier, or with shorter stops, a cord never stays cooler.
#[test]
fn down_more_heat_never_cools() {
    let ids = prop::sample::select(vec!["descentSpeed", "heatShare", "kitMass", "descentRest"]);
    let least = [("through and through", 12, 2), ("at its face", 12, 2)];
    holds(256, &least, (plan_of(Question::ComingDown), ids, shares()), |(plan, id, shares), compared| {
        let both = less_and_more!(coming_down, plan, id, shares, Effort::samples(50));
        let Some((less, more)) = both.and_then(|(less, more)| less.cord.zip(more.cord)) else { return Ok(()) };
        let (cool, hot) = if id == "descentRest" { (more, less) } else { (less, more) };
        prop_assert!(compared.at_most("through and through", cool.even, hot.even), "{}: {:?} then {:?}", id, cool, hot);
        prop_assert!(compared.at_most("at its face", cool.face, hot.face), "{}: {:?} then {:?}", id, cool, hot);
        Ok(())
    });
}

/// A heavier climber never takes fewer people to haul, nor do weaker helpers.
#[test]
fn rescue_weight_and_weakness_never_take_fewer_people() {
    let least =
        [("the pull", 80, 80), ("people by weight", 80, 20), ("lowering", 20, 20), ("people by strength", 80, 20)];
    holds(256, &least, (plan_of(Question::Rescue), shares()), |(plan, shares), compared| {
        let plan = without(&plan, &["testMass", "testPull"]);
        if let Some((light, heavy)) = less_and_more!(rescue, plan, "bodyMass", shares) {
            prop_assert_eq!(light.hauls.len(), heavy.hauls.len());
            for (light, heavy) in light.hauls.iter().zip(&heavy.hauls) {
                prop_assert!(compared.at_most("the pull", light.pull, heavy.pull), "{:?} then {:?}", light, heavy);
                prop_assert!(
                    compared.at_most("people by weight", light.people, heavy.people),
                    "{:?} then {:?}",
                    light,
                    heavy
                );
            }
            if let Some((light, heavy)) = light.lowering.zip(heavy.lowering) {
                prop_assert!(compared.at_most("lowering", light, heavy), "{:?} then {:?}", light, heavy);
            }
        }
        if let Some((weak, strong)) = less_and_more!(rescue, plan, "helperPull", shares) {
            for (weak, strong) in weak.hauls.iter().zip(&strong.hauls) {
                prop_assert!(
                    compared.at_most("people by strength", strong.people, weak.people),
                    "{:?} then {:?}",
                    weak,
                    strong
                );
            }
        }
        Ok(())
    });
}

/// More rope never takes a way to the ground away, nor makes it slower.
#[test]
fn rescue_more_rope_never_takes_a_way() {
    let least = [("a way", 80, 1), ("the quickest way", 20, 1)];
    holds(256, &least, (plan_of(Question::Rescue), shares()), |(plan, shares), compared| {
        let Some((short, long)) = less_and_more!(rescue, plan, "ropeOwned", shares) else { return Ok(()) };
        prop_assert_eq!(short.ways.len(), long.ways.len());
        for (short, long) in short.ways.iter().zip(&long.ways) {
            let holds = compared.in_order("a way", short.stages.is_ok(), long.stages.is_ok());
            prop_assert!(holds, "{:?} then {:?}", short, long);
        }
        let quickest = |answer: &rescue::Answer| answer.best.and_then(|at| answer.ways.get(at)?.total);
        if let Some(short) = quickest(&short) {
            let Some(long) = quickest(&long) else { return Err(TestCaseError::fail("no way is left")) };
            prop_assert!(compared.in_order("the quickest way", long.likely, short.likely));
        }
        Ok(())
    });
}
