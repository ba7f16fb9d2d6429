//! One system of balances: tensions carried along each rope, and solved for by the balance of each body.

use super::linear::{Solution, solution};
use super::phase::{End, Run};
use super::{BodyKind, Drive, Fault, Fraction, Losses, Motion, Number, Phase, Rig, Rope, What};

/// How many turns and sliding hitches have rope on them that does not move.
pub(super) fn resting(rig: &Rig, phase: &Phase, motion: &Motion) -> usize {
    let mut count = 0;
    for (rope, passes) in rig.ropes.iter().zip(&motion.passes) {
        for run in phase.runs(rope) {
            let inner = (run.first + 1..run.last).filter(|&stop| loses(rope, stop) && rests(passes, stop));
            count += inner.count();
        }
    }
    count
}

fn rests(passes: &[Fraction], stop: usize) -> bool {
    passes.get(stop).is_none_or(|pass| pass.is_nought())
}

/// Whether tension may change at a stop: a hitch, or a turn that is wrapped.
fn loses(rope: &Rope, stop: usize) -> bool {
    match rope.stops.get(stop).map(|stop| stop.what) {
        Some(What::Hitch(_)) => rope.stops.get(stop).is_some_and(|stop| !stop.backup),
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

/// A tension that is partly known: `factor` of an unknown, and the rest.
#[derive(Clone, Copy)]
struct Partly<N> {
    factor: N,
    unknown: Option<usize>,
    known: N,
}

impl<N: Number> Partly<N> {
    const NOTHING: Self = Self { factor: N::ZERO, unknown: None, known: N::ZERO };
}

/// One system of balances, with each resting turn at one end of its range.
pub(super) struct Balance<'a, N> {
    pub(super) rig: &'a Rig,
    pub(super) phase: &'a Phase,
    pub(super) motion: &'a Motion,
    pub(super) losses: &'a Losses<N>,
    pub(super) drive: &'a Drive<N>,
    pub(super) choice: usize,
}

impl<N: Number> Balance<'_, N> {
    /// The tension of every strand and the pull on every body.
    pub(super) fn solved(&self) -> Result<(Vec<Vec<N>>, Vec<N>), Fault> {
        let mut unknowns: Vec<(usize, usize)> = Vec::new();
        let mut resting = 0;
        let ropes: Vec<Vec<Partly<N>>> = (0..self.rig.ropes.len())
            .map(|rope| self.rope_tensions(rope, &mut unknowns, &mut resting))
            .collect::<Result<_, _>>()?;
        let mut rows = Vec::new();
        let mut row_bodies = Vec::new();
        for (at, body) in self.rig.bodies.iter().enumerate() {
            let wanted = match (body.kind, self.drive) {
                (BodyKind::Carriage, _) => N::ZERO,
                (BodyKind::Climber, Drive::Load(load)) => *load,
                _ => continue,
            };
            let mut row = vec![N::ZERO; unknowns.len() + 1];
            let mut known = N::ZERO;
            for (tension, up) in self.pulls_on(at, &ropes) {
                let sign = if up { N::ONE } else { -N::ONE };
                known = known + sign * tension.known;
                if let Some(place) = tension.unknown.and_then(|unknown| row.get_mut(unknown)) {
                    *place = *place + sign * tension.factor;
                }
            }
            if let Some(right) = row.last_mut() {
                *right = wanted - known;
            }
            rows.push(row);
            row_bodies.push(at);
        }
        let found = match solution(rows, unknowns.len()) {
            Solution::Unique(found) => found,
            Solution::Loose(column) => {
                let (rope, strand) = unknowns.get(column).copied().unwrap_or_default();
                return Err(Fault::SharedStrand { rope, strand });
            }
            Solution::Stuck(row) => {
                return Err(Fault::Unbalanced { body: row_bodies.get(row).copied().unwrap_or_default() });
            }
        };
        let value = |part: &Partly<N>| {
            part.known + part.factor * part.unknown.and_then(|at| found.get(at)).copied().unwrap_or(N::ZERO)
        };
        let strands: Vec<Vec<N>> = ropes.iter().map(|rope| rope.iter().map(value).collect()).collect();
        for (rope, strand, tension) in strands
            .iter()
            .enumerate()
            .flat_map(|(rope, strands)| strands.iter().enumerate().map(move |(s, t)| (rope, s, t)))
        {
            if *tension < N::ZERO && !tension.is_nought() {
                return Err(Fault::SlackStrand { rope, strand });
            }
        }
        let bodies = (0..self.rig.bodies.len())
            .map(|body| {
                self.pulls_on(body, &ropes)
                    .fold(N::ZERO, |sum, (part, up)| if up { sum + value(&part) } else { sum - value(&part) })
            })
            .collect();
        Ok((strands, bodies))
    }

    /// Every strand that pulls on a body, and whether it pulls upward.
    fn pulls_on<'b>(
        &'b self,
        body: usize,
        ropes: &'b [Vec<Partly<N>>],
    ) -> impl Iterator<Item = (Partly<N>, bool)> + 'b {
        self.rig.ropes.iter().zip(ropes).flat_map(move |(rope, tensions)| {
            tensions.iter().zip(rope.stops.windows(2)).filter_map(move |(tension, ends)| {
                let (one, other) = (ends.first()?.body?, ends.last()?.body?);
                let mine = one == body || other == body;
                (mine && one != other).then_some((*tension, one.max(other) == body))
            })
        })
    }

    /// The tension of each strand of a rope; new unknowns are entered with the strand they stand for.
    fn rope_tensions(
        &self,
        at: usize,
        unknowns: &mut Vec<(usize, usize)>,
        resting: &mut usize,
    ) -> Result<Vec<Partly<N>>, Fault> {
        let Some(rope) = self.rig.ropes.get(at) else { return Ok(Vec::new()) };
        let mut tensions = vec![Partly::NOTHING; rope.stops.len().saturating_sub(1)];
        let runs = self.phase.runs(rope);
        // Loose runs first: what hangs on them is known, and the hand's run needs it.
        for run in runs.iter().filter(|run| run.is_loose()) {
            self.propagate(at, *run, run.start == End::Free, Partly::NOTHING, &mut tensions, resting);
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
            self.propagate(at, *run, run.end != End::Hand, seed, &mut tensions, resting);
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
    fn propagate(
        &self,
        at: usize,
        run: Run,
        from_start: bool,
        seed: Partly<N>,
        tensions: &mut [Partly<N>],
        resting: &mut usize,
    ) {
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
            let ratio = self.ratio(at, rope, stop, from_start, resting);
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
    fn ratio(&self, at: usize, rope: &Rope, stop: usize, forward: bool, resting: &mut usize) -> N {
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
            let bit = self.choice >> *resting & 1;
            *resting += 1;
            bit == 1
        } else {
            pass > Fraction::ZERO
        };
        if runs_forward == forward { N::ONE / kept } else { kept }
    }
}
