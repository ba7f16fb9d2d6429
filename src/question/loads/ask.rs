//! From inputs to an answer.

use super::answer::{Answer, Caution, Doing, InState};
use super::carried::carried;
use super::gear::Standing;
use super::posed::Posed;
use super::{Inputs, PieceKind};
use crate::ascent::all_up;
use crate::chance::{Draws, Effort, Likely, spread_of};
use crate::gear::{FULL_BODY_LIMIT, SEAT_HARNESS_LIMIT};
use crate::quantity::Force;
use crate::reeving::is_held;

/// What every piece carries in every state, what a slip comes to, and what bending says of the limb.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every likely figure is that of the likely
/// values; low and high are the 5th and 95th percentiles of the samples. Each piece is planned on its worse end where
/// friction leaves its load open, and a backup on all that it would take over.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    let effort = effort.min(Effort::SIDE_BY_SIDE);
    let mut states = Vec::new();
    for doing in Doing::ALL {
        states.push(InState { doing: *doing, carried: carried(inputs, *doing, effort) });
    }
    let slip =
        Posed::of(inputs, Doing::Slipping).ok().and_then(|posed| inputs.slip(posed.share(inputs)?, posed.drop(inputs)));
    let mut weights = Vec::new();
    for sample in 0..effort.count() {
        weights.push(all_up(inputs.body_mass, &inputs.kit_mass, &Draws::sample(sample)));
    }
    let limb = inputs.limb.under(most_on_the_crotch(&states), inputs.heights.is_some());
    let mut answer = Answer {
        rig_name: inputs.rig.name,
        at_the_foot: inputs.at_the_foot,
        weight: spread_of(all_up(inputs.body_mass, &inputs.kit_mass, &Likely), weights),
        hauled: inputs.rig.is_hauled(),
        held: is_held(&inputs.rig.rig),
        heights: inputs.heights,
        states,
        slip,
        limb,
        thinner_than_forearm: inputs.limb.is_thinner_than_forearm(),
        thinner_than_bole: inputs.limb.is_thinner_than_bole(),
        assumed: inputs.assumed().to_vec(),
        cautions: Vec::new(),
        samples: effort.count(),
        more: effort < Effort::SIDE_BY_SIDE,
    };
    answer.cautions = cautions(inputs, &answer);
    answer
}

/// The greatest peak on the crotch in any state.
fn most_on_the_crotch(states: &[InState]) -> f64 {
    let mut most = 0.0;
    for carried in states.iter().filter_map(|state| state.carried.as_ref().ok()) {
        for load in carried.loads.iter().filter(|load| load.piece.kind == PieceKind::Crotch) {
            most = if load.peak.high > most { load.peak.high } else { most };
        }
    }
    most
}

fn cautions(inputs: &Inputs, answer: &Answer) -> Vec<Caution> {
    let mut short = false;
    for carried in answer.states.iter().filter_map(|state| state.carried.as_ref().ok()) {
        short |= carried.loads.iter().any(|load| load.standing == Standing::Short);
    }
    let (mut hardest, limits) = (0.0, [SEAT_HARNESS_LIMIT, FULL_BODY_LIMIT].map(Force::in_newtons));
    for state in answer.states.iter().filter(|state| state.doing.is_drop()) {
        let loads = state.carried.as_ref().map_or(&[][..], |carried| &carried.loads);
        for load in loads.iter().filter(|load| load.piece.kind == PieceKind::Harness) {
            hardest = if load.peak.high > hardest { load.peak.high } else { hardest };
        }
    }
    let [seat, any] = limits.map(|limit| hardest > limit);
    let rope = inputs.gear.strength(PieceKind::Rope);
    let weak = rope.is_some_and(|rope| rope.new < crate::gear::LIFE_LINE.force.in_newtons());
    let mut cautions = Vec::new();
    let mut when = |holds: bool, caution: Caution| {
        if holds {
            cautions.push(caution);
        }
    };
    when(true, Caution::Arithmetic);
    when(true, Caution::Unseen);
    when(!answer.held, Caution::NothingHolds);
    when(short, Caution::Short);
    when(inputs.gear.is_thin(), Caution::ThinCord);
    when(weak, Caution::WeakLine);
    when(any, Caution::PastHarness);
    when(seat && !any, Caution::HardCatch);
    when(answer.slip.is_some(), Caution::LowCatch);
    when(answer.slip.is_some(), Caution::NoFuse);
    when(answer.at_the_foot, Caution::BaseAnchor);
    when(inputs.redirect.is_some(), Caution::Redirected);
    when(true, Caution::HangingStill);
    cautions
}
