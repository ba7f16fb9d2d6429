//! Motion: how far each body goes, and how much rope passes each stop, for each metre the hand takes. Exact.

use super::linear::{Equations, Solution, solution};
use super::phase::End;
use super::{BodyKind, Fault, Fraction, HandDoes, Number, Phase, Rig, Rope, What};

/// How a rig moves while the hand takes, or gives, one metre of rope.
#[derive(Debug, Clone, PartialEq)]
pub struct Motion {
    /// The phase that it is the motion in.
    pub(crate) phase: Phase,
    /// The rise of each body, in metres a metre.
    pub rises: Vec<Fraction>,
    /// The rope that passes each stop of each rope towards the rope's last stop, in metres a metre.
    pub passes: Vec<Vec<Fraction>>,
    /// The metres of rope the hand takes for each metre the climber rises; none when nothing moves.
    pub rope_per_rise: Option<Fraction>,
}

impl Motion {
    /// The rope that passes a stop of a rope.
    pub(crate) fn pass(&self, rope: usize, stop: usize) -> Fraction {
        self.passes.get(rope).and_then(|passes| passes.get(stop)).copied().unwrap_or(Fraction::ZERO)
    }
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
/// A [`Fault`] that names the loose body, the stuck rope, or the rope on which a hand pulls nothing.
///
/// # Source
/// Geometry.
pub fn kinematics(rig: &Rig, phase: &Phase) -> Result<Motion, Fault> {
    for (at, rope) in rig.ropes.iter().enumerate() {
        for run in phase.runs(rope) {
            if (run.start == End::Free) == (run.end == End::Free) && run.is_helped(rope) {
                return Err(Fault::HandPullsNothing { rope: at });
            }
        }
    }
    let taken = match phase.hand {
        HandDoes::Takes => 1,
        HandDoes::Gives => -1,
        HandDoes::Off => return Ok(still(rig, phase)),
    };
    if !rig.stops().any(|stop| stop.what == What::Hand) {
        return Err(Fault::NoHand);
    }
    let moving = rig.moving();
    let mut equations = Equations::new(moving.len());
    let mut row_ropes = Vec::new();
    for (at, rope) in rig.ropes.iter().enumerate() {
        let stretch = Stretch::new(rope, phase, taken).ok_or(Fault::HandPullsNothing { rope: at })?;
        for run in phase.runs(rope) {
            if run.is_loose() {
                continue;
            }
            let mut grows = vec![0; rig.bodies.len()];
            let mut drawn = 0;
            for strand in run.first..run.last {
                drawn += stretch.grow(strand, &mut grows);
            }
            let mut factors = Vec::new();
            for &body in &moving {
                factors.push(Fraction::from(grows.get(body).copied().unwrap_or(0)));
            }
            equations.push(&factors, Fraction::from(-drawn));
            row_ropes.push(at);
        }
    }
    let found = match solution(equations) {
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
    let taken = Fraction::from(taken);
    if !Fraction::ZERO.is_less(rise.times(taken)) {
        return Err(Fault::NotMoved);
    }
    let mut all = Vec::new();
    for rope in &rig.ropes {
        all.push(passes(rope, phase, &rises));
    }
    Ok(Motion { phase: phase.clone(), rises, passes: all, rope_per_rise: Some(taken.over(rise)) })
}

fn still(rig: &Rig, phase: &Phase) -> Motion {
    let mut passes = Vec::new();
    for rope in &rig.ropes {
        passes.push(vec![Fraction::ZERO; rope.stops.len()]);
    }
    Motion { phase: phase.clone(), rises: vec![Fraction::ZERO; rig.bodies.len()], passes, rope_per_rise: None }
}

/// The rope that passes each stop towards the last one: what the strands before it lose, or those behind it gain.
fn passes(rope: &Rope, phase: &Phase, rises: &[Fraction]) -> Vec<Fraction> {
    let mut passes = vec![Fraction::ZERO; rope.stops.len()];
    let taken = if phase.hand == HandDoes::Gives { -1 } else { 1 };
    let Some(stretch) = Stretch::new(rope, phase, taken) else { return passes };
    let rate = |strand: usize| {
        let mut grows = vec![0; rises.len()];
        let mut sum = Fraction::from(stretch.grow(strand, &mut grows));
        for (factor, rise) in grows.iter().zip(rises) {
            sum = sum.plus(Fraction::from(*factor).times(*rise));
        }
        sum
    };
    for run in phase.runs(rope) {
        let mut passing = Fraction::ZERO;
        for step in run.first + 1..run.last {
            // From the end that is fixed.
            let stop = if run.start == End::Free { run.first + run.last - step } else { step };
            passing = if run.start == End::Free { passing.plus(rate(stop)) } else { passing.minus(rate(stop - 1)) };
            if let Some(place) = passes.get_mut(stop) {
                *place = passing;
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
    down: i64,
    taken: i64,
}

impl<'a> Stretch<'a> {
    /// None when the hand is on this rope and does not have a held side and a free side.
    fn new(rope: &'a Rope, phase: &Phase, taken: i64) -> Option<Self> {
        let Some(stop) = rope.stops.iter().position(|stop| stop.what == What::Hand) else {
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

    /// Adds, for each body, how much a strand grows with its rise, and returns how much it grows by the hand.
    fn grow(&self, strand: usize, grows: &mut [i64]) -> i64 {
        let body = |stop: usize| self.rope.stops.get(stop).and_then(|stop| stop.body);
        let (Some(one), Some(other)) = (body(strand), body(strand + 1)) else { return 0 };
        let (upper, lower) = (one.min(other), one.max(other));
        if upper != lower {
            for (body, sign) in [(upper, 1), (lower, -1)] {
                if let Some(factor) = grows.get_mut(body) {
                    *factor += sign;
                }
            }
        }
        match &self.hand {
            Some(hand) if hand.stop == strand || hand.stop == strand + 1 => {
                if upper != lower {
                    if body(hand.stop) == Some(upper) { -hand.down } else { hand.down }
                } else if hand.loaded == strand {
                    // No length, but the hand draws rope out of it, and beyond the hand into it.
                    hand.taken
                } else {
                    -hand.taken
                }
            }
            _ => 0,
        }
    }
}
