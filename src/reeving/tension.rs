//! Where the tension of each strand comes from: a hand, a loose end, an unknown, or the strand before.

use super::phase::{End, Run};
use super::{Drive, Fraction, HandDoes, Losses, Motion, Number, Rig, Rope, What};
use std::cmp::Ordering;

/// Where the tension of a strand comes from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum From {
    /// A loose end, that carries nothing.
    Free,
    /// The driving hand, of the rope with this number, and what hangs on the strand beyond it.
    Hand { rope: usize, beyond: Option<usize> },
    /// The unknown with this number.
    Unknown(usize),
    /// The strand of the step before, past a stop.
    Past(Past),
}

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
type Resting = (usize, usize);

/// The turns and sliding hitches, by rope and stop, with loaded rope on them that does not move.
fn resting(rig: &Rig, motion: &Motion) -> Vec<Resting> {
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

/// The tensions of all strands, a step a strand, so that each needs only those before it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Tensions {
    /// The strand, counted through the rig, and where its tension comes from.
    pub(super) steps: Vec<(usize, From)>,
    /// The strand that each unknown stands for.
    pub(super) unknowns: Vec<usize>,
    /// How many stops have an open ratio.
    pub(super) open: usize,
}

impl Tensions {
    /// The tensions of a rig that moves in a way.
    pub(super) fn of(rig: &Rig, motion: &Motion) -> Self {
        let resting = resting(rig, motion);
        let mut tensions = Self { steps: Vec::new(), unknowns: Vec::new(), open: resting.len() };
        let mut first = 0;
        for (at, rope) in rig.ropes.iter().enumerate() {
            let runs = motion.phase.runs(rope);
            let beyond = |strand: Option<usize>| {
                strand.filter(|strand| strand + 1 < rope.stops.len()).map(|strand| first + strand)
            };
            let way = Way { motion, resting: &resting, at, rope, first };
            // Loose runs first: what hangs on them is known, and the hand's run needs it.
            for run in runs.iter().filter(|run| run.is_loose()) {
                way.along(*run, run.start == End::Free, From::Free, &mut tensions.steps);
            }
            for run in runs.iter().filter(|run| !run.is_loose()) {
                let from = match (run.start, run.end) {
                    (End::Hand, _) => From::Hand { rope: at, beyond: beyond(run.first.checked_sub(1)) },
                    (_, End::Hand) => From::Hand { rope: at, beyond: beyond(Some(run.last)) },
                    _ => {
                        tensions.unknowns.push(first + run.first);
                        From::Unknown(tensions.unknowns.len() - 1)
                    }
                };
                way.along(*run, run.end != End::Hand, from, &mut tensions.steps);
            }
            first += rope.stops.len().saturating_sub(1);
        }
        tensions
    }
}

/// A rope along which tension is carried.
struct Way<'a> {
    motion: &'a Motion,
    resting: &'a [Resting],
    at: usize,
    rope: &'a Rope,
    /// The first of its strands, counted through the rig.
    first: usize,
}

impl Way<'_> {
    /// The steps through a run, from its first strand or from its last.
    fn along(&self, run: Run, from_start: bool, from: From, steps: &mut Vec<(usize, From)>) {
        let count = run.last - run.first;
        let mut from = from;
        for step in 0..count {
            let strand = if from_start { run.first + step } else { run.last - 1 - step };
            steps.push((self.first + strand, from));
            let stop = if from_start { strand + 1 } else { strand };
            if let Some(there) = self.rope.stops.get(stop) {
                from = From::Past(Past { what: there.what, ratio: self.ratio(stop, from_start) });
            }
        }
    }

    /// Tension behind a stop over tension before it, going along the rope (`forward`) or back.
    fn ratio(&self, stop: usize, forward: bool) -> Ratio {
        if !loses(self.motion, self.at, self.rope, stop) {
            return Ratio::One;
        }
        let pass = self.motion.pass(self.at, stop);
        let bit = self.resting.iter().position(|resting| *resting == (self.at, stop));
        match bit {
            Some(bit) => Ratio::Open { bit, inverse: forward },
            // Rope at rest that carries nothing is on no list, and any ratio of nothing is nothing.
            None if Fraction::ZERO.is_less(pass) == forward => Ratio::Inverse,
            None => Ratio::Kept,
        }
    }
}
