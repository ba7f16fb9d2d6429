//! The forces in a rig, with one value for everything that varies.

use super::things::{HITCHES, TURNS, drawn};
use super::{Plan, Reeved};
use crate::chance::Pick;
use crate::reeving::{Drive, Forces, Losses, statics};

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

/// The forces for a unit of pull, which a catalogue rig always has, and those of helpers alone: forces add up.
pub(super) fn forces(plan: &Plan, pick: &dyn Pick) -> (Option<Forces>, Option<Forces>) {
    let reeved = &plan.rig;
    let losses = losses(reeved, pick);
    let by = |pull: f64, help: Vec<f64>| statics(&reeved.rig, &reeved.motion, &losses, &Drive::Pull(pull, help)).ok();
    let help = if reeved.help.is_empty() { None } else { by(0.0, reeved.help.clone()) };
    (by(1.0, Vec::new()), help)
}
