//! How much narrower better evidence would make the pull of the arms.

use super::strength::arms;
use super::{Evidence, Plan};
use crate::chance::{Draws, Likely, spread_of};
use crate::climber::{Grip, Measured, PullTaken};
use crate::field::Spread;
use crate::quantity::Force;

/// What the pull of the arms would be known to, if something better were measured and came out as it is likely to; in
/// newtons.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Sharper {
    /// By a grip; none where that is known, or worse than what is.
    pub by_grip: Option<Spread>,
    /// By a pull.
    pub by_pull: Option<Spread>,
}

/// How many samples it rests on: enough for two digits of a range.
const SAMPLES: u32 = 400;

impl Sharper {
    /// Than the best evidence of a plan.
    pub(super) fn than(plan: &Plan) -> Self {
        let mut sharper = Self::default();
        let (Some(best), hands) = (plan.evidence().filter(|_| !plan.rig.is_hauled()), plan.hands()) else {
            return sharper;
        };
        if best == Evidence::Norm
            && let Some(norm) = plan.norm
        {
            let grip = Some(Grip::combined(norm.combined_grip(0.0)));
            sharper.by_grip = known_to(&Plan { grip, ..plan.clone() }, Evidence::Grip);
        }
        if matches!(best, Evidence::Norm | Evidence::Grip)
            && let Some(pull) = arms(plan, &Likely, hands, Some(best))
        {
            let measured =
                Measured { pull: Force::newtons(pull), taken: PullTaken::LowestPoint, arms: hands, held: None };
            sharper.by_pull = known_to(&Plan { measured: Some(measured), ..plan.clone() }, Evidence::Pull);
        }
        sharper
    }
}

fn known_to(plan: &Plan, evidence: Evidence) -> Option<Spread> {
    let of = |pick: &dyn crate::chance::Pick| arms(plan, pick, plan.hands(), Some(evidence));
    let mut samples = Vec::new();
    for sample in 0..SAMPLES {
        samples.push(of(&Draws::sample(sample))?);
    }
    Some(spread_of(of(&Likely)?, samples))
}
