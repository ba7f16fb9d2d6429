//! What the rope gives at the start: the first rope that is pulled takes that up, and raises nobody.

use super::Plan;
use super::things::{MODULUS, UNKNOWN, drawn};
use super::top_out::Top;
use crate::chance::Pick;
use crate::field::Spread;
use crate::gear::{RopeKind, stretch};
use crate::quantity::{Force, Length, Quantity};
use crate::rope::is_anchored;

/// What the rope gives at the start of one climb, in metres.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Slack {
    /// The rope above the climber.
    pub(crate) above: f64,
    /// How far it gives under them.
    pub(crate) stretch: f64,
    /// The rope that the hands take before anybody rises.
    pub(crate) rope: f64,
    /// How many strokes that is; unknown where a helper hauls.
    pub(crate) strokes: f64,
}

impl Slack {
    /// For a climber of a weight, in newtons, whose strokes take so much rope.
    pub(super) fn of(plan: &Plan, pick: &dyn Pick, weight: f64, taken: f64, top: &Top) -> Self {
        let setting = &plan.setting;
        let above = match setting.crotch {
            Some(crotch) => (crotch - top.start - top.below).max(0.0),
            // The lowest crotch under which the climb ends.
            None => plan.height.si() + top.gap,
        };
        let modulus = drawn(pick, MODULUS, &setting.rope.modulus());
        let one = stretch(Force::newtons(weight), Length::metres(above), modulus).si();
        let stretch = one * strands(plan);
        let rope = stretch * plan.rig.rope_per_rise();
        // A stroke that takes nothing never takes it up.
        let strokes = if taken <= 0.0 { f64::INFINITY } else { rope / taken };
        Self { above, stretch, rope, strokes: if taken.is_nan() { UNKNOWN } else { strokes } }
    }
}

/// As how many strands of the rope above, each with the climber's whole weight, the rope gives: from a crotch down to a tie
/// at the foot it is as long again.
fn strands(plan: &Plan) -> f64 {
    let to_the_foot = plan.setting.anchor.is_at_the_foot() && is_anchored(&plan.rig.rig);
    if to_the_foot { 2.0 * plan.rig.give } else { plan.rig.give }
}

/// What the rope gives at the start, and what taking that up comes to; in SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TakenUp {
    /// The kind of rope.
    pub rope_kind: RopeKind,
    /// As how many strands it gives that bear the whole weight.
    pub strands: f64,
    /// The rope above the climber.
    pub above: Spread,
    /// How far it gives.
    pub stretch: Spread,
    /// The rope that is pulled before anybody rises.
    pub rope: Spread,
    /// The work of pulling it as if each stroke took the whole pull.
    pub work: Spread,
    /// The strokes that raise nobody.
    pub strokes: Option<Spread>,
    /// Their time without a rest.
    pub time: Option<Spread>,
    /// Those and the strokes to the height.
    pub all_strokes: Option<Spread>,
}

impl TakenUp {
    /// What a plan says of it.
    pub(super) fn said(plan: &Plan) -> Self {
        let unknown = Spread::point(0.0);
        Self {
            rope_kind: plan.setting.rope,
            strands: strands(plan),
            above: unknown,
            stretch: unknown,
            rope: unknown,
            work: unknown,
            strokes: None,
            time: None,
            all_strokes: None,
        }
    }
}
