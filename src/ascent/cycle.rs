//! How long one stroke takes, with what lies between it and the next.

use super::things::{PULLING, RESETTING, drawn};
use super::{Plan, Reeved};
use crate::chance::Pick;
use crate::climber::{PULL_TIME, RESET_TIME};

/// A pull, and the least that lies between it and the next, in seconds.
pub(super) struct Cycle {
    pub(super) pull: f64,
    /// The upper hitch moved up; nothing where there is none.
    pub(super) reset: f64,
}

impl Cycle {
    /// The cycle on a plan's rig: as it went at knee height, where that was on such a rig.
    pub(super) fn of(plan: &Plan, pick: &dyn Pick) -> Self {
        let pull = drawn(pick, PULLING, &PULL_TIME);
        let resets = |rig: &Reeved| rig.upper_turns().is_some();
        let tried = plan.trial.filter(|_| resets(&plan.tried().rig) == resets(&plan.rig));
        let reset = match tried {
            Some(trial) => trial.rest(pull),
            None if resets(&plan.rig) => drawn(pick, RESETTING, &RESET_TIME),
            None => 0.0,
        };
        Self { pull, reset }
    }
}
