//! What tension is multiplied by where it passes a stop.

use super::{Drive, Fraction, HandDoes, Losses, Motion, Number, Rig, Rope, What};
use std::cmp::Ordering;

/// A stop as tension passes it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Past {
    what: What,
    ratio: Ratio,
}

/// What tension is multiplied by at a stop.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Ratio {
    /// Nothing is lost.
    One,
    /// What is kept.
    Kept,
    /// Its inverse.
    Inverse,
    /// Where rope rests, anything between the two: the inverse, where this bit of the choice is this.
    Open { bit: usize, inverse: bool },
}

impl Past {
    /// A stop of a rope, by rope and stop, passed along the rope (`forward`) or back.
    pub(super) fn of(motion: &Motion, resting: &[Resting], at: Resting, rope: &Rope, forward: bool) -> Option<Self> {
        let what = rope.stops.get(at.1)?.what;
        let ratio = match resting.iter().position(|resting| *resting == at) {
            _ if !loses(motion, at.0, rope, at.1) => Ratio::One,
            Some(bit) => Ratio::Open { bit, inverse: forward },
            // Rope at rest that carries nothing is on no list, and any ratio of nothing is nothing.
            None if Fraction::ZERO.is_less(motion.pass(at.0, at.1)) == forward => Ratio::Inverse,
            None => Ratio::Kept,
        };
        Some(Self { what, ratio })
    }

    /// Tension behind the stop over tension before it, with a choice of the open ones.
    pub(super) fn ratio(&self, losses: &Losses, choice: usize) -> f64 {
        let inverse = match self.ratio {
            Ratio::One => return 1.0,
            Ratio::Kept => false,
            Ratio::Inverse => true,
            Ratio::Open { bit, inverse } => (choice >> bit & 1 == 1) == inverse,
        };
        let kept = match self.what {
            What::Turn(number) => losses.turns.get(number),
            What::Hitch(number) => losses.hitches.get(number),
            _ => None,
        };
        let kept = kept.copied().unwrap_or(1.0);
        if inverse { 1.0 / kept } else { kept }
    }

    /// What a helper's hand at the stop adds on the side away from the loose end.
    pub(super) fn help(&self, drive: &Drive) -> f64 {
        match (self.what, drive) {
            (What::Helper(number), Drive::Pull(_, helpers)) => helpers.get(number).copied().unwrap_or(0.0),
            _ => 0.0,
        }
    }
}

/// A stop at which rope rests: its ratio may be anything between what is kept and the inverse.
pub(super) type Resting = (usize, usize);

/// The turns and sliding hitches, by rope and stop, with loaded rope on them that does not move.
pub(super) fn resting(rig: &Rig, motion: &Motion) -> Vec<Resting> {
    let mut found = Vec::new();
    for (at, rope) in rig.ropes.iter().enumerate() {
        for run in motion.phase.runs(rope) {
            let loaded = !run.is_loose() || run.is_helped(rope);
            for stop in run.first + 1..run.last {
                if loaded && motion.pass(at, stop).is_nought() && loses(motion, at, rope, stop) {
                    found.push((at, stop));
                }
            }
        }
    }
    found
}

/// Whether tension may change at a stop: at a turn that is wrapped, and at a hitch that drags. A hitch that no rope runs
/// past drags neither as a backup, nor while no hand is on the rope: what it may hold is not counted on.
fn loses(motion: &Motion, at: usize, rope: &Rope, place: usize) -> bool {
    let Some(stop) = rope.stops.get(place) else { return false };
    match stop.what {
        What::Hitch(_) => !motion.pass(at, place).is_nought() || !stop.backup && motion.phase.hand != HandDoes::Off,
        What::Turn(_) => {
            let (one, other) = (direction(rope, place, false), direction(rope, place, true));
            one == Ordering::Equal || one != other.reverse()
        }
        _ => false,
    }
}

/// Whether the rope comes from above a stop, or goes from it, past whatever sits on the same body: less is above. Equal
/// where it ends there, or a hand takes it.
fn direction(rope: &Rope, from: usize, forward: bool) -> Ordering {
    let mut place = from;
    loop {
        place = if forward { place + 1 } else { place.wrapping_sub(1) };
        let (Some(stop), Some(own)) = (rope.stops.get(place), rope.stops.get(from)) else { return Ordering::Equal };
        let way = stop.body.map_or(Ordering::Equal, |body| Some(body).cmp(&own.body));
        if way != Ordering::Equal || matches!(stop.what, What::Hand | What::Helper(_) | What::Free) {
            return way;
        }
    }
}
