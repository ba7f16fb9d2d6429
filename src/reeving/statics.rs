//! Forces: the tension of every strand, by the balance of every body.

use super::balance::balanced;
use super::tension::{Propagation, resting};
use super::{BodyKind, Drive, Fault, Fraction, HandDoes, Losses, Motion, Number, Rig, What};

/// The most turns and hitches at rest whose ratio is left open; each doubles the work.
const MOST_RESTING: usize = 8;

/// The least and the greatest a force can be, apart only where a turn rests.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// The least.
    pub low: f64,
    /// The greatest.
    pub high: f64,
}

/// The forces in a rig.
#[derive(Debug, Clone, PartialEq)]
pub struct Forces {
    /// The tension of each strand of each rope.
    pub strands: Vec<Vec<Span>>,
    /// What ropes pull on each body, upward; for a carriage nothing, for the climber the load held up.
    pub bodies: Vec<Span>,
    /// What the climber may weigh.
    pub load: Span,
}

/// The forces in a rig that moves in a way.
///
/// ```text
///   a turn:      tension behind = efficiency x tension on the side the rope runs towards
///   a carriage:  sum of strands up = sum of strands down
///   the climber: sum of strands up - sum of strands down = load
/// ```
///
/// # Units
/// Forces are in the unit of the drive.
///
/// # Guarantees
/// No tension is negative. Where no rope passes a turn its ratio may be anything from its efficiency to the inverse,
/// and both ends are reported. A backup hitch, and with no hand on any hitch, drags only while rope runs past it.
///
/// # Errors
/// A [`Fault`] that names the slack, shared or unbalanced part; [`Fault::OutOfRange`] for a force that is not finite or
/// losses that do not fit the rig.
///
/// # Source
/// Geometry. Propagation from the hand: [`DELANEY`](crate::source::DELANEY).
pub fn statics(rig: &Rig, motion: &Motion, losses: &Losses, drive: &Drive) -> Result<Forces, Fault> {
    let size = drive.size().filter(|_| losses.fit(rig)).ok_or(Fault::OutOfRange)?;
    // What counts as nought is reckoned for a drive of one.
    let size = if size > 0.0 { size } else { 1.0 };
    let drive = drive.over(size);
    let resting = resting(rig, motion);
    if resting.len() > MOST_RESTING {
        return Err(Fault::TooLarge);
    }
    let mut forces = Forces { strands: Vec::new(), bodies: Vec::new(), load: Span { low: 0.0, high: 0.0 } };
    for choice in 0..1_usize << resting.len() {
        let along = Propagation { rig, motion, losses, drive: &drive, resting: &resting, choice };
        let (strands, bodies) = balanced(&along)?;
        for (at, values) in strands.iter().enumerate() {
            if forces.strands.len() == at {
                forces.strands.push(Vec::new());
            }
            if let Some(spans) = forces.strands.get_mut(at) {
                widen(spans, values, size);
            }
        }
        widen(&mut forces.bodies, &bodies, size);
    }
    if let Some(load) = rig.body(BodyKind::Climber).and_then(|climber| forces.bodies.get(climber)) {
        forces.load = *load;
    }
    let moves = motion.phase.hand == HandDoes::Off || forces.load.low > 0.0;
    if moves { Ok(forces) } else { Err(Fault::NotMoved) }
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

/// The sliding hitches, by rope and stop, that no tension pulls along their rope: a hand or a tether must tend them.
///
/// # Guarantees
/// A hitch is tended by its own rope when the rope that runs past it is taut on the side it runs to.
///
/// # Source
/// Geometry.
#[must_use]
pub fn untended_hitches(rig: &Rig, motion: &Motion, forces: &Forces) -> Vec<(usize, usize)> {
    sliding_hitches(rig, motion, forces, false)
}

/// The other sliding hitches, which load passes.
#[must_use]
pub fn tended_hitches(rig: &Rig, motion: &Motion, forces: &Forces) -> Vec<(usize, usize)> {
    sliding_hitches(rig, motion, forces, true)
}

fn sliding_hitches(rig: &Rig, motion: &Motion, forces: &Forces, tended: bool) -> Vec<(usize, usize)> {
    let mut found = Vec::new();
    for (at, (rope, passes)) in rig.ropes.iter().zip(&motion.passes).enumerate() {
        for (place, (stop, pass)) in rope.stops.iter().zip(passes).enumerate() {
            if !matches!(stop.what, What::Hitch(_)) || motion.phase.fixes(stop.what) || pass.is_nought() {
                continue;
            }
            let towards = if Fraction::ZERO.is_less(*pass) { Some(place) } else { place.checked_sub(1) };
            let tension = towards.and_then(|strand| forces.strands.get(at)?.get(strand));
            if tension.is_some_and(|tension| !tension.low.is_nought()) == tended {
                found.push((at, place));
            }
        }
    }
    found
}
