//! The forces of a climb: what is lifted, what the rig does to a pull, and the pull that it takes.

use super::Reeved;
use super::things::{HITCHES, KIT, ROUGHNESS, TURNS, drawn};
use crate::chance::Pick;
use crate::field::Spread;
use crate::quantity::Mass;
use crate::reeving::{Drive, Forces, Losses};

/// The peak load on the anchor while climbing, over the load standing still (judged).
pub const CLIMBING_PEAK: Spread = Spread::new(1.2, 1.5, 2.0);

/// What each turn and each sliding hitch keeps.
pub(crate) fn losses(reeved: &Reeved, pick: &dyn Pick) -> Losses {
    let mut losses = Losses::none(&reeved.rig);
    for (kept, (place, turn)) in losses.turns.iter_mut().zip(reeved.places.iter().zip(&reeved.turns)) {
        *kept = drawn(pick, TURNS + place, &turn.kept);
    }
    for (kept, thing) in losses.hitches.iter_mut().zip(HITCHES..) {
        *kept = drawn(pick, thing, &reeved.drag);
    }
    losses
}

/// The weight of the climber and all they carry, in newtons.
pub(crate) fn all_up(body_mass: Mass, kit_mass: &Spread, pick: &dyn Pick) -> f64 {
    (body_mass + Mass::kilograms(drawn(pick, KIT, kit_mass))).weight().in_newtons()
}

/// How much more the anchor carries while somebody climbs in jerks than while they hang still.
pub(crate) fn jerk(pick: &dyn Pick) -> f64 {
    drawn(pick, ROUGHNESS, &CLIMBING_PEAK)
}

/// What forces lift, in newtons.
pub(super) fn lift(forces: Option<&Forces>) -> f64 {
    forces.map_or(0.0, |forces| forces.load.low)
}

/// The pull that lifts a weight, by the forces for a unit of pull and those of helpers.
pub(super) fn needed(weight: f64, forces: Option<&Forces>, help: Option<&Forces>) -> f64 {
    // Nobody pulls less than nothing.
    (weight - lift(help)).max(0.0) / lift(forces)
}

/// The forces for a unit of pull, which a catalogue rig always has, and those of helpers alone: forces add up.
pub(super) fn forces(reeved: &Reeved, pick: &dyn Pick) -> (Option<Forces>, Option<Forces>) {
    let losses = losses(reeved, pick);
    let by = |pull: f64, help: Vec<f64>| reeved.balance.forces(&losses, &Drive::Pull(pull, help)).ok();
    let help = if reeved.help.is_empty() { None } else { by(0.0, reeved.help.clone()) };
    (by(1.0, Vec::new()), help)
}
