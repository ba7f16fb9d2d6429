//! What a hand holds or pulls of the climber's weight.

use crate::reeving::{BodyKind, Drive, Losses, Phase, Rig, What, kinematics, statics};

/// What people call a brake: by it the model knows its turn.
pub(super) const BRAKE_NOUN: &str = "brake";

/// How much of the tension turns keep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Kept {
    /// In the crotch.
    pub crotch: f64,
    /// Round the brake.
    pub brake: f64,
    /// Round whatever else there is.
    pub other: f64,
}

/// The share of the climber's weight that the driving hand holds or pulls, by the general model; none where the rig does
/// not move or balance so.
pub(super) fn share(rig: &Rig, phase: &Phase, kept: Kept) -> Option<f64> {
    let motion = kinematics(rig, phase).ok()?;
    let mut losses = Losses::none(rig);
    for stop in rig.stops() {
        if let What::Turn(number) = stop.what
            && let Some(share) = losses.turns.get_mut(number)
        {
            *share = match rig.kind_at(stop) {
                _ if stop.noun == BRAKE_NOUN => kept.brake,
                Some(BodyKind::Tree) => kept.crotch,
                _ => kept.other,
            };
        }
    }
    let load = statics(rig, &motion, &losses, &Drive::Pull(1.0, vec![])).ok()?.load.low;
    (load > 0.0).then(|| 1.0 / load)
}
