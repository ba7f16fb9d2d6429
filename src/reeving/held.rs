//! Who is held by what: whether the climber stays up with every hand off, and whose failure drops them.

use super::linear::{Equations, Solution, has_non_negative_solution, solution};
use super::{BodyKind, Fraction, Rig, What};
use crate::quantity::Length;

/// A part whose loss is tried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// The tie, hitch or turn at a stop.
    Stop {
        /// The rope.
        rope: usize,
        /// The stop.
        stop: usize,
    },
    /// A whole rope, however many strands it shows.
    Rope {
        /// The rope.
        rope: usize,
    },
}

/// Whether the climber is held with every hand off and every hitch gripping.
///
/// ```text
///   some set of tensions, none negative, nought in whatever ends free,
///   with  sum up = sum down  on every carriage  and  sum up - sum down = 1  on the climber
/// ```
///
/// # Guarantees
/// Exact. Turns count as frictionless: friction never holds anybody up here. A knot holds like a hitch; it may have
/// to run first.
///
/// # Source
/// Geometry.
#[must_use]
pub fn is_held(rig: &Rig) -> bool {
    holds(rig, Loss::default())
}

/// The parts whose failure alone drops the climber, as far as this model sees.
///
/// # Guarantees
/// Every tie, hitch, turn and rope is tried: a tie or hitch lets its rope slide, a turn lets its rope go, a rope is
/// cut at each strand. A rig that is not held to begin with has no single parts to name.
///
/// # Source
/// Geometry.
#[must_use]
pub fn single_parts(rig: &Rig) -> Vec<Part> {
    let mut parts = Vec::new();
    if !is_held(rig) {
        return parts;
    }
    for (at, rope) in rig.ropes.iter().enumerate() {
        for (stop, _) in rope.stops.iter().enumerate().filter(|(_, stop)| stop.can_fail()) {
            if !holds(rig, Loss { stop: Some((at, stop)), ..Loss::default() }) {
                parts.push(Part::Stop { rope: at, stop });
            }
        }
        let strands = 0..rope.stops.len().saturating_sub(1);
        if strands.into_iter().any(|strand| !holds(rig, Loss { strand: Some((at, strand)), ..Loss::default() })) {
            parts.push(Part::Rope { rope: at });
        }
    }
    parts
}

/// How far the climber drops when a part fails, before knots that had slack hold them.
///
/// # Guarantees
/// None when the part is single, is a rope, or is not there; nought when nothing has to run first. Rope stretch and
/// what hitches give back come on top.
///
/// # Source
/// Geometry: the ropes keep their lengths but for what runs up to each knot.
#[must_use]
pub fn drop_after(rig: &Rig, part: Part) -> Option<Length> {
    let Part::Stop { rope, stop } = part else { return None };
    rig.ropes.get(rope)?.stops.get(stop).filter(|stop| stop.can_fail())?;
    let loss = Loss { stop: Some((rope, stop)), ..Loss::default() };
    if !holds(rig, loss) {
        return None;
    }
    if holds(rig, Loss { knots: true, ..loss }) {
        return Some(Length::metres(0.0));
    }
    let moving = rig.moving();
    let mut equations = Equations::new(moving.len());
    for run in held_runs(rig, loss) {
        let mut pulls = Vec::new();
        for &at in &moving {
            pulls.push(run.pulls.get(at).map_or(0.0, |pull| *pull as f64));
        }
        equations.push(&pulls, run.slack);
    }
    let Solution::Unique(drops) = solution(equations) else { return None };
    let climber = rig.body(BodyKind::Climber)?;
    let column = moving.iter().position(|&at| at == climber)?;
    // What pulls the climber up shortens as they drop.
    drops.get(column).map(|drop| Length::metres(drop.abs()))
}

/// What is gone.
#[derive(Clone, Copy, Default)]
struct Loss {
    /// The part at a stop of a rope: a tie or hitch lets its rope slide, a turn lets it go.
    stop: Option<(usize, usize)>,
    /// A strand of a rope, cut.
    strand: Option<(usize, usize)>,
    /// Every knot.
    knots: bool,
}

fn holds(rig: &Rig, loss: Loss) -> bool {
    let runs = held_runs(rig, loss);
    let mut equations = Equations::new(runs.len());
    for (at, body) in rig.bodies.iter().enumerate().filter(|(_, body)| body.moves()) {
        let mut pulls = Vec::new();
        for run in &runs {
            pulls.push(Fraction::from(run.pulls.get(at).copied().unwrap_or(0)));
        }
        equations.push(&pulls, Fraction::from(i64::from(body.kind == BodyKind::Climber)));
    }
    has_non_negative_solution(&equations)
}

/// A piece of rope that is held at both ends.
struct HeldRun {
    /// What a unit of tension in it pulls on each body, upward.
    pulls: Vec<i64>,
    /// The rope that runs into it before the knots at its ends catch, in metres.
    slack: f64,
}

fn held_runs(rig: &Rig, loss: Loss) -> Vec<HeldRun> {
    let mut runs = Vec::new();
    for (at, rope) in rig.ropes.iter().enumerate() {
        let mut pulls = vec![0; rig.bodies.len()];
        // The slack at the stop that the present run starts from, once there is one, and the body before this one.
        let (mut started, mut before): (Option<f64>, Option<usize>) = (None, None);
        for (place, stop) in rope.stops.iter().enumerate() {
            let lost = loss.stop == Some((at, place));
            if lost && matches!(stop.what, What::Turn(_)) {
                continue;
            }
            if let (Some(one), Some(other)) = (before, stop.body)
                && one != other
            {
                for (body, sign) in [(one.min(other), -1), (one.max(other), 1)] {
                    if let Some(pull) = pulls.get_mut(body) {
                        *pull += sign;
                    }
                }
            }
            before = stop.body;
            let slack = match stop.what {
                _ if lost => None,
                What::Tied | What::Hitch(_) => Some(0.0),
                What::Knot(slack) => Some(slack.in_metres()).filter(|_| !loss.knots),
                What::Turn(_) | What::Hand(_) | What::Free => None,
            };
            if let Some(slack) = slack {
                let run = std::mem::replace(&mut pulls, vec![0; rig.bodies.len()]);
                if let Some(start) = started {
                    runs.push(HeldRun { pulls: run, slack: start + slack });
                }
                started = Some(slack);
            }
            if loss.strand == Some((at, place)) {
                // The two pieces end free.
                (started, before) = (None, None);
                pulls = vec![0; rig.bodies.len()];
            }
        }
    }
    runs
}
