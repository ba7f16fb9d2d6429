//! Friction: turns, and ropes round something round.

use super::formula::formula;
use super::table::{ids, range};
use super::unit::{RAD, RATIO, one};
use super::{Chapter, Table};
use crate::gear::TurnKind;
use crate::quantity::Angle;
use crate::reeving::{Backup, Drive, LEAST_KEPT, Losses, Phase, RigName, kinematics, raised, statics};
use crate::source::{CAPSTAN, DELANEY, GEOMETRY, JUDGED};
use crate::tree::{BARK_FRICTION, friction, ratio};

/// What one unit of pull lifts on the rope's tail rigged 3:1.
fn tail(lower: f64, upper: f64, drag: f64) -> Option<f64> {
    let rig = RigName::TailThree.rig(Backup::None).ok()?;
    let motion = kinematics(&rig, &Phase::pull(&rig)).ok()?;
    let losses = Losses { turns: vec![lower, upper], hitches: vec![1.0, drag] };
    Some(statics(&rig, &motion, &losses, &Drive::Pull(1.0, vec![])).ok()?.load.low)
}

pub(super) fn chapter() -> Chapter {
    let mut turns = Table::new(
        "turns",
        "What half a turn keeps of the tension: behind it over before it, while hauling",
        &["turn", "likely (range)", "sources"],
        &[],
    );
    for kind in TurnKind::ALL {
        let cells = vec![kind.named().noun.to_owned(), range(kind.kept(), 1.0), ids(kind.sources())];
        turns = turns.row(cells, kind.sources());
    }
    Chapter::new(
        "friction",
        "Friction and turns",
        "Every turn keeps a share of the tension. Published shares disagree, so each is shown with its range, and sampled from it.",
        vec![
            formula("advantage", "Real advantage of the rope’s own tail rigged 3:1")
                .words("Start with one unit of pull at the hand. Each turn that rope passes keeps its share; every strand that pulls on the climber counts. So for every rig: the model below works it out, and this row is what it comes to for one of them.")
                .symbols(RATIO, "A = 1 + p + p × q × h")
                .term("A", "weight lifted by one unit of pull", RATIO)
                .term("p", "kept by the upper turn, nearest the hand", RATIO)
                .term("q", "kept by the lower turn", RATIO)
                .term("h", "kept past the lower hitch while it slides up", RATIO)
                .from(&[DELANEY, GEOMETRY])
                .used("The pull that is needed, on every page.")
                .example(&[("p", 0.5), ("q", 0.9), ("h", 0.9)], |x| {
                    tail(x.of("q"), x.of("p"), x.of("h")).unwrap_or(f64::NAN)
                }),
            formula("capstan", "Taut over slack tension of a rope that slips round something round")
                .words("Friction adds up along the arc, so the ratio grows as the exponential of friction times angle. The same for bark, a bar and a ring.")
                .symbols(RATIO, "k = exp(μ × β)")
                .term("k", "taut tension over slack tension", RATIO)
                .figure("μ", "friction of rope on bark", BARK_FRICTION, RATIO, &[CAPSTAN, JUDGED])
                .term("β", "angle that the rope lies round", RAD)
                .from(&[GEOMETRY, CAPSTAN])
                .used("Bark and rings as turns, the brake, turns at the foot of the tree, the load of a base anchor.")
                .example(&[("β", std::f64::consts::PI)], |x| ratio(BARK_FRICTION.likely, Angle::radians(x.of("β")))),
            formula("friction-from-a-pair", "Friction from a load that is raised and lowered over the same host")
                .words("The logarithm of the two tensions’ ratio, over twice the angle. One figure for friction is an average: raising alone and lowering alone give quite different ones.")
                .symbols(RATIO, "μ = ln(T / t) / (2 × β)")
                .term("μ", "friction", RATIO)
                .term("T", "tension that raises the load, in any unit", RATIO)
                .term("t", "tension that lowers it, in the same unit", RATIO)
                .term("β", "angle that the rope lies round", RAD)
                .from(&[CAPSTAN, GEOMETRY])
                .used("How the figures for metal and sawn timber were read off their source; no answer reckons with it.")
                .example(&[("T", 125.0), ("t", 37.0), ("β", std::f64::consts::PI)], |x| {
                    friction(x.of("T"), x.of("t"), Angle::radians(x.of("β")))
                }),
            formula("own-test", "What a turn keeps after your own test of a rig")
                .words("One reading and several unknown turns: so what every turn keeps is raised to one and the same power, the one that gives the advantage you measured. What the sliding hitch drags is taken to be in the reading. The same power then holds for the same turns on other rigs.")
                .symbols(RATIO, "e₁ = max(e ^ n, f)")
                .term("e₁", "kept by the turn, after the test", RATIO)
                .term("e", "kept by the turn, before", RATIO)
                .term("n", "the power that gives the advantage measured", RATIO)
                .figure("f", "a turn keeps at least so much", one(LEAST_KEPT), RATIO, &[JUDGED])
                .from(&[GEOMETRY])
                .used("Every page, once you enter your own test.")
                .example(&[("e", 0.9), ("n", 1.5)], |x| raised(x.of("e"), x.of("n"))),
        ],
    )
    .table(turns)
    .note(
        "which end counts",
        "Friction counts from its unfavourable end: little kept when something is hauled, much kept when something is held or let down, and none for what an anchor carries. Where no rope passes a turn its ratio may be anything from what it keeps to one over that: each part is then planned on its worse end.",
        &[GEOMETRY],
    )
    .note(
        "an allowance a sheave",
        "Naval training manuals (read) charge a tenth of the load for every sheave instead. That rule is 6 % (3 sheaves) to 14 % (7) harsher than turns that keep 0.9 each; it is not used.",
        &[],
    )
}
