//! What arms pull, hands hold and arms keep up, by the best evidence.

use super::things::{
    DAY, GRIP, HOLDS, KEEPS_UP, NORM, ONE_OF_TWO, PEAK, PERSON, THROUGH_THE_STROKE, TRUNK_SHARE, drawn,
};
use super::tried::proven;
use super::{Evidence, Plan};
use crate::chance::Pick;
use crate::climber::{
    ANOTHER_DAY, Arms, Gloves, Grip, Hold, KEPT_UP, ONE_ARM, PEAK_OVER_GRIP, PULL_OVER_GRIP, Tiring, Trunk, for_arms,
    held_by, peak_power, predicted_pull,
};

/// What the arms pull through a stroke, by the best evidence or by a given one.
pub(super) fn arms(plan: &Plan, pick: &dyn Pick, pulls_with: Arms, evidence: Option<Evidence>) -> Option<f64> {
    let one_arm = drawn(pick, ONE_OF_TWO, &ONE_ARM);
    let grip = match evidence? {
        Evidence::Trial => {
            let pull = proven(plan, plan.trial?, pick, Tiring::ELBOW);
            return Some(pull * for_arms(plan.tried().hands(), pulls_with, one_arm));
        }
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

/// The grip of the two hands: as it was entered, or as the best evidence of strength foretells it.
fn grip(plan: &Plan, pick: &dyn Pick) -> Option<Grip> {
    plan.grip.or_else(|| match plan.evidence()? {
        best @ (Evidence::Trial | Evidence::Pull) => {
            let pull = arms(plan, pick, Arms::Two, Some(best))?;
            // Whoever trains pulling has no weaker hands for it.
            Some(Grip::reckoned(pull, drawn(pick, GRIP, &PULL_OVER_GRIP)))
        }
        _ => by_norm(plan, pick),
    })
}

/// What the hands hold: by the grip that was entered, or as the best evidence of strength foretells it.
pub(super) fn hands(plan: &Plan, pick: &dyn Pick) -> Option<f64> {
    // Each way of holding varies on its own, and is the same hand then and now.
    let over_grip = |hold: Hold, gloves| drawn(pick, HOLDS + hold.alike() as u32, &hold.over_grip(gloves));
    let now = over_grip(plan.hold, plan.gloves);
    // After an injury at the neck the hands may be weaker than the arms: only what was measured counts.
    let grip = if plan.trunk == Trunk::Cervical { plan.grip } else { grip(plan, pick) };
    let (proof, then) = if let Some(trial) = plan.trial {
        let tried = plan.tried();
        (Some((proven(plan, trial, pick, Tiring::HAND), tried.hands())), over_grip(tried.hold, tried.gloves))
    } else {
        // A loop round the hand holds without a grip, so it proves only itself.
        let proves = |held: &Hold| !held.is_loop() || plan.hold.is_loop();
        let held = plan.measured.and_then(|measured| measured.held).filter(proves);
        let proof = plan.measured.filter(|_| held.is_some());
        let proof = proof.map(|measured| (measured.pull.in_newtons(), measured.arms));
        (proof, held.map_or(1.0, |held| over_grip(held, Gloves::None)))
    };
    held_by(plan.hands(), now, grip, proof, then)
}

/// The power that the arms keep up through a climb, in watts.
pub(super) fn power(plan: &Plan, pick: &dyn Pick) -> Option<f64> {
    let peak = match plan.arm_power {
        Some(measured) => measured,
        None => {
            let arms = for_arms(Arms::Two, plan.arms, drawn(pick, ONE_OF_TWO, &ONE_ARM));
            peak_power(grip(plan, pick)?, plan.trunk, drawn(pick, PEAK, &PEAK_OVER_GRIP)) * arms
        }
    };
    Some(peak * drawn(pick, KEEPS_UP, &KEPT_UP))
}
