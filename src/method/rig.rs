//! The model of a rig.

use super::formula::formula;
use super::table::digits;
use super::unit::{KG, N, RATIO, usual};
use super::{Chapter, Table};
use crate::climber::{BODY_MASS, KIT_MASS};
use crate::draft::Draft;
use crate::gear::TurnKind;
use crate::hitch::HITCH_DRAG;
use crate::quantity::{Mass, STANDARD_GRAVITY};
use crate::question::{CLIMB_HEIGHT, Effort, can_i_climb};
use crate::reeving::{Backup, Drive, Losses, Phase, RIG, Rig, RigName, is_held, kinematics, statics};
use crate::source::{COMMON_PRACTICE, DELANEY, GEOMETRY, GRAVITY, JUDGED};

/// The rope taken for each metre of rise.
fn rope_per_rise(rig: &Rig) -> Option<f64> {
    Some(kinematics(rig, &Phase::pull(rig)).ok()?.rope_per_rise?.in_f64())
}

/// What one unit of pull lifts, with every turn that rope passes keeping so much and no drag.
fn lifts(rig: &Rig, kept: f64) -> Option<f64> {
    let motion = kinematics(rig, &Phase::pull(rig)).ok()?;
    let mut losses = Losses::none(rig);
    losses.turns.fill(kept);
    Some(statics(rig, &motion, &losses, &Drive::Pull(1.0, vec![])).ok()?.load.low)
}

fn rigs() -> Table {
    const HEADS: &[&str] =
        &["rig", "rope per rise = ideal advantage", "every turn 0.55", "0.75", "0.90", "holds with hands off"];
    let mut rigs = Table::new(
        "rigs",
        "What one unit of pull lifts on each rig, with all turns alike (the crotch too) and no drag",
        HEADS,
        &[GEOMETRY],
    );
    for name in RigName::CATALOGUE {
        let Ok(rig) = name.rig(Backup::None) else { continue };
        let three = |share: f64| lifts(&rig, share).map_or(String::new(), |lift| digits((lift * 1e3).round() / 1e3));
        let mut cells = vec![name.named().noun.to_owned(), rope_per_rise(&rig).map_or(String::new(), digits)];
        cells.extend([0.55, 0.75, 0.90].map(three));
        cells.push(if is_held(&rig) { "yes" } else { "no" }.to_owned());
        rigs = rigs.row(cells, &[]);
    }
    rigs
}

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "rig",
        "The model of a rig",
        "There is no formula for a rig. A rig is data: bodies (crotch, upper hitch, climber, ground) in order of height, and ropes as lists of the stops they make: tied, round a turn, through a hitch, in a hand, free. Motion, forces and who is held are worked out from that, by three programs that are written apart so that each can contradict the others.",
        vec![
            formula("rope-per-rise", "Rope that the hand takes for each metre of rise, on the rope’s own tail")
                .words("Between fixed stops every rope keeps its length, and a hitch that grips lets none past. Solved in exact fractions: how far every body moves, and how much rope passes each turn and which way.")
                .symbols(RATIO, "r = 2 × n + 1")
                .term("r", "rope taken over rise", RATIO)
                .term("n", "pairs of turns: one at the harness and one at the upper hitch", RATIO)
                .from(&[GEOMETRY])
                .used("Strokes, rope handled, and the ideal advantage: without friction the load over the pull is the same number (virtual work). Ten thousand random rigs are tried on it.")
                .example(&[("n", 2.0)], |x| {
                    let name = if x.of("n") < 3.0 { RigName::TailFive } else { RigName::TailSeven };
                    name.rig(Backup::None).ok().and_then(|rig| rope_per_rise(&rig)).unwrap_or(f64::NAN)
                }),
            formula("needed-pull", "Pull that one stroke needs, here on the rope’s own tail rigged 3:1")
                .words("The weight of the climber with all they carry, less what helpers lift, over the real advantage. The taut side of each turn is the one that rope runs towards; massless bodies balance; the climber’s balance gives the load.")
                .symbols(N, "A = 1 + p + p × q × h\nP = (m + k) × g / A")
                .term("P", "pull at the hand", N)
                .term("m", "body mass", KG)
                .figure("k", "kit and clothing", usual(&KIT_MASS.row), KG, &[JUDGED])
                .figure("g", "standard gravity", crate::field::Spread::point(STANDARD_GRAVITY), super::Shown::si("m/s²"), &[GRAVITY])
                .figure("p", "kept by the upper turn, a pulley with bearings", TurnKind::BearingPulley.kept(), RATIO, TurnKind::BearingPulley.sources())
                .figure("q", "kept by the lower turn, the same", TurnKind::BearingPulley.kept(), RATIO, TurnKind::BearingPulley.sources())
                .figure("h", "kept past the sliding hitch", usual(&HITCH_DRAG.row), RATIO, &[JUDGED])
                .from(&[GEOMETRY, DELANEY])
                .used("Can I climb this? Which advantage? And the load of every part while climbing.")
                .example(&[("m", 80.0)], |x| {
                    let mut draft = Draft::new().with(&BODY_MASS, Mass::kilograms(x.of("m")));
                    draft = draft.with(&RIG, RigName::TailThree).set(CLIMB_HEIGHT.row.id, "11 m");
                    let inputs = can_i_climb::Inputs::of(&draft);
                    inputs.map_or(f64::NAN, |inputs| can_i_climb::ask(&inputs, Effort::samples(50)).need.likely)
                }),
        ],
    )
    .table(rigs())
    .note(
        "who is held",
        "A climber is held when, with every hand off and every hitch gripping, some set of tensions balances every body, with none negative and none in a strand that ends free. A part is single when taking it away (a tie or hitch lets its rope slide, a turn lets its rope go, a rope is cut) leaves no such set. If what catches has slack, the answer says after how far a drop. A rope is one part however many strands it shows.",
        &[GEOMETRY],
    )
    .note(
        "states",
        "Climbing, resting, changing over, going down, being lowered, being hauled: each is solved with its own hitches gripping and its own hand. Where a state cannot be, the answer says why not and what would make it possible. Where two grips could share, each is planned at the full load.",
        &[GEOMETRY],
    )
    .note(
        "measured on ropes",
        "A rope-only 3:1 that was measured at a real advantage of 2.28 to 2.31 comes to 0.737 to 0.750 a turn, hitch drag included.",
        &[COMMON_PRACTICE],
    )
}
