//! What the question reads, checked.

use crate::ascent::{Plan, Reeved, reeved_and_next};
use crate::draft::Draft;
use crate::error::Error;
use crate::field::Row;
use crate::question::Question;
use crate::question::fields::reader;
use crate::reeving::RIG;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) plan: Plan,
    /// The next rig with more advantage.
    pub(super) next: Option<Reeved>,
}

impl Inputs {
    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::CanIClimb);
        let (rig, next) = reeved_and_next(&mut reader);
        let plan = Plan::on(&mut reader, rig);
        let rig_is_usual = !reader.says(&RIG.row);
        reader.done(|| Some(Self { plan: Plan { rig_is_usual, ..plan? }, next }))
    }

    /// The fields whose defaults the answer rests on.
    #[must_use]
    pub fn assumed(&self) -> &[&'static Row] {
        &self.plan.assumed
    }
}
