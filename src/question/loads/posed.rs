//! The rig in a state, and the forces in it.

use super::Inputs;
use super::answer::{Doing, Why};
use super::inputs::{OVER_THE_CROTCH, kinds};
use super::piece::{Piece, PieceKind, pieces};
use crate::ascent::{all_up, jerk, losses};
use crate::chance::{Likely, Pick};
use crate::field::Spread;
use crate::quantity::{Force, Quantity};
use crate::reeving::{
    Balance, BodyKind, Drive, Forces, HandDoes, Losses, Motion, Phase, Rig, Span, State, What, WhyNot, caught,
    in_state, is_held, kinematics, load_on, pull_through,
};
use crate::tree::{BASE_ANCHOR_PLAN, redirect};
use std::sync::Arc;

/// The rig in a state.
pub(super) struct Posed {
    doing: Doing,
    pub(super) rig: Arc<Rig>,
    pub(super) motion: Motion,
    balance: Balance,
    /// Whether its turns and hitches are those that were said; else the crotch is its only turn.
    as_said: bool,
    /// How far the climber drops before a knot or a backup holds, in metres.
    run: f64,
}

/// The forces of one sample.
pub(super) struct Weighed {
    pub(super) weight: f64,
    pub(super) strands: Vec<Vec<Span>>,
    /// What ropes pull on the tree.
    tree: f64,
    /// The peak over the load.
    pub(super) peak: f64,
}

/// The peak over the load where a rope that runs out is stopped dead.
///
/// # Source
/// By definition of [`arrest_force`](crate::gear::arrest_force): a fall of nothing on a taut rope.
const STOPPED_DEAD: f64 = 2.0;

impl Posed {
    pub(super) fn of(inputs: &Inputs, doing: Doing) -> Result<Self, Why> {
        let said = &inputs.rig.rig;
        let (rig, phase, run): (Rig, Phase, f64) = if doing == Doing::Caught {
            if !is_held(said) {
                return Err(Why::Cannot(WhyNot::NothingHolds));
            }
            let caught = caught(said).ok_or(Why::NothingBacksUp)?;
            (caught.rig, caught.phase, caught.drop.in_metres())
        } else {
            let (rig, phase) = in_state(said, state(doing)).map_err(Why::Cannot)?;
            (rig, phase, 0.0)
        };
        if doing.is_drop() && inputs.heights.is_none() {
            return Err(Why::NoHeights);
        }
        let motion = kinematics(&rig, &phase).map_err(|_| Why::Unsolved)?;
        let balance = Balance::of(&rig, &motion);
        let as_said = doing == Doing::Caught || rig == **said;
        Ok(Self { doing, as_said, rig: Arc::new(rig), motion, balance, run })
    }

    /// The pieces of the rig as it is then.
    pub(super) fn pieces(&self, inputs: &Inputs) -> Vec<Piece> {
        let turns = if self.as_said { kinds(&inputs.rig.turns) } else { vec![inputs.top.kind] };
        pieces(&self.rig, &turns, inputs.redirect.is_some())
    }

    fn losses(&self, inputs: &Inputs, pick: &dyn Pick) -> Losses {
        if self.doing.is_drop() {
            // What a tie drawn tight adds to a rope at rest does not grow with a fall, and friction is not counted on.
            return Losses::none(&self.rig);
        }
        if self.as_said {
            return losses(&inputs.rig, pick);
        }
        let mut losses = Losses::none(&self.rig);
        for kept in &mut losses.turns {
            *kept = pick.of(OVER_THE_CROTCH, inputs.top.kept);
        }
        losses
    }

    /// How far the climber drops before something stops them: a spread in metres.
    pub(super) fn drop(&self, inputs: &Inputs) -> Spread {
        let back = inputs.setback;
        let more = match self.doing {
            Doing::Slipping => inputs.slack,
            // Knots catch in proportion to their slack: geometry.
            Doing::Caught if self.run > 0.0 => inputs.rig.slack.scaled(self.run / inputs.rig.slack.likely),
            _ => Spread::point(0.0),
        };
        Spread::new(back.low + more.low, back.likely + more.likely, back.high + more.high)
    }

    /// The forces with one value for everything that varies.
    pub(super) fn weighed(&self, inputs: &Inputs, pick: &dyn Pick) -> Option<Weighed> {
        let weight = all_up(inputs.body_mass, &inputs.kit_mass, pick);
        let losses = self.losses(inputs, pick);
        let drive = |drive: &Drive| self.balance.forces(&losses, drive).ok();
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
            // Whoever hauls takes rope in jerks too.
            Doing::Climbing | Doing::Hauled => jerk(pick),
            Doing::Resting => 1.0,
            Doing::Lowered => STOPPED_DEAD,
            Doing::HandOff | Doing::Slipping | Doing::Caught => {
                inputs.stopped(weight, share(&strands, weight), self.drop(inputs), pick)?
            }
        };
        Some(Weighed { weight, strands, tree, peak })
    }

    /// What a piece carries.
    pub(super) fn load(&self, inputs: &Inputs, piece: &Piece, weighed: &Weighed) -> f64 {
        let Weighed { weight, strands, tree, .. } = weighed;
        let load = match (piece.kind, piece.rope, piece.stop) {
            (PieceKind::Harness, ..) => *weight,
            // Friction over the crotch is not to be counted on.
            (PieceKind::Crotch, ..) if inputs.at_the_foot => tree.max(BASE_ANCHOR_PLAN * weight),
            (PieceKind::Crotch, ..) => *tree,
            (PieceKind::Redirect, ..) => {
                let tension = Force::newtons(greatest(strands.iter().flatten()));
                inputs.redirect.map_or(0.0, |between| redirect(tension, between).si())
            }
            (_, Some(rope), None) => greatest(strands.get(rope).into_iter().flatten()),
            (PieceKind::Connector, Some(rope), Some(stop)) if is_turn(&self.rig, rope, stop) => {
                pull_through(&self.rig, strands, rope, stop).high
            }
            (_, Some(rope), Some(stop)) => load_on(&self.rig, strands, rope, stop).high,
            _ => 0.0,
        };
        // What rounding leaves of strands that balance is nothing.
        if load < 1e-9 * weight { 0.0 } else { load }
    }

    /// The likely weight, and the share of it that the most loaded strand carries.
    pub(super) fn share(&self, inputs: &Inputs) -> Option<f64> {
        let weighed = self.weighed(inputs, &Likely)?;
        Some(share(&weighed.strands, weighed.weight))
    }
}

const fn state(doing: Doing) -> State {
    match doing {
        Doing::Climbing => State::Climbing,
        Doing::Lowered => State::Lowered,
        Doing::Hauled => State::Hauled,
        Doing::Resting | Doing::HandOff | Doing::Slipping | Doing::Caught => State::Resting,
    }
}

fn is_turn(rig: &Rig, rope: usize, stop: usize) -> bool {
    let stop = rig.ropes().get(rope).and_then(|rope| rope.stops.get(stop));
    stop.is_some_and(|stop| matches!(stop.what, What::Turn(_)))
}

fn greatest<'a>(spans: impl Iterator<Item = &'a Span>) -> f64 {
    let mut most = 0.0;
    for span in spans {
        most = if span.high > most { span.high } else { most };
    }
    most
}

/// The share of the weight in the most loaded strand; the less of it, the stiffer they are together.
fn share(strands: &[Vec<Span>], weight: f64) -> f64 {
    let most = greatest(strands.iter().flatten());
    if most > 0.0 { most / weight } else { 1.0 }
}
