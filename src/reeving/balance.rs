//! The balance of every body, solved for the tensions that the ropes leave unknown.

use super::linear::{Solution, solution};
use super::tension::{Carrier, Partly};
use super::{BodyKind, Drive, Fault, Number};

/// What a balance comes to: the tension of each strand of each rope, and the pull on each body, upward.
pub(super) type Solved<N> = (Vec<Vec<N>>, Vec<N>);

/// The tensions that balance every body.
pub(super) fn balanced<N: Number>(carrier: &Carrier<'_, N>) -> Result<Solved<N>, Fault> {
    let mut unknowns: Vec<(usize, usize)> = Vec::new();
    let ropes: Vec<Vec<Partly<N>>> = (0..carrier.rig.ropes.len())
        .map(|rope| carrier.rope_tensions(rope, &mut unknowns))
        .collect::<Result<_, _>>()?;
    let mut rows = Vec::new();
    let mut row_bodies = Vec::new();
    for (at, body) in carrier.rig.bodies.iter().enumerate() {
        let wanted = match (body.kind, carrier.drive) {
            (BodyKind::Carriage, _) => N::ZERO,
            (BodyKind::Climber, Drive::Load(load)) => *load,
            _ => continue,
        };
        let mut row = vec![N::ZERO; unknowns.len() + 1];
        let mut known = N::ZERO;
        for (tension, up) in pulls_on(carrier, at, &ropes) {
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
    let bodies = (0..carrier.rig.bodies.len())
        .map(|body| {
            pulls_on(carrier, body, &ropes)
                .fold(N::ZERO, |sum, (part, up)| if up { sum + value(&part) } else { sum - value(&part) })
        })
        .collect();
    Ok((strands, bodies))
}

/// Every strand that pulls on a body, and whether it pulls upward.
fn pulls_on<'a, N: Number>(
    carrier: &'a Carrier<'_, N>,
    body: usize,
    ropes: &'a [Vec<Partly<N>>],
) -> impl Iterator<Item = (Partly<N>, bool)> + 'a {
    carrier.rig.ropes.iter().zip(ropes).flat_map(move |(rope, tensions)| {
        tensions.iter().zip(rope.stops.windows(2)).filter_map(move |(tension, ends)| {
            let (one, other) = (ends.first()?.body?, ends.last()?.body?);
            let mine = one == body || other == body;
            (mine && one != other).then_some((*tension, one.max(other) == body))
        })
    })
}
