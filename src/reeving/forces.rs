//! Forces: what ropes carry, and what they pull on bodies.

use super::{Fraction, Motion, Number, Rig, What};

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
