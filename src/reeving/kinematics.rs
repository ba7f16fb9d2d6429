//! Motion: how far each body goes, and how much rope passes each stop, for each metre the hand takes. Exact.

use super::linear::{Solution, solution};
use super::phase::End;
use super::{Body, BodyKind, Fault, Fraction, HandDoes, Phase, Rig, Rope, What};
use std::cmp::Ordering;

/// How a rig moves while the hand takes, or gives, one metre of rope.
#[derive(Debug, Clone, PartialEq)]
pub struct Motion {
    /// The rise of each body, in metres a metre.
    pub rises: Vec<Fraction>,
    /// The rope that passes each stop of each rope towards the rope's last stop, in metres a metre.
    pub passes: Vec<Vec<Fraction>>,
    /// The metres of rope the hand takes for each metre the climber rises; none when nothing moves.
    pub rope_per_rise: Option<Fraction>,
}

/// The motion of a rig in a phase.
///
/// ```text
///   between two fixed stops a rope keeps its length:
///   sum over its strands of (rise of the upper end - rise of the lower end) = 0
/// ```
///
/// # Units
/// Metres a metre of rope that the hand takes relative to its own body.
///
/// # Guarantees
/// Exact fractions. With no hand on, nothing moves.
///
/// # Errors
/// A [`Fault`] that names the loose body or the stuck rope.
///
/// # Source
/// Geometry.
pub fn kinematics(rig: &Rig, phase: &Phase) -> Result<Motion, Fault> {
    let taken = match phase.hand {
        HandDoes::Takes => Fraction::ONE,
        HandDoes::Gives => -Fraction::ONE,
        HandDoes::Off => return Ok(still(rig)),
    };
    if rig.hands == 0 {
        return Err(Fault::NoHand);
    }
    let moving: Vec<usize> = (0..rig.bodies.len()).filter(|&at| rig.bodies.get(at).is_some_and(Body::moves)).collect();
    let mut rows = Vec::new();
    let mut row_ropes = Vec::new();
    for (at, rope) in rig.ropes.iter().enumerate() {
        let stretch = Stretch::new(rope, phase, taken).ok_or(Fault::HandPullsNothing { rope: at })?;
        for run in phase.runs(rope).iter().filter(|run| !run.is_loose()) {
            let strands: Vec<(Vec<Fraction>, Fraction)> =
                (run.first..run.last).map(|strand| stretch.rate(strand, rig.bodies.len())).collect();
            let mut row: Vec<Fraction> = moving
                .iter()
                .map(|&body| {
                    strands.iter().filter_map(|(rate, _)| rate.get(body)).fold(Fraction::ZERO, |sum, v| sum + v)
                })
                .collect();
            row.push(strands.iter().fold(Fraction::ZERO, |sum, (_, hand)| sum - hand));
            rows.push(row);
            row_ropes.push(at);
        }
    }
    let found = match solution(rows, moving.len()) {
        Solution::Unique(found) => found,
        Solution::Loose(column) => {
            return Err(Fault::LooseBody { body: moving.get(column).copied().unwrap_or_default() });
        }
        Solution::Stuck(row) => return Err(Fault::StuckRope { rope: row_ropes.get(row).copied().unwrap_or_default() }),
    };
    let mut rises = vec![Fraction::ZERO; rig.bodies.len()];
    for (&body, rise) in moving.iter().zip(found) {
        if let Some(place) = rises.get_mut(body) {
            *place = rise;
        }
    }
    let rise = rig.body(BodyKind::Climber).and_then(|climber| rises.get(climber)).copied().unwrap_or(Fraction::ZERO);
    if rise * taken <= Fraction::ZERO {
        return Err(Fault::NotMoved);
    }
    let passes = rig.ropes.iter().map(|rope| passes(rope, phase, &rises, taken)).collect();
    Ok(Motion { rises, passes, rope_per_rise: Some(taken / rise) })
}

fn still(rig: &Rig) -> Motion {
    Motion {
        rises: vec![Fraction::ZERO; rig.bodies.len()],
        passes: rig.ropes.iter().map(|rope| vec![Fraction::ZERO; rope.stops.len()]).collect(),
        rope_per_rise: None,
    }
}

/// The rope that passes each stop towards the last one: what the strands before it lose, or those behind it gain.
fn passes(rope: &Rope, phase: &Phase, rises: &[Fraction], taken: Fraction) -> Vec<Fraction> {
    let mut passes = vec![Fraction::ZERO; rope.stops.len()];
    let Some(stretch) = Stretch::new(rope, phase, taken) else { return passes };
    let rate = |strand: usize| {
        let (bodies, hand) = stretch.rate(strand, rises.len());
        bodies.iter().zip(rises).fold(hand, |sum, (factor, rise)| sum + factor * rise)
    };
    for run in phase.runs(rope) {
        let inner: Vec<usize> = (run.first + 1..run.last).collect();
        let mut passing = Fraction::ZERO;
        if run.start == End::Free {
            for &stop in inner.iter().rev() {
                passing += rate(stop);
                if let Some(place) = passes.get_mut(stop) {
                    *place = passing;
                }
            }
        } else {
            for &stop in &inner {
                passing -= rate(stop - 1);
                if let Some(place) = passes.get_mut(stop) {
                    *place = passing;
                }
            }
        }
    }
    passes
}

/// How fast the strands of a rope grow.
struct Stretch<'a> {
    rope: &'a Rope,
    /// The driving hand, if it is on this rope.
    hand: Option<Hand>,
}

/// Where the driving hand is on a rope and which way it goes relative to its body.
struct Hand {
    stop: usize,
    /// The strand that it pulls on.
    loaded: usize,
    /// Metres downward.
    down: Fraction,
    taken: Fraction,
}

impl<'a> Stretch<'a> {
    /// None when the hand is on this rope and does not have a held side and a free side.
    fn new(rope: &'a Rope, phase: &Phase, taken: Fraction) -> Option<Self> {
        let Some(stop) = rope.stops.iter().position(|stop| stop.what == What::Hand(0)) else {
            return Some(Self { rope, hand: None });
        };
        let runs = phase.runs(rope);
        let before = runs.iter().find(|run| run.last == stop)?;
        let behind = runs.iter().find(|run| run.first == stop)?;
        let (loaded, neighbour) = match (before.is_loose(), behind.is_loose()) {
            (false, true) => (stop - 1, stop - 1),
            (true, false) => (stop, stop + 1),
            _ => return None,
        };
        let (own, other) = (rope.stops.get(stop)?.body, rope.stops.get(neighbour)?.body);
        let down = if other > own { -taken } else { taken };
        Some(Self { rope, hand: Some(Hand { stop, loaded, down, taken }) })
    }

    /// The rate of a strand's length: a factor for each body's rise, and what the hand adds.
    fn rate(&self, strand: usize, bodies: usize) -> (Vec<Fraction>, Fraction) {
        let mut factors = vec![Fraction::ZERO; bodies];
        let body = |stop: usize| self.rope.stops.get(stop).and_then(|stop| stop.body);
        let (Some(one), Some(other)) = (body(strand), body(strand + 1)) else { return (factors, Fraction::ZERO) };
        let (upper, lower) = (one.min(other), one.max(other));
        if upper != lower {
            for (body, sign) in [(upper, Fraction::ONE), (lower, -Fraction::ONE)] {
                if let Some(factor) = factors.get_mut(body) {
                    *factor = sign;
                }
            }
        }
        let hand = self.hand.as_ref().filter(|hand| hand.stop == strand || hand.stop == strand + 1);
        let moved = hand.map_or(Fraction::ZERO, |hand| match body(hand.stop).cmp(&Some(upper)) {
            // No length, but the hand draws rope out of it or into it.
            _ if upper == lower => {
                if hand.loaded == strand {
                    hand.taken
                } else {
                    -hand.taken
                }
            }
            Ordering::Equal => -hand.down,
            _ => hand.down,
        });
        (factors, moved)
    }
}
