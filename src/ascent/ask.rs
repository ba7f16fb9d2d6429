//! From a plan to what it comes to.

use super::cautions::cautions;
use super::cycle::Cycle;
use super::ends::ends;
use super::leg_climb::leg_climb;
use super::verdict::{Caps, verdict};
use super::{
    Answer, By, Climb, Climbs, Evidence, Going, HARNESS_CLOCK, Missing, Plan, Planned, SecondPerson, Sharper, TakenUp,
    TopOut, TurnFact, UNKNOWN, WayDown, parts,
};
use crate::chance::{Effort, Likely};
use crate::climber::{Arms, Grip, Trunk};
use crate::field::Spread;
use crate::float;
use crate::gear::PAST_MOST;
use crate::reeving::{Fraction, is_held};
use crate::rope::is_anchored;

/// Whether this person can climb this: one pull, how many of them, and whether arms and hands last through them all.
///
/// # Guarantees
/// Every likely figure is that of the likely values; low and high are the 5th and 95th percentiles of the samples.
pub(crate) fn answer(plan: &Plan, effort: Effort) -> Answer {
    let mut climbs = Climbs::of(plan);
    climbs.go_on(plan, effort);
    so_far(plan, &climbs)
}

/// The same as far as climbs have been sampled.
pub(crate) fn so_far(plan: &Plan, climbs: &Climbs) -> Answer {
    let mut answer = said(plan, climbs.count());
    climbs.always(&mut answer.weight, |climb| climb.weight);
    climbs.always(&mut answer.mass, |climb| climb.weight / crate::quantity::STANDARD_GRAVITY);
    climbs.always(&mut answer.advantage, |climb| climb.advantage);
    climbs.always(&mut answer.need, |climb| climb.need);
    climbs.always(&mut answer.anchor, |climb| climb.anchor);
    answer.arms = climbs.gate(|climb| climb.arms, |climb| climb.arms_share);
    answer.grasp = climbs.gate(|climb| climb.hands, |climb| climb.hands_share);
    climbs.maybe(&mut answer.helped, |climb| climb.helped);
    climbs.maybe(&mut answer.by_pull, |climb| climb.by_pull);
    climbs.maybe(&mut answer.by_grip, |climb| climb.by_grip);
    climbs.maybe(&mut answer.by_norm, |climb| climb.by_norm);
    climbs.maybe(&mut answer.travel, |climb| climb.travel);
    climbs.maybe(&mut answer.room, |climb| climb.room);
    climbs.maybe(&mut answer.gain, |climb| climb.gain);
    climbs.maybe(&mut answer.strokes, |climb| climb.strokes);
    climbs.maybe(&mut answer.rope_handled, |climb| climb.rope);
    climbs.maybe(&mut answer.stroke_work, |climb| climb.stroke_work);
    climbs.maybe(&mut answer.work, |climb| climb.work);
    climbs.maybe(&mut answer.power, |climb| climb.power);
    climbs.maybe(&mut answer.speed, |climb| climb.speed);
    climbs.maybe(&mut answer.climb_time, |climb| climb.climb_time);
    climbs.maybe(&mut answer.time, |climb| climb.time);
    climbs.maybe(&mut answer.rest, |climb| climb.lasting.rest);
    climbs.maybe(&mut answer.lasting_time, |climb| climb.lasting_time);
    climbs.maybe(&mut answer.hanging, |climb| climb.hanging);
    climbs.maybe(&mut answer.power_needed, |climb| climb.lasting.power_needed);
    climbs.maybe(&mut answer.power_kept_up, |climb| climb.lasting.power);
    ends(climbs, &mut answer);
    climbs.tensions(&mut answer.tensions, &plan.rig.rig);
    answer.going = Going::of(climbs.likely(), &Cycle::of(plan, &Likely), answer.height, plan.time_to_plan_on());
    answer.verdict =
        climbs.outcomes(!answer.hauled).map(|outcomes| verdict(&outcomes, answer.grip_is_entered, caps(plan, &answer)));
    answer.legs = leg_climb(plan.legs, plan.stairs, answer.mass);
    answer.cautions = cautions(plan, &answer);
    answer
}

/// The answer as far as it follows from the plan alone.
fn said(plan: &Plan, samples: u32) -> Answer {
    let reeved = &plan.rig;
    let hauled = reeved.is_hauled();
    let unknown = Spread::point(0.0);
    Answer {
        rig_name: reeved.name,
        rig: reeved.rig.clone(),
        hauled,
        drags: reeved.drags,
        grip: foretold_from(plan),
        hands: plan.hands(),
        measured: plan.measured,
        assumed: plan.assumed.clone(),
        hold: plan.hold,
        posture: plan.posture,
        turns: reeved.turns.clone(),
        drag: reeved.drag,
        weight: unknown,
        mass: unknown,
        advantage: unknown,
        ideal: reeved.motion.rope_per_rise.map_or(1.0, Fraction::in_f64),
        turn_efficiency: tested_mean(&reeved.turns),
        need: unknown,
        helped: None,
        arms: None,
        grasp: None,
        evidence: plan.evidence().filter(|_| !hauled),
        planning: planning(plan),
        time_allowed: plan.time_allowed,
        way_down: plan.way_down,
        rated: plan.rated,
        trial: plan.trial,
        arm_power: plan.arm_power,
        hanging: None,
        power_needed: None,
        power_kept_up: None,
        hangs_still: plan.hangs_still(),
        sharper: Sharper::than(plan),
        by_pull: None,
        by_grip: None,
        by_norm: None,
        norm: plan.norm,
        training: plan.training,
        shoulder_reach: plan.shoulder_reach,
        one_armed: plan.arms == Arms::One,
        legs: None,
        trunk: plan.trunk,
        gloves: plan.gloves,
        grip_is_entered: plan.grip.is_some(),
        travel_is_own: plan.hand_travel.is_some(),
        travel: None,
        room: None,
        gain: None,
        height: crate::quantity::Quantity::si(plan.height),
        setback: plan.setback,
        strokes: None,
        taken_up: TakenUp::said(plan),
        top: TopOut::said(plan),
        rope_handled: None,
        stroke_work: None,
        work: None,
        power: None,
        speed: None,
        climb_time: None,
        time: None,
        rest: None,
        lasting_time: None,
        going: None,
        anchor: unknown,
        tensions: Vec::new(),
        parts: parts(&reeved.rig),
        missing: missing(plan),
        verdict: None,
        cautions: Vec::new(),
        samples,
        more: samples < Effort::FULL.count(),
    }
}

/// The pull to plan on where only sex and age are known.
fn planning(plan: &Plan) -> Option<f64> {
    let alone = plan.evidence() == Some(Evidence::Norm) && !plan.rig.is_hauled();
    let arms = if alone { Climb::of(plan, &Planned).arms } else { UNKNOWN };
    if arms.is_nan() { None } else { Some(arms) }
}

/// The grip of both hands that the pull of the arms is foretold from, likely.
fn foretold_from(plan: &Plan) -> Option<f64> {
    match plan.evidence()? {
        Evidence::Trial | Evidence::Pull => None,
        Evidence::Grip => plan.grip.map(|grip| grip.of_both(plan.hands())),
        Evidence::Norm => plan.norm.map(|norm| Grip::combined(norm.combined_grip(0.0)).of_both(plan.hands())),
    }
}

/// The geometric mean of what one's own test tells of turns: what like ones would keep.
fn tested_mean(turns: &[TurnFact]) -> Option<f64> {
    let (mut logs, mut count) = (0.0, 0.0);
    for turn in turns.iter().filter(|turn| turn.by == By::Test) {
        logs += float::ln(turn.kept.likely);
        count += 1.0;
    }
    if count > 0.0 { Some(float::exp(logs / count)) } else { None }
}

/// Whether anything tells of what the hands hold on this climb.
fn hands_are_known(plan: &Plan) -> bool {
    !Climb::of(plan, &Likely).hands.is_nan()
}

/// What caps the verdict, whatever the strength.
fn caps(plan: &Plan, answer: &Answer) -> Caps {
    let mass = answer.mass;
    let may_overload = plan.rated.is_some_and(|rated| mass.high > rated.in_kilograms());
    Caps {
        lacks: !answer.missing.is_empty(),
        too_low: answer.top.is_too_low(),
        overloaded: plan.rated.is_some_and(|rated| mass.likely > rated.in_kilograms()),
        unrated: may_overload || plan.rated.is_none() && mass.likely > PAST_MOST,
        hangs_long: plan.hangs_still() && answer.hanging.is_none_or(|hanging| hanging.likely > HARNESS_CLOCK),
        nothing_holds: !is_held(&answer.rig),
    }
}

fn missing(plan: &Plan) -> Vec<Missing> {
    let mut missing = Vec::new();
    // Whoever hauls is a second person.
    let hauled = plan.rig.is_hauled();
    if !hauled {
        match plan.evidence() {
            _ if plan.trunk == Trunk::Cervical && !plan.is_measured() => missing.push(Missing::Pull),
            Some(_) if !hands_are_known(plan) => missing.push(Missing::Hold),
            None => missing.push(plan.half_a_norm.map_or(Missing::Strength, Missing::OtherHalf)),
            _ => {}
        }
        if plan.part_of_a_trial {
            missing.push(Missing::RestOfTrial);
        }
        if plan.stature.is_none() && plan.hand_travel.is_none() && plan.trial.is_none() {
            missing.push(Missing::Stroke);
        }
    }
    if plan.rig_is_usual {
        missing.push(Missing::Rig);
    }
    if plan.setting.edge.is_some() && plan.setting.crotch.is_none() {
        missing.push(Missing::Crotch);
    }
    match plan.way_down {
        None => missing.push(Missing::WayDown),
        // Only a rope made fast in a device at the foot lets anybody down.
        Some(WayDown::Lowered) if !plan.setting.anchor.is_lowerable() && is_anchored(&plan.rig.rig) => {
            missing.push(Missing::Lowering);
        }
        Some(_) => {}
    }
    if !hauled && plan.second_person != Some(SecondPerson::Rescuer) {
        missing.push(Missing::SecondPerson);
    }
    missing
}
