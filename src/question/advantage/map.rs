//! The feasibility map: the least rig that works, for every weight and every pull.

use super::ask::{masses, needed};
use super::{Inputs, Kit};
use crate::ascent::{Climb, Evidence, Plan};
use crate::chance::Likely;
use crate::climber::{Arms, Measured, PULL_TIME, PullTaken, RESET_TIME, Tiring};
use crate::quantity::{Force, STANDARD_GRAVITY};
use crate::reeving::RigName;

/// The most columns and rows.
pub const MOST_CELLS: usize = 200;

/// The least rig that works, for every weight and every pull.
#[derive(Debug, Clone, PartialEq)]
pub struct Map {
    /// The rigs that need no helper, the least kit first.
    pub rigs: Vec<RigName>,
    /// The lightest and the heaviest climber with kit, in kilograms: the middles of the first and the last column.
    pub masses: (f64, f64),
    /// The weakest and the strongest pull, measured as this person's, in newtons: the middles of the first and the last
    /// row.
    pub pulls: (f64, f64),
    /// How a pull of a row is measured.
    pub taken: PullTaken,
    /// For each pull and each mass the place in [`rigs`](Self::rigs) of the least rig that works, if one does.
    pub cells: Vec<Vec<Option<usize>>>,
    /// Where this person stands: mass, pull, and the least rig that works there.
    pub you: Option<(f64, f64, Option<usize>)>,
}

/// The least rig that works for every weight and every pull, at likely values.
///
/// ```text
///   works:  need <= lasting share x arms,  need <= lasting share x what the hands hold
/// ```
///
/// # Guarantees
/// Between 2 and [`MOST_CELLS`] columns and rows. Going up in a column, or left in a row, the least rig takes no more
/// kit. A grip that was entered holds in every row; else the hands are reckoned from each row's pull. Where what the hands
/// hold is not known, nothing works and nobody is shown.
///
/// # Source
/// The lasting shares are those of the shoulder ([`Tiring::SHOULDER`]) and of the hand ([`Tiring::HAND`]) at work for the
/// pull and at rest while the upper hitch is moved, or as long again where there is none (judged): the kind edge.
#[must_use]
pub fn map(inputs: &Inputs, columns: usize, rows: usize) -> Map {
    let (columns, rows) = (columns.clamp(2, MOST_CELLS), rows.clamp(2, MOST_CELLS));
    let mut plans: Vec<(&Plan, Kit)> = Vec::new();
    for plan in inputs.plans.iter().filter(|plan| !plan.rig.is_hauled()) {
        let kit = Kit::of(plan);
        let key = |kit: &Kit, plan: &Plan| (kit.key(), plan.rig.motion.rope_per_rise);
        let place = plans.iter().position(|(other, its)| key(&kit, plan) < key(its, other)).unwrap_or(plans.len());
        plans.insert(place, (plan, kit));
    }
    let climbs: Vec<Climb> = plans.iter().map(|(plan, _)| Climb::of(plan, &Likely)).collect();
    let (mass, pull) = yours(&plans, &climbs);
    let masses = masses(mass.unwrap_or(100.0));
    let pulls = reach(pull);
    let least =
        |mass: f64, limits: &[f64]| climbs.iter().zip(limits).position(|(climb, limit)| needed(climb, mass) <= *limit);
    let mut cells = Vec::new();
    for row in 0..rows {
        let limits = limits(&plans, at(pulls, row, rows));
        let mut line = Vec::new();
        for column in 0..columns {
            line.push(least(at(masses, column, columns), &limits));
        }
        cells.push(line);
    }
    let mut own = Vec::new();
    for ((plan, _), climb) in plans.iter().zip(&climbs) {
        own.push(limit(plan, climb));
    }
    let you = mass.zip(pull).map(|(mass, pull)| (mass, pull, least(mass, &own)));
    let mut rigs = Vec::new();
    for (plan, _) in &plans {
        rigs.push(plan.rig.name);
    }
    let measured = plans.first().and_then(|(plan, _)| plan.measured);
    let taken = measured.map_or(PullTaken::LowestPoint, |measured| measured.taken);
    Map { rigs, masses, pulls, taken, cells, you }
}

/// A place between two ends.
fn at((from, to): (f64, f64), place: usize, of: usize) -> f64 {
    from + (to - from) * place as f64 / (of - 1) as f64
}

/// From which pull to which, in newtons, wide enough for one.
fn reach(pull: Option<f64>) -> (f64, f64) {
    let own = pull.unwrap_or(100.0);
    (if own < 50.0 { own } else { 50.0 }, if own > 800.0 { own } else { 800.0 })
}

/// The same person with a pull that was measured, as theirs was, or still and low.
fn with_pull(plan: &Plan, pull: f64) -> Plan {
    // A pull that was never made went through no hands.
    let usual = Measured { pull: Force::newtons(pull), taken: PullTaken::LowestPoint, arms: Arms::Two, held: None };
    let measured = plan.measured.map_or(usual, |measured| Measured { pull: Force::newtons(pull), ..measured });
    Plan { measured: Some(measured), ..plan.clone() }
}

/// The most that one stroke of a climb may take. Strength that is not known, of arms or hands, moves nobody, and a stroke
/// that gains nothing takes nobody up.
fn limit(plan: &Plan, climb: &Climb) -> f64 {
    let rest = if plan.rig.upper_turns().is_some() { RESET_TIME.likely } else { PULL_TIME.likely };
    let duty = PULL_TIME.likely / (PULL_TIME.likely + rest);
    let arms = climb.arms * Tiring::SHOULDER.lasting(duty);
    let hands = climb.hands * Tiring::HAND.lasting(duty);
    if arms.is_nan() || hands.is_nan() || climb.is_stuck() { f64::NEG_INFINITY } else { arms.min(hands) }
}

/// The same on each rig, for a pull that was measured.
fn limits(plans: &[(&Plan, Kit)], pull: f64) -> Vec<f64> {
    let mut limits = Vec::new();
    for (plan, _) in plans {
        limits.push(limit(plan, &Climb::of(&with_pull(plan, pull), &Likely)));
    }
    limits
}

/// The mass with kit, and the pull as the map has it, where the strength of arms and hands is known.
fn yours(plans: &[(&Plan, Kit)], climbs: &[Climb]) -> (Option<f64>, Option<f64>) {
    let mut pull = None;
    let mass = climbs.first().map(|climb| climb.weight / STANDARD_GRAVITY);
    if let (Some((plan, _)), Some(climb)) = (plans.first(), climbs.first()) {
        pull = match (plan.evidence(), plan.measured) {
            _ if climb.hands.is_nan() => None,
            (Some(Evidence::Pull), Some(measured)) => Some(measured.pull.in_newtons()),
            (Some(_), _) => {
                // A pull in the same proportion to what the arms give of it.
                let unit = Climb::of(&with_pull(plan, 1.0), &Likely);
                Some(climb.arms / unit.arms)
            }
            (None, _) => None,
        };
    }
    (mass, pull)
}
