//! From inputs to an answer.

use super::answer::{Answer, Caution, Cord, Hot, Slowest};
use super::inputs::Inputs;
use crate::ascent::all_up;
use crate::chance::{Draws, Effort, Likely, Pick, spread_of};
use crate::climber::Gloves;
use crate::descent::{AIR, Brake, NoChangeOver, SENSIBLE_SPEED, change_over, hand_share};
use crate::field::Spread;
use crate::gear::Fibre;

/// What a metre of rope weighs, in kilograms, and what warms it: judged, 75 g of nylon, from 55 to 90.
pub const ROPE_A_METRE: f64 = 0.075;

/// Whether and how somebody comes down again.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. The hand is planned on the least friction and
/// the heat on none that leaves. More friction never asks more of the hand, and more weight never less.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    let effort = effort.min(Effort::SIDE_BY_SIDE);
    let weight_of = |pick: &dyn Pick| all_up(inputs.body_mass, &inputs.kit_mass, pick);
    let ratio = inputs.measured.map_or_else(|| inputs.brake.ratio(inputs.turns), Spread::point);
    let plan = hand_share(&inputs.rig.rig, 1.0 / ratio.low, inputs.top.high);
    let least = hand_share(&inputs.rig.rig, 1.0 / ratio.high, inputs.top.low);
    let (mut weights, mut hands, mut shares, mut holding) = (Vec::new(), Vec::new(), Vec::new(), 0_u32);
    for sample in 0..effort.count() {
        let draws = Draws::sample(sample);
        let weight = weight_of(&draws);
        weights.push(weight);
        if let Some(hand) = inputs.hand.holds(&draws) {
            hands.push(hand);
            if let Some(plan) = plan {
                shares.push(weight * plan / hand);
                holding += u32::from(hand >= weight * plan);
            }
        }
    }
    let weight = spread_of(weight_of(&Likely), weights);
    let likely = inputs.hand.holds(&Likely);
    let hand = likely.map(|likely| spread_of(likely, hands));
    let share_of_hand = plan.zip(likely).map(|(plan, hand)| spread_of(weight.likely * plan / hand, shares));
    let sensible = sensible(inputs, weight);
    let speed = inputs.speed.unwrap_or(sensible.0);
    let likely = inputs.heat(weight.likely, speed);
    let cord = inputs.cord.map(|cord| hot(inputs, cord, weight, speed));
    let mut answer = Answer {
        weight,
        brake: inputs.brake,
        turns: inputs.turns,
        ratio,
        is_measured: inputs.measured.is_some(),
        hold: plan.map(|share| weight.scaled(share)),
        run: least.map(|share| weight.scaled(share)),
        hand,
        hand_share: share_of_hand,
        chance: hand.map(|_| f64::from(holding) / f64::from(effort.count())),
        height: inputs.height,
        speed,
        stops: inputs.stops,
        rest: inputs.rest,
        time: likely.time(),
        energy: weight.scaled(inputs.height),
        power: weight.scaled(speed),
        rope_rise: likely.rope_rise(ROPE_A_METRE, Fibre::Nylon.warmth().specific_heat),
        cord,
        sensible,
        steps: change_over(&inputs.rig.rig),
        end: inputs.end,
        assumed: inputs.assumed().to_vec(),
        cautions: Vec::new(),
        samples: effort.count(),
        more: effort < Effort::SIDE_BY_SIDE,
    };
    answer.cautions = cautions(inputs, &answer);
    answer
}

/// How hot the cord of the hitch gets at a speed.
fn hot(inputs: &Inputs, (diameter, length): (f64, f64), weight: Spread, speed: f64) -> Cord {
    let (share, fibre) = (inputs.share, inputs.fibre);
    let at = |weight: f64, share: f64| {
        let heat = inputs.heat(weight, speed);
        (heat.cord_rise(share, diameter, length, fibre), heat.face_rise(share, diameter, length, fibre))
    };
    let [low, likely, high] = [at(weight.low, share.low), at(weight.likely, share.likely), at(weight.high, share.high)];
    let warmth = fibre.warmth();
    // Past where it fails there is no cord to get hotter.
    let in_air = |low: f64, likely: f64, high: f64| {
        let [low, likely, high] =
            [AIR.low + low, AIR.likely + likely, AIR.high + high].map(|hot| hot.min(warmth.fails));
        Spread::new(low, likely, high)
    };
    let even = in_air(low.0, likely.0, high.0);
    let face = in_air(low.1, likely.1, high.1);
    let standing = match (face.likely, face.high) {
        (likely, _) if likely >= warmth.fails => Hot::Fails,
        // What is reckoned to be just under it is under it.
        (likely, _) if likely >= warmth.changes + 1e-6 => Hot::Changes,
        (_, most) if most >= warmth.changes => Hot::Perhaps,
        _ => Hot::Under,
    };
    Cord { diameter, length, fibre, share, even, face, standing }
}

/// How fast at the most: never more than is sensible, and slower where the cord would likely get too hot.
fn sensible(inputs: &Inputs, weight: Spread) -> (f64, Slowest) {
    /// Slower than this nobody keeps moving (judged).
    const CRAWL: f64 = 0.05;
    let Some((diameter, length)) = inputs.cord else { return (SENSIBLE_SPEED, Slowest::Sensible) };
    let changes = inputs.fibre.warmth().changes;
    let is_cool = |speed: f64| {
        let heat = inputs.heat(weight.likely, speed);
        AIR.likely + heat.face_rise(inputs.share.likely, diameter, length, inputs.fibre) < changes
    };
    if is_cool(SENSIBLE_SPEED) {
        return (SENSIBLE_SPEED, Slowest::Sensible);
    }
    if !is_cool(CRAWL) {
        return (CRAWL, Slowest::NeedsStops);
    }
    let (mut cool, mut hot) = (CRAWL, SENSIBLE_SPEED);
    for _ in 0..20 {
        let middle = f64::midpoint(cool, hot);
        if is_cool(middle) {
            cool = middle;
        } else {
            hot = middle;
        }
    }
    (cool, Slowest::Heat)
}

fn cautions(inputs: &Inputs, answer: &Answer) -> Vec<Caution> {
    let mut cautions = vec![Caution::Arithmetic];
    let mut when = |holds: bool, caution: Caution| {
        if holds {
            cautions.push(caution);
        }
    };
    when(inputs.crotch.is_some_and(|crotch| inputs.height >= crotch), Caution::ClimbAboveCrotch);
    let by_oneself = answer.hold.is_some();
    let alone = answer.brake == Brake::None && !answer.is_measured;
    let weak = answer.hold.zip(answer.hand).is_some_and(|(hold, hand)| hand.low < hold.high);
    let standing = answer.cord.map(|cord| cord.standing);
    when(answer.steps == Err(NoChangeOver::Hauled), Caution::LetDown);
    when(by_oneself && alone, Caution::HitchAlone);
    when(by_oneself && weak, Caution::WeakHand);
    when(by_oneself && answer.hand.is_none(), Caution::UnknownHand);
    when(inputs.gloves == Gloves::Slick, Caution::SlickGloves);
    when(inputs.fibre == Fibre::Hmpe, Caution::SlipsAndMelts);
    when(inputs.thin, Caution::ThinLifeCord);
    when(standing == Some(Hot::Perhaps), Caution::PerhapsHot);
    when(standing == Some(Hot::Changes), Caution::HotCord);
    when(standing == Some(Hot::Fails), Caution::MeltingCord);
    when(answer.speed > SENSIBLE_SPEED, Caution::TooFast);
    when(by_oneself, Caution::TestTheBrake);
    if let Some(Some(by)) = answer.end {
        when(true, Caution::RopeEndsAbove { by });
    }
    when(true, Caution::Stopper);
    when(answer.end.is_none() && by_oneself, Caution::UnknownEnd);
    when(true, Caution::LowDownFirst);
    when(by_oneself, Caution::StackedHitches);
    cautions
}
