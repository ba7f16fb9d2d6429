//! The balance of every body, solved for the tensions that the ropes leave unknown.

use super::linear::{Equations, Solution, solution};
use super::tension::Tensions;
use super::{BodyKind, Drive, Fault, Forces, HandDoes, Losses, Motion, Number, Rig, Span};

/// The most turns and hitches at rest whose ratio is left open; each doubles the work.
const MOST_OPEN: usize = 8;

/// How the bodies of a rig that moves in a way are balanced, as far as it follows from neither losses nor drive: worked
/// out once, for many of these.
#[derive(Debug, Clone, PartialEq)]
pub struct Balance {
    tensions: Tensions,
    /// How many strands each rope has.
    ropes: Vec<usize>,
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

/// The span of no value yet.
const UNMET: Span = Span { low: f64::INFINITY, high: f64::NEG_INFINITY };

impl Balance {
    /// The balance of a rig that moves in a way.
    #[must_use]
    pub fn of(rig: &Rig, motion: &Motion) -> Self {
        let (mut ropes, mut ends, mut bodies) = (Vec::new(), Vec::new(), Vec::new());
        let mut strand = 0;
        for rope in &rig.ropes {
            ropes.push(rope.stops.len().saturating_sub(1));
            for (stop, next) in rope.stops.iter().zip(rope.stops.iter().skip(1)) {
                // A strand between stops on one body, or to a loose tail, pulls on none.
                if let (Some(one), Some(other)) = (stop.body, next.body)
                    && one != other
                {
                    ends.push(End { body: one.max(other), strand, up: true });
                    ends.push(End { body: one.min(other), strand, up: false });
                }
                strand += 1;
            }
        }
        for body in &rig.bodies {
            bodies.push(body.kind);
        }
        let (hand, turns, hitches) = (motion.phase.hand, rig.turns, rig.hitches);
        Self { tensions: Tensions::of(rig, motion), ropes, ends, bodies, hand, turns, hitches }
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
        let mut strands = vec![UNMET; self.ropes.iter().sum()];
        let mut bodies = vec![UNMET; self.bodies.len()];
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
        let mut ropes = Vec::with_capacity(self.ropes.len());
        let mut rest = strands.as_slice();
        for count in &self.ropes {
            let (first, others) = rest.split_at_checked(*count).unwrap_or_default();
            ropes.push(first.to_vec());
            rest = others;
        }
        Ok(Forces { strands: ropes, bodies, load })
    }

    /// The tension of each strand that balances every body, with a choice of the open ratios.
    fn balanced(&self, losses: &Losses, drive: &Drive, choice: usize) -> Result<Vec<f64>, Fault> {
        let partly = self.tensions.partly(losses, drive, choice)?;
        let mut equations = Equations::new(self.tensions.unknowns.len());
        let mut factors = vec![0.0; self.tensions.unknowns.len()];
        for (at, kind) in self.bodies.iter().enumerate() {
            let Some(mut missing) = wanted(*kind, drive) else { continue };
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
        }
        let found = match solution(equations) {
            Solution::Unique(found) => found,
            Solution::Loose(unknown) => {
                let (rope, strand) = self.place(self.tensions.unknowns.get(unknown).copied().unwrap_or_default());
                return Err(Fault::SharedStrand { rope, strand });
            }
            Solution::Stuck(row) => {
                let mut balanced = (0..self.bodies.len())
                    .filter(|at| self.bodies.get(*at).is_some_and(|kind| wanted(*kind, drive).is_some()));
                return Err(Fault::Unbalanced { body: balanced.nth(row).unwrap_or_default() });
            }
        };
        let mut tensions = Vec::with_capacity(partly.len());
        for (at, part) in partly.iter().enumerate() {
            let unknown = part.unknown.and_then(|unknown| found.get(unknown)).copied().unwrap_or(0.0);
            let tension = part.known + part.factor * unknown;
            if tension < 0.0 && !tension.is_nought() {
                let (rope, strand) = self.place(at);
                return Err(Fault::SlackStrand { rope, strand });
            }
            tensions.push(tension);
        }
        Ok(tensions)
    }

    /// The rope and its strand that a strand of the rig is.
    fn place(&self, strand: usize) -> (usize, usize) {
        let mut place = strand;
        for (rope, count) in self.ropes.iter().enumerate() {
            if place < *count {
                return (rope, place);
            }
            place -= count;
        }
        (0, 0)
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

/// The load that a body is balanced under; none where something else holds it, or is what is asked for.
fn wanted(kind: BodyKind, drive: &Drive) -> Option<f64> {
    match (kind, drive) {
        (BodyKind::Carriage, _) => Some(0.0),
        (BodyKind::Climber, Drive::Load(load)) => Some(*load),
        _ => None,
    }
}

/// Widens the spans to values that are still to be multiplied by one.
fn widen(spans: &mut [Span], values: &[f64], by: f64) {
    for (span, value) in spans.iter_mut().zip(values) {
        let value = value * by;
        *span = Span { low: span.low.min(value), high: span.high.max(value) };
    }
}
