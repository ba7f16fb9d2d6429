//! One stroke: how much rope, and how much height.

use super::Plan;
use super::things::{BACK, REACH, SHARE_OF_REACH, SHOULDERS, STACK, UNKNOWN, drawn};
use crate::chance::Pick;
use crate::climber::{EXTRA_PAIR, ShoulderReach, reach, share_used};
use crate::quantity::Quantity;

/// One stroke.
pub(super) struct Stroke {
    pub(super) travel: f64,
    pub(super) room: f64,
    pub(super) gain: f64,
    /// The rope that is really taken: less than the travel where the room ends the stroke.
    pub(super) taken: f64,
}

impl Stroke {
    /// The upper hitch is moved up as far as it goes before every stroke. A helper who hauls has no stroke to reckon.
    pub(super) fn of(plan: &Plan, pick: &dyn Pick) -> Self {
        if plan.rig.is_hauled() {
            return Self { travel: UNKNOWN, room: UNKNOWN, gain: UNKNOWN, taken: UNKNOWN };
        }
        let per_rise = plan.rig.rope_per_rise();
        let back = drawn(pick, BACK, &plan.setback);
        let (mut travel, mut room) = (UNKNOWN, UNKNOWN);
        if let Some(stature) = plan.stature {
            let shoulders = plan.shoulder_reach.unwrap_or(ShoulderReach::Full);
            let kept = drawn(pick, SHOULDERS, &shoulders.kept());
            let reach = reach(stature.si(), pick.deviations(REACH)).kept(kept);
            travel = reach.to_chest * drawn(pick, SHARE_OF_REACH, &share_used(plan.posture, plan.hold));
            if let Some(turns) = plan.rig.upper_turns() {
                room = (reach.to_lap - stack(plan, pick, turns)).max(0.0);
            }
        }
        if let Some(own) = plan.hand_travel {
            travel = own.si();
        }
        if let Some(trial) = plan.trial {
            // What a stroke gained there it gains again, and the room was what it was.
            let tried = plan.tried();
            travel = (trial.gain() + drawn(pick, BACK, &tried.setback)) * tried.rig.rope_per_rise();
            if plan.trial_of.is_none() {
                return Self { travel, room: UNKNOWN, gain: trial.gain(), taken: travel };
            }
        }
        let by_pull = travel / per_rise;
        // A room that is not known ends no stroke.
        let rise = if room < by_pull { room } else { by_pull };
        Self { travel, room, gain: rise - back, taken: rise * per_rise }
    }
}

/// How long hitches, turns and connectors are when they are pushed together, with so many turns at the upper hitch.
pub(super) fn stack(plan: &Plan, pick: &dyn Pick, turns: usize) -> f64 {
    drawn(pick, STACK, &plan.stack) + EXTRA_PAIR * turns.saturating_sub(1) as f64
}
