//! Which cautions apply to an ascent.

use super::body_cautions::body_cautions;
use super::top_out::at_the_top;
use super::{Answer, By, Caution, Evidence, Plan};
use crate::climber::{Arms, Gloves, OLDEST, PULL_TIME, RESET_TIME};
use crate::gear::{PAST_MOST, TEST_RATING, TurnKind};
use crate::quantity::Length;
use crate::reeving::{Drive, Losses, What, is_held, untended_hitches};

/// From this share of one's strength on a pull cannot be repeated often: ten times at 80 % (Johnson 2009).
pub const HARD: f64 = 0.8;

/// What to be careful about on this plan.
pub(super) fn cautions(plan: &Plan, answer: &Answer) -> Vec<Caution> {
    let (mut drop, mut single_hitch) = (Length::metres(0.0), false);
    for part in &answer.parts {
        if let Some(further) = part.drop.filter(|further| *further > drop) {
            drop = further;
        }
        single_hitch |= part.single && part.is_hitch(&answer.rig);
    }
    let (mut sliding, mut bark) = (false, false);
    for turn in &answer.turns {
        // Whoever measured knows what the turn eats.
        if turn.by == By::Kind {
            sliding |= matches!(turn.kind, TurnKind::Carabiner | TurnKind::Ring);
            bark |= turn.kind == TurnKind::Bark;
        }
    }
    let mut stacked = false;
    for stop in answer.rig.stops() {
        stacked |= stop.backup && matches!(stop.what, What::Hitch(_));
    }
    let hard = answer.arms.is_some_and(|gate| gate.share.likely > HARD);
    let mut cautions = Vec::new();
    let mut when = |holds: bool, caution: Caution| {
        if holds {
            cautions.push(caution);
        }
    };
    when(true, Caution::Arithmetic);
    for caution in body_cautions(plan, answer) {
        when(true, Caution::Body(caution));
    }
    let counted = answer.verdict.is_some_and(|verdict| verdict.reaches.is_some());
    when(!counted && !answer.hauled, Caution::OnePullOnly);
    when(counted && !answer.hauled, Caution::RestsReckoned);
    let over_weight = plan.measured.is_some_and(|measured| measured.pull > plan.body_mass.weight());
    let let_go = if answer.hauled { Caution::NothingHolds } else { Caution::NothingGrips };
    when(!is_held(&answer.rig), let_go);
    // From a 5:1 up (judged).
    when(answer.hauled && answer.ideal >= 5.0, Caution::HaulHard);
    when(over_weight && !answer.hauled, Caution::PullOverWeight);
    when(matches!(answer.evidence, Some(Evidence::Grip | Evidence::Norm)) && !answer.hauled, Caution::Predicted);
    let older = plan.norm.is_some_and(|norm| norm.age.number() > OLDEST);
    when(older && answer.evidence == Some(Evidence::Norm), Caution::PastSurvey);
    when(grip_and_pull_differ(plan) && !answer.hauled, Caution::GripAndPull);
    if let Some(most) = strokes_a_minute(plan)
        && plan.cadence.is_some_and(|cadence| cadence > most)
    {
        when(true, Caution::FastCadence { most });
    }
    when(hard && !answer.hauled, Caution::HardPull);
    when(single_hitch, Caution::SingleHitch);
    when(stacked, Caution::StackedHitches);
    if drop > Length::metres(0.0) {
        // The drop is in proportion to the slack: geometry.
        let by = drop;
        let up_to = by * (plan.rig.slack.high / plan.rig.slack.likely);
        when(true, Caution::DropToKnot { by, up_to });
    }
    when(hitch_is_untended(plan), Caution::UntendedHitch);
    when(sliding, Caution::SlidingTurn);
    when(bark, Caution::OverBark);
    for caution in at_the_top(&answer.top) {
        when(true, caution);
    }
    when(answer.mass.high > PAST_MOST, Caution::PastRatings);
    when(answer.mass.high > TEST_RATING && answer.mass.high <= PAST_MOST, Caution::OverTestMass);
    when(true, Caution::HangingStill);
    when(true, Caution::Surroundings);
    when(true, Caution::KneeHeight);
    cautions
}

/// Whether more went through the hands than the grip that was entered holds at its best.
fn grip_and_pull_differ(plan: &Plan) -> bool {
    let (Some(measured), Some(grip)) = (plan.measured, plan.grip) else { return false };
    let Some(held) = measured.held.filter(|held| !held.is_loop()) else { return false };
    // Which arm pulled alone was not said: the stronger, for all that is known.
    let squeezed = match measured.arms {
        Arms::Two => grip.used(Arms::Two),
        Arms::One => grip.left.max(grip.right),
    };
    let most = squeezed * held.over_grip(Gloves::None).high;
    measured.pull.in_newtons() > most
}

/// How many strokes a minute there is time for, likely; none where a helper hauls.
fn strokes_a_minute(plan: &Plan) -> Option<f64> {
    let reset = if plan.rig.upper_turns().is_some() { RESET_TIME.likely } else { 0.0 };
    if plan.rig.is_hauled() { None } else { Some(60.0 / (PULL_TIME.likely + reset)) }
}

fn hitch_is_untended(plan: &Plan) -> bool {
    let reeved = &plan.rig;
    let losses = Losses::none(&reeved.rig);
    reeved
        .balance
        .forces(&losses, &Drive::Pull(1.0, Vec::new()))
        .is_ok_and(|forces| !untended_hitches(&reeved.rig, &reeved.motion, &forces).is_empty())
}
