//! What strokes at knee height prove.

use super::forces::{all_up, forces, needed};
use super::things::{DAY, PULLING, SURE, TIRES, drawn};
use super::{Plan, Reeved};
use crate::chance::Pick;
use crate::climber::{ANOTHER_DAY, Arms, MOVING, PULL_TIME, SURE_OF, Tiring, Trial, strength_for};

impl Plan {
    /// The rig that the trial was made on.
    pub(super) fn tried_on(&self) -> &Reeved {
        self.trial_rig.as_deref().unwrap_or(&self.rig)
    }

    /// How many hands pulled in it.
    pub(super) fn tried_with(&self) -> Arms {
        self.hands_on(self.tried_on())
    }
}

/// The strength that those muscles must have had for the strokes that were made: the pull that one took, times what so many
/// take.
pub(super) fn proven(plan: &Plan, trial: Trial, pick: &dyn Pick, muscles: Tiring) -> f64 {
    let rig = plan.tried_on();
    let (forces, help) = forces(rig, pick);
    let need = needed(all_up(plan.body_mass, &plan.kit_mass, pick), forces.as_ref(), help.as_ref());
    let pull = drawn(pick, PULLING, &PULL_TIME);
    let strokes = trial.to_the_end(drawn(pick, SURE, &SURE_OF));
    let muscles = muscles.faster(drawn(pick, TIRES, &MOVING));
    let rest = (trial.cycle() - pull).max(0.0);
    need * strength_for(muscles, pull, rest, strokes) * drawn(pick, DAY, &ANOTHER_DAY)
}
