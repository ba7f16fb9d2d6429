//! From inputs to an answer.

use super::{Answer, Beside, Inputs, Kit, Pulls, Standing, Strength};
use crate::ascent::{Climb, Gate, answer};
use crate::chance::{Effort, Likely};
use crate::field::Spread;
use crate::quantity::STANDARD_GRAVITY;

/// Every rig side by side for one person, in the order of what they can do with least kit.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every rig's figures are those of "Can I
/// climb this?" on it, but that one's own test counts there for the rig it was made on alone, and here for turns of those
/// kinds on all.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    let effort = effort.min(Effort::SIDE_BY_SIDE);
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
    // Half of one's strength, at likely values (judged).
    let easy = |gate: &Option<Gate>| gate.as_ref().is_none_or(|gate| gate.share.likely <= 0.5);
    let easy = |beside: &Beside| works(beside) && easy(&beside.ascent.arms) && easy(&beside.ascent.grasp);
    let mass = rigs.first().map_or(Spread::point(0.0), |beside| beside.ascent.mass);
    Answer {
        least: rigs.iter().position(works),
        easy: rigs.iter().position(easy),
        said: inputs.said,
        assumed: inputs.assumed().to_vec(),
        mass,
        strength: strength(&rigs),
        pulls: pulls(inputs, &rigs, mass.likely),
        samples: effort.count(),
        more: effort < Effort::SIDE_BY_SIDE,
        rigs,
    }
}

/// What the pull is held against, where the most hands pull.
fn strength(rigs: &[Beside]) -> Option<Strength> {
    // The greatest, as it is less where one arm pulls at a time.
    let mut greatest: Option<Strength> = None;
    for Beside { ascent, .. } in rigs.iter().filter(|beside| !beside.ascent.hauled) {
        let arms = ascent.arms?.capacity;
        let hands = ascent.grasp.map_or(arms, |grasp| grasp.capacity);
        let is_hands = hands.likely < arms.likely;
        let force = if is_hands { hands } else { arms };
        if greatest.is_none_or(|known| force.likely > known.force.likely) {
            greatest = Some(Strength { force, is_hands, pulls_with: ascent.hands });
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
        if let Some(plan) = plan.filter(|plan| !plan.rig.is_hauled()) {
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
