//! One climb, with one value for everything that varies: the likely one, or a sample's.

use super::cycle::Cycle;
use super::forces::{all_up, forces, jerk, lift, needed};
use super::harness_clock::hanging;
use super::lasting::Lasting;
use super::strength::{arms, hands};
use super::stretch::Slack;
use super::stroke::Stroke;
use super::things::{HELPING, NORM, UNKNOWN, drawn};
use super::top_out::Top;
use super::{Evidence, Plan};
use crate::chance::Pick;
use crate::climber::TWENTIETH;
use crate::field::Spread;
use crate::quantity::Quantity;
use crate::reeving::{BodyKind, Forces};

/// What one climb comes to, in SI; a figure that is not known is [`UNKNOWN`].
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Climb {
    pub(crate) weight: f64,
    pub(crate) advantage: f64,
    /// What helpers beside the driving hand lift.
    pub(crate) helped: f64,
    pub(crate) need: f64,
    /// What the arms pull through a stroke: the climber's, or the helpers'.
    pub(crate) arms: f64,
    /// The share of it that one pull takes.
    pub(crate) arms_share: f64,
    /// What the climber's hands hold.
    pub(crate) hands: f64,
    /// The share of it that one pull takes.
    pub(crate) hands_share: f64,
    /// What was measured gives, beside better evidence.
    pub(crate) by_pull: f64,
    /// What the grip that was entered foretells, beside better evidence.
    pub(crate) by_grip: f64,
    /// What sex and age foretell, beside better evidence.
    pub(crate) by_norm: f64,
    pub(crate) travel: f64,
    /// How far the upper hitch can stand above the lower one, where the reach is known.
    pub(crate) room: f64,
    pub(crate) gain: f64,
    /// Endless where nothing is gained.
    pub(crate) strokes: f64,
    /// What the rope gives at the start, and what it takes to take that up.
    pub(crate) slack: Slack,
    /// The strokes to the height and those before it that raise nobody.
    pub(crate) all_strokes: f64,
    /// The time of the latter without a rest.
    pub(crate) slack_time: f64,
    pub(crate) top: Top,
    /// The rope of all strokes.
    pub(crate) rope: f64,
    /// The work of one stroke.
    pub(crate) stroke_work: f64,
    /// The work of all the rope.
    pub(crate) work: f64,
    /// The power of the arms at the cadence that was said.
    pub(crate) power: f64,
    /// How fast the climber rises at it.
    pub(crate) speed: f64,
    /// How long the climb takes at it.
    pub(crate) climb_time: f64,
    pub(crate) time: f64,
    /// What all pulls together take.
    pub(super) lasting: Lasting,
    /// How long the climb takes with those rests.
    pub(crate) lasting_time: f64,
    /// From leaving the seat to being back.
    pub(crate) hanging: f64,
    /// The tension of every strand, ropes in order.
    pub(crate) tensions: Vec<f64>,
    pub(crate) anchor: f64,
}

/// Picks the likely value of everything, and of the grip that sex and age foretell the 20th percentile.
pub(crate) struct Planned;

impl Pick for Planned {
    fn of(&self, _: u32, spread: Spread) -> f64 {
        spread.likely
    }

    fn deviations(&self, thing: u32) -> f64 {
        if thing == NORM { TWENTIETH } else { 0.0 }
    }
}

impl Climb {
    pub(crate) fn of(plan: &Plan, pick: &dyn Pick) -> Self {
        let weight = all_up(plan.body_mass, &plan.kit_mass, pick);
        let (forces, help) = forces(&plan.rig, pick);
        let need = needed(weight, forces.as_ref(), help.as_ref());
        let stroke = Stroke::of(plan, pick);
        let cycle = Cycle::of(plan, pick);
        let strokes = if stroke.gain > 0.0 {
            plan.height.si() / stroke.gain
        } else if stroke.gain <= 0.0 {
            f64::INFINITY
        } else {
            UNKNOWN
        };
        let all = |each: f64| times(strokes, each);
        let hauled = plan.rig.is_hauled();
        let rope = if hauled { plan.height.si() * plan.rig.rope_per_rise() } else { all(stroke.taken) };
        let (stroke_work, work) = (stroke.taken * need, rope * need);
        let top = Top::of(plan, pick);
        let slack = Slack::of(plan, pick, weight, stroke.taken, &top);
        let all_strokes = strokes + slack.strokes;
        // Strokes a second.
        let rate = plan.cadence.map_or(UNKNOWN, |cadence| cadence / 60.0);
        let mut tensions = Vec::new();
        if let Some(forces) = &forces {
            for strands in &forces.strands {
                tensions.reserve(strands.len());
                for span in strands {
                    tensions.push(span.high * need);
                }
            }
        }
        if let Some(help) = &help {
            for (tension, span) in tensions.iter_mut().zip(help.strands.iter().flatten()) {
                *tension += span.high;
            }
        }
        let tree = plan.rig.rig.body(BodyKind::Tree);
        let on_tree = |forces: &Option<Forces>| {
            tree.and_then(|tree| forces.as_ref()?.bodies.get(tree)).map_or(0.0, |span| -span.low)
        };
        let on_anchor = on_tree(&forces) * need + on_tree(&help);
        let by = |evidence: Option<Evidence>| {
            arms(plan, pick, plan.hands(), evidence.filter(|_| !hauled)).unwrap_or(UNKNOWN)
        };
        let best = plan.evidence();
        let beside = |other: Evidence| by(Some(other).filter(|_| best != Some(other)));
        let arms = plan.arms_times * if hauled { drawn(pick, HELPING, &plan.helper) } else { by(best) };
        let hands = if hauled { None } else { hands(plan, pick) }.unwrap_or(UNKNOWN);
        let all_work = times(all_strokes, stroke_work);
        let lasting = Lasting::of(plan, pick, [need / arms, need / hands], &cycle, all_strokes, all_work);
        let lasting_time = times(all_strokes, cycle.pull + lasting.rest);
        Self {
            weight,
            advantage: lift(forces.as_ref()),
            helped: if help.is_some() { lift(help.as_ref()) } else { UNKNOWN },
            need,
            arms,
            arms_share: need / arms,
            hands,
            hands_share: need / hands,
            by_pull: beside(Evidence::Pull),
            by_grip: beside(Evidence::Grip),
            by_norm: beside(Evidence::Norm),
            travel: stroke.travel,
            room: stroke.room,
            gain: stroke.gain,
            strokes,
            slack_time: times(slack.strokes, cycle.pull + cycle.reset),
            slack,
            all_strokes,
            top,
            rope,
            stroke_work,
            work,
            power: stroke_work * rate,
            speed: if stroke.gain < 0.0 { 0.0 } else { stroke.gain } * rate,
            climb_time: strokes / rate,
            time: all(cycle.pull + cycle.reset),
            lasting_time,
            hanging: hanging(lasting_time, plan.height.si()),
            lasting,
            tensions,
            anchor: on_anchor * jerk(pick),
        }
    }

    /// Whether a stroke gains nothing, as far as the stroke is known.
    pub(crate) fn is_stuck(&self) -> bool {
        self.gain <= 0.0
    }
}

/// What so many strokes come to; endless strokes of nothing are endless too.
fn times(strokes: f64, each: f64) -> f64 {
    if strokes.is_infinite() { strokes } else { strokes * each }
}
