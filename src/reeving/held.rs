//! Who is held by what: whether the climber stays up with every hand off, and whose failure drops them.

use super::linear::Equations;
use super::simplex::least_cost;
use super::{BodyKind, Fraction, Rig, Rope, Stop, What};
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
    fall(rig, Loss::default()).is_some()
}

/// The parts whose failure alone drops the climber, as far as this model sees.
///
/// # Guarantees
/// Every tie, hitch, turn and rope is tried: a tie or hitch lets its rope slide, a turn lets its rope go and with it a
/// knot that jams there, a rope is cut at each strand. A rig that is not held to begin with has no single parts to name.
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
            parts.push(Part::Stop { rope: at, stop });
        }
        parts.push(Part::Rope { rope: at });
    }
    parts.retain(|part| drop_after(rig, *part).is_none());
    parts
}

/// How far the climber drops when a part fails, before the knots that had slack hold them.
///
/// ```text
///   the least, over all sets of tensions that hold the climber's weight of 1, of  sum of tension x slack
/// ```
///
/// # Guarantees
/// None when the part is single, or is not there; nought when nothing has to run first. A rope is cut at each strand, and
/// the furthest drop counts. Rope stretch and what hitches give back come on top.
///
/// # Source
/// Geometry: the climber falls as far as the ropes allow, and that furthest fall is the least of those sums (the two
/// are each other's duals).
///
/// # Example
/// ```
/// use boughline::quantity::Length;
/// use boughline::reeving::{Backup, Part, catalogue, drop_after};
///
/// // Two metres run to the knot, on two strands.
/// let rig = catalogue::tail_three_to_one(Backup::TailKnot { slack: Length::metres(2.0) })?;
/// let lower_hitch = Part::Stop { rope: 0, stop: 2 };
/// assert_eq!(drop_after(&rig, lower_hitch), Some(Length::metres(1.0)));
/// # Ok::<(), boughline::reeving::Fault>(())
/// ```
#[must_use]
pub fn drop_after(rig: &Rig, part: Part) -> Option<Length> {
    dropped(rig, part, false)
}

/// How far the climber drops when every hand lets go, before knots that had slack hold them; none where nothing does.
pub(super) fn drop_without_hands(rig: &Rig) -> Option<Length> {
    fall(rig, Loss::default()).map(Length::metres)
}

/// The same while the driving hand holds on, which is then a part like the others: for rigs in which nothing else holds.
#[must_use]
pub fn drop_in_hand(rig: &Rig, part: Part) -> Option<Length> {
    dropped(rig, part, true)
}

fn dropped(rig: &Rig, part: Part, by_hand: bool) -> Option<Length> {
    let mut furthest = 0.0;
    match part {
        Part::Stop { rope, stop } => {
            let fails = |stop: &&Stop| stop.can_fail() || by_hand && stop.what == What::Hand;
            rig.ropes.get(rope)?.stops.get(stop).filter(fails)?;
            furthest = fall(rig, Loss { stop: Some((rope, stop)), strand: None, by_hand })?;
        }
        Part::Rope { rope } => {
            for strand in 1..rig.ropes.get(rope)?.stops.len() {
                let cut = Loss { stop: None, strand: Some((rope, strand - 1)), by_hand };
                furthest = fall(rig, cut)?.max(furthest);
            }
        }
    }
    Some(Length::metres(furthest))
}

/// What is gone.
#[derive(Clone, Copy, Default)]
struct Loss {
    /// The part at a stop of a rope: a tie or hitch lets its rope slide, a turn lets it go.
    stop: Option<(usize, usize)>,
    /// A strand of a rope, cut.
    strand: Option<(usize, usize)>,
    /// Whether the driving hand is still there.
    by_hand: bool,
}

/// How far the climber drops before they are held, in metres; none where nothing holds them.
fn fall(rig: &Rig, loss: Loss) -> Option<f64> {
    let runs = held_runs(rig, loss);
    let mut equations = Equations::new(runs.len());
    for (at, body) in rig.bodies.iter().enumerate().filter(|(_, body)| body.moves()) {
        let mut pulls = Vec::new();
        for run in &runs {
            pulls.push(Fraction::from(run.pulls.get(at).copied().unwrap_or(0)));
        }
        equations.push(&pulls, Fraction::from(i64::from(body.kind == BodyKind::Climber)));
    }
    let mut slack = Vec::new();
    for run in &runs {
        slack.push(run.slack);
    }
    least_cost(&equations, &slack)
}

/// A piece of rope that is held at both ends.
#[derive(Clone)]
struct HeldRun {
    /// What a unit of tension in it pulls on each body, upward.
    pulls: Vec<i64>,
    /// The rope that runs into it before the knots at its ends catch, in metres.
    slack: f64,
}

/// Whether a stop is a knot that jams at a turn beside it, and that turn is gone.
fn jams_at(rope: &Rope, place: usize, at: usize, loss: Loss) -> bool {
    let Some((lost_at, lost)) = loss.stop else { return false };
    let (Some(knot), Some(turn)) = (rope.stops.get(place), rope.stops.get(lost)) else { return false };
    lost_at == at
        && lost.abs_diff(place) == 1
        && matches!((knot.what, turn.what), (What::Knot(_), What::Turn(_)))
        && knot.body == turn.body
}

/// The pieces from each place where a rope is held to the next, and past knots, which may not have caught yet, to those
/// behind.
fn held_runs(rig: &Rig, loss: Loss) -> Vec<HeldRun> {
    let mut runs = Vec::new();
    for (at, rope) in rig.ropes.iter().enumerate() {
        // The runs that have started and not come to what ends them, and the body before this one.
        let (mut open, mut before): (Vec<HeldRun>, Option<usize>) = (Vec::new(), None);
        for (place, stop) in rope.stops.iter().enumerate() {
            let lost = loss.stop == Some((at, place));
            if lost && matches!(stop.what, What::Turn(_)) {
                continue;
            }
            if let (Some(one), Some(other)) = (before, stop.body)
                && one != other
            {
                for run in &mut open {
                    for (body, sign) in [(one.min(other), -1), (one.max(other), 1)] {
                        if let Some(pull) = run.pulls.get_mut(body) {
                            *pull += sign;
                        }
                    }
                }
            }
            before = stop.body;
            let slack = match stop.what {
                _ if lost || jams_at(rope, place, at, loss) => None,
                What::Tied | What::Hitch(_) => Some(0.0),
                What::Hand if loss.by_hand => Some(0.0),
                What::Knot(slack) => Some(slack.in_metres()),
                What::Turn(_) | What::Hand | What::Helper(_) | What::Free => None,
            };
            if let Some(slack) = slack {
                for run in &open {
                    runs.push(HeldRun { slack: run.slack + slack, ..run.clone() });
                }
                if !matches!(stop.what, What::Knot(_)) {
                    open.clear();
                }
                open.push(HeldRun { pulls: vec![0; rig.bodies.len()], slack });
            }
            if loss.strand == Some((at, place)) {
                // The two pieces end free.
                open.clear();
                before = None;
            }
        }
    }
    runs
}
