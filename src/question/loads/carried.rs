//! What every piece carries in a state.

use super::answer::{Carried, Doing, Load, Why};
use super::gear::{Gear, standing};
use super::inputs::{Inputs, kinds};
use super::piece::{Piece, PieceKind, pieces};
use crate::ascent::{all_up, jerk, losses, parts};
use crate::chance::{Draws, Effort, Likely, Pick, spread_of};
use crate::field::Spread;
use crate::quantity::{Force, Quantity};
use crate::reeving::{
    BodyKind, Drive, Forces, HandDoes, Losses, Motion, Rig, Span, State, What, in_state, is_held, kinematics, load_on,
    statics,
};
use crate::tree::{BASE_ANCHOR_PLAN, redirect};
use std::sync::Arc;

/// The rig in a state.
pub(super) struct Posed {
    doing: Doing,
    rig: Arc<Rig>,
    motion: Motion,
    /// Whether its turns and hitches are those that were said; else the crotch is its only turn.
    as_said: bool,
}

/// The forces of one sample.
struct Weighed {
    weight: f64,
    strands: Vec<Vec<Span>>,
    /// What ropes pull on the tree.
    tree: f64,
    /// The peak over the load.
    peak: f64,
}

impl Posed {
    pub(super) fn of(inputs: &Inputs, doing: Doing) -> Result<Self, Why> {
        let state = match doing {
            Doing::Climbing => State::Climbing,
            Doing::Lowered => State::Lowered,
            Doing::Hauled => State::Hauled,
            Doing::Resting | Doing::HandOff | Doing::Slipping => State::Resting,
        };
        let drops = matches!(doing, Doing::HandOff | Doing::Slipping);
        let (rig, phase) = in_state(&inputs.rig.rig, state).map_err(Why::Cannot)?;
        if drops && inputs.heights.is_none() {
            return Err(Why::NoHeights);
        }
        let motion = kinematics(&rig, &phase).map_err(|_| Why::Unsolved)?;
        Ok(Self { doing, as_said: rig == *inputs.rig.rig, rig: Arc::new(rig), motion })
    }

    fn losses(&self, inputs: &Inputs, pick: &dyn Pick) -> Losses {
        let mut losses = if self.as_said { losses(&inputs.rig, pick) } else { Losses::none(&self.rig) };
        if matches!(self.doing, Doing::HandOff | Doing::Slipping) {
            // What a tie drawn tight adds to a rope at rest does not grow with a fall, and friction is not counted on.
            return Losses::none(&self.rig);
        }
        if self.as_said {
            return losses;
        }
        for kept in &mut losses.turns {
            *kept = pick.of(super::inputs::OVER_THE_CROTCH, inputs.top.kept);
        }
        losses
    }

    /// The forces with one value for everything that varies.
    fn weighed(&self, inputs: &Inputs, pick: &dyn Pick) -> Option<Weighed> {
        let weight = all_up(inputs.body_mass, &inputs.kit_mass, pick);
        let losses = self.losses(inputs, pick);
        let drive = |drive: &Drive| statics(&self.rig, &self.motion, &losses, drive).ok();
        let (forces, times, help) = if self.motion.phase.hand == HandDoes::Off {
            (drive(&Drive::Load(weight))?, 1.0, None)
        } else {
            let unit = drive(&Drive::Pull(1.0, Vec::new()))?;
            let help = if inputs.rig.help.is_empty() || !self.as_said {
                None
            } else {
                drive(&Drive::Pull(0.0, inputs.rig.help.clone()))
            };
            let helped = help.as_ref().map_or(0.0, |help| help.load.low);
            let times = (weight - helped).max(0.0) / unit.load.low;
            (unit, times, help)
        };
        let mut strands = forces.strands.clone();
        for (at, spans) in strands.iter_mut().enumerate() {
            for (place, span) in spans.iter_mut().enumerate() {
                let added = help.as_ref().and_then(|help| help.strands.get(at)?.get(place).copied());
                let added = added.unwrap_or(Span { low: 0.0, high: 0.0 });
                *span = Span { low: span.low * times + added.low, high: span.high * times + added.high };
            }
        }
        let on_tree = |forces: &Forces| {
            self.rig.body(BodyKind::Tree).and_then(|tree| forces.bodies.get(tree)).map_or(0.0, |span| -span.low)
        };
        let tree = on_tree(&forces) * times + help.as_ref().map_or(0.0, on_tree);
        let peak = match self.doing {
            Doing::Climbing => jerk(pick),
            Doing::Resting | Doing::Lowered | Doing::Hauled => 1.0,
            Doing::HandOff => inputs.stopped(weight, share(&strands, weight), pick)?[0],
            Doing::Slipping => inputs.stopped(weight, share(&strands, weight), pick)?[1],
        };
        Some(Weighed { weight, strands, tree, peak })
    }

    /// What a piece carries.
    fn load(&self, inputs: &Inputs, piece: &Piece, weighed: &Weighed) -> f64 {
        let Weighed { weight, strands, tree, .. } = weighed;
        match (piece.kind, piece.rope, piece.stop) {
            (PieceKind::Harness, ..) => *weight,
            // Friction over the crotch is not to be counted on.
            (PieceKind::Crotch, ..) if inputs.at_the_foot && *tree < BASE_ANCHOR_PLAN * weight => {
                BASE_ANCHOR_PLAN * weight
            }
            (PieceKind::Crotch, ..) => *tree,
            (PieceKind::Redirect, ..) => {
                let tension = Force::newtons(greatest(strands));
                inputs.redirect.map_or(0.0, |between| redirect(tension, between).si())
            }
            (_, Some(rope), None) => strands.get(rope).map_or(0.0, |spans| highest(spans)),
            (_, Some(rope), Some(stop)) => {
                let backed = self.backed_up(rope, stop).unwrap_or(stop);
                load_on(&self.rig, strands, rope, backed).high
            }
            _ => 0.0,
        }
    }

    /// The hitch that a backup stands in for: it is planned at all that one carries.
    fn backed_up(&self, rope: usize, stop: usize) -> Option<usize> {
        let stops = &self.rig.ropes().get(rope)?.stops;
        if !stops.get(stop)?.backup {
            return None;
        }
        let climber = self.rig.body(BodyKind::Climber);
        stops.iter().position(|other| matches!(other.what, What::Hitch(_)) && !other.backup && other.body == climber)
    }

    /// The share of the weight that the most loaded strand carries.
    pub(super) fn share(&self, inputs: &Inputs) -> Option<(f64, f64)> {
        let weighed = self.weighed(inputs, &Likely)?;
        Some((weighed.weight, share(&weighed.strands, weighed.weight)))
    }
}

fn highest(spans: &[Span]) -> f64 {
    let mut most = 0.0;
    for span in spans {
        most = if span.high > most { span.high } else { most };
    }
    most
}

fn greatest(strands: &[Vec<Span>]) -> f64 {
    let mut most = 0.0;
    for spans in strands {
        let here = highest(spans);
        most = if here > most { here } else { most };
    }
    most
}

/// The share of the weight in the most loaded strand; the less of it, the stiffer they are together.
fn share(strands: &[Vec<Span>], weight: f64) -> f64 {
    let mut most = 0.0;
    for span in strands.iter().flatten() {
        most = if span.low > most { span.low } else { most };
    }
    if most > 0.0 { most / weight } else { 1.0 }
}

/// What every piece carries in a state, or why that is not reckoned.
pub(super) fn carried(inputs: &Inputs, doing: Doing, effort: Effort) -> Result<Carried, Why> {
    let posed = Posed::of(inputs, doing)?;
    let turns = if posed.as_said { kinds(&inputs.rig.turns) } else { vec![inputs.top.kind] };
    let pieces = pieces(&posed.rig, &turns, inputs.redirect.is_some());
    let likely = row(&posed, inputs, &pieces, &Likely).ok_or(Why::Unsolved)?;
    let mut columns: Vec<Vec<f64>> = vec![Vec::new(); likely.len()];
    for sample in 0..effort.count() {
        let values = row(&posed, inputs, &pieces, &Draws::sample(sample)).unwrap_or_default();
        for (column, value) in columns.iter_mut().zip(values) {
            column.push(value);
        }
    }
    let mut spreads = likely.into_iter().zip(columns).map(|(likely, column)| spread_of(likely, column));
    let facts = parts(&posed.rig);
    let mut loads = Vec::new();
    for piece in pieces {
        let (Some(load), Some(peak)) = (spreads.next(), spreads.next()) else { break };
        let (strength, minimum) = (inputs.gear.strength(piece.kind), Gear::minimum(piece.kind));
        let is_it = |single: bool, rope, stop| single && Some(rope) == piece.rope && stop == piece.stop;
        let single = match piece.kind {
            PieceKind::Harness | PieceKind::Crotch => true,
            PieceKind::Redirect => false,
            _ => facts.iter().any(|fact| is_it(fact.single, fact.rope, fact.stop)),
        };
        let over = |peak: f64| strength.map_or(0.0, |strength| strength.rigged() / peak);
        loads.push(Load {
            piece,
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
    for rope in posed.rig.ropes() {
        let mut strands = Vec::new();
        for _ in 1..rope.stops.len() {
            strands.extend(spreads.next());
        }
        tensions.push(strands);
    }
    let by_hand = !is_held(&posed.rig);
    Ok(Carried {
        rig: posed.rig.clone(),
        grips: posed.motion.phase.grips.clone(),
        hands: posed.motion.phase.hand != HandDoes::Off,
        tensions,
        loads,
        by_hand,
    })
}

/// The load and the peak of every piece, and then the peak of every strand.
fn row(posed: &Posed, inputs: &Inputs, pieces: &[Piece], pick: &dyn Pick) -> Option<Vec<f64>> {
    let weighed = posed.weighed(inputs, pick)?;
    let mut row = Vec::new();
    for piece in pieces {
        let load = posed.load(inputs, piece, &weighed);
        // What rounding leaves of strands that balance is nothing.
        let load = if load < 1e-9 * weighed.weight { 0.0 } else { load };
        row.push(load);
        row.push(load * weighed.peak);
    }
    for span in weighed.strands.iter().flatten() {
        row.push(span.high * weighed.peak);
    }
    Some(row)
}
