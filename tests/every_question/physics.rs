//! Of two answers: what physics orders, the answers have in that order.

use super::cases;
use super::drawn::plan_of;
use super::plans::{Plan, draft, with, without};
use boughline::field::{Kind, Said, Spread};
use boughline::quantity::Dimension;
use boughline::question::cut_plan::{KindPlan, Outcome};
use boughline::question::{Effort, Question, advantage, can_i_climb, coming_down, cut_length, cut_plan, loads, rescue};
use proptest::prelude::*;

/// The answers to a plan with less and with more said in a field; none where one of them is out of order.
macro_rules! less_and_more {
    ($of:ident, $plan:expr, $id:expr, $shares:expr $(, $effort:expr)?) => {{
        let said = |share: f64| with(&$plan, $id, number($id, share));
        let ask = |plan: &Plan| $of::Inputs::of(&draft(plan)).ok().map(|inputs| $of::ask(&inputs $(, $effort)?));
        let (one, other): (f64, f64) = $shares;
        match (ask(&said(one.min(other))), ask(&said(one.max(other)))) {
            (Some(less), Some(more)) => (less, more),
            _ => return Ok(()),
        }
    }};
}

/// So far between a field's limits; nearer to the low one than not, as people are.
fn number(id: &str, share: f64) -> Said {
    match boughline::question::field(id).map(|row| row.kind) {
        Some(Kind::Quantity(limits)) => Said::Number(limits.least + (limits.most - limits.least) * share * share),
        _ => unreachable!("a quantity"),
    }
}

/// The quantities of a question whose ids end so.
fn ending(question: Question, end: &str, dimension: Dimension) -> Vec<&'static str> {
    let is_such = |kind: &Kind| matches!(kind, Kind::Quantity(limits) if limits.dimension == dimension);
    let ids: Vec<_> =
        question.fields().iter().filter(|row| is_such(&row.kind) && row.id.ends_with(end)).map(|row| row.id).collect();
    assert!(!ids.is_empty(), "{end}");
    ids
}

/// Whether no end of one spread is above that of the other. Elimination may differ in the last places.
fn at_most(one: Spread, other: Spread) -> bool {
    let below = |one: f64, other: f64| one <= other + other.abs() * 1e-9 + 1e-12;
    below(one.low, other.low) && below(one.likely, other.likely) && below(one.high, other.high)
}

fn is_near(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * other.abs().max(1.0)
}

fn shares() -> impl Strategy<Value = (f64, f64)> {
    (0.0..=1.0_f64, 0.0..=1.0_f64)
}

const TEST: [&str; 2] = ["testMass", "testPull"];

/// What every piece carries in every state, the rigs being alike.
fn pairs<'a>(one: &'a loads::Answer, other: &'a loads::Answer) -> Vec<(&'a loads::Load, &'a loads::Load)> {
    let carried =
        |answer: &'a loads::Answer| answer.states.iter().map(|state| state.carried.as_ref().ok()).collect::<Vec<_>>();
    let both = carried(one).into_iter().zip(carried(other)).filter_map(|(one, other)| one.zip(other));
    both.flat_map(|(one, other)| one.loads.iter().zip(&other.loads)).collect()
}

/// The proved cost of the best plan of each kind of cord.
fn costs(answer: &cut_plan::Answer) -> Vec<Option<u32>> {
    let cost = |kind: &KindPlan| match &kind.outcome {
        Outcome::Plan(best) if best.proved => Some(best.cost),
        _ => None,
    };
    answer.kinds.iter().map(cost).collect()
}

fn buys_no_more(one: &cut_plan::Answer, other: &cut_plan::Answer) -> bool {
    let pairs = costs(one).into_iter().zip(costs(other));
    one.kinds.len() == other.kinds.len()
        && pairs.filter_map(|(one, other)| one.zip(other)).all(|(one, other)| one <= other)
}

/// The plan with another row of a list.
fn with_row(plan: &Plan, id: &'static str, row: &str) -> Option<Plan> {
    let said = plan.iter().find_map(|(known, said)| if *known == id { Some(said) } else { None })?;
    let Said::Text(text) = said else { return None };
    Some(with(plan, id, Said::Text(format!("{text}\n{row}"))))
}

proptest! {
    #![proptest_config(cases(64))]

    /// Friction only costs: a turn that keeps more never raises the pull that any rig asks for.
    #[test]
    fn advantage_friction_never_helps(
        plan in plan_of(Question::Advantage),
        id in prop::sample::select(ending(Question::Advantage, "Efficiency", Dimension::Ratio)),
        shares in shares(),
    ) {
        let plan = without(&plan, &TEST);
        let (less, more) = less_and_more!(advantage, plan, id, shares, Effort::samples(50));
        for one in &less.rigs {
            let name = one.ascent.rig_name;
            let other = more.rigs.iter().find(|other| other.ascent.rig_name == name).expect("the same rigs");
            prop_assert!(at_most(other.ascent.need, one.ascent.need), "{:?} {}", name, id);
        }
    }

    /// Weight only costs: whoever weighs more never pulls less, and never does better on any rig.
    #[test]
    fn advantage_weight_never_helps(plan in plan_of(Question::Advantage), shares in shares()) {
        let plan = without(&plan, &TEST);
        let (light, heavy) = less_and_more!(advantage, plan, "bodyMass", shares, Effort::samples(50));
        for one in &light.rigs {
            let name = one.ascent.rig_name;
            let other = heavy.rigs.iter().find(|other| other.ascent.rig_name == name).expect("the same rigs");
            prop_assert!(at_most(one.ascent.need, other.ascent.need), "{:?}", name);
            prop_assert!(one.standing() <= other.standing(), "{:?}", name);
        }
    }

    /// More samples make an answer surer and not another: 20,000 and 2,000 agree within five times the error of sampling.
    #[test]
    fn climb_effort_agrees_with_itself(plan in plan_of(Question::CanIClimb)) {
        let Ok(inputs) = can_i_climb::Inputs::of(&draft(&plan)) else { return Ok(()) };
        let asked = |samples| can_i_climb::ask(&inputs, Effort::samples(samples)).verdict;
        let (Some(some), Some(full)) = (asked(2_000), asked(20_000)) else { return Ok(()) };
        let chances = [(Some(some.chance), Some(full.chance)), (some.reaches, full.reaches)];
        for (some, full) in chances.into_iter().filter_map(|(some, full)| some.zip(full)) {
            let error = (full * (1.0 - full) * (1.0 / 2_000.0 - 1.0 / 20_000.0)).sqrt();
            prop_assert!((some - full).abs() <= 5.0 * error + 2.0 / 2_000.0, "{} {}", some, full);
        }
    }
}

proptest! {
    #![proptest_config(cases(256))]

    /// Nothing is loaded less for a heavier climber, and no peak is under the load it is the peak of.
    #[test]
    fn loads_grow_with_the_weight(plan in plan_of(Question::Loads), shares in shares()) {
        let plan = without(&plan, &TEST);
        let (light, heavy) = less_and_more!(loads, plan, "bodyMass", shares, Effort::samples(50));
        for (light, heavy) in pairs(&light, &heavy) {
            prop_assert!(at_most(light.load, heavy.load) && at_most(light.peak, heavy.peak), "{:?}: {:?} then {:?}", light.piece, light, heavy);
            prop_assert!(at_most(light.load, light.peak), "{:?}", light);
        }
    }

    /// What bears more is never nearer to its end.
    #[test]
    fn loads_stronger_gear_never_has_less_to_spare(
        plan in plan_of(Question::Loads),
        id in prop::sample::select(ending(Question::Loads, "Strength", Dimension::Force)),
        shares in shares(),
    ) {
        let (weak, strong) = less_and_more!(loads, plan, id, shares, Effort::samples(50));
        for (weak, strong) in pairs(&weak, &strong) {
            prop_assert_eq!(weak.peak, strong.peak);
            prop_assert!(weak.ratio.zip(strong.ratio).is_none_or(|(weak, strong)| at_most(weak, strong)), "{:?} then {:?}", weak, strong);
        }
    }

    /// Who falls further is stopped no softer.
    #[test]
    fn loads_more_slack_is_never_softer(plan in plan_of(Question::Loads), shares in shares()) {
        let (short, long) = less_and_more!(loads, plan, "slack", shares, Effort::samples(50));
        for (short, long) in pairs(&short, &long) {
            prop_assert!(at_most(short.peak, long.peak), "{:?} then {:?}", short, long);
        }
    }

    /// Bending stress goes with the arm, and against the third power of the thickness.
    #[test]
    fn loads_bending_goes_with_the_arm_and_against_the_thickness(plan in plan_of(Question::Loads), reach in shares(), thick in shares()) {
        let stress = |answer: &loads::Answer| answer.limb.and_then(|limb| limb.stress);
        let (near, far) = less_and_more!(loads, plan, "limbReach", reach, Effort::samples(50));
        prop_assert!(stress(&near).zip(stress(&far)).is_none_or(|(near, far)| near <= far));
        let (thin, thick) = less_and_more!(loads, plan, "limbDiameter", thick, Effort::samples(50));
        prop_assert!(stress(&thin).zip(stress(&thick)).is_none_or(|(thin, thick)| thin >= thick));
    }

    /// A thicker cord of the same make takes no less cord and bears no less; a heavier climber loads it no less.
    #[test]
    fn cord_thicker_is_longer_and_stronger(
        plan in plan_of(Question::CutLength),
        id in prop::sample::select(vec!["hitchCord", "slingCord", "haulCord"]),
        shares in shares(),
    ) {
        let bare = without(&plan, &["hitchCordStrength", "haulCordStrength", "cordCut", "cameOut"]);
        let (thin, thick) = less_and_more!(cut_length, bare, id, shares);
        prop_assert!(at_most(thin.cut.total, thick.cut.total), "{:?} then {:?}", thin.cut, thick.cut);
        prop_assert!(thin.strength.zip(thick.strength).is_none_or(|(thin, thick)| at_most(thin, thick)));
        let (light, heavy) = less_and_more!(cut_length, plan, "bodyMass", shares);
        prop_assert!(light.peak.zip(heavy.peak).is_none_or(|(light, heavy)| at_most(light, heavy)));
    }

    /// Cord that one has already never makes one buy more; one more cord to cut never makes one buy less.
    #[test]
    fn cords_owned_never_cost_and_cords_wanted_never_save(plan in plan_of(Question::CutPlan)) {
        let ask = |plan: &Plan| cut_plan::Inputs::of(&draft(plan)).ok().map(|inputs| cut_plan::ask(&inputs, Effort::samples(200)));
        let Some(before) = ask(&plan) else { return Ok(()) };
        // Where no hanks were said the usual ones stand for them, until some are.
        let said = before.kinds.iter().all(|kind| !kind.kind.is_usual);
        if let Some(richer) = with_row(&plan, "hanks", "any ~ 7 m ~ 0 ~ x1").and_then(|plan| ask(&plan)).filter(|_| said) {
            prop_assert!(buys_no_more(&richer, &before), "{:?} then {:?}", costs(&before), costs(&richer));
        }
        if let Some(more) = with_row(&plan, "cords", "1 ~ 6 mm ~ 1.1 m").and_then(|plan| ask(&plan)) {
            prop_assert!(before.kinds.len() < more.kinds.len() || buys_no_more(&before, &more), "{:?} then {:?}", costs(&before), costs(&more));
        }
    }

    /// What every cut or every hank loses is never won back.
    #[test]
    fn cords_waste_never_saves(plan in plan_of(Question::CutPlan), id in prop::sample::select(vec!["kerf", "endAllowance"]), shares in shares()) {
        let (less, more) = less_and_more!(cut_plan, plan, id, shares, Effort::samples(200));
        prop_assert!(buys_no_more(&less, &more), "{:?} then {:?}", costs(&less), costs(&more));
    }

    /// All the height comes out as heat: energy is weight times height, and power weight times speed.
    #[test]
    fn down_heat_is_weight_times_height(plan in plan_of(Question::ComingDown)) {
        let Ok(inputs) = coming_down::Inputs::of(&draft(&plan)) else { return Ok(()) };
        let answer = coming_down::ask(&inputs, Effort::samples(50));
        for (weight, energy, power) in [
            (answer.weight.low, answer.energy.low, answer.power.low),
            (answer.weight.likely, answer.energy.likely, answer.power.likely),
            (answer.weight.high, answer.energy.high, answer.power.high),
        ] {
            prop_assert!(is_near(energy, weight * answer.height) && is_near(power, weight * answer.speed), "{:?}", answer.energy);
        }
        prop_assert!(answer.time >= answer.height / answer.speed * (1.0 - 1e-9));
    }

    /// Faster, with more of the heat in the cord, heavier, or with shorter stops, a cord never stays cooler.
    #[test]
    fn down_more_heat_never_cools(
        plan in plan_of(Question::ComingDown),
        id in prop::sample::select(vec!["descentSpeed", "heatShare", "kitMass", "descentRest"]),
        shares in shares(),
    ) {
        let (less, more) = less_and_more!(coming_down, plan, id, shares, Effort::samples(50));
        let (cool, hot) = if id == "descentRest" { (more.cord, less.cord) } else { (less.cord, more.cord) };
        if let Some((cool, hot)) = cool.zip(hot) {
            prop_assert!(at_most(cool.even, hot.even) && at_most(cool.face, hot.face), "{}: {:?} then {:?}", id, cool, hot);
        }
    }

    /// A heavier climber never takes fewer people to haul, nor do weaker helpers.
    #[test]
    fn rescue_weight_and_weakness_never_take_fewer_people(plan in plan_of(Question::Rescue), shares in shares()) {
        let plan = without(&plan, &TEST);
        let (light, heavy) = less_and_more!(rescue, plan, "bodyMass", shares);
        for (light, heavy) in light.hauls.iter().zip(&heavy.hauls) {
            prop_assert!(at_most(light.pull, heavy.pull) && at_most(light.people, heavy.people));
        }
        prop_assert!(light.lowering.zip(heavy.lowering).is_none_or(|(light, heavy)| at_most(light, heavy)));
        let (weak, strong) = less_and_more!(rescue, plan, "helperPull", shares);
        for (weak, strong) in weak.hauls.iter().zip(&strong.hauls) {
            prop_assert!(at_most(strong.people, weak.people), "{:?} then {:?}", weak, strong);
        }
    }

    /// More rope never takes a way to the ground away, nor makes it slower.
    #[test]
    fn rescue_more_rope_never_takes_a_way(plan in plan_of(Question::Rescue), shares in shares()) {
        let (short, long) = less_and_more!(rescue, plan, "ropeOwned", shares);
        for (short, long) in short.ways.iter().zip(&long.ways) {
            prop_assert!(short.stages.is_err() || long.stages.is_ok(), "{:?} then {:?}", short, long);
        }
        let quickest = |answer: &rescue::Answer| answer.best.and_then(|at| answer.ways.get(at)?.total);
        if let Some(short) = quickest(&short) {
            prop_assert!(quickest(&long).is_some_and(|long| long.likely <= short.likely));
        }
    }
}
