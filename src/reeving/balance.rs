//! The balance of every body, solved for the tensions that the ropes leave unknown.

use super::linear::{Equations, Solution, solution};
use super::tension::{From, Tensions};
use super::{BodyKind, Drive, Fault, Forces, HandDoes, Losses, Motion, Number, Rig, Span};

/// The most turns and hitches at rest whose ratio is left open; each doubles the work.
const MOST_OPEN: usize = 8;

/// How the bodies of a rig that moves in a way are balanced, as far as it follows from neither losses nor drive: worked
/// out once, for many of these.
#[derive(Debug, Clone, PartialEq)]
pub struct Balance {
    tensions: Tensions,
    /// The rope and its strand that each strand of the rig is.
    strands: Vec<(usize, usize)>,
    ends: Vec<End>,
    bodies: Vec<BodyKind>,
    hand: HandDoes,
    turns: usize,
    hitches: usize,
}

/// One end of a strand: it pulls on a body, up or down.
#[derive(Debug, Clone, Copy, PartialEq)]
struct End {
    body: usize,
    strand: usize,
    up: bool,
}

/// A tension that is partly known: `factor` of an unknown, and the rest.
#[derive(Clone, Copy)]
struct PartTension {
    factor: f64,
    unknown: Option<usize>,
    known: f64,
}

const NOTHING: PartTension = PartTension { factor: 0.0, unknown: None, known: 0.0 };

impl Balance {
    /// The balance of a rig that moves in a way.
    #[must_use]
    pub fn of(rig: &Rig, motion: &Motion) -> Self {
        let (mut strands, mut ends, mut bodies) = (Vec::new(), Vec::new(), Vec::new());
        for (at, rope) in rig.ropes.iter().enumerate() {
            for (place, (stop, next)) in rope.stops.iter().zip(rope.stops.iter().skip(1)).enumerate() {
                // A strand between stops on one body, or to a loose tail, pulls on none.
                if let (Some(one), Some(other)) = (stop.body, next.body)
                    && one != other
                {
                    ends.push(End { body: one.max(other), strand: strands.len(), up: true });
                    ends.push(End { body: one.min(other), strand: strands.len(), up: false });
                }
                strands.push((at, place));
            }
        }
        for body in &rig.bodies {
            bodies.push(body.kind);
        }
        let (hand, turns, hitches) = (motion.phase.hand, rig.turns, rig.hitches);
        Self { tensions: Tensions::of(rig, motion), strands, ends, bodies, hand, turns, hitches }
    }

    /// The forces with these losses and this drive: see [`statics`](super::statics), whose errors it has.
    ///
    /// # Errors
    /// A [`Fault`].
    pub fn forces(&self, losses: &Losses, drive: &Drive) -> Result<Forces, Fault> {
        let fit = losses.fit(self.turns, self.hitches);
        let size = drive.size().filter(|_| fit).ok_or(Fault::OutOfRange)?;
        // What counts as nought is reckoned for a drive of one.
        let size = if size > 0.0 { size } else { 1.0 };
        let drive = drive.over(size);
        if self.tensions.open > MOST_OPEN {
            return Err(Fault::TooLarge);
        }
        let (mut strands, mut bodies) = (Vec::new(), Vec::new());
        for choice in 0..1_usize << self.tensions.open {
            let tensions = self.balanced(losses, &drive, choice)?;
            widen(&mut strands, &tensions, size);
            widen(&mut bodies, &self.pulls(&tensions), size);
        }
        let climber = self.bodies.iter().position(|kind| *kind == BodyKind::Climber);
        let load = climber.and_then(|climber| bodies.get(climber)).copied();
        let load = load.unwrap_or(Span { low: 0.0, high: 0.0 });
        let moves = self.hand == HandDoes::Off || load.low > 0.0;
        if !moves {
            return Err(Fault::NotMoved);
        }
        let mut ropes: Vec<Vec<Span>> = Vec::new();
        for ((_, place), strand) in self.strands.iter().zip(strands) {
            if *place == 0 {
                ropes.push(Vec::new());
            }
            if let Some(rope) = ropes.last_mut() {
                rope.push(strand);
            }
        }
        Ok(Forces { strands: ropes, bodies, load })
    }

    /// The tension of each strand that balances every body, with a choice of the open ratios.
    fn balanced(&self, losses: &Losses, drive: &Drive, choice: usize) -> Result<Vec<f64>, Fault> {
        let partly = self.partly(losses, drive, choice)?;
        let mut equations = Equations::new(self.tensions.unknowns.len());
        let mut factors = vec![0.0; self.tensions.unknowns.len()];
        let mut balanced = Vec::new();
        for (at, kind) in self.bodies.iter().enumerate() {
            let mut missing = match (kind, drive) {
                (BodyKind::Carriage, _) => 0.0,
                (BodyKind::Climber, Drive::Load(load)) => *load,
                _ => continue,
            };
            factors.fill(0.0);
            for end in self.ends.iter().filter(|end| end.body == at) {
                let Some(tension) = partly.get(end.strand) else { continue };
                let sign = if end.up { 1.0 } else { -1.0 };
                missing -= sign * tension.known;
                if let Some(factor) = tension.unknown.and_then(|unknown| factors.get_mut(unknown)) {
                    *factor += sign * tension.factor;
                }
            }
            equations.push(&factors, missing);
            balanced.push(at);
        }
        let strand = |strand: usize| self.strands.get(strand).copied().unwrap_or_default();
        let found = match solution(equations) {
            Solution::Unique(found) => found,
            Solution::Loose(unknown) => {
                let (rope, strand) = strand(self.tensions.unknowns.get(unknown).copied().unwrap_or_default());
                return Err(Fault::SharedStrand { rope, strand });
            }
            Solution::Stuck(row) => {
                return Err(Fault::Unbalanced { body: balanced.get(row).copied().unwrap_or_default() });
            }
        };
        let mut tensions = Vec::new();
        for (at, part) in partly.iter().enumerate() {
            let unknown = part.unknown.and_then(|unknown| found.get(unknown)).copied().unwrap_or(0.0);
            let tension = part.known + part.factor * unknown;
            if tension < 0.0 && !tension.is_nought() {
                let (rope, strand) = strand(at);
                return Err(Fault::SlackStrand { rope, strand });
            }
            tensions.push(tension);
        }
        Ok(tensions)
    }

    /// The tension of each strand, as far as it is known before bodies are balanced.
    fn partly(&self, losses: &Losses, drive: &Drive, choice: usize) -> Result<Vec<PartTension>, Fault> {
        let mut partly = vec![NOTHING; self.strands.len()];
        let mut tension = NOTHING;
        for (strand, from) in &self.tensions.steps {
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

    /// What the strands pull on each body, upward.
    fn pulls(&self, tensions: &[f64]) -> Vec<f64> {
        let mut pulls = vec![0.0; self.bodies.len()];
        for end in &self.ends {
            if let (Some(pull), Some(tension)) = (pulls.get_mut(end.body), tensions.get(end.strand)) {
                *pull += if end.up { *tension } else { -tension };
            }
        }
        pulls
    }
}

/// Widens the spans to values that are still to be multiplied by one.
fn widen(spans: &mut Vec<Span>, values: &[f64], by: f64) {
    for (at, value) in values.iter().enumerate() {
        let value = value * by;
        match spans.get_mut(at) {
            Some(span) => *span = Span { low: span.low.min(value), high: span.high.max(value) },
            None => spans.push(Span { low: value, high: value }),
        }
    }
}
