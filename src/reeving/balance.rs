//! The balance of every body, solved for the tensions that the ropes leave unknown.

use super::linear::{Equations, Solution, solution};
use super::tension::Propagation;
use super::{BodyKind, Drive, Fault, Number, Rig};

/// What a balance comes to: the tension of each strand of each rope, and the pull on each body, upward.
pub(super) type Solved = (Vec<Vec<f64>>, Vec<f64>);

/// One end of a strand: it pulls on a body, up or down.
struct End {
    body: usize,
    rope: usize,
    strand: usize,
    up: bool,
}

/// The tensions that balance every body.
pub(super) fn balanced(along: &Propagation<'_>) -> Result<Solved, Fault> {
    let ends = ends(along.rig);
    let mut unknowns: Vec<(usize, usize)> = Vec::new();
    let mut partly = Vec::new();
    for rope in 0..along.rig.ropes.len() {
        partly.push(along.rope_tensions(rope, &mut unknowns)?);
    }
    let mut equations = Equations::new(unknowns.len());
    let mut balanced = Vec::new();
    for (at, body) in along.rig.bodies.iter().enumerate() {
        let wanted = match (body.kind, along.drive) {
            (BodyKind::Carriage, _) => 0.0,
            (BodyKind::Climber, Drive::Load(load)) => *load,
            _ => continue,
        };
        let mut factors = vec![0.0; unknowns.len()];
        let mut missing = wanted;
        for end in ends.iter().filter(|end| end.body == at) {
            let Some(tension) = partly.get(end.rope).and_then(|rope| rope.get(end.strand)) else { continue };
            let sign = if end.up { 1.0 } else { -1.0 };
            missing -= sign * tension.known;
            if let Some(factor) = tension.unknown.and_then(|unknown| factors.get_mut(unknown)) {
                *factor += sign * tension.factor;
            }
        }
        equations.push(&factors, missing);
        balanced.push(at);
    }
    let found = match solution(equations) {
        Solution::Unique(found) => found,
        Solution::Loose(unknown) => {
            let (rope, strand) = unknowns.get(unknown).copied().unwrap_or_default();
            return Err(Fault::SharedStrand { rope, strand });
        }
        Solution::Stuck(row) => return Err(Fault::Unbalanced { body: balanced.get(row).copied().unwrap_or_default() }),
    };
    let mut strands = Vec::new();
    for (rope, partly) in partly.iter().enumerate() {
        let mut tensions = Vec::new();
        for (strand, part) in partly.iter().enumerate() {
            let unknown = part.unknown.and_then(|unknown| found.get(unknown)).copied().unwrap_or(0.0);
            let tension = part.known + part.factor * unknown;
            if tension < 0.0 && !tension.is_nought() {
                return Err(Fault::SlackStrand { rope, strand });
            }
            tensions.push(tension);
        }
        strands.push(tensions);
    }
    let mut bodies = vec![0.0; along.rig.bodies.len()];
    for end in &ends {
        let tension = strands.get(end.rope).and_then(|rope| rope.get(end.strand));
        if let (Some(pull), Some(tension)) = (bodies.get_mut(end.body), tension) {
            *pull += if end.up { *tension } else { -tension };
        }
    }
    Ok((strands, bodies))
}

/// Both ends of every strand that has a length.
fn ends(rig: &Rig) -> Vec<End> {
    let mut ends = Vec::new();
    for (rope, stops) in rig.ropes.iter().map(|rope| &rope.stops).enumerate() {
        for (strand, (stop, next)) in stops.iter().zip(stops.iter().skip(1)).enumerate() {
            let (Some(one), Some(other)) = (stop.body, next.body) else { continue };
            if one != other {
                ends.push(End { body: one.max(other), rope, strand, up: true });
                ends.push(End { body: one.min(other), rope, strand, up: false });
            }
        }
    }
    ends
}
