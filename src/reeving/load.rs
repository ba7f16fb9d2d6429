//! What each part bears, from the tensions of the ropes.

use super::{Rig, Span, Stop, What};

/// What a rope pulls on the part at one of its stops.
///
/// ```text
///   tied: its strand      turned round: both strands      passed straight, gripped or jammed: their difference
/// ```
///
/// # Guarantees
/// Never negative. Where tensions are open, the least and the greatest they allow.
///
/// # Source
/// Geometry, with upright strands.
#[must_use]
pub fn load_on(rig: &Rig, strands: &[Vec<Span>], rope: usize, stop: usize) -> Span {
    const NONE: Span = Span { low: 0.0, high: 0.0 };
    let tension = |strand: Option<usize>| {
        let spans = strands.get(rope)?;
        spans.get(strand?).copied()
    };
    let stops = rig.ropes().get(rope).map_or(&[][..], |rope| &rope.stops);
    let (one, other) = (tension(stop.checked_sub(1)).unwrap_or(NONE), tension(Some(stop)).unwrap_or(NONE));
    match stops.get(stop).map(|stop| stop.what) {
        Some(What::Tied) => Span { low: one.low + other.low, high: one.high + other.high },
        Some(What::Turn(_)) if is_wrapped(stops, stop) => {
            Span { low: one.low + other.low, high: one.high + other.high }
        }
        Some(What::Turn(_) | What::Hitch(_) | What::Knot(_) | What::Hand | What::Helper(_)) => difference(one, other),
        _ => NONE,
    }
}

/// What a rope pulls on the body that one of its stops is on, by way of that stop.
///
/// # Guarantees
/// As [`load_on`], but a strand to another stop on the same body pulls nothing: a knot that jams at a pulley pushes on it
/// what the rope pulls.
#[must_use]
pub fn pull_through(rig: &Rig, strands: &[Vec<Span>], rope: usize, stop: usize) -> Span {
    let stops = rig.ropes().get(rope).map_or(&[][..], |rope| &rope.stops);
    let body = |at: Option<usize>| stops.get(at?).and_then(|stop| stop.body);
    let own = body(Some(stop));
    let mut leaving = strands.to_vec();
    for (other, strand) in [(stop.checked_sub(1), stop.checked_sub(1)), (Some(stop + 1), Some(stop))] {
        if body(other) == own
            && let Some(span) = strand.and_then(|strand| leaving.get_mut(rope)?.get_mut(strand))
        {
            *span = Span { low: 0.0, high: 0.0 };
        }
    }
    load_on(rig, &leaving, rope, stop)
}

fn difference(one: Span, other: Span) -> Span {
    let (up, down) = (one.high - other.low, other.high - one.low);
    let apart = if one.low > other.high { one.low - other.high } else { other.low - one.high };
    Span { low: if apart > 0.0 { apart } else { 0.0 }, high: if up > down { up } else { down } }
}

/// Whether the rope comes back from a turn the way it came, as far as can be told: a hand may pull it any way.
fn is_wrapped(stops: &[Stop], at: usize) -> bool {
    let own = stops.get(at).and_then(|stop| stop.body);
    let way = |stops: &mut dyn Iterator<Item = &Stop>| {
        for stop in stops {
            if stop.body != own {
                return stop.body.map(|body| Some(body) < own);
            }
        }
        None
    };
    let before = way(&mut stops.iter().take(at).rev());
    let after = way(&mut stops.iter().skip(at + 1));
    before.is_none() || after.is_none() || before == after
}
