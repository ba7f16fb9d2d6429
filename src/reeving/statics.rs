//! Forces: the tension of every strand, by the balance of every body.

use super::balance::balanced;
use super::tension::{Carrier, resting};
use super::{BodyKind, Drive, Fault, Fraction, HandDoes, Losses, Motion, Number, Phase, Rig, What};

/// The most turns and hitches at rest whose ratio is left open; each doubles the work.
const MOST_RESTING: usize = 8;

/// The least and the greatest a force can be, apart only where a turn rests.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span<N> {
    /// The least.
    pub low: N,
    /// The greatest.
    pub high: N,
}

impl<N: Number> Span<N> {
    fn widened(self, value: N) -> Self {
        Self {
            low: if value < self.low { value } else { self.low },
            high: if value > self.high { value } else { self.high },
        }
    }
}

/// The forces in a rig.
#[derive(Debug, Clone, PartialEq)]
pub struct Forces<N> {
    /// The tension of each strand of each rope.
    pub strands: Vec<Vec<Span<N>>>,
    /// What ropes pull on each body, upward; for a carriage nothing, for the climber the load held up.
    pub bodies: Vec<Span<N>>,
    /// What the climber may weigh.
    pub load: Span<N>,
}

/// The forces in a rig, in a phase, that moves in a way.
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
/// and both ends are reported.
///
/// # Errors
/// A [`Fault`] that names the slack, shared or unbalanced part.
///
/// # Source
/// Geometry. Propagation from the hand: `references` in [`crate::source`] under `delaney`.
pub fn statics<N: Number>(
    rig: &Rig,
    phase: &Phase,
    motion: &Motion,
    losses: &Losses<N>,
    drive: &Drive<N>,
) -> Result<Forces<N>, Fault> {
    let resting = resting(rig, phase, motion);
    if resting.len() > MOST_RESTING {
        return Err(Fault::TooLarge);
    }
    let mut forces: Option<Forces<N>> = None;
    for choice in 0..1_usize << resting.len() {
        let carrier = Carrier { rig, phase, motion, losses, drive, resting: &resting, choice };
        let (strands, bodies) = balanced(&carrier)?;
        forces = Some(match forces {
            None => first(rig, &strands, &bodies),
            Some(forces) => widened(forces, &strands, &bodies),
        });
    }
    let mut forces = forces.ok_or(Fault::TooLarge)?;
    if let Some(load) = rig.body(BodyKind::Climber).and_then(|climber| forces.bodies.get(climber)) {
        forces.load = *load;
    }
    if phase.hand != HandDoes::Off && forces.load.low <= N::ZERO { Err(Fault::NotMoved) } else { Ok(forces) }
}

fn first<N: Number>(rig: &Rig, strands: &[Vec<N>], bodies: &[N]) -> Forces<N> {
    debug_assert_eq!(bodies.len(), rig.bodies.len());
    let point = |value: &N| Span { low: *value, high: *value };
    Forces {
        strands: strands.iter().map(|rope| rope.iter().map(point).collect()).collect(),
        bodies: bodies.iter().map(point).collect(),
        load: Span { low: N::ZERO, high: N::ZERO },
    }
}

fn widened<N: Number>(mut forces: Forces<N>, strands: &[Vec<N>], bodies: &[N]) -> Forces<N> {
    let spans = forces.strands.iter_mut().flatten().chain(&mut forces.bodies);
    for (span, value) in spans.zip(strands.iter().flatten().chain(bodies)) {
        *span = span.widened(*value);
    }
    forces
}

/// The sliding hitches, by rope and stop, that no tension pulls along their rope: a hand or a tether must tend them.
///
/// # Guarantees
/// A hitch is tended by its own rope when the rope that runs past it is taut on the side it runs to.
#[must_use]
pub fn untended_hitches<N: Number>(
    rig: &Rig,
    phase: &Phase,
    motion: &Motion,
    forces: &Forces<N>,
) -> Vec<(usize, usize)> {
    let mut untended = Vec::new();
    for (at, (rope, passes)) in rig.ropes.iter().zip(&motion.passes).enumerate() {
        for (place, (stop, pass)) in rope.stops.iter().zip(passes).enumerate() {
            if !matches!(stop.what, What::Hitch(_)) || phase.fixes(stop.what) || pass.is_nought() {
                continue;
            }
            let towards = if *pass > Fraction::ZERO { Some(place) } else { place.checked_sub(1) };
            let tension = towards.and_then(|strand| forces.strands.get(at)?.get(strand));
            if tension.is_none_or(|tension| tension.low.is_nought()) {
                untended.push((at, place));
            }
        }
    }
    untended
}
