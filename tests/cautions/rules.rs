//! Which cautions a plan calls for.

use super::plans::Plan;
use boughline::question::Question::{
    self, Advantage, CanIClimb, ComingDown, CutLength, CutPlan, Loads, Rescue, RopeLength,
};

/// One of these cautions stands in every answer to these questions whose plan is such a one.
pub(crate) struct Rule {
    pub(crate) any: &'static [&'static str],
    pub(crate) of: &'static [Question],
    pub(crate) when: fn(&Plan) -> bool,
}

const fn always(any: &'static [&'static str], of: &'static [Question]) -> Rule {
    Rule { any, of, when: |_| true }
}

const fn when(any: &'static [&'static str], of: &'static [Question], when: fn(&Plan) -> bool) -> Rule {
    Rule { any, of, when }
}

const CLIMBS: &[Question] = &[CanIClimb, Advantage];

/// Rigs on which somebody hauls themselves along the rope with hitches of their own.
pub(crate) fn is_self_haul(rig: &str) -> bool {
    rig.starts_with("tail") || rig.starts_with("haul-cord")
}

fn hauls_oneself(plan: &Plan) -> bool {
    plan.says("rig").is_some_and(is_self_haul)
}

fn is_unsteady(plan: &Plan) -> bool {
    plan.is("trunk", "unsteady") || plan.is("trunk", "cervical")
}

/// Legs that do not move, or a trunk that does not hold and legs of which nobody said that they carry.
fn hangs_still(plan: &Plan) -> bool {
    plan.is("legs", "none") || is_unsteady(plan) && !plan.is("legs", "full")
}

/// Whether a turn is of metal that the rope slides round, by its kind alone.
fn slides(plan: &Plan, turn: &str, own: &str) -> bool {
    (plan.is(turn, "ring") || plan.is(turn, "carabiner")) && !plan.has(own)
}

/// Neither a measured pull nor an injury after which nothing is guessed, but a grip, or age and sex.
fn is_guessed(plan: &Plan) -> bool {
    let guess = plan.has("gripLeft") || plan.has("gripRight") || plan.has("age") && plan.has("sex");
    guess && !plan.has("measuredPull") && !plan.is("trunk", "cervical") && !plan.is_hauled()
}

/// What winds round the rope.
fn is_hitch(plan: &Plan) -> bool {
    const NO_HITCH: &[&str] = &["foot-loop", "hand-loop", "bridge", "lanyard", "haul-cord", "own-hitch", "garda"];
    plan.says("cordUse").is_some_and(|cord_use| !NO_HITCH.contains(&cord_use))
}

fn under(plan: &Plan, id: &str, metres: f64) -> bool {
    plan.si(id).is_some_and(|si| si < metres)
}

fn is_below_the_climb(plan: &Plan) -> bool {
    plan.si("crotchHeight").zip(plan.si("climbHeight")).is_some_and(|(crotch, climb)| crotch <= climb)
}

/// A rope on which the anchor that was said counts.
fn is_anchored(plan: &Plan) -> bool {
    plan.says("rig").is_none_or(is_self_haul)
}

pub(crate) const RULES: &[Rule] = &[
    // The usual ones.
    always(&["arithmetic"], &[CanIClimb, Advantage, Loads, RopeLength, CutLength, CutPlan, ComingDown, Rescue]),
    always(&["surroundings"], CLIMBS),
    always(&["knee-height"], CLIMBS),
    always(&["hanging-still"], &[CanIClimb, Advantage, Loads, Rescue]),
    always(&["unseen"], &[Loads]),
    always(&["stopper"], &[RopeLength, ComingDown]),
    always(&["estimated-height"], &[RopeLength]),
    always(&["lay-it-out"], &[RopeLength]),
    always(&["measure-hank"], &[CutPlan]),
    always(&["tie-one-first"], &[CutPlan]),
    always(&["low-down-first"], &[ComingDown]),
    always(&["rehearse"], &[Rescue]),
    always(&["haul-hard"], &[Rescue]),
    always(&["half-own-weight"], &[Rescue]),
    always(&["after-rescue"], &[Rescue]),
    // The body.
    when(&["spinal-injury"], CLIMBS, is_unsteady),
    when(&["dysreflexia"], CLIMBS, is_unsteady),
    when(&["harness-clock"], &[CanIClimb, Advantage, Rescue], hangs_still),
    when(&["numb-skin"], CLIMBS, |plan| hangs_still(plan) || is_unsteady(plan)),
    when(&["thin-bones"], CLIMBS, hangs_still),
    when(&["one-hand"], &[CanIClimb], |plan| plan.is("climbArms", "one") && !plan.is_hauled()),
    when(&["predicted"], &[CanIClimb], is_guessed),
    when(&["pull-over-weight"], &[CanIClimb], |plan| {
        let pull = plan.si("measuredPull").zip(plan.si("bodyMass"));
        pull.is_some_and(|(pull, mass)| pull > mass * 9.81) && !plan.is_hauled()
    }),
    when(&["past-ratings"], &[CanIClimb], |plan| plan.least_mass() > 142.0),
    when(&["past-ratings", "over-test-mass"], &[CanIClimb], |plan| plan.least_mass() > 102.0),
    // The rig.
    when(&["single-hitch"], &[CanIClimb], |plan| hauls_oneself(plan) && plan.is_or_open("backup", "none")),
    when(&["stacked-hitches"], &[CanIClimb], |plan| hauls_oneself(plan) && plan.is("backup", "second-hitch")),
    when(&["drop-to-knot"], &[CanIClimb], |plan| plan.is("rig", "tail-3") && plan.is("backup", "tail-knot")),
    when(&["untended-hitch"], &[CanIClimb], |plan| plan.says("rig").is_some_and(|rig| rig.starts_with("haul-cord"))),
    when(&["haul-hard"], &[CanIClimb], |plan| plan.is("rig", "ground-5") || plan.is("rig", "ground-9")),
    when(&["over-bark"], &[CanIClimb], |plan| {
        let over = plan.says("rig").is_some_and(|rig| rig == "moving-rope" || rig.starts_with("ground"));
        over && plan.is("topTurn", "bark") && !plan.has("topEfficiency")
    }),
    when(&["sliding-turn"], &[CanIClimb], |plan| {
        let turns = [("upperTurn", "upperEfficiency"), ("lowerTurn", "lowerEfficiency")];
        plan.is("rig", "tail-3") && turns.iter().any(|(turn, own)| slides(plan, turn, own))
    }),
    when(&["crotch-too-low", "crotch-near"], &[CanIClimb], |plan| hauls_oneself(plan) && is_below_the_climb(plan)),
    // What parts carry.
    when(&["redirected"], &[Loads], |plan| plan.has("redirectAngle")),
    when(&["thin-cord"], &[Loads], |plan| hauls_oneself(plan) && under(plan, "hitchCord", 0.0079)),
    when(&["base-anchor"], &[Loads], |plan| {
        hauls_oneself(plan) && plan.says("anchor").is_some_and(|anchor| anchor.starts_with("base"))
    }),
    // The rope.
    when(&["base-anchor-load"], &[RopeLength], |plan| {
        is_anchored(plan) && plan.says("anchor").is_some_and(|anchor| anchor.starts_with("base"))
    }),
    when(&["plain-tie"], &[RopeLength], |plan| is_anchored(plan) && plan.is("anchor", "base")),
    when(&["lowering-helper"], &[RopeLength], |plan| is_anchored(plan) && plan.is("anchor", "base-lowerable")),
    when(&["not-lowerable"], &[RopeLength], |plan| {
        is_anchored(plan) && plan.says("anchor").is_some_and(|anchor| anchor.starts_with("canopy"))
    }),
    when(&["anchor-tail"], &[RopeLength], |plan| is_anchored(plan) && plan.is("anchor", "canopy")),
    when(&["cord-snags"], &[RopeLength], |plan| is_anchored(plan) && plan.is("anchor", "canopy-cord")),
    when(&["lock-release"], &[RopeLength], |plan| is_anchored(plan) && plan.is("anchor", "canopy-hitch")),
    when(&["link-shut"], &[RopeLength], |plan| is_anchored(plan) && plan.is("anchor", "canopy-link")),
    when(&["swing"], &[RopeLength], |plan| plan.si("footOffset").is_some_and(|aside| aside > 0.1)),
    when(&["cord-apart"], &[RopeLength], |plan| plan.is("rig", "haul-cord-3")),
    when(&["rope-ends-above", "rope-too-short"], &[RopeLength], |plan| {
        let short = plan.si("ropeOwned").zip(plan.si("crotchHeight"));
        is_anchored(plan) && short.is_some_and(|(rope, crotch)| rope < crotch - 3.0)
    }),
    // The cords.
    when(&["set-dress-test"], &[CutLength], |plan| is_hitch(plan) || plan.is("cordUse", "garda")),
    when(&["coils-by-trial"], &[CutLength], is_hitch),
    when(&["thin-life-cord"], &[CutLength], |plan| is_hitch(plan) && under(plan, "hitchCord", 0.0079)),
    when(&["thin-rope"], &[CutLength], |plan| is_hitch(plan) && under(plan, "ropeDiameter", 0.0109)),
    when(&["cord-melts"], &[CutLength], |plan| is_hitch(plan) && plan.is("cordFibre", "hmpe")),
    when(&["cord-heat"], &[CutLength], |plan| is_hitch(plan) && !plan.is("cordFibre", "hmpe")),
    when(&["cord-too-thick"], &[CutLength], |plan| {
        let ratio = plan.si("hitchCord").zip(plan.si("ropeDiameter")).map(|(cord, rope)| cord / rope);
        is_hitch(plan) && !plan.is("cordUse", "blakes") && ratio.is_some_and(|ratio| ratio > 0.85)
    }),
    when(&["no-life-line"], &[CutLength], |plan| {
        plan.is("cordUse", "foot-loop") || plan.is("cordUse", "hand-loop") || plan.is("cordUse", "haul-cord")
    }),
    when(&["usual-hanks"], &[CutPlan], |plan| !plan.has("hanks")),
    // The way down.
    when(&["test-the-brake"], &[ComingDown], hauls_oneself),
    when(&["stacked-hitches"], &[ComingDown], hauls_oneself),
    when(&["hitch-alone"], &[ComingDown], |plan| {
        hauls_oneself(plan) && plan.is("brake", "none") && !plan.has("brakeMeasured")
    }),
    when(&["unknown-hand"], &[ComingDown], |plan| {
        let guess = plan.has("gripLeft") || plan.has("gripRight") || plan.has("age") || plan.has("sex");
        hauls_oneself(plan) && !guess
    }),
    when(&["unknown-end"], &[ComingDown], |plan| hauls_oneself(plan) && !plan.has("ropeOwned")),
    when(&["slick-gloves"], &[ComingDown], |plan| plan.is("gloves", "slick")),
    when(&["cord-melts"], &[ComingDown], |plan| plan.is("cordFibre", "hmpe")),
    when(&["thin-life-cord"], &[ComingDown], |plan| under(plan, "hitchCord", 0.0079)),
    when(&["too-fast"], &[ComingDown], |plan| plan.si("descentSpeed").is_some_and(|speed| speed > 0.51)),
    when(&["climb-above-crotch"], &[ComingDown, Rescue], is_below_the_climb),
    when(&["let-down"], &[ComingDown], |plan| plan.is("rig", "ground-3")),
    // The rescue.
    when(&["two-people"], &[Rescue], |plan| hauls_oneself(plan) && !plan.is("secondPerson", "rescuer")),
    when(&["no-rescue"], &[Rescue], |plan| hauls_oneself(plan) && plan.is_or_open("secondPerson", "nobody")),
];
