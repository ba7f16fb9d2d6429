//! Where the tension of each strand comes from: a hand, a loose end, an unknown, or the strand before.

use super::past::{Past, Resting, resting};
use super::phase::{End, Run};
use super::{Drive, Fault, Losses, Motion, Rig, Rope};

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

/// A tension that is partly known: `factor` of an unknown, and the rest.
#[derive(Clone, Copy)]
pub(super) struct PartTension {
    pub(super) factor: f64,
    pub(super) unknown: Option<usize>,
    pub(super) known: f64,
}

const NOTHING: PartTension = PartTension { factor: 0.0, unknown: None, known: 0.0 };

/// The tensions of all strands, a step a strand, so that each needs only those before it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Tensions {
    /// The strand, counted through the rig, and where its tension comes from.
    steps: Vec<(usize, From)>,
    /// The strand that each unknown stands for.
    pub(super) unknowns: Vec<usize>,
    /// How many strands there are.
    strands: usize,
    /// How many stops have an open ratio.
    pub(super) open: usize,
}

impl Tensions {
    /// The tensions of a rig that moves in a way.
    pub(super) fn of(rig: &Rig, motion: &Motion) -> Self {
        let resting = resting(rig, motion);
        let mut tensions = Self { steps: Vec::new(), unknowns: Vec::new(), strands: 0, open: resting.len() };
        for (at, rope) in rig.ropes.iter().enumerate() {
            let (runs, first) = (motion.phase.runs(rope), tensions.strands);
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
            tensions.strands += rope.stops.len().saturating_sub(1);
        }
        tensions
    }

    /// The tension of each strand, as far as it is known before bodies are balanced.
    pub(super) fn partly(&self, losses: &Losses, drive: &Drive, choice: usize) -> Result<Vec<PartTension>, Fault> {
        let mut partly = vec![NOTHING; self.strands];
        let mut tension = NOTHING;
        for (strand, from) in &self.steps {
            match from {
                From::Free => tension = NOTHING,
                From::Hand { rope, beyond } => {
                    let Drive::Pull(pull, _) = drive else { return Err(Fault::HandPullsNothing { rope: *rope }) };
                    let beyond = beyond.and_then(|strand| partly.get(strand)).map_or(0.0, |beyond| beyond.known);
                    tension = PartTension { known: beyond + *pull, ..NOTHING };
                }
                From::Unknown(unknown) => tension = PartTension { factor: 1.0, unknown: Some(*unknown), known: 0.0 },
                From::Past(stop) => {
                    let ratio = stop.ratio(losses, choice);
                    tension.factor *= ratio;
                    tension.known = tension.known * ratio + stop.help(drive);
                }
            }
            if let Some(place) = partly.get_mut(*strand) {
                *place = tension;
            }
        }
        Ok(partly)
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
            if let Some(past) = Past::of(self.motion, self.resting, (self.at, stop), self.rope, from_start) {
                from = From::Past(past);
            }
        }
    }
}
