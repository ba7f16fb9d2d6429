//! Tensions carried along a rope, from a hand, a loose end, or an unknown, through every stop of a run.

use super::phase::{End, Run};
use super::{Drive, Fault, Fraction, HandDoes, Losses, Motion, Number, Rig, Rope, What};
use std::cmp::Ordering;

/// A tension that is partly known: `factor` of an unknown, and the rest.
#[derive(Clone, Copy)]
pub(super) struct PartTension {
    pub(super) factor: f64,
    pub(super) unknown: Option<usize>,
    pub(super) known: f64,
}

const NOTHING: PartTension = PartTension { factor: 0.0, unknown: None, known: 0.0 };

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

/// What carries tensions along the ropes.
pub(super) struct Propagation<'a> {
    pub(super) rig: &'a Rig,
    pub(super) motion: &'a Motion,
    pub(super) losses: &'a Losses,
    pub(super) drive: &'a Drive,
    pub(super) resting: &'a [Resting],
    /// A bit for each resting stop: to which end of its range it is set.
    pub(super) choice: usize,
}

impl Propagation<'_> {
    /// The tension of each strand of a rope; new unknowns are entered with the strand they stand for.
    pub(super) fn rope_tensions(
        &self,
        at: usize,
        unknowns: &mut Vec<(usize, usize)>,
    ) -> Result<Vec<PartTension>, Fault> {
        let Some(rope) = self.rig.ropes.get(at) else { return Ok(Vec::new()) };
        let mut tensions = vec![NOTHING; rope.stops.len().saturating_sub(1)];
        let runs = self.motion.phase.runs(rope);
        // Loose runs first: what hangs on them is known, and the hand's run needs it.
        for run in runs.iter().filter(|run| run.is_loose()) {
            self.propagate(at, *run, run.start == End::Free, NOTHING, &mut tensions);
        }
        for run in runs.iter().filter(|run| !run.is_loose()) {
            let seed = match (run.start, run.end) {
                (End::Hand, _) => self.in_hand(at, run.first.checked_sub(1), &tensions)?,
                (_, End::Hand) => self.in_hand(at, Some(run.last), &tensions)?,
                _ => {
                    unknowns.push((at, run.first));
                    PartTension { factor: 1.0, unknown: Some(unknowns.len() - 1), known: 0.0 }
                }
            };
            self.propagate(at, *run, run.end != End::Hand, seed, &mut tensions);
        }
        Ok(tensions)
    }

    /// What the driving hand's run carries at the hand: the pull, and what hangs on the rope beyond it.
    fn in_hand(&self, rope: usize, beyond: Option<usize>, tensions: &[PartTension]) -> Result<PartTension, Fault> {
        let Drive::Pull(pull, _) = self.drive else { return Err(Fault::HandPullsNothing { rope }) };
        let beyond = beyond.and_then(|strand| tensions.get(strand)).map_or(0.0, |beyond| beyond.known);
        Ok(PartTension { known: beyond + *pull, ..NOTHING })
    }

    /// Carries a tension through a run, from its first strand or from its last.
    fn propagate(&self, at: usize, run: Run, from_start: bool, seed: PartTension, tensions: &mut [PartTension]) {
        let Some(rope) = self.rig.ropes.get(at) else { return };
        let count = run.last - run.first;
        let mut tension = seed;
        for step in 0..count {
            let strand = if from_start { run.first + step } else { run.last - 1 - step };
            if let Some(place) = tensions.get_mut(strand) {
                *place = tension;
            }
            let stop = if from_start { strand + 1 } else { strand };
            if step + 1 == count {
                break;
            }
            let ratio = self.ratio(at, rope, stop, from_start);
            tension.factor *= ratio;
            tension.known = tension.known * ratio + self.help(rope, stop);
        }
    }

    /// What a helper's hand at a stop adds on the side away from the loose end.
    fn help(&self, rope: &Rope, stop: usize) -> f64 {
        match (rope.stops.get(stop).map(|stop| stop.what), self.drive) {
            (Some(What::Helper(number)), Drive::Pull(_, helpers)) => helpers.get(number).copied().unwrap_or(0.0),
            _ => 0.0,
        }
    }

    /// Tension behind a stop over tension before it, going along the rope (`forward`) or back.
    fn ratio(&self, at: usize, rope: &Rope, stop: usize, forward: bool) -> f64 {
        if !loses(self.motion, at, rope, stop) {
            return 1.0;
        }
        let kept = match rope.stops.get(stop).map(|stop| stop.what) {
            Some(What::Turn(number)) => self.losses.turns.get(number),
            Some(What::Hitch(number)) => self.losses.hitches.get(number),
            _ => None,
        };
        let kept = kept.copied().unwrap_or(1.0);
        let pass = self.motion.pass(at, stop);
        let runs_forward = if pass.is_nought() {
            // Rope that carries nothing is on no list, and any ratio of nothing is nothing.
            let bit = self.resting.iter().position(|resting| *resting == (at, stop));
            bit.is_some_and(|bit| self.choice >> bit & 1 == 1)
        } else {
            Fraction::ZERO.is_less(pass)
        };
        if runs_forward == forward { 1.0 / kept } else { kept }
    }
}
