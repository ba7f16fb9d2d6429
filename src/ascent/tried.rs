//! What strokes at knee height prove.

use super::Plan;
use super::forces::{all_up, forces, needed};
use super::things::{DAY, PULLING, SURE, TIRES, drawn};
use crate::chance::Pick;
use crate::climber::{ANOTHER_DAY, MOVING, PULL_TIME, SURE_OF, Tiring, Trial, strength_for};

impl Plan {
    /// The plan that was tried.
    pub(super) fn tried(&self) -> &Self {
        self.trial_of.as_deref().unwrap_or(self)
    }
}

/// The strength that those muscles must have had for the strokes that were made: the pull that one took, times what so many
/// take.
pub(super) fn proven(plan: &Plan, trial: Trial, pick: &dyn Pick, muscles: Tiring) -> f64 {
    let plan = plan.tried();
    let (forces, help) = forces(&plan.rig, pick);
    let need = needed(all_up(plan.body_mass, &plan.kit_mass, pick), forces.as_ref(), help.as_ref());
    let pull = drawn(pick, PULLING, &PULL_TIME);
    let strokes = trial.to_the_end(drawn(pick, SURE, &SURE_OF));
    let muscles = muscles.faster(drawn(pick, TIRES, &MOVING));
    let rest = trial.rest(pull);
    need * strength_for(muscles, pull, rest, strokes) * drawn(pick, DAY, &ANOTHER_DAY)
}
