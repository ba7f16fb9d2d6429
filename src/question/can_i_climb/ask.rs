//! From inputs to an answer.

use super::climb::{Climb, Planned, hands_at_it};
use super::verdict::{Decided, verdict};
use super::{Answer, Caution, Evidence, Gate, Inputs, Missing, PartFact, TurnFact, Verdict};
use crate::chance::{Draws, Likely, sort, spread_of};
use crate::climber::Trunk;
use crate::field::Spread;
use crate::float;
use crate::gear::TurnKind;
use crate::quantity::Length;
use crate::reeving::{
    Drive, Fraction, Losses, Part, Rig, What, drop_after, is_held, single_parts, statics, untended_hitches,
};

/// Whether this person can make one pull of this climb, and how many pulls it is.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every likely figure is that of the
/// likely values; low and high are the 5th and 95th percentiles of the samples.
#[must_use]
pub fn ask(inputs: &Inputs, effort: crate::question::Effort) -> Answer {
    let likely = Climb::of(inputs, &Likely);
    let climbs: Vec<Climb> = (0..effort.count()).map(|sample| Climb::of(inputs, &Draws::sample(sample))).collect();
    let maybe = |figure: &dyn Fn(&Climb) -> Option<f64>| {
        let mut samples = Vec::new();
        for climb in &climbs {
            samples.extend(figure(climb));
        }
        figure(&likely).map(|value| spread_of(value, samples))
    };
    let spread = |figure: fn(&Climb) -> f64| maybe(&|climb| Some(figure(climb))).unwrap_or(Spread::point(0.0));
    let gate = |capacity: fn(&Climb) -> Option<f64>| {
        let share = maybe(&|climb| capacity(climb).map(|capacity| climb.need / capacity))?;
        Some(Gate { capacity: maybe(&capacity)?, share })
    };
    let reeved = &inputs.rig;
    let mut answer = Answer {
        rig_name: reeved.name,
        rig: reeved.rig.clone(),
        hauled: reeved.is_hauled(),
        hands: hands_at_it(inputs),
        measured: inputs.measured,
        assumed: inputs.assumed.clone(),
        hold: inputs.hold,
        posture: inputs.posture,
        turns: reeved.turns.clone(),
        drag: reeved.drag,
        weight: spread(|climb| climb.weight),
        mass: spread(|climb| climb.weight / crate::quantity::STANDARD_GRAVITY),
        advantage: spread(|climb| climb.advantage),
        ideal: reeved.motion.rope_per_rise.map_or(1.0, Fraction::in_f64),
        turn_efficiency: reeved.tested.as_ref().map(|losses| mean(&losses.turns)),
        need: spread(|climb| climb.need),
        arms: gate(|climb| climb.arms),
        grasp: gate(|climb| climb.hands),
        evidence: inputs.evidence().filter(|_| !reeved.is_hauled()),
        planning: planning(inputs),
        by_grip: maybe(&|climb| climb.by_grip),
        by_norm: maybe(&|climb| climb.by_norm),
        norm: inputs.norm,
        training: inputs.training,
        trunk: inputs.trunk,
        gloves: inputs.gloves,
        grip_is_entered: inputs.grip.is_some(),
        travel_is_own: inputs.hand_travel.is_some(),
        travel: maybe(&|climb| climb.travel),
        room: maybe(&|climb| climb.room),
        gain: maybe(&|climb| climb.gain),
        height: crate::quantity::Quantity::si(inputs.height),
        setback: inputs.setback,
        strokes: maybe(&|climb| climb.strokes),
        rope_handled: maybe(&|climb| climb.rope),
        stroke_work: maybe(&|climb| climb.stroke_work),
        work: maybe(&|climb| climb.work),
        power: maybe(&|climb| climb.power),
        speed: maybe(&|climb| climb.speed),
        climb_time: maybe(&|climb| climb.climb_time),
        time: maybe(&|climb| climb.time),
        anchor: spread(|climb| climb.anchor),
        tensions: tensions(&reeved.rig, &likely, &climbs),
        parts: parts(&reeved.rig),
        missing: missing(inputs),
        verdict: None,
        cautions: Vec::new(),
        samples: effort.count(),
        more: effort < crate::question::Effort::FULL,
    };
    answer.verdict = judged(&answer, &climbs);
    answer.cautions = cautions(inputs, &answer);
    answer
}

/// The pull to plan on where only sex and age are known.
fn planning(inputs: &Inputs) -> Option<f64> {
    let alone = inputs.evidence() == Some(Evidence::Norm) && !inputs.rig.is_hauled();
    if alone { Climb::of(inputs, &Planned).arms } else { None }
}

/// The geometric mean: what like turns would keep.
fn mean(turns: &[f64]) -> f64 {
    let logs = turns.iter().fold(0.0, |sum, kept| sum + float::ln(*kept));
    float::exp(logs / turns.len().max(1) as f64)
}

fn tensions(rig: &Rig, likely: &Climb, climbs: &[Climb]) -> Vec<Vec<Spread>> {
    let mut ropes = Vec::new();
    let mut at = 0;
    for rope in rig.ropes() {
        let mut spreads = Vec::new();
        for _ in 1..rope.stops.len() {
            let tension = |climb: &Climb| climb.tensions.get(at).copied().unwrap_or(0.0);
            spreads.push(spread_of(tension(likely), climbs.iter().map(tension).collect()));
            at += 1;
        }
        ropes.push(spreads);
    }
    ropes
}

/// Every part, and what happens when it fails; none where nothing holds the climber to begin with.
fn parts(rig: &Rig) -> Vec<PartFact> {
    let mut parts = Vec::new();
    if !is_held(rig) {
        return parts;
    }
    let single = single_parts(rig);
    for (at, rope) in rig.ropes().iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            if stop.can_fail() {
                let part = Part::Stop { rope: at, stop: place };
                let drop = drop_after(rig, part);
                parts.push(PartFact { rope: at, stop: Some(place), single: single.contains(&part), drop });
            }
        }
        let whole = Part::Rope { rope: at };
        parts.push(PartFact { rope: at, stop: None, single: single.contains(&whole), drop: None });
    }
    parts
}

fn missing(inputs: &Inputs) -> Vec<Missing> {
    let mut missing = Vec::new();
    if !inputs.rig.is_hauled() {
        match inputs.evidence() {
            _ if inputs.measured.is_none() && inputs.trunk == Trunk::Cervical => missing.push(Missing::Pull),
            None => missing.push(inputs.half_a_norm.map_or(Missing::Strength, Missing::OtherHalf)),
            _ => {}
        }
        if inputs.stature.is_none() && inputs.hand_travel.is_none() {
            missing.push(Missing::Stroke);
        }
    }
    // No field asks for these two yet, so no plan is ever complete. Whoever hauls is a second person.
    missing.push(Missing::WayDown);
    if !inputs.rig.is_hauled() {
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
    let drop = answer.parts.iter().filter_map(|part| part.drop).find(|drop| *drop > Length::metres(0.0));
    let single_hitch = answer.parts.iter().any(|part| part.single && part.is_hitch(&answer.rig));
    // One's own figure says what the turn eats; the kind's no longer does.
    let tested = answer.turn_efficiency.is_some();
    let sliding = |turn: &TurnFact| !turn.own && matches!(turn.kind, TurnKind::Carabiner | TurnKind::Ring);
    let hard = answer.arms.is_some_and(|gate| gate.share.likely > HARD);
    let mut cautions = vec![Caution::Arithmetic, Caution::OnePullOnly];
    let bark = |turn: &TurnFact| !turn.own && turn.kind == TurnKind::Bark;
    let mut when = |holds: bool, caution: Caution| {
        if holds {
            cautions.push(caution);
        }
    };
    let over_weight = inputs.measured.is_some_and(|measured| measured.pull > inputs.body_mass.weight());
    when(answer.parts.is_empty(), Caution::NothingHolds);
    // From a 5:1 up (judged).
    when(answer.hauled && answer.ideal >= 5.0, Caution::HaulHard);
    when(over_weight && !answer.hauled, Caution::PullOverWeight);
    when(matches!(answer.evidence, Some(Evidence::Grip | Evidence::Norm)) && !answer.hauled, Caution::Predicted);
    when(hard && !answer.hauled, Caution::HardPull);
    when(single_hitch, Caution::SingleHitch);
    when(answer.rig.stops().any(|stop| stop.backup && matches!(stop.what, What::Hitch(_))), Caution::StackedHitches);
    if let Some(by) = drop {
        // The drop is in proportion to the slack: geometry.
        let up_to = by * (inputs.rig.slack.high / inputs.rig.slack.likely);
        when(true, Caution::DropToKnot { by, up_to });
    }
    when(hitch_is_untended(inputs), Caution::UntendedHitch);
    when(!tested && answer.turns.iter().any(sliding), Caution::SlidingTurn);
    when(!tested && answer.turns.iter().any(bark), Caution::OverBark);
    // The mass that harnesses are tested with, and a rating past most, in kilograms.
    when(answer.mass.likely > 140.0, Caution::PastRatings);
    when(answer.mass.likely > 100.0 && answer.mass.likely <= 140.0, Caution::OverTestMass);
    cautions.extend([Caution::HangingStill, Caution::Surroundings, Caution::KneeHeight]);
    cautions
}

fn hitch_is_untended(inputs: &Inputs) -> bool {
    let reeved = &inputs.rig;
    let losses = Losses::none(&reeved.rig);
    statics(&reeved.rig, &reeved.motion, &losses, &Drive::Pull(1.0, Vec::new()))
        .is_ok_and(|forces| !untended_hitches(&reeved.rig, &reeved.motion, &forces).is_empty())
}
