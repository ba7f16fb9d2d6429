//! What the question reads, checked.

use crate::ascent::{Plan, assumed, every_rig};
use crate::draft::Draft;
use crate::error::Error;
use crate::field::Row;
use crate::question::Question;
use crate::question::fields::reader;
use crate::reeving::RigName;
use std::sync::Arc;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    /// One plan for each rig.
    pub(super) plans: Vec<Plan>,
    /// The rig that was said, if one was.
    pub(super) said: Option<RigName>,
    assumed: Vec<&'static Row>,
}

impl Inputs {
    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::Advantage);
        let (said, rigs) = every_rig(&mut reader);
        let plan = Plan::on(&mut reader, rigs.first().cloned());
        let mut all: Vec<&'static Row> = Vec::new();
        for rig in &rigs {
            for row in assumed(&reader, Some(rig)) {
                if all.iter().all(|known| known.id != row.id) {
                    all.push(row);
                }
            }
        }
        reader.done(|| {
            let plan = plan?;
            let mut plans = Vec::new();
            // The trial was made on the rig that was said; a helper's haul tries nobody.
            let tried = said.and_then(|said| rigs.iter().find(|rig| rig.name == said)).filter(|rig| !rig.is_hauled());
            let trial = plan.trial.filter(|_| tried.is_some());
            let tried = trial.and(tried).map(|rig| Arc::new(Plan { rig: rig.clone(), ..plan.clone() }));
            for rig in rigs {
                let trial_of = tried.clone().filter(|tried| tried.rig.name != rig.name);
                plans.push(Plan { rig, trial, trial_of, ..plan.clone() });
            }
            Some(Self { plans, said, assumed: all })
        })
    }

    /// The fields whose defaults the answer rests on.
    #[must_use]
    pub fn assumed(&self) -> &[&'static Row] {
        &self.assumed
    }
}
