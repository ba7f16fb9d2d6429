//! The forces in a rig by a general-purpose solver: assembled anew from the rules alone, an unknown for each strand.

use boughline::reeving::{BodyKind, Phase, Rig, Stop, What};
use nalgebra::{DMatrix, DVector};

/// The strands of a rig in a row: rope, and the stops before and behind.
pub fn strands(rig: &Rig) -> Vec<(usize, usize)> {
    rig.ropes().iter().enumerate().flat_map(|(rope, it)| (1..it.stops.len()).map(move |at| (rope, at - 1))).collect()
}

/// What the strand pulls on each body, upward, for a tension of one.
pub fn pulls(rig: &Rig, (rope, strand): (usize, usize)) -> Vec<f64> {
    let stops = &rig.ropes()[rope].stops;
    let mut pulls = vec![0.0; rig.bodies().len()];
    if let (Some(one), Some(other)) = (stops[strand].body, stops[strand + 1].body)
        && one != other
    {
        pulls[one.max(other)] += 1.0;
        pulls[one.min(other)] -= 1.0;
    }
    pulls
}

/// Where the rope goes on to another body, or ends: less is above, none where a hand takes it or it ends.
fn beyond(stops: &[Stop], from: usize, step: isize) -> Option<std::cmp::Ordering> {
    let mut at = from as isize + step;
    loop {
        let stop = stops.get(usize::try_from(at).ok()?)?;
        match (stop.what, stop.body) {
            (What::Hand | What::Helper(_) | What::Free, _) | (_, None) if stop.body == stops[from].body => return None,
            (What::Free, _) | (_, None) => return None,
            (_, Some(body)) if Some(body) != stops[from].body => return Some(body.cmp(&stops[from].body?)),
            _ => at += step,
        }
    }
}

/// Whether the rope lies round a turn: not where it comes from above and goes on below, or the other way.
pub fn is_wrapped(stops: &[Stop], at: usize) -> bool {
    match (beyond(stops, at, -1), beyond(stops, at, 1)) {
        (Some(one), Some(other)) => one == other,
        _ => true,
    }
}

/// The tension of every strand for a pull of one, and the load. `ahead` is how much rope passes a stop towards the last;
/// `kept` the share at a stop. None where the equations have not exactly one solution.
pub fn solved(
    rig: &Rig,
    phase: &Phase,
    ahead: impl Fn(usize, usize) -> f64,
    kept: impl Fn(&Stop) -> f64,
) -> Option<(Vec<f64>, f64)> {
    let all = strands(rig);
    let place = |rope: usize, strand: usize| all.iter().position(|one| *one == (rope, strand)).unwrap();
    let mut rows: Vec<(Vec<(usize, f64)>, f64)> = Vec::new();
    for (at, rope) in rig.ropes().iter().enumerate() {
        let last = rope.stops.len() - 1;
        for (end, strand) in [(0, 0), (last, last - 1)] {
            if rope.stops[end].what == What::Free {
                rows.push((vec![(place(at, strand), 1.0)], 0.0));
            }
        }
        for (stop_at, stop) in rope.stops.iter().enumerate().take(last).skip(1) {
            let (before, behind) = (place(at, stop_at - 1), place(at, stop_at));
            let passes = ahead(at, stop_at);
            let (ratio, known) = match stop.what {
                What::Hitch(number) if phase.grips[number] => continue,
                // The hand is towards the loose end, whichever end that is.
                What::Hand => {
                    let loose_behind = rope.stops[last].what == What::Free;
                    (1.0, if loose_behind { 1.0 } else { -1.0 })
                }
                What::Turn(_) if passes != 0.0 && is_wrapped(&rope.stops, stop_at) => (kept(stop), 0.0),
                What::Hitch(_) if passes != 0.0 => (kept(stop), 0.0),
                _ => (1.0, 0.0),
            };
            // The side it runs towards is the taut one.
            let ratio = if passes < 0.0 { 1.0 / ratio } else { ratio };
            rows.push((vec![(before, 1.0), (behind, -ratio)], known));
        }
    }
    for (body, _) in rig.bodies().iter().enumerate().filter(|(_, it)| it.kind == BodyKind::Carriage) {
        rows.push((all.iter().enumerate().map(|(at, strand)| (at, pulls(rig, *strand)[body])).collect(), 0.0));
    }
    let mut matrix = DMatrix::zeros(rows.len(), all.len());
    let mut right = DVector::zeros(rows.len());
    for (row, (cells, value)) in rows.iter().enumerate() {
        for (column, cell) in cells {
            matrix[(row, *column)] += *cell;
        }
        right[row] = *value;
    }
    let svd = matrix.clone().svd(true, true);
    if svd.rank(1e-9) < all.len() {
        return None;
    }
    let found = svd.solve(&right, 1e-12).ok()?;
    if (&matrix * &found - &right).amax() > 1e-9 {
        return None;
    }
    let climber = rig.body(BodyKind::Climber)?;
    let load = all.iter().enumerate().map(|(at, strand)| found[at] * pulls(rig, *strand)[climber]).sum();
    Some((found.iter().copied().collect(), load))
}
