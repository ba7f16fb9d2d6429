//! The cords that the rig of a cutting plan takes: on the plan, or what is missing for them.

use super::error::message;
use super::template::said;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::cut_plan::RigCord;

/// Whether the cords are on the plan, and how long; or what is missing for them.
pub(super) fn cord_note(cords: &RigCord, view: View) -> String {
    let count = Spread::point(cords.count as f64);
    let noun = cords.cord_use.map_or("hitch cord", |cord_use| cord_use.named().noun);
    match &cords.made {
        Ok(told) => said(
            "On the plan for the rig, as long as it may have to be: {0} x {} of {M}.",
            &[&count, &Spread::point(told.cut.total.high)],
            &[noun],
            view,
        ),
        Err(faults) => {
            let mut text = said(
                "Not on the plan, unless you entered it, though the rig takes it: {0} x {}.",
                &[&count],
                &[noun],
                view,
            );
            if cords.cord_use.is_none() {
                text.push_str(" Choose a hitch as what the cord is for.");
            }
            for fault in faults {
                text.push(' ');
                text.push_str(&message(fault, view));
            }
            text
        }
    }
}
