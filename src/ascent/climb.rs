//! One climb, with one value for everything that varies: the likely one, or a sample's.

use super::{Evidence, Plan, Reeved};
use crate::chance::Pick;
use crate::climber::{
    ANOTHER_DAY, Arms, EXTRA_PAIR, Gloves, Grip, Hold, ONE_ARM, PULL_OVER_GRIP, PULL_TIME, RESET_TIME, TWENTIETH,
    Trunk, for_arms, held_by, predicted_pull, reach, share_used,
};
use crate::field::Spread;
use crate::quantity::{Mass, Quantity};
use crate::reeving::{BodyKind, Drive, Forces, Fraction, Losses, RigName, statics};

/// What one climb comes to, in SI; a figure that is not known is [`UNKNOWN`].
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
    /// The tension of every strand, ropes in order.
    pub(crate) tensions: Vec<f64>,
    pub(crate) anchor: f64,
}

/// No number, and so is what is worked out from it; only a room that is not known ends no stroke.
pub(crate) const UNKNOWN: f64 = f64::NAN;

// Each thing that varies has a number of its own for ever: see `Draws`.
const KIT: u32 = 0;
const THROUGH_THE_STROKE: u32 = 2;
const SHARE_OF_REACH: u32 = 3;
const REACH: u32 = 4;
const BACK: u32 = 5;
const STACK: u32 = 6;
const PULLING: u32 = 7;
const RESETTING: u32 = 8;
const ROUGHNESS: u32 = 9;
const GRIP: u32 = 10;
const ONE_OF_TWO: u32 = 11;
const DAY: u32 = 12;
const HELPING: u32 = 13;
const PERSON: u32 = 14;
const NORM: u32 = 15;
const TRUNK_SHARE: u32 = 16;
const HOLDS: u32 = 20;
const TURNS: u32 = 100;
const HITCHES: u32 = 200;

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

/// The peak load on the anchor while climbing, over the load standing still (judged).
pub const CLIMBING_PEAK: Spread = Spread::new(1.2, 1.5, 2.0);

/// How many hands pull at a time.
pub(crate) fn hands_at_it(plan: &Plan) -> Arms {
    let one_to_one = || !plan.rig.is_hauled() && rope_per_rise(plan) <= 1.0;
    match plan.rig.name {
        RigName::HandOverHand => Arms::One,
        RigName::Own if one_to_one() => Arms::One,
        _ => plan.arms,
    }
}

impl Climb {
    pub(crate) fn of(plan: &Plan, pick: &dyn Pick) -> Self {
        let weight = all_up(plan.body_mass, &plan.kit_mass, pick);
        let (forces, help) = forces(plan, pick);
        let advantage = forces.as_ref().map_or(0.0, |forces| forces.load.low);
        let helped = help.as_ref().map_or(0.0, |help| help.load.low);
        // Nobody pulls less than nothing.
        let need = (weight - helped).max(0.0) / advantage;
        let stroke = Stroke::of(plan, pick);
        let resets = plan.rig.upper_turns().is_some();
        let time = drawn(pick, PULLING, &PULL_TIME) + if resets { drawn(pick, RESETTING, &RESET_TIME) } else { 0.0 };
        let strokes = if stroke.gain > 0.0 {
            plan.height.si() / stroke.gain
        } else if stroke.gain <= 0.0 {
            f64::INFINITY
        } else {
            UNKNOWN
        };
        let rope_per_rise = rope_per_rise(plan);
        // Endless strokes of nothing are endless too.
        let all = |each: f64| if strokes.is_infinite() { strokes } else { strokes * each };
        let hauled = plan.rig.is_hauled();
        let rope = if hauled { plan.height.si() * rope_per_rise } else { all(stroke.taken) };
        let stroke_work = stroke.taken * need;
        // Strokes a second.
        let rate = plan.cadence.map_or(UNKNOWN, |cadence| cadence / 60.0);
        let mut tensions = Vec::new();
        if let Some(forces) = &forces {
            for span in forces.strands.iter().flatten() {
                tensions.push(span.high * need);
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
            arms(plan, pick, hands_at_it(plan), evidence.filter(|_| !hauled)).unwrap_or(UNKNOWN)
        };
        let best = plan.evidence();
        let beside = |other: Evidence| by(Some(other).filter(|_| best != Some(other)));
        let arms = if hauled { drawn(pick, HELPING, &plan.helper) } else { by(best) };
        let hands = if hauled { None } else { hands(plan, pick) }.unwrap_or(UNKNOWN);
        Self {
            weight,
            advantage,
            helped: if help.is_some() { helped } else { UNKNOWN },
            need,
            arms,
            arms_share: need / arms,
            hands,
            hands_share: need / hands,
            by_grip: beside(Evidence::Grip),
            by_norm: beside(Evidence::Norm),
            travel: stroke.travel,
            room: stroke.room,
            gain: stroke.gain,
            strokes,
            rope,
            stroke_work,
            work: rope * need,
            power: stroke_work * rate,
            speed: if stroke.gain < 0.0 { 0.0 } else { stroke.gain } * rate,
            climb_time: strokes / rate,
            time: all(time),
            tensions,
            anchor: on_anchor * jerk(pick),
        }
    }

    /// The need over the tighter of what arms and hands give; more than one where one pull fails. None when strength
    /// is not known.
    pub(crate) fn strain(&self) -> Option<f64> {
        let Self { arms_share: arms, hands_share: hands, .. } = *self;
        if arms.is_nan() { None } else { Some(if hands > arms { hands } else { arms }) }
    }

    /// Whether a stroke gains nothing, as far as the stroke is known.
    pub(crate) fn is_stuck(&self) -> bool {
        self.gain <= 0.0
    }
}

/// A value of a spread, which is copied here alone.
#[inline(never)]
fn drawn(pick: &dyn Pick, thing: u32, spread: &Spread) -> f64 {
    pick.of(thing, *spread)
}

/// The rope that the hand takes for each metre of rise.
fn rope_per_rise(plan: &Plan) -> f64 {
    plan.rig.motion.rope_per_rise.map_or(1.0, Fraction::in_f64)
}

/// What each turn and each sliding hitch keeps.
pub(crate) fn losses(reeved: &Reeved, pick: &dyn Pick) -> Losses {
    let mut losses = Losses::none(&reeved.rig);
    for (kept, (place, turn)) in losses.turns.iter_mut().zip(reeved.places.iter().zip(&reeved.turns)) {
        *kept = drawn(pick, TURNS + place, &turn.kept);
    }
    for (kept, thing) in losses.hitches.iter_mut().zip(HITCHES..) {
        *kept = drawn(pick, thing, &reeved.drag);
    }
    losses
}

/// The weight of the climber and all they carry, in newtons.
pub(crate) fn all_up(body_mass: Mass, kit_mass: &Spread, pick: &dyn Pick) -> f64 {
    (body_mass + Mass::kilograms(drawn(pick, KIT, kit_mass))).weight().in_newtons()
}

/// How much more the anchor carries while somebody climbs in jerks than while they hang still.
pub(crate) fn jerk(pick: &dyn Pick) -> f64 {
    drawn(pick, ROUGHNESS, &CLIMBING_PEAK)
}

/// The forces for a unit of pull, which a catalogue rig always has, and those of helpers alone: forces add up.
fn forces(plan: &Plan, pick: &dyn Pick) -> (Option<Forces>, Option<Forces>) {
    let reeved = &plan.rig;
    let losses = losses(reeved, pick);
    let by = |pull: f64, help: Vec<f64>| statics(&reeved.rig, &reeved.motion, &losses, &Drive::Pull(pull, help)).ok();
    let help = if reeved.help.is_empty() { None } else { by(0.0, reeved.help.clone()) };
    (by(1.0, Vec::new()), help)
}

/// What the arms pull through a stroke, by the best evidence or by a given one.
fn arms(plan: &Plan, pick: &dyn Pick, pulls_with: Arms, evidence: Option<Evidence>) -> Option<f64> {
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
    // Arms that take turns are as strong as the weaker.
    let both = if pulls_with == Arms::One { 2.0 * grip.used(Arms::One) } else { grip.used(Arms::Two) };
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
fn hands(plan: &Plan, pick: &dyn Pick) -> Option<f64> {
    // Each way of holding varies on its own, and is the same hand then and now.
    let over_grip = |hold: Hold, gloves| drawn(pick, HOLDS + hold as u32, &hold.over_grip(gloves));
    // A loop round the hand holds without a grip, so it proves only itself.
    let proves = |held: &Hold| *held != Hold::HandLoop || plan.hold == Hold::HandLoop;
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
    held_by(hands_at_it(plan), now, plan.grip.or_else(reckoned), proof, then)
}

struct Stroke {
    travel: f64,
    room: f64,
    gain: f64,
    /// The rope that is really taken: less than the travel where the room ends the stroke.
    taken: f64,
}

impl Stroke {
    /// The upper hitch is moved up as far as it goes before every stroke. A helper who hauls has no stroke to reckon.
    fn of(plan: &Plan, pick: &dyn Pick) -> Self {
        if plan.rig.is_hauled() {
            return Self { travel: UNKNOWN, room: UNKNOWN, gain: UNKNOWN, taken: UNKNOWN };
        }
        let per_rise = rope_per_rise(plan);
        let (mut travel, mut room) = (UNKNOWN, UNKNOWN);
        if let Some(stature) = plan.stature {
            let reach = reach(stature.si(), pick.deviations(REACH));
            travel = reach.to_chest * drawn(pick, SHARE_OF_REACH, &share_used(plan.posture, plan.hold));
            if let Some(turns) = plan.rig.upper_turns() {
                let stack = drawn(pick, STACK, &plan.stack) + EXTRA_PAIR * turns.saturating_sub(1) as f64;
                room = (reach.to_lap - stack).max(0.0);
            }
        }
        if let Some(own) = plan.hand_travel {
            travel = own.si();
        }
        let by_pull = travel / per_rise;
        // A room that is not known ends no stroke.
        let rise = if room < by_pull { room } else { by_pull };
        let gain = rise - drawn(pick, BACK, &plan.setback);
        Self { travel, room, gain, taken: rise * per_rise }
    }
}
