//! How near the crotch a climber comes.

use super::stroke::stack;
use super::things::{BELOW, SEAT, STACK, UNKNOWN, drawn};
use super::{Caution, Plan};
use crate::chance::Pick;
use crate::climber::SEAT_BELOW;
use crate::field::Spread;
use crate::quantity::{Length, Quantity};

/// How far the attachment stays below the crotch on a rig without an upper hitch to push up, in metres.
///
/// # Source
/// Judged: one hitch or knot and its connector, right under the crotch.
pub const GAP_ALONE: Spread = Spread::new(0.15, 0.25, 0.40);

/// The start and the top of one climb, in metres; unknown as far as it hangs on a crotch whose height is.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Top {
    /// How far the attachment stays below the crotch.
    pub(crate) gap: f64,
    /// How far the seat hangs below the attachment.
    pub(crate) below: f64,
    /// How high the seat is at the start.
    pub(crate) start: f64,
    /// How high it is at the top at the most.
    pub(crate) seat: f64,
    /// How much of the height to climb is left there; less than nothing where there is room to spare.
    pub(crate) left: f64,
    /// How far it is then above the edge.
    pub(crate) over_edge: f64,
}

impl Top {
    pub(super) fn of(plan: &Plan, pick: &dyn Pick) -> Self {
        let setting = &plan.setting;
        let gap = match plan.rig.upper_turns() {
            Some(turns) => stack(plan, pick, turns),
            None => drawn(pick, STACK, &GAP_ALONE),
        };
        let below = drawn(pick, BELOW, &SEAT_BELOW);
        let start = drawn(pick, SEAT, &setting.seat);
        let seat = setting.crotch.unwrap_or(UNKNOWN) - gap - below;
        Self {
            gap,
            below,
            start,
            seat,
            left: start + plan.height.si() - seat,
            over_edge: seat - setting.edge.unwrap_or(UNKNOWN),
        }
    }
}

/// How near the crotch the climber comes, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TopOut {
    /// How high the crotch is, where that is known.
    pub crotch: Option<f64>,
    /// How high the edge is that they want to get over, if there is one.
    pub edge: Option<f64>,
    /// How high they sit at the start.
    pub start: Spread,
    /// How far the attachment stays below the crotch, with the hitches closed up under it.
    pub gap: Spread,
    /// How many pairs of turns beyond the first lengthen the stack; none where there is no stack.
    pub extra_pairs: Option<usize>,
    /// How high the seat is there above the ground.
    pub seat: Option<Spread>,
    /// How much of the height to climb is left there; less than nothing where there is room to spare.
    pub left: Option<Spread>,
    /// How far the seat is there above the edge; less than nothing where it stays below.
    pub over_edge: Option<Spread>,
}

impl TopOut {
    /// Whether the crotch most likely does not let the seat come as high as it is to.
    #[must_use]
    pub fn is_too_low(&self) -> bool {
        self.left.is_some_and(|left| left.likely > 0.0) || self.over_edge.is_some_and(|over| over.likely < 0.0)
    }

    /// What a plan says of it.
    pub(super) fn said(plan: &Plan) -> Self {
        let unknown = Spread::point(0.0);
        Self {
            crotch: plan.setting.crotch,
            edge: plan.setting.edge,
            start: unknown,
            gap: unknown,
            extra_pairs: plan.rig.upper_turns().map(|turns| turns.saturating_sub(1)),
            seat: None,
            left: None,
            over_edge: None,
        }
    }
}

/// What to be careful about near the crotch.
pub(super) fn at_the_top(top: &TopOut) -> Vec<Caution> {
    let mut cautions = Vec::new();
    if let Some(left) = top.left
        && left.high > 0.0
    {
        let (by, up_to) = (Length::metres(left.likely), Length::metres(left.high));
        cautions.push(if left.likely > 0.0 {
            Caution::CrotchTooLow { by, up_to }
        } else {
            Caution::CrotchNear { up_to }
        });
    }
    if let Some(over) = top.over_edge
        && over.low < 0.0
    {
        let (by, up_to) = (Length::metres(-over.likely), Length::metres(-over.low));
        cautions.push(if over.likely < 0.0 { Caution::BelowEdge { by, up_to } } else { Caution::EdgeNear { up_to } });
    }
    cautions
}
