//! Tensions carried along a rope, from a hand, a loose end, or an unknown, through every stop of a run.

use super::phase::{End, Run};
use super::{Drive, Fault, Fraction, Losses, Motion, Number, Phase, Rig, Rope, What};

/// A tension that is partly known: `factor` of an unknown, and the rest.
#[derive(Clone, Copy)]
pub(super) struct Partly<N> {
    pub(super) factor: N,
    pub(super) unknown: Option<usize>,
    pub(super) known: N,
}

impl<N: Number> Partly<N> {
    const NOTHING: Self = Self { factor: N::ZERO, unknown: None, known: N::ZERO };
}

/// A stop at which rope rests: its ratio may be anything between what is kept and the inverse.
pub(super) type Resting = (usize, usize);

/// The turns and sliding hitches, by rope and stop, with loaded rope on them that does not move.
pub(super) fn resting(rig: &Rig, phase: &Phase, motion: &Motion) -> Vec<Resting> {
    let mut found = Vec::new();
    for (at, (rope, passes)) in rig.ropes.iter().zip(&motion.passes).enumerate() {
        let helped = rope.stops.iter().any(|stop| matches!(stop.what, What::Hand(number) if number > 0));
        for run in phase.runs(rope).iter().filter(|run| helped || !run.is_loose()) {
            let rests = |stop: &usize| passes.get(*stop).is_none_or(|pass| pass.is_nought());
            let inner = (run.first + 1..run.last).filter(|&stop| loses(rope, stop)).filter(rests);
            found.extend(inner.map(|stop| (at, stop)));
        }
    }
    found
}

/// Whether tension may change at a stop: a hitch, or a turn that is wrapped.
fn loses(rope: &Rope, stop: usize) -> bool {
    match rope.stops.get(stop).map(|stop| stop.what) {
        Some(What::Hitch(_)) => true,
        Some(What::Turn(_)) => {
            let side = |other: usize| direction(rope, stop, other);
            !matches!((side(stop.wrapping_sub(1)), side(stop + 1)), (Some(one), Some(other)) if one * other < 0)
        }
        _ => false,
    }
}

/// Whether the strand from one stop to a neighbour goes up (1), down (-1) or has no length (0).
fn direction(rope: &Rope, stop: usize, neighbour: usize) -> Option<i8> {
    let (own, other) = (rope.stops.get(stop)?.body?, rope.stops.get(neighbour)?.body?);
    Some(match other.cmp(&own) {
        std::cmp::Ordering::Less => 1,
        std::cmp::Ordering::Equal => 0,
        std::cmp::Ordering::Greater => -1,
    })
}

/// What carries tensions along the ropes.
pub(super) struct Carrier<'a, N> {
    pub(super) rig: &'a Rig,
    pub(super) phase: &'a Phase,
    pub(super) motion: &'a Motion,
    pub(super) losses: &'a Losses<N>,
    pub(super) drive: &'a Drive<N>,
    pub(super) resting: &'a [Resting],
    /// A bit for each resting stop: to which end of its range it is set.
    pub(super) choice: usize,
}

impl<N: Number> Carrier<'_, N> {
    /// The tension of each strand of a rope; new unknowns are entered with the strand they stand for.
    pub(super) fn rope_tensions(&self, at: usize, unknowns: &mut Vec<(usize, usize)>) -> Result<Vec<Partly<N>>, Fault> {
        let Some(rope) = self.rig.ropes.get(at) else { return Ok(Vec::new()) };
        let mut tensions = vec![Partly::NOTHING; rope.stops.len().saturating_sub(1)];
        let runs = self.phase.runs(rope);
        // Loose runs first: what hangs on them is known, and the hand's run needs it.
        for run in runs.iter().filter(|run| run.is_loose()) {
            self.propagate(at, *run, run.start == End::Free, Partly::NOTHING, &mut tensions);
        }
        for run in runs.iter().filter(|run| !run.is_loose()) {
            let seed = match (run.start, run.end) {
                (End::Hand, _) => self.in_hand(at, run.first.checked_sub(1), &tensions)?,
                (_, End::Hand) => self.in_hand(at, Some(run.last), &tensions)?,
                _ => {
                    unknowns.push((at, run.first));
                    Partly { factor: N::ONE, unknown: Some(unknowns.len() - 1), known: N::ZERO }
                }
            };
            self.propagate(at, *run, run.end != End::Hand, seed, &mut tensions);
        }
        Ok(tensions)
    }

    /// What the driving hand's run carries at the hand: the pull, and what hangs on the rope beyond it.
    fn in_hand(&self, rope: usize, beyond: Option<usize>, tensions: &[Partly<N>]) -> Result<Partly<N>, Fault> {
        let Drive::Pull(pull, _) = self.drive else { return Err(Fault::HandPullsNothing { rope }) };
        let beyond = beyond.and_then(|strand| tensions.get(strand)).map_or(N::ZERO, |beyond| beyond.known);
        Ok(Partly { known: beyond + *pull, ..Partly::NOTHING })
    }

    /// Carries a tension through a run, from its first strand or from its last.
    fn propagate(&self, at: usize, run: Run, from_start: bool, seed: Partly<N>, tensions: &mut [Partly<N>]) {
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
            let helper = self.helper(rope, stop);
            tension = Partly {
                factor: tension.factor * ratio,
                unknown: tension.unknown,
                known: tension.known * ratio + helper,
            };
        }
    }

    /// What a further hand at a stop adds on the side away from the loose end.
    fn helper(&self, rope: &Rope, stop: usize) -> N {
        match (rope.stops.get(stop).map(|stop| stop.what), self.drive) {
            (Some(What::Hand(number)), Drive::Pull(_, others)) if number > 0 => {
                others.get(number - 1).copied().unwrap_or(N::ZERO)
            }
            _ => N::ZERO,
        }
    }

    /// Tension behind a stop over tension before it, going along the rope (`forward`) or back.
    fn ratio(&self, at: usize, rope: &Rope, stop: usize, forward: bool) -> N {
        if !loses(rope, stop) {
            return N::ONE;
        }
        let kept = match rope.stops.get(stop).map(|stop| stop.what) {
            Some(What::Turn(number)) => self.losses.turns.get(number),
            Some(What::Hitch(number)) => self.losses.hitches.get(number),
            _ => None,
        };
        let kept = kept.copied().unwrap_or(N::ONE);
        let pass = self.motion.passes.get(at).and_then(|passes| passes.get(stop)).copied();
        let pass = pass.unwrap_or(Fraction::ZERO);
        let runs_forward = if pass.is_nought() {
            // Rope that carries nothing is on no list, and any ratio of nothing is nothing.
            let bit = self.resting.iter().position(|resting| *resting == (at, stop));
            bit.is_some_and(|bit| self.choice >> bit & 1 == 1)
        } else {
            pass > Fraction::ZERO
        };
        if runs_forward == forward { N::ONE / kept } else { kept }
    }
}
