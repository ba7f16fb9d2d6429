//! Cautions about a rope as sentences, each with the sources it rests on.

use super::CautionLine;
use super::caution::caution_line;
use super::figure::add_ids;
use super::rope_buy::about;
use super::rope_state::named;
use super::template::worded;
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
        Caution::RopeEndsAbove { by } => {
            let (words, length) = about(by, ["ends about", "may end as much as"], view);
            let text = worded(
                "On the way down the rope you have {} {} above the ground, stopper and all. Take a longer rope, or a lower crotch.",
                &[words, &length],
            );
            return line("rope-ends-above", true, text, &[GEOMETRY, JUDGED]);
        }
        Caution::RopeTooShort { state, by } => {
            let (words, length) = about(by, ["is about", "may be as much as"], view);
            let text = worded("The rope you have {} {} too short for {}.", &[words, &length, named(state).1]);
            return line("rope-too-short", true, text, &[GEOMETRY, JUDGED]);
        }
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
            "A base anchor nearly doubles the load on the crotch: plan on twice what hangs from it, and more in jerks.",
            &[RESCUE_MANUAL],
        ),
        Caution::PlainTie => (
            "plain-tie",
            true,
            "Nobody can be let down from a plain tie: that takes a device that pays out, and about 3 times the height of rope.",
            &[GEOMETRY, AFAG401],
        ),
        Caution::LoweringHelper => (
            "lowering-helper",
            true,
            "You are let down only by a device that pays out under load, by a helper at the foot who has rehearsed it with you low down, and only as far as the rope goes that lies ready there.",
            &[AFAG401, JUDGED],
        ),
        Caution::NotLowerable => (
            "not-lowerable",
            true,
            "From the ground nobody can let you down on this rope. Plan how somebody gets you down if you cannot move.",
            &[GEOMETRY, AFAG401],
        ),
        Caution::AnchorTail => (
            "anchor-tail",
            true,
            "The tail that pulls the anchor down must be locked, and out of the way of climber, branches and bystanders, while anyone is on the rope.",
            &[JUDGED],
        ),
        Caution::LockRelease => (
            "lock-release",
            true,
            "Lock the hitch that a cord undoes, and keep its cord out of reach of climber, branches and bystanders, while anyone is on the rope: one pull on it drops them.",
            &[JUDGED],
        ),
        Caution::CordSnags => (
            "cord-snags",
            true,
            "A retrieval cord snags on branches and feet: see that it runs free, and keep it out of reach of climber and bystanders while anyone is on the rope.",
            &[JUDGED],
        ),
        Caution::LinkShut => (
            "link-shut",
            true,
            "Screw the quick link shut with the rope at its long ends, and look at it again before each climb.",
            &[JUDGED],
        ),
        Caution::Swing => (
            "swing",
            true,
            "A rope that starts away from under its crotch swings you into the stem as you leave the ground. Start below it, or have somebody ease you across.",
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
    line(id, grave, text.to_owned(), rests_on)
}

fn line(id: &'static str, grave: bool, text: String, rests_on: &[Source]) -> CautionLine {
    let mut sources = Vec::new();
    add_ids(&mut sources, rests_on);
    CautionLine { id, grave, text, sources }
}
