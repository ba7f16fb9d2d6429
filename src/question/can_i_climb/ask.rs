//! From inputs to an answer.

use super::climb::{Climb, Planned, UNKNOWN, hands_at_it};
use super::climbs::Climbs;
use super::verdict::{Decided, verdict};
use super::{Answer, Caution, Evidence, Inputs, Missing, PartFact, Verdict};
use crate::chance::sort;
use crate::climber::{Arms, Gloves, Hold, OLDEST, PULL_TIME, RESET_TIME, Trunk};
use crate::field::Spread;
use crate::float;
use crate::gear::TurnKind;
use crate::quantity::Length;
use crate::question::Effort;
use crate::reeving::{
    Drive, Fraction, Losses, Part, Rig, What, drop_after, drop_in_hand, is_held, statics, untended_hitches,
};

/// Whether this person can make one pull of this climb, and how many pulls it is.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every likely figure is that of the
/// likely values; low and high are the 5th and 95th percentiles of the samples.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    let climbs = Climbs::of(inputs, effort);
    let mut answer = said(inputs, effort);
    climbs.always(&mut answer.weight, |climb| climb.weight);
    climbs.always(&mut answer.mass, |climb| climb.weight / crate::quantity::STANDARD_GRAVITY);
    climbs.always(&mut answer.advantage, |climb| climb.advantage);
    climbs.always(&mut answer.need, |climb| climb.need);
    climbs.always(&mut answer.anchor, |climb| climb.anchor);
    answer.arms = climbs.gate(|climb| climb.arms, |climb| climb.arms_share);
    answer.grasp = climbs.gate(|climb| climb.hands, |climb| climb.hands_share);
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
    climbs.tensions(&mut answer.tensions, &inputs.rig.rig);
    answer.verdict = judged(&answer, &climbs.sampled);
    answer.cautions = cautions(inputs, &answer);
    answer
}

/// The answer as far as it follows from the inputs alone.
fn said(inputs: &Inputs, effort: Effort) -> Answer {
    let reeved = &inputs.rig;
    let hauled = reeved.is_hauled();
    let unknown = Spread::point(0.0);
    Answer {
        rig_name: reeved.name,
        rig: reeved.rig.clone(),
        hauled,
        drags: reeved.drags(),
        grip: foretold_from(inputs),
        hands: hands_at_it(inputs),
        measured: inputs.measured,
        assumed: inputs.assumed.clone(),
        hold: inputs.hold,
        posture: inputs.posture,
        turns: reeved.turns.clone(),
        drag: reeved.drag,
        weight: unknown,
        mass: unknown,
        advantage: unknown,
        ideal: reeved.motion.rope_per_rise.map_or(1.0, Fraction::in_f64),
        turn_efficiency: reeved.tested.as_ref().map(|losses| mean(&losses.turns)),
        need: unknown,
        arms: None,
        grasp: None,
        evidence: inputs.evidence().filter(|_| !hauled),
        planning: planning(inputs),
        by_grip: None,
        by_norm: None,
        norm: inputs.norm,
        training: inputs.training,
        trunk: inputs.trunk,
        gloves: inputs.gloves,
        grip_is_entered: inputs.grip.is_some(),
        travel_is_own: inputs.hand_travel.is_some(),
        travel: None,
        room: None,
        gain: None,
        height: crate::quantity::Quantity::si(inputs.height),
        setback: inputs.setback,
        strokes: None,
        rope_handled: None,
        stroke_work: None,
        work: None,
        power: None,
        speed: None,
        climb_time: None,
        time: None,
        anchor: unknown,
        tensions: Vec::new(),
        parts: parts(&reeved.rig),
        missing: missing(inputs),
        verdict: None,
        cautions: Vec::new(),
        samples: effort.count(),
        more: effort < Effort::FULL,
    }
}

/// The pull to plan on where only sex and age are known.
fn planning(inputs: &Inputs) -> Option<f64> {
    let alone = inputs.evidence() == Some(Evidence::Norm) && !inputs.rig.is_hauled();
    let arms = if alone { Climb::of(inputs, &Planned).arms } else { UNKNOWN };
    if arms.is_nan() { None } else { Some(arms) }
}

/// The grip of both hands that the pull of the arms is foretold from, likely.
fn foretold_from(inputs: &Inputs) -> Option<f64> {
    match inputs.evidence()? {
        Evidence::Pull => None,
        Evidence::Grip => inputs.grip.map(|grip| grip.used(Arms::Two)),
        Evidence::Norm => inputs.norm.map(|norm| norm.combined_grip(0.0)),
    }
}

/// The geometric mean: what like turns would keep.
fn mean(turns: &[f64]) -> f64 {
    let logs = turns.iter().fold(0.0, |sum, kept| sum + float::ln(*kept));
    float::exp(logs / turns.len().max(1) as f64)
}

/// Every part, and what happens when it fails. Where nothing holds the climber but a hand, that is a part too.
fn parts(rig: &Rig) -> Vec<PartFact> {
    let (by_hand, after): (_, fn(&Rig, Part) -> _) =
        if is_held(rig) { (false, drop_after) } else { (true, drop_in_hand) };
    let mut parts = Vec::new();
    for (at, rope) in rig.ropes().iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            if stop.can_fail() || by_hand && stop.what == What::Hand {
                let drop = after(rig, Part::Stop { rope: at, stop: place });
                parts.push(PartFact { rope: at, stop: Some(place), single: drop.is_none(), drop });
            }
        }
        let single = after(rig, Part::Rope { rope: at }).is_none();
        parts.push(PartFact { rope: at, stop: None, single, drop: None });
    }
    parts
}

fn missing(inputs: &Inputs) -> Vec<Missing> {
    let mut missing = Vec::new();
    // Whoever hauls is a second person.
    let hauled = inputs.rig.is_hauled();
    if !hauled {
        match inputs.evidence() {
            _ if inputs.measured.is_none() && inputs.trunk == Trunk::Cervical => missing.push(Missing::Pull),
            None => missing.push(inputs.half_a_norm.map_or(Missing::Strength, Missing::OtherHalf)),
            _ => {}
        }
        if inputs.stature.is_none() && inputs.hand_travel.is_none() {
            missing.push(Missing::Stroke);
        }
    }
    // No field asks for these two yet, so no plan is ever complete.
    missing.push(Missing::WayDown);
    if !hauled {
        missing.push(Missing::SecondPerson);
    }
    missing
}

fn judged(answer: &Answer, climbs: &[Climb]) -> Option<Verdict> {
    let (arms, grasp) = (answer.arms?.share.likely, answer.grasp.map_or(0.0, |gate| gate.share.likely));
    let mut strains = Vec::new();
    let (mut stuck, mut weak) = (0, 0);
    for climb in climbs {
        let strain = climb.strain()?;
        weak += u32::from(strain > 1.0);
        stuck += u32::from(climb.is_stuck());
        strains.push(if climb.is_stuck() { f64::INFINITY } else { strain });
    }
    sort(&mut strains);
    let tighter = if stuck > weak {
        Decided::Stroke
    } else if arms > 1.0 && grasp > 1.0 && answer.grip_is_entered {
        Decided::ArmsAndHands
    } else if grasp > arms {
        Decided::Hands
    } else {
        Decided::Arms
    };
    let stuck = f64::from(stuck) / climbs.len().max(1) as f64;
    Some(verdict(&strains, stuck, tighter, answer.missing.is_empty()))
}

/// From this share of one's strength on a pull cannot be repeated often: ten times at 80 % (Johnson 2009).
const HARD: f64 = 0.8;

fn cautions(inputs: &Inputs, answer: &Answer) -> Vec<Caution> {
    let (mut drop, mut single_hitch) = (None, false);
    for part in &answer.parts {
        drop = drop.or(part.drop.filter(|drop| *drop > Length::metres(0.0)));
        single_hitch |= part.single && part.is_hitch(&answer.rig);
    }
    let (mut sliding, mut bark) = (false, false);
    for turn in &answer.turns {
        // One's own figure says what the turn eats; the kind's no longer does.
        if !turn.own && answer.turn_efficiency.is_none() {
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
    when(true, Caution::OnePullOnly);
    let over_weight = inputs.measured.is_some_and(|measured| measured.pull > inputs.body_mass.weight());
    when(!is_held(&answer.rig), Caution::NothingHolds);
    let by_stature = answer.travel.is_some() && !answer.travel_is_own;
    when(by_stature && inputs.trunk != Trunk::Steady, Caution::TrunkReach);
    // From a 5:1 up (judged).
    when(answer.hauled && answer.ideal >= 5.0, Caution::HaulHard);
    when(over_weight && !answer.hauled, Caution::PullOverWeight);
    when(matches!(answer.evidence, Some(Evidence::Grip | Evidence::Norm)) && !answer.hauled, Caution::Predicted);
    let older = inputs.norm.is_some_and(|norm| norm.age.number() > OLDEST);
    when(older && answer.evidence == Some(Evidence::Norm), Caution::PastSurvey);
    when(grip_and_pull_differ(inputs) && !answer.hauled, Caution::GripAndPull);
    if let Some(most) = strokes_a_minute(inputs)
        && inputs.cadence.is_some_and(|cadence| cadence > most)
    {
        when(true, Caution::FastCadence { most });
    }
    when(hard && !answer.hauled, Caution::HardPull);
    when(single_hitch, Caution::SingleHitch);
    when(stacked, Caution::StackedHitches);
    if let Some(by) = drop {
        // The drop is in proportion to the slack: geometry.
        let up_to = by * (inputs.rig.slack.high / inputs.rig.slack.likely);
        when(true, Caution::DropToKnot { by, up_to });
    }
    when(hitch_is_untended(inputs), Caution::UntendedHitch);
    when(sliding, Caution::SlidingTurn);
    when(bark, Caution::OverBark);
    // The mass that harnesses are tested with, and a rating past most, in kilograms.
    when(answer.mass.high > 140.0, Caution::PastRatings);
    when(answer.mass.high > 100.0 && answer.mass.high <= 140.0, Caution::OverTestMass);
    when(true, Caution::HangingStill);
    when(true, Caution::Surroundings);
    when(true, Caution::KneeHeight);
    cautions
}

/// Whether more went through the hands than the grip that was entered holds at its best.
fn grip_and_pull_differ(inputs: &Inputs) -> bool {
    let (Some(measured), Some(grip)) = (inputs.measured, inputs.grip) else { return false };
    let most = grip.used(measured.arms) * measured.held.over_grip(Gloves::None).high;
    measured.held != Hold::HandLoop && measured.pull.in_newtons() > most
}

/// How many strokes a minute there is time for, likely; none where a helper hauls.
fn strokes_a_minute(inputs: &Inputs) -> Option<f64> {
    let reset = if inputs.rig.upper_turns().is_some() { RESET_TIME.likely } else { 0.0 };
    if inputs.rig.is_hauled() { None } else { Some(60.0 / (PULL_TIME.likely + reset)) }
}

fn hitch_is_untended(inputs: &Inputs) -> bool {
    let reeved = &inputs.rig;
    let losses = Losses::none(&reeved.rig);
    statics(&reeved.rig, &reeved.motion, &losses, &Drive::Pull(1.0, Vec::new()))
        .is_ok_and(|forces| !untended_hitches(&reeved.rig, &reeved.motion, &forces).is_empty())
}
