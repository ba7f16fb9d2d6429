//! A plan in which one thing is otherwise.

use super::change::{Change, DEVICE_DRAG, DEVICE_SETBACK, LESS_KIT, LOWER, STRONGER, TAIL_HELP};
use super::reeved::By;
use super::time_allowed::MOST;
use super::{Plan, Reeved};
use crate::climber::{Hold, Posture, Trunk};
use crate::field::Spread;
use crate::gear::{TurnKind, kept_by};
use crate::quantity::{Force, Length, Quantity};
use crate::reeving::{Balance, Phase, What, kinematics};
use std::sync::Arc;

impl Plan {
    /// This plan with one thing otherwise; none where it is so already, or cannot be.
    pub(super) fn with(&self, change: Change, next: Option<&Reeved>) -> Option<Self> {
        let mut plan = self.clone();
        // What a trial was made on stays what it was.
        if plan.trial.is_some() && plan.trial_of.is_none() {
            plan.trial_of = Some(Arc::new(self.clone()));
        }
        let by_hand = !self.rig.is_hauled();
        match change {
            Change::Pulleys => {
                let mut slides = false;
                for turn in &mut plan.rig.turns {
                    if turn.by == By::Kind && matches!(turn.kind, TurnKind::Carabiner | TurnKind::Ring | TurnKind::Bark)
                    {
                        turn.kind = TurnKind::BearingPulley;
                        turn.kept = kept_by(turn.kind, None);
                        slides = true;
                    }
                }
                slides.then_some(plan)
            }
            Change::HandLoop => {
                plan.hold = Hold::HandLoop;
                (by_hand && !self.hold.is_loop()).then_some(plan)
            }
            Change::LeaningBack => {
                let by_stature = plan.hand_travel.is_none() && plan.trial.is_none() && plan.stature.is_some();
                let could = self.posture == Posture::Upright && !self.hold.is_loop() && self.trunk == Trunk::Steady;
                plan.posture = Posture::LeaningBack;
                (by_hand && by_stature && could).then_some(plan)
            }
            Change::CaptureDevice => {
                let has_hitch = self.rig.rig.stops().any(|stop| matches!(stop.what, What::Hitch(_)));
                plan.setback = DEVICE_SETBACK;
                plan.rig.drag = DEVICE_DRAG;
                (by_hand && has_hitch && self.setback.likely > DEVICE_SETBACK.likely).then_some(plan)
            }
            Change::NextRig => {
                plan.rig = next?.clone();
                Some(plan)
            }
            Change::LighterKit => {
                let Spread { low, likely, high } = self.kit_mass;
                let [low, likely, high] = [low, likely, high].map(|mass| (mass - LESS_KIT).max(0.0));
                plan.kit_mass = Spread::new(low, likely, high);
                (self.kit_mass.likely > 0.0).then_some(plan)
            }
            Change::MoreTime => {
                plan.time_allowed = (2.0 * plan.time_allowed).min(MOST);
                // Nobody whose legs do not move should hang longer.
                (by_hand && !self.hangs_still()).then_some(plan)
            }
            Change::HelperOnTail => {
                plan.rig = helped(&self.rig)?;
                Some(plan)
            }
            Change::StrongerPull => {
                plan.arms_times = STRONGER;
                Some(plan)
            }
            Change::LowerClimb => {
                plan.height = Length::from_si(self.height.si() * LOWER);
                Some(plan)
            }
        }
    }
}

/// A rig with a helper on its tail.
fn helped(reeved: &Reeved) -> Option<Reeved> {
    let rig = reeved.rig.helped_on_the_tail()?;
    let motion = kinematics(&rig, &Phase::pull(&rig)).ok()?;
    let balance = Balance::of(&rig, &motion);
    let help = vec![Force::kilograms_force(TAIL_HELP).in_newtons()];
    Some(Reeved { rig: Arc::new(rig), motion, balance, help, ..reeved.clone() })
}
