//! What the rig of a cutting plan takes beside its cords, a line for each thing.

use super::template::said;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::cut_plan::Gear;

/// What the rig takes beside its cords, a line for each thing.
pub(super) fn gear_lines(gear: &Gear, view: View) -> Vec<String> {
    let count = |count: usize| Spread::point(count as f64);
    let mut lines = Vec::new();
    for (kind, many) in &gear.turns {
        lines.push(said("{0} x {} for the rope to turn round", &[&count(*many)], &[kind.named().noun], view));
    }
    if gear.connectors > 0 {
        lines.push(said(
            "connectors, {0} at the most: one for each hitch, pulley and ring, fewer where two share one",
            &[&count(gear.connectors)],
            &[],
            view,
        ));
    }
    lines
}
