//! Of two answers about a climb and what it loads: what physics orders, the answers have in that order.

use super::drawn::plan_of;
use super::ordered::{ending, holds, less_and_more, said_so_far, shares};
use super::plans::{draft, without};
use boughline::quantity::Dimension;
use boughline::question::{Effort, Question, advantage, can_i_climb, loads};
use proptest::prelude::*;

const TEST: [&str; 2] = ["testMass", "testPull"];

/// What every piece carries in every state, the rigs being alike.
fn pairs<'a>(one: &'a loads::Answer, other: &'a loads::Answer) -> Vec<(&'a loads::Load, &'a loads::Load)> {
    let carried =
        |answer: &'a loads::Answer| answer.states.iter().map(|state| state.carried.as_ref().ok()).collect::<Vec<_>>();
    let both = carried(one).into_iter().zip(carried(other)).filter_map(|(one, other)| one.zip(other));
    both.flat_map(|(one, other)| {
        assert_eq!(one.loads.len(), other.loads.len(), "the same pieces");
        one.loads.iter().zip(&other.loads)
    })
    .collect()
}

/// Friction only costs: a turn that keeps more never raises the pull that any rig asks for.
#[test]
fn advantage_friction_never_helps() {
    let ids = prop::sample::select(ending(Question::Advantage, "Efficiency", Dimension::Ratio));
    holds(
        64,
        &[("the pull", 80, 80)],
        (plan_of(Question::Advantage), ids, shares()),
        |(plan, id, shares), compared| {
            let plan = without(&plan, &TEST);
            let Some((less, more)) = less_and_more!(advantage, plan, id, shares, Effort::samples(50)) else {
                return Ok(());
            };
            for one in &less.rigs {
                let name = one.ascent.rig_name;
                let other = more.rigs.iter().find(|other| other.ascent.rig_name == name).expect("the same rigs");
                prop_assert!(compared.at_most("the pull", other.ascent.need, one.ascent.need), "{:?} {}", name, id);
            }
            Ok(())
        },
    );
}

/// Weight only costs: whoever weighs more never pulls less, and never does better on any rig.
#[test]
fn advantage_weight_never_helps() {
    let least = [("the pull", 80, 80), ("the standing", 80, 10)];
    holds(64, &least, (plan_of(Question::Advantage), shares()), |(plan, shares), compared| {
        let plan = without(&plan, &TEST);
        let both = less_and_more!(advantage, plan, "bodyMass", shares, Effort::samples(50));
        let Some((light, heavy)) = both else { return Ok(()) };
        for one in &light.rigs {
            let name = one.ascent.rig_name;
            let other = heavy.rigs.iter().find(|other| other.ascent.rig_name == name).expect("the same rigs");
            prop_assert!(compared.at_most("the pull", one.ascent.need, other.ascent.need), "{:?}", name);
            prop_assert!(compared.in_order("the standing", one.standing(), other.standing()), "{:?}", name);
        }
        Ok(())
    });
}

/// More samples make an answer surer and not another: 20,000 and 2,000 agree within five times the error of sampling.
#[test]
fn climb_effort_agrees_with_itself() {
    let least = [("the chance", 40, 1), ("the chance to reach it", 15, 0)];
    holds(64, &least, plan_of(Question::CanIClimb), |plan, compared| {
        let Ok(inputs) = can_i_climb::Inputs::of(&draft(&plan)) else { return Ok(()) };
        let asked = |samples| can_i_climb::ask(&inputs, Effort::samples(samples)).verdict;
        let (Some(some), Some(full)) = (asked(2_000), asked(20_000)) else { return Ok(()) };
        let chances = [
            ("the chance", Some(some.chance), Some(full.chance)),
            ("the chance to reach it", some.reaches, full.reaches),
        ];
        for (what, some, full) in chances {
            let Some((some, full)) = some.zip(full) else { continue };
            compared.note(what, some != full);
            let error = (full * (1.0 - full) * (1.0 / 2_000.0 - 1.0 / 20_000.0)).sqrt();
            prop_assert!((some - full).abs() <= 5.0 * error + 2.0 / 2_000.0, "{} {} {}", what, some, full);
        }
        Ok(())
    });
}

/// Nothing is loaded less for a heavier climber, and no peak is under the load it is the peak of.
#[test]
fn loads_grow_with_the_weight() {
    let least = [("the load", 80, 80), ("the peak", 80, 80), ("load and peak", 80, 80)];
    holds(256, &least, (plan_of(Question::Loads), shares()), |(plan, shares), compared| {
        let plan = without(&plan, &TEST);
        let both = less_and_more!(loads, plan, "bodyMass", shares, Effort::samples(50));
        let Some((light, heavy)) = both else { return Ok(()) };
        for (light, heavy) in pairs(&light, &heavy) {
            prop_assert!(compared.at_most("the load", light.load, heavy.load), "{:?} then {:?}", light, heavy);
            prop_assert!(compared.at_most("the peak", light.peak, heavy.peak), "{:?} then {:?}", light, heavy);
            prop_assert!(compared.at_most("load and peak", light.load, light.peak), "{:?}", light);
        }
        Ok(())
    });
}

/// What bears more is never nearer to its end.
#[test]
fn loads_stronger_gear_never_has_less_to_spare() {
    let ids = prop::sample::select(ending(Question::Loads, "Strength", Dimension::Force));
    let least = [("what is to spare", 80, 30)];
    holds(256, &least, (plan_of(Question::Loads), ids, shares()), |(plan, id, shares), compared| {
        let Some((weak, strong)) = less_and_more!(loads, plan, id, shares, Effort::samples(50)) else { return Ok(()) };
        for (weak, strong) in pairs(&weak, &strong) {
            prop_assert_eq!(weak.peak, strong.peak);
            prop_assert_eq!(weak.ratio.is_some(), strong.ratio.is_some());
            if let Some((one, other)) = weak.ratio.zip(strong.ratio) {
                prop_assert!(compared.at_most("what is to spare", one, other), "{:?} then {:?}", weak, strong);
            }
        }
        Ok(())
    });
}

/// Who falls further is stopped no softer.
#[test]
fn loads_more_slack_is_never_softer() {
    holds(256, &[("the peak", 80, 5)], (plan_of(Question::Loads), shares()), |(plan, shares), compared| {
        let Some((short, long)) = less_and_more!(loads, plan, "slack", shares, Effort::samples(50)) else {
            return Ok(());
        };
        for (short, long) in pairs(&short, &long) {
            prop_assert!(compared.at_most("the peak", short.peak, long.peak), "{:?} then {:?}", short, long);
        }
        Ok(())
    });
}

/// Bending stress goes with the arm, and against the third power of the thickness.
#[test]
fn loads_bending_goes_with_the_arm_and_against_the_thickness() {
    let least = [("by the arm", 20, 20), ("by the thickness", 20, 20)];
    let strategy = (plan_of(Question::Loads), shares(), shares());
    holds(256, &least, strategy, |(plan, reach, thick), compared| {
        for (what, id, shares) in [("by the arm", "limbReach", reach), ("by the thickness", "limbDiameter", thick)] {
            let Some((less, more)) = less_and_more!(loads, plan, id, shares, Effort::samples(50)) else { continue };
            let stress = |answer: &loads::Answer| answer.limb.and_then(|limb| limb.stress);
            let (low, high) = if id == "limbReach" { (&less, &more) } else { (&more, &less) };
            if let Some((low, high)) = stress(low).zip(stress(high)) {
                prop_assert!(compared.in_order(what, low, high), "{}: {} then {}", id, low, high);
            }
        }
        Ok(())
    });
}
