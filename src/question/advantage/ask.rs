//! From inputs to an answer.

use super::inputs::is_self_haul;
use super::{Answer, Beside, Inputs, Kit, Pulls, Standing};
use crate::ascent::{Climb, answer};
use crate::chance::{Effort, Likely};
use crate::field::Spread;
use crate::quantity::STANDARD_GRAVITY;

/// Every rig side by side for one person, in the order of what they can do with least kit.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every rig's figures are those of "Can I
/// climb this?" on it.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    let mut rigs: Vec<Beside> = Vec::new();
    for plan in &inputs.plans {
        let beside = Beside { ascent: answer(plan, effort), kit: Kit::of(plan) };
        let mut later = Vec::new();
        while rigs.last().is_some_and(|last| beside.is_before(last)) {
            later.push(rigs.pop());
        }
        rigs.push(beside);
        while let Some(last) = later.pop() {
            rigs.extend(last);
        }
    }
    let works = |beside: &Beside| beside.standing() == Standing::Works && !beside.ascent.hauled;
    let mass = rigs.first().map_or(Spread::point(0.0), |beside| beside.ascent.mass);
    Answer {
        least: rigs.iter().position(works),
        said: inputs.said,
        assumed: inputs.assumed().to_vec(),
        mass,
        strength: strength(&rigs),
        pulls: pulls(inputs, &rigs, mass.likely),
        samples: effort.count(),
        more: effort < Effort::FULL,
        rigs,
    }
}

/// What the pull is held against where both hands pull: the tighter of arms and hands, and whether that is the hands.
fn strength(rigs: &[Beside]) -> Option<(Spread, bool)> {
    // The greatest, as it is less where one arm pulls at a time.
    let mut greatest: Option<(Spread, bool)> = None;
    for Beside { ascent, .. } in rigs.iter().filter(|beside| !beside.ascent.hauled) {
        let arms = ascent.arms?.capacity;
        let hands = ascent.grasp.map_or(arms, |grasp| grasp.capacity);
        let tighter = if hands.likely < arms.likely { (hands, true) } else { (arms, false) };
        if greatest.is_none_or(|(known, _)| tighter.0.likely > known.likely) {
            greatest = Some(tighter);
        }
    }
    greatest
}

/// The lightest and the heaviest climber with kit that charts show, in kilograms, wide enough for a mass.
pub(super) fn masses(mass: f64) -> (f64, f64) {
    (if mass < 40.0 { mass } else { 40.0 }, if mass > 160.0 { mass } else { 160.0 })
}

/// How many steps from the lightest to the heaviest.
const STEPS: u32 = 6;

fn pulls(inputs: &Inputs, rigs: &[Beside], mass: f64) -> Pulls {
    let (lightest, heaviest) = masses(mass);
    let mut pulls = Pulls { masses: Vec::new(), lines: Vec::new() };
    for step in 0..=STEPS {
        pulls.masses.push(lightest + (heaviest - lightest) * f64::from(step) / f64::from(STEPS));
    }
    for (at, beside) in rigs.iter().enumerate() {
        let plan = inputs.plans.iter().find(|plan| plan.rig.name == beside.ascent.rig_name);
        if let Some(plan) = plan.filter(|plan| is_self_haul(&plan.rig)) {
            let climb = Climb::of(plan, &Likely);
            let mut line = Vec::new();
            for mass in &pulls.masses {
                line.push(needed(&climb, *mass));
            }
            pulls.lines.push((at, line));
        }
    }
    pulls
}

/// The pull that one stroke takes of a climber of this mass with kit, on the rig of a climb.
pub(super) fn needed(climb: &Climb, mass: f64) -> f64 {
    let helped = if climb.helped.is_nan() { 0.0 } else { climb.helped };
    (mass * STANDARD_GRAVITY - helped).max(0.0) / climb.advantage
}
