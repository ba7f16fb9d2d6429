//! Which cautions apply to a body.

use super::{Answer, BodyCaution, Plan};
use crate::climber::{Arms, Trunk};

/// What this body must be careful about.
pub(super) fn body_cautions(plan: &Plan, answer: &Answer) -> Vec<BodyCaution> {
    let unsteady = plan.trunk != Trunk::Steady;
    let still = plan.hangs_still();
    let pulls = !answer.hauled;
    let by_stature = answer.travel.is_some() && !answer.travel_is_own;
    let mut cautions = Vec::new();
    for (holds, caution) in [
        (unsteady, BodyCaution::SpinalInjury),
        (unsteady, BodyCaution::Dysreflexia),
        (still, BodyCaution::HarnessClock),
        (still || unsteady, BodyCaution::NumbSkin),
        (still, BodyCaution::ThinBones),
        (still && pulls, BodyCaution::ShoulderOveruse),
        (still && by_stature && plan.shoulder_reach.is_none(), BodyCaution::OverheadReach),
        (unsteady && by_stature, BodyCaution::TrunkReach),
        (pulls && plan.arms == Arms::One, BodyCaution::OneHand),
    ] {
        if holds {
            cautions.push(caution);
        }
    }
    cautions
}
