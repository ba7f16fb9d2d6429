//! Cautions about loads as sentences, each with the sources it rests on.

use super::CautionLine;
use super::caution::caution_line;
use super::figure::add_ids;
use crate::quantity::View;
use crate::question::can_i_climb;
use crate::question::loads::Caution;
use crate::source::{
    AFAG401, ANSI_Z133, ATTAWAY, CALIFORNIA, GEOMETRY, HITCH_SLIP, JUDGED, OSHA, RESCUE_MANUAL, SEAT_REVIEW, Source,
};

/// The caution as people read it.
pub(super) fn load_caution(caution: Caution, hauled: bool, view: View) -> CautionLine {
    let (id, text, rests_on): (_, &str, &[Source]) = match caution {
        // The same on every page.
        Caution::Arithmetic => return caution_line(can_i_climb::Caution::Arithmetic, view),
        Caution::NothingHolds if hauled => return caution_line(can_i_climb::Caution::NothingHolds, view),
        Caution::NothingHolds => return caution_line(can_i_climb::Caution::NothingGrips, view),
        Caution::HangingStill => return caution_line(can_i_climb::Caution::HangingStill, view),
        Caution::Unseen => (
            "unseen",
            "These are the single parts this model sees; it does not see a worn, misrigged or cross-loaded part. A connector loaded across its gate, or with the gate open, may bear as little as 5 to 7 kN (1,100 to 1,600 lbf).",
            &[GEOMETRY, JUDGED],
        ),
        Caution::Short => (
            "short",
            "A part may be loaded past what it bears as it is rigged. Do not leave the ground on it.",
            &[GEOMETRY],
        ),
        Caution::ThinCord => (
            "thin-cord",
            "The cord of your hitches is under 8 mm, the least for a hitch that somebody hangs on.",
            &[AFAG401],
        ),
        Caution::WeakLine => (
            "weak-line",
            "Until its label says otherwise, the rope may bear less than a tree worker’s line, 5,400 lbf or 24 kN. Its maker says what it is for.",
            &[ANSI_Z133, CALIFORNIA],
        ),
        Caution::HardCatch => (
            "hard-catch",
            "A catch near the top, of a slip or by a backup, may stop you with more than the 4 kN (900 lbf) that a seat harness should ever pull. Keep the slack out: tend the hitch at every stroke, most of all near the top.",
            &[SEAT_REVIEW, OSHA, ATTAWAY],
        ),
        Caution::PastHarness => (
            "past-harness",
            "A catch near the top, of a slip or by a backup, may stop you with more than the 8 kN (1,800 lbf) that any harness may ever pull: that injures. Keep the slack out, tie the knot again often, and keep more rope out above you.",
            &[OSHA, ATTAWAY],
        ),
        Caution::Redirected => (
            "redirected",
            "The limb of the redirect is not held against bending here. If it breaks you drop by the rope that it took up.",
            &[GEOMETRY],
        ),
        Caution::LowCatch => (
            "low-catch",
            "Near the ground the rope gives more than there is room for: you may land before it holds you.",
            &[GEOMETRY, ATTAWAY],
        ),
        Caution::NoFuse => (
            "no-fuse",
            "Some hitches slip at 7 to 9.5 kN (1,600 to 2,100 lbf), others hold to 18 kN (4,000 lbf), and one that slips can melt. Never count on a hitch as a fuse.",
            &[HITCH_SLIP],
        ),
        Caution::BaseAnchor => (
            "base-anchor",
            "Made fast at the foot, the rope loads the crotch with close to twice what hangs from it, and more in jerks. Over rough bark a tie that was drawn tight can pull more than hangs there, and at rest each part is planned on that. What is cut or chafed at the foot drops you.",
            &[RESCUE_MANUAL],
        ),
    };
    let mut sources = Vec::new();
    add_ids(&mut sources, rests_on);
    CautionLine { id, grave: true, text: text.to_owned(), sources }
}
