//! What every piece carries in a state.

use super::Inputs;
use super::answer::{Carried, Doing, Load, Why};
use super::gear::{Gear, standing};
use super::piece::{Piece, PieceKind};
use super::posed::Posed;
use crate::ascent::parts;
use crate::chance::{Draws, Effort, Likely, Pick, spread_of};
use crate::field::Spread;
use crate::reeving::{HandDoes, Span, is_held};

/// What every piece carries in a state, or why that is not reckoned.
pub(super) fn carried(inputs: &Inputs, doing: Doing, effort: Effort) -> Result<Carried, Why> {
    let posed = Posed::of(inputs, doing)?;
    let pieces = posed.pieces(inputs);
    let likely = Row::of(&posed, inputs, &pieces, &Likely).ok_or(Why::Unsolved)?;
    let mut samples = Vec::new();
    for sample in 0..effort.count() {
        samples.extend(Row::of(&posed, inputs, &pieces, &Draws::sample(sample)));
    }
    let spread = |of: &dyn Fn(&Row) -> Option<f64>| {
        let mut values = Vec::new();
        for row in &samples {
            values.extend(of(row));
        }
        spread_of(of(&likely).unwrap_or(0.0), values)
    };
    let facts = parts(&posed.rig);
    let hangs = posed.motion.phase.hand == HandDoes::Off;
    let mut loads = Vec::new();
    for (at, piece) in pieces.iter().enumerate() {
        let load = spread(&|row| row.loads.get(at).copied());
        let peak = spread(&|row| Some(row.loads.get(at)? * row.peak));
        let strength = inputs.gear.strength(piece.kind);
        let minimum = Gear::minimum(piece.kind, hangs && load.likely > 0.0);
        let is_it = |single: bool, rope, stop| single && Some(rope) == piece.rope && stop == piece.stop;
        let single = match piece.kind {
            PieceKind::Harness | PieceKind::Crotch => true,
            PieceKind::Redirect => false,
            _ => facts.iter().any(|fact| is_it(fact.single, fact.rope, fact.stop)),
        };
        let over = |peak: f64| strength.map_or(0.0, |strength| strength.rigged() / peak);
        loads.push(Load {
            piece: *piece,
            load,
            peak,
            strength,
            ratio: strength
                .filter(|_| peak.low > 0.0)
                .map(|_| Spread::new(over(peak.high), over(peak.likely), over(peak.low))),
            minimum,
            standing: standing(strength, minimum, peak.high),
            single,
        });
    }
    let mut tensions = Vec::new();
    for (rope, spans) in likely.strands.iter().enumerate() {
        let mut strands = Vec::new();
        for place in 0..spans.len() {
            strands.push(spread(&|row| Some(row.strands.get(rope)?.get(place)?.high * row.peak)));
        }
        tensions.push(strands);
    }
    Ok(Carried {
        by_hand: !is_held(&posed.rig),
        grips: posed.motion.phase.grips.clone(),
        hands: !hangs,
        dropped: if doing.is_drop() { Some(posed.drop(inputs)) } else { None },
        rig: posed.rig,
        tensions,
        loads,
    })
}

/// One sample of a state.
struct Row {
    /// What every piece carries, in newtons.
    loads: Vec<f64>,
    strands: Vec<Vec<Span>>,
    /// The peak over the load.
    peak: f64,
}

impl Row {
    fn of(posed: &Posed, inputs: &Inputs, pieces: &[Piece], pick: &dyn Pick) -> Option<Self> {
        let weighed = posed.weighed(inputs, pick)?;
        let mut loads = Vec::new();
        for piece in pieces {
            loads.push(posed.load(inputs, piece, &weighed));
        }
        Some(Self { loads, peak: weighed.peak, strands: weighed.strands })
    }
}
