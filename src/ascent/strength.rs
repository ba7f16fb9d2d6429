//! What arms pull and hands hold, by the best evidence.

use super::things::{DAY, GRIP, HOLDS, NORM, ONE_OF_TWO, PERSON, THROUGH_THE_STROKE, TRUNK_SHARE, drawn};
use super::{Evidence, Plan};
use crate::chance::Pick;
use crate::climber::{
    ANOTHER_DAY, Arms, Gloves, Grip, Hold, ONE_ARM, PULL_OVER_GRIP, Trunk, for_arms, held_by, predicted_pull,
};

/// What the arms pull through a stroke, by the best evidence or by a given one.
pub(super) fn arms(plan: &Plan, pick: &dyn Pick, pulls_with: Arms, evidence: Option<Evidence>) -> Option<f64> {
    let one_arm = drawn(pick, ONE_OF_TWO, &ONE_ARM);
    let grip = match evidence? {
        Evidence::Pull => {
            let measured = plan.measured?;
            let through = drawn(pick, THROUGH_THE_STROKE, &measured.taken.through_the_stroke());
            let arms = for_arms(measured.arms, pulls_with, one_arm);
            return Some(measured.pull.in_newtons() * drawn(pick, DAY, &ANOTHER_DAY) * through * arms);
        }
        Evidence::Grip => plan.grip?,
        Evidence::Norm => by_norm(plan, pick)?,
    };
    let both = grip.of_both(pulls_with);
    let over_grip = drawn(pick, GRIP, &plan.training.pull_over_grip());
    let pull = predicted_pull(both, over_grip, pick.deviations(PERSON));
    let trunk = drawn(pick, TRUNK_SHARE, &plan.trunk.share_of_prediction()?);
    Some(pull * trunk * for_arms(Arms::Two, pulls_with, one_arm))
}

/// The two hands as sex and age foretell them.
fn by_norm(plan: &Plan, pick: &dyn Pick) -> Option<Grip> {
    plan.norm.map(|norm| Grip::combined(norm.combined_grip(pick.deviations(NORM))))
}

/// What the hands hold: by the grip that was entered, or as the best evidence of strength foretells it.
pub(super) fn hands(plan: &Plan, pick: &dyn Pick) -> Option<f64> {
    // Each way of holding varies on its own, and is the same hand then and now.
    let over_grip = |hold: Hold, gloves| drawn(pick, HOLDS + hold.alike() as u32, &hold.over_grip(gloves));
    // A loop round the hand holds without a grip, so it proves only itself.
    let proves = |held: &Hold| !held.is_loop() || plan.hold.is_loop();
    let held = plan.measured.and_then(|measured| measured.held).filter(proves);
    let proof = plan.measured.filter(|_| held.is_some()).map(|measured| (measured.pull.in_newtons(), measured.arms));
    let then = held.map_or(1.0, |held| over_grip(held, Gloves::None));
    let reckoned = || match plan.evidence()? {
        // After an injury at the neck the hands may be weaker than the arms: only what was measured counts.
        _ if plan.trunk == Trunk::Cervical => None,
        Evidence::Pull => {
            let pull = arms(plan, pick, Arms::Two, Some(Evidence::Pull))?;
            // Whoever trains pulling has no weaker hands for it.
            Some(Grip::reckoned(pull, drawn(pick, GRIP, &PULL_OVER_GRIP)))
        }
        _ => by_norm(plan, pick),
    };
    let now = over_grip(plan.hold, plan.gloves);
    held_by(plan.hands(), now, plan.grip.or_else(reckoned), proof, then)
}
