//! One climb, with one value for everything that varies: the likely one, or a sample's.

use super::inputs::Inputs;
use crate::chance::Pick;
use crate::climber::{Arms, Grip, Hold, PULL_OVER_GRIP, PULL_TIME, RESET_TIME, arm_pull, held_by, reach, share_used};
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
    pub(super) gain: Option<f64>,
    /// Endless where nothing is gained.
    pub(super) strokes: Option<f64>,
    pub(super) time: Option<f64>,
    /// The tension of every strand, ropes in order.
    pub(super) tensions: Vec<f64>,
    pub(super) anchor: f64,
}

// Each thing that varies has a number of its own for ever: see `Draws`.
const KIT: u32 = 0;
const DRAG: u32 = 1;
const THROUGH_THE_STROKE: u32 = 2;
const SHARE_OF_REACH: u32 = 3;
const REACH: u32 = 4;
const BACK: u32 = 5;
const STACK: u32 = 6;
const PULLING: u32 = 7;
const RESETTING: u32 = 8;
const ROUGHNESS: u32 = 9;
const GRIP: u32 = 10;
const HOLDS: u32 = 20;
const TURNS: u32 = 100;

/// The peak load on the anchor while climbing, over the load standing still (judged).
pub(super) const CLIMBING_PEAK: crate::field::Spread = crate::field::Spread::new(1.2, 1.5, 2.0);

/// How many hands pull at a time.
pub(super) const fn hands_on(rig: RigName) -> Arms {
    match rig {
        RigName::HandOverHand => Arms::One,
        RigName::TailThree => Arms::Two,
    }
}

impl Climb {
    pub(super) fn of(inputs: &Inputs, pick: &impl Pick) -> Self {
        let kit = pick.of(KIT, inputs.kit_mass);
        let weight = (inputs.body_mass + Mass::kilograms(kit)).weight().in_newtons();
        let forces = forces(inputs, pick);
        let advantage = forces.as_ref().map_or(0.0, |forces| forces.load.low);
        let need = weight / advantage;
        let stroke = Stroke::of(inputs, pick);
        let time =
            pick.of(PULLING, PULL_TIME) + if has_upper_hitch(inputs) { pick.of(RESETTING, RESET_TIME) } else { 0.0 };
        let strokes = stroke.gain.map(|gain| if gain > 0.0 { inputs.height.si() / gain } else { f64::INFINITY });
        let tree = inputs.rig.rig.body(BodyKind::Tree);
        let on_anchor = tree.and_then(|tree| forces.as_ref()?.bodies.get(tree)).map_or(0.0, |span| -span.low * need);
        Self {
            weight,
            advantage,
            need,
            arms: arms(inputs, pick, hands_on(inputs.rig.name)),
            hands: hands(inputs, pick),
            travel: stroke.travel,
            gain: stroke.gain,
            strokes,
            time: strokes.map(|strokes| strokes * time),
            tensions: forces
                .iter()
                .flat_map(|forces| forces.strands.iter().flatten())
                .map(|span| span.high * need)
                .collect(),
            anchor: on_anchor * pick.of(ROUGHNESS, CLIMBING_PEAK),
        }
    }

    /// The need over the tighter of what arms and hands give; more than one where one pull fails, endless where
    /// nothing is gained. None when strength is not known.
    pub(super) fn strain(&self) -> Option<f64> {
        let share = (self.need / self.arms?).max(self.need / self.hands?);
        Some(if self.gain.is_some_and(|gain| gain <= 0.0) { f64::INFINITY } else { share })
    }
}

pub(super) fn has_upper_hitch(inputs: &Inputs) -> bool {
    inputs.rig.rig.body(BodyKind::Carriage).is_some()
}

/// The forces for a unit of pull. A catalogue rig always has them.
fn forces(inputs: &Inputs, pick: &impl Pick) -> Option<Forces<f64>> {
    let reeved = &inputs.rig;
    let losses = reeved.tested.clone().unwrap_or_else(|| Losses {
        turns: (TURNS..).zip(&reeved.turns).map(|(thing, (_, kept))| pick.of(thing, *kept)).collect(),
        hitches: vec![pick.of(DRAG, reeved.drag); reeved.pull.grips.len()],
    });
    statics(&reeved.rig, &reeved.pull, &reeved.motion, &losses, &Drive::Pull(1.0, Vec::new())).ok()
}

fn arms(inputs: &Inputs, pick: &impl Pick, pulls_with: Arms) -> Option<f64> {
    let measured = inputs.measured?;
    let through = pick.of(THROUGH_THE_STROKE, measured.taken.through_the_stroke());
    Some(arm_pull(measured.pull.in_newtons(), through, measured.arms, pulls_with))
}

fn hands(inputs: &Inputs, pick: &impl Pick) -> Option<f64> {
    // Each way of holding varies on its own, and is the same hand then and now.
    let over_grip = |hold: Hold| pick.of(HOLDS + hold as u32, hold.over_grip());
    let proof = inputs.measured.map(|measured| (measured.pull.in_newtons(), measured.arms));
    let then = inputs.measured.map_or(1.0, |measured| over_grip(measured.held));
    let reckoned = || arms(inputs, pick, Arms::Two).map(|pull| Grip::reckoned(pull, pick.of(GRIP, PULL_OVER_GRIP)));
    let grip = inputs.grip.or_else(reckoned);
    held_by(hands_on(inputs.rig.name), over_grip(inputs.hold), grip, proof, then)
}

struct Stroke {
    travel: Option<f64>,
    gain: Option<f64>,
}

impl Stroke {
    /// The upper hitch is moved up as far as it goes before every stroke.
    fn of(inputs: &Inputs, pick: &impl Pick) -> Self {
        let reach = inputs.stature.map(|stature| reach(stature.si(), pick.deviations(REACH)));
        let share = pick.of(SHARE_OF_REACH, share_used(inputs.posture, inputs.hold));
        let travel = inputs.hand_travel.map(Quantity::si).or(reach.map(|reach| reach.to_chest * share));
        let per_rise = inputs.rig.motion.rope_per_rise.map_or(1.0, float);
        let room = reach
            .filter(|_| has_upper_hitch(inputs))
            .map(|reach| (reach.to_lap - pick.of(STACK, inputs.stack)).max(0.0));
        let gain = travel.map(|travel| {
            let rise = travel / per_rise;
            room.map_or(rise, |room| rise.min(room)) - pick.of(BACK, inputs.setback)
        });
        Self { travel, gain }
    }
}

pub(super) fn float(fraction: Fraction) -> f64 {
    *fraction.numer() as f64 / *fraction.denom() as f64
}
