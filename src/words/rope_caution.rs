//! Cautions about a rope as sentences, each with the sources it rests on.

use super::CautionLine;
use super::caution::caution_line;
use super::figure::add_ids;
use crate::quantity::{System, View};
use crate::question::can_i_climb;
use crate::question::rope_length::Caution;
use crate::source::{AFAG401, GEOMETRY, JUDGED, KNOT_PAGES, OREGON, RESCUE_MANUAL, Source};

/// The caution as people read it.
pub(super) fn rope_caution(caution: Caution, view: View) -> CautionLine {
    let us = view.system == System::Us;
    let (id, grave, text, rests_on): (_, _, _, &[Source]) = match caution {
        // The same on every page.
        Caution::Arithmetic => return caution_line(can_i_climb::Caution::Arithmetic, view),
        Caution::Stopper => (
            "stopper",
            true,
            if us {
                "Tie a stopper in the end before anyone is on the rope, so that the end cannot run through the hitch. It takes about 9 in of rope, and a tail of at least 4 in."
            } else {
                "Tie a stopper in the end before anyone is on the rope, so that the end cannot run through the hitch. It takes about 23 cm of rope, and a tail of at least 10 cm."
            },
            &[OREGON, KNOT_PAGES],
        ),
        Caution::ShortEnd => (
            "short-end",
            true,
            if us {
                "What is left for the stopper is less than it takes with its tail, about 13 in."
            } else {
                "What is left for the stopper is less than it takes with its tail, about 33 cm."
            },
            &[KNOT_PAGES],
        ),
        Caution::EstimatedHeight => (
            "estimated-height",
            true,
            "A height judged from the ground is an estimate. Measure it with the throw line that hangs over the crotch.",
            &[JUDGED],
        ),
        Caution::LayItOut => (
            "lay-it-out",
            true,
            "Lay the rope out and measure it before anyone climbs; no label and no sum stands in for that.",
            &[JUDGED],
        ),
        Caution::BaseAnchorLoad => (
            "base-anchor-load",
            true,
            "A base anchor nearly doubles the load on the crotch: plan on twice what hangs from it, and more in jerks. Nobody can be lowered from a plain tie: that takes one that pays out, and about 3 times the height of rope.",
            &[RESCUE_MANUAL],
        ),
        Caution::NotLowerable => (
            "not-lowerable",
            true,
            "From the ground nobody can lower you off a canopy anchor. Plan how somebody gets you down if you cannot move.",
            &[GEOMETRY, AFAG401],
        ),
        Caution::AnchorTail => (
            "anchor-tail",
            true,
            "The tail that pulls the anchor down must be locked, and out of the way of climber, branches and bystanders, while anyone is on the rope.",
            &[JUDGED],
        ),
        Caution::CordApart => {
            ("cord-apart", false, "The haul cord is a rope of its own and is not reckoned here.", &[])
        }
        Caution::NoAnchor => (
            "no-anchor",
            false,
            "The rope of this rig only runs over the crotch: the anchor that was chosen counts for nothing here.",
            &[GEOMETRY],
        ),
    };
    let mut sources = Vec::new();
    add_ids(&mut sources, rests_on);
    CautionLine { id, grave, text: text.to_owned(), sources }
}
