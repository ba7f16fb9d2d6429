//! One climb, with one value for everything that varies: the likely one, or a sample's.

use super::inputs::Inputs;
use crate::chance::Pick;
use crate::climber::{
    ANOTHER_DAY, Arms, Gloves, Grip, Hold, ONE_ARM, PULL_OVER_GRIP, PULL_TIME, RESET_TIME, for_arms, held_by, reach,
    share_used,
};
use crate::quantity::{Mass, Quantity};
use crate::reeving::{BodyKind, Drive, Forces, Fraction, Losses, RigName, statics};

/// What one climb comes to, in SI.
#[derive(Debug, Clone, Default)]
pub(super) struct Climb {
    pub(super) weight: f64,
    pub(super) advantage: f64,
    pub(super) need: f64,
    /// What the arms pull through a stroke.
    pub(super) arms: Option<f64>,
    /// What the hands hold.
    pub(super) hands: Option<f64>,
    pub(super) travel: Option<f64>,
    /// How far the upper hitch can stand above the lower one, where the reach is known.
    pub(super) room: Option<f64>,
    pub(super) gain: Option<f64>,
    /// Endless where nothing is gained.
    pub(super) strokes: Option<f64>,
    /// The rope of all strokes.
    pub(super) rope: Option<f64>,
    pub(super) time: Option<f64>,
    /// The tension of every strand, ropes in order.
    pub(super) tensions: Vec<f64>,
    pub(super) anchor: f64,
}

// Each thing that varies has a number of its own for ever: see `Draws`.
const KIT: u32 = 0;
const THROUGH_THE_STROKE: u32 = 2;
const SHARE_OF_REACH: u32 = 3;
const REACH: u32 = 4;
const BACK: u32 = 5;
const STACK: u32 = 6;
const PULLING: u32 = 7;
const RESETTING: u32 = 8;
const ROUGHNESS: u32 = 9;
const GRIP: u32 = 10;
const ONE_OF_TWO: u32 = 11;
const DAY: u32 = 12;
const HOLDS: u32 = 20;
const TURNS: u32 = 100;
const HITCHES: u32 = 200;

/// The peak load on the anchor while climbing, over the load standing still (judged).
pub const CLIMBING_PEAK: crate::field::Spread = crate::field::Spread::new(1.2, 1.5, 2.0);

/// How many hands pull at a time.
pub(super) fn hands_at_it(inputs: &Inputs) -> Arms {
    match inputs.rig.name {
        RigName::HandOverHand => Arms::One,
        RigName::TailThree => inputs.arms,
    }
}

impl Climb {
    pub(super) fn of(inputs: &Inputs, pick: &dyn Pick) -> Self {
        let kit = pick.of(KIT, inputs.kit_mass);
        let weight = (inputs.body_mass + Mass::kilograms(kit)).weight().in_newtons();
        let forces = forces(inputs, pick);
        let advantage = forces.as_ref().map_or(0.0, |forces| forces.load.low);
        let need = weight / advantage;
        let stroke = Stroke::of(inputs, pick);
        let time =
            pick.of(PULLING, PULL_TIME) + if has_upper_hitch(inputs) { pick.of(RESETTING, RESET_TIME) } else { 0.0 };
        let strokes = stroke.gain.map(|gain| if gain > 0.0 { inputs.height.si() / gain } else { f64::INFINITY });
        let all = |each: f64| strokes.map(|strokes| if strokes.is_finite() { strokes * each } else { f64::INFINITY });
        let mut tensions = Vec::new();
        if let Some(forces) = &forces {
            for span in forces.strands.iter().flatten() {
                tensions.push(span.high * need);
            }
        }
        let tree = inputs.rig.rig.body(BodyKind::Tree);
        let on_anchor = tree.and_then(|tree| forces.as_ref()?.bodies.get(tree)).map_or(0.0, |span| -span.low * need);
        Self {
            weight,
            advantage,
            need,
            arms: arms(inputs, pick, hands_at_it(inputs)),
            hands: hands(inputs, pick),
            travel: stroke.travel,
            room: stroke.room,
            gain: stroke.gain,
            strokes,
            rope: stroke.taken.and_then(all),
            time: all(time),
            tensions,
            anchor: on_anchor * pick.of(ROUGHNESS, CLIMBING_PEAK),
        }
    }

    /// The need over the tighter of what arms and hands give; more than one where one pull fails. None when strength
    /// is not known.
    pub(super) fn strain(&self) -> Option<f64> {
        Some((self.need / self.arms?).max(self.need / self.hands?))
    }

    /// Whether a stroke gains nothing, as far as the stroke is known.
    pub(super) fn is_stuck(&self) -> bool {
        self.gain.is_some_and(|gain| gain <= 0.0)
    }
}

pub(super) fn has_upper_hitch(inputs: &Inputs) -> bool {
    inputs.rig.rig.body(BodyKind::Carriage).is_some()
}

/// The forces for a unit of pull. A catalogue rig always has them.
fn forces(inputs: &Inputs, pick: &dyn Pick) -> Option<Forces> {
    let reeved = &inputs.rig;
    let losses = reeved.tested.clone().unwrap_or_else(|| Losses {
        turns: (TURNS..).zip(&reeved.turns).map(|(thing, turn)| pick.of(thing, turn.kept)).collect(),
        hitches: (HITCHES..).zip(&reeved.pull.grips).map(|(thing, _)| pick.of(thing, reeved.drag)).collect(),
    });
    statics(&reeved.rig, &reeved.motion, &losses, &Drive::Pull(1.0, Vec::new())).ok()
}

fn arms(inputs: &Inputs, pick: &dyn Pick, pulls_with: Arms) -> Option<f64> {
    let measured = inputs.measured?;
    let through = pick.of(THROUGH_THE_STROKE, measured.taken.through_the_stroke());
    let arms = for_arms(measured.arms, pulls_with, pick.of(ONE_OF_TWO, ONE_ARM));
    Some(measured.pull.in_newtons() * pick.of(DAY, ANOTHER_DAY) * through * arms)
}

fn hands(inputs: &Inputs, pick: &dyn Pick) -> Option<f64> {
    // Each way of holding varies on its own, and is the same hand then and now.
    let over_grip = |hold: Hold| pick.of(HOLDS + hold as u32, hold.over_grip(Gloves::None));
    let proof = inputs.measured.map(|measured| (measured.pull.in_newtons(), measured.arms));
    let then = inputs.measured.map_or(1.0, |measured| over_grip(measured.held));
    let reckoned = || arms(inputs, pick, Arms::Two).map(|pull| Grip::reckoned(pull, pick.of(GRIP, PULL_OVER_GRIP)));
    let grip = inputs.grip.or_else(reckoned);
    held_by(hands_at_it(inputs), over_grip(inputs.hold), grip, proof, then)
}

struct Stroke {
    travel: Option<f64>,
    room: Option<f64>,
    gain: Option<f64>,
    /// The rope that is really taken: less than the travel where the room ends the stroke.
    taken: Option<f64>,
}

impl Stroke {
    /// The upper hitch is moved up as far as it goes before every stroke.
    fn of(inputs: &Inputs, pick: &dyn Pick) -> Self {
        let reach = inputs.stature.map(|stature| reach(stature.si(), pick.deviations(REACH)));
        let share = pick.of(SHARE_OF_REACH, share_used(inputs.posture, inputs.hold));
        let travel = inputs.hand_travel.map(Quantity::si).or(reach.map(|reach| reach.to_chest * share));
        let per_rise = inputs.rig.motion.rope_per_rise.map_or(1.0, Fraction::in_f64);
        let room = reach
            .filter(|_| has_upper_hitch(inputs))
            .map(|reach| (reach.to_lap - pick.of(STACK, inputs.stack)).max(0.0));
        let rise = travel.map(|travel| room.map_or(travel / per_rise, |room| room.min(travel / per_rise)));
        let gain = rise.map(|rise| rise - pick.of(BACK, inputs.setback));
        Self { travel, room, gain, taken: rise.map(|rise| rise * per_rise) }
    }
}
