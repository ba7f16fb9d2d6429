//! From inputs to an answer.

use super::answer::{Answer, Caution, Hauling, Unload};
use super::before::before;
use super::inputs::Inputs;
use super::ways::{best, ways};
use crate::ascent::{HARNESS_CLOCK, SecondPerson, all_up};
use crate::chance::{Draws, Effort, Likely, Pick, spread_of};
use crate::descent::{Kept, RESCUE_CLOCK, hauls, lowering_share};
use crate::field::Spread;
use crate::gear::TurnKind;
use crate::reeving::BodyKind;
use crate::rope::Anchor;

/// Who can get the climber to the ground, and in what time.
///
/// # Guarantees
/// Total, and the same bits for the same inputs on every machine. The hand at the foot is planned on the least friction,
/// hauling on the most. More friction never asks more of the hand that lets down.
#[must_use]
pub fn ask(inputs: &Inputs) -> Answer {
    let weight_of = |pick: &dyn Pick| all_up(inputs.body_mass, &inputs.kit_mass, pick);
    let mut weights = Vec::new();
    for sample in 0..Effort::QUICK.count() {
        weights.push(weight_of(&Draws::sample(sample)));
    }
    let weight = spread_of(weight_of(&Likely), weights);
    let foot_ratio = inputs.foot_brake.ratio(inputs.foot_turns);
    let pays_out = inputs.pays_out();
    let kept =
        Kept { crotch: inputs.top.high, brake: 1.0 / foot_ratio.low, other: TurnKind::BearingPulley.kept().high };
    let lowering = lowering_share(&inputs.rig.rig, kept).ok().filter(|_| pays_out).map(|share| weight.scaled(share));
    let hauls = hauling(inputs, weight);
    let ways = ways(inputs, &hauls);
    let best = best(&ways);
    let quickest = best.and_then(|best| ways.get(best)?.total);
    let in_time = quickest.is_some_and(|total| total.likely <= RESCUE_CLOCK);
    let mut answer = Answer {
        weight,
        height: inputs.height,
        rescue_clock: RESCUE_CLOCK,
        harness_clock: inputs.hangs_still().then_some(HARNESS_CLOCK),
        ways,
        best,
        lowering,
        foot_brake: inputs.foot_brake,
        foot_ratio,
        lowering_rope: inputs.lowering_rope(),
        comes_down: pays_out || inputs.anchor == Some(Anchor::Base),
        hauls,
        helper: inputs.helper,
        unload: unload(inputs),
        before: before(inputs, in_time),
        assumed: inputs.assumed().to_vec(),
        cautions: Vec::new(),
    };
    let tight = in_time && quickest.is_some_and(|total| total.high > RESCUE_CLOCK);
    let alone = !inputs.rig.rig.is_hauled() && inputs.second_person != Some(SecondPerson::Rescuer);
    for (holds, caution) in [
        (true, Caution::Arithmetic),
        (inputs.crotch.is_some_and(|crotch| inputs.height >= crotch), Caution::ClimbAboveCrotch),
        (!in_time, Caution::NoRescue),
        (tight, Caution::Tight),
        (alone, Caution::TwoPeople),
        (true, Caution::HangingStill),
        (answer.harness_clock.is_some(), Caution::HarnessClock),
        (true, Caution::Rehearse),
        (true, Caution::HaulHard),
        (true, Caution::HalfOwnWeight),
        (true, Caution::AfterRescue),
    ] {
        if holds {
            answer.cautions.push(caution);
        }
    }
    answer
}

/// What each helper's rig takes of those who haul.
fn hauling(inputs: &Inputs, weight: Spread) -> Vec<Hauling> {
    let mut list = Vec::new();
    for haul in hauls(inputs.top, TurnKind::BearingPulley.kept()) {
        let Spread { low, likely, high } = haul.share;
        let pull = Spread::new(weight.low * low, weight.likely * likely, weight.high * high);
        let people = pull.scaled(1.0 / inputs.helper.likely);
        list.push(Hauling { haul, pull, rope: haul.rope * inputs.height, people });
    }
    list
}

/// What takes the weight off a hitch that has jammed.
fn unload(inputs: &Inputs) -> Vec<Unload> {
    let rig = &inputs.rig.rig;
    let hauled = rig.is_hauled();
    let carriage = rig.body(BodyKind::Carriage).is_some();
    let mut list = Vec::new();
    for (holds, what) in [
        (carriage && !hauled, Unload::OneMorePull),
        (!inputs.hangs_still() && !hauled, Unload::FootLoop),
        (!hauled, Unload::SpareCord),
        (rig.helped_on_the_tail().is_some(), Unload::HelperOnTheTail),
    ] {
        if holds {
            list.push(what);
        }
    }
    list
}
