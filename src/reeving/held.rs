//! Who is held by what: whether the climber stays up with every hand off, and whose failure drops them.

use super::linear::{Solution, has_non_negative_solution, solution};
use super::{Body, BodyKind, Fraction, Rig, Rope, Stop, What};
use crate::quantity::{Length, Quantity};

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
    holds(rig, &rig.ropes)
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
    if !is_held(rig) {
        return Vec::new();
    }
    let mut parts = Vec::new();
    for (at, rope) in rig.ropes.iter().enumerate() {
        let stops = (0..rope.stops.len()).map(|stop| Part::Stop { rope: at, stop });
        parts.extend(stops.filter(|&part| left_by(rig, part).is_some_and(|left| !holds(rig, &left))));
        if (0..rope.stops.len().saturating_sub(1)).any(|strand| !holds(rig, &cut(rig, at, strand))) {
            parts.push(Part::Rope { rope: at });
        }
    }
    parts
}

/// How far the climber drops when a part fails, before knots that had slack hold them.
///
/// # Guarantees
/// None when the part is single, or when there is no such part; nought when nothing has to run first. Rope stretch
/// and what hitches give back come on top.
///
/// # Source
/// Geometry: the ropes keep their lengths but for what runs up to each knot.
#[must_use]
pub fn drop_after(rig: &Rig, part: Part) -> Option<Length> {
    let left = left_by(rig, part)?;
    if !holds(rig, &left) {
        return None;
    }
    let tight: Vec<Rope> = left.iter().map(knotless).collect();
    if holds(rig, &tight) {
        return Some(Length::from_si(0.0));
    }
    let moving: Vec<usize> = (0..rig.bodies.len()).filter(|&at| rig.bodies.get(at).is_some_and(Body::moves)).collect();
    let rows = left.iter().flat_map(|rope| held_runs(rig, rope)).map(|run| {
        let pulls = moving.iter().filter_map(|&at| run.pulls.get(at));
        pulls.map(|pull| to_float(*pull)).chain([run.slack]).collect()
    });
    let Solution::Unique(drops) = solution(rows.collect(), moving.len()) else { return None };
    let climber = rig.body(BodyKind::Climber)?;
    let column = moving.iter().position(|&at| at == climber)?;
    // What pulls the climber up shortens as they drop.
    drops.get(column).map(|drop| Length::from_si(drop.abs()))
}

fn to_float(fraction: Fraction) -> f64 {
    *fraction.numer() as f64 / *fraction.denom() as f64
}

/// The rope with its knots not there.
fn knotless(rope: &Rope) -> Rope {
    let stops = rope.stops.iter().filter(|stop| !matches!(stop.what, What::Knot(_))).cloned().collect();
    Rope { noun: rope.noun.clone(), stops }
}

/// The ropes that are left when a part at a stop has failed.
fn left_by(rig: &Rig, part: Part) -> Option<Vec<Rope>> {
    let Part::Stop { rope, stop } = part else { return None };
    let mut ropes = rig.ropes.clone();
    let changed = without(ropes.get(rope)?, stop)?;
    *ropes.get_mut(rope)? = changed;
    Some(ropes)
}

/// The rope once the part at a stop has failed; none where there is no part.
fn without(rope: &Rope, stop: usize) -> Option<Rope> {
    let mut stops = rope.stops.clone();
    match stops.get(stop)?.what {
        What::Tied => *stops.get_mut(stop)? = Stop::free(),
        // It stays where it is and lets the rope slide, as a hand does that is off.
        What::Hitch(_) | What::Knot(_) => stops.get_mut(stop)?.what = What::Hand(0),
        What::Turn(_) => drop(stops.remove(stop)),
        What::Hand(_) | What::Free => return None,
    }
    Some(Rope { noun: rope.noun.clone(), stops })
}

/// The ropes once one is cut at a strand: its two pieces end free.
fn cut(rig: &Rig, at: usize, strand: usize) -> Vec<Rope> {
    let mut ropes = rig.ropes.clone();
    if let Some(rope) = ropes.get_mut(at) {
        let behind = rope.stops.split_off(strand + 1);
        rope.stops.push(Stop::free());
        let noun = rope.noun.clone();
        ropes.push(Rope { noun, stops: [Stop::free()].into_iter().chain(behind).collect() });
    }
    ropes
}

fn holds(rig: &Rig, ropes: &[Rope]) -> bool {
    let runs: Vec<HeldRun> = ropes.iter().flat_map(|rope| held_runs(rig, rope)).collect();
    let rows = rig.bodies.iter().enumerate().filter(|(_, body)| body.moves()).map(|(at, body)| {
        let wanted = if body.kind == BodyKind::Climber { Fraction::ONE } else { Fraction::ZERO };
        let pulls = runs.iter().map(|run| run.pulls.get(at).copied().unwrap_or(Fraction::ZERO));
        pulls.chain([wanted]).collect()
    });
    has_non_negative_solution(rows.collect(), runs.len())
}

/// A piece of rope that is held at both ends.
struct HeldRun {
    /// What a unit of tension in it pulls on each body, upward.
    pulls: Vec<Fraction>,
    /// The rope that runs into it before the knots at its ends catch, in metres.
    slack: f64,
}

fn held_runs(rig: &Rig, rope: &Rope) -> Vec<HeldRun> {
    let mut runs = Vec::new();
    let mut pulls = vec![Fraction::ZERO; rig.bodies.len()];
    // The slack at the stop that the present run starts from, once there is one.
    let mut started: Option<f64> = None;
    for (at, stop) in rope.stops.iter().enumerate() {
        let slack = match stop.what {
            What::Tied | What::Hitch(_) => Some(0.0),
            What::Knot(slack) => Some(slack.si()),
            What::Turn(_) | What::Hand(_) | What::Free => None,
        };
        if let Some(slack) = slack {
            let pulls = std::mem::replace(&mut pulls, vec![Fraction::ZERO; rig.bodies.len()]);
            if let Some(before) = started {
                runs.push(HeldRun { pulls, slack: before + slack });
            }
            started = Some(slack);
        }
        let Some(next) = rope.stops.get(at + 1) else { break };
        let (Some(one), Some(other)) = (stop.body, next.body) else { continue };
        if one != other {
            for (body, sign) in [(one.min(other), -Fraction::ONE), (one.max(other), Fraction::ONE)] {
                if let Some(pull) = pulls.get_mut(body) {
                    *pull += sign;
                }
            }
        }
    }
    runs
}
