//! What is proved of a cutting plan, and how far off it is at the most.

use super::template::{said, worded};
use crate::cord::cutting::Best;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::cut_plan::KindPlan;

/// What is proved, and how far off it is at the most.
pub(super) fn proof(plan: &KindPlan, best: &Best, view: View) -> String {
    let (verb, as_little) =
        if plan.is_priced { ("costs less", "costs as much") } else { ("buys less", "buys as much") };
    let mut text = if best.proved {
        worded("Proved: no plan {}, and none that {} takes fewer hanks.", &[verb, as_little])
    } else if best.least_cost < best.cost {
        let (slot, unit) = if plan.is_priced { ("{2}", 100.0) } else { ("{M}", 10_000.0) };
        let amount = |tenths: u32| said(slot, &[&Spread::point(f64::from(tenths) / unit)], &[], view);
        let (least, own) = (amount(best.least_cost), amount(best.cost));
        worded(
            "Not proved: this is {}, and whether any plan comes to less is not known, only that none comes to less than {}.",
            &[&own, &least],
        )
    } else {
        let numbers = [&Spread::point(best.plan.hanks.len() as f64), &Spread::point(f64::from(best.least_hanks))];
        said(
            "Proved: no plan {}. Not proved: whether one takes fewer than these {0} hanks; none takes fewer than {0}.",
            &numbers,
            &[verb],
            view,
        )
    };
    if best.proved {
        text += if best.remainder_proved {
            " Nor does any of those leave a longer single piece."
        } else {
            " Whether one of those leaves a longer single piece is not proved."
        };
    }
    text + if plan.more { " Going on may still change it." } else { "" }
}
