//! Cautions about coming down as sentences, each with the sources it rests on.

use super::CautionLine;
use super::caution::caution_line;
use super::cord_caution::cord_caution;
use super::figure::add_ids;
use super::rope_caution::rope_caution;
use crate::gear::Fibre;
use crate::quantity::View;
use crate::question::coming_down::Caution;
use crate::question::{can_i_climb, cut_length, rope_length};
use crate::source::{AFAG401, COMMON_PRACTICE, EN_341, FIBRE_HEAT, GEOMETRY, HUR, JUDGED, MUNTER, SUMMIT, Source};

/// The caution as people read it.
pub(super) fn descent_caution(caution: Caution, view: View) -> CautionLine {
    let (id, text, rests_on): (_, &str, &[Source]) = match caution {
        // The same on every page.
        Caution::Arithmetic => return caution_line(can_i_climb::Caution::Arithmetic, view),
        Caution::StackedHitches => return caution_line(can_i_climb::Caution::StackedHitches, view),
        Caution::Stopper => return rope_caution(rope_length::Caution::Stopper, view),
        Caution::RopeEndsAbove { by } => return rope_caution(rope_length::Caution::RopeEndsAbove { by }, view),
        Caution::UnknownEnd => (
            "unknown-end",
            "Whether your rope reaches the ground is not known here: that takes the height of the crotch, the anchor and the length of the rope you have. Enter what is missing.",
            &[GEOMETRY],
        ),
        Caution::LowDownFirst => (
            "low-down-first",
            "Change over and come down close to the ground first, with somebody trained beside you, until every step goes by itself.",
            &[COMMON_PRACTICE, AFAG401],
        ),
        Caution::HitchAlone => (
            "hitch-alone",
            "A hitch in the hand alone runs hot and is hard to control. Add friction below it before you let it slide.",
            &[COMMON_PRACTICE],
        ),
        Caution::WeakHand => (
            "weak-hand",
            "Your weaker hand may not hold you on this friction. Add more, and try low down whether it stops you with one hand.",
            &[SUMMIT, JUDGED],
        ),
        Caution::UnknownHand => (
            "unknown-hand",
            "What your hand holds is not known. The largest hand holds about three times what the smallest does.",
            &[SUMMIT],
        ),
        Caution::SlickGloves => {
            ("slick-gloves", "Smooth gloves slip on the rope. Come down bare-handed or in rubbered ones.", &[HUR])
        }
        Caution::ClimbAboveCrotch => return climb_above_crotch(),
        Caution::SlipsAndMelts => return cord_caution(cut_length::Caution::Melts(Fibre::Hmpe), view),
        Caution::ThinLifeCord => return cord_caution(cut_length::Caution::ThinLifeCord, view),
        Caution::PerhapsHot => (
            "perhaps-hot",
            "Where more of the heat stays in the cord of your hitch than is likely here, it gets hotter than its fibre bears. Stop often and feel it.",
            &[FIBRE_HEAT, JUDGED],
        ),
        Caution::HotCord => (
            "hot-cord",
            "The cord of your hitch likely gets so hot that its fibre changes: such a cord is to be given up. Go slower, stop often, and let the added friction take most of your weight.",
            &[FIBRE_HEAT, JUDGED],
        ),
        Caution::MeltingCord => (
            "melting-cord",
            "The cord of your hitch likely melts on this way down, and may drop you. Go slower, stop often, and let the added friction take most of your weight.",
            &[FIBRE_HEAT, JUDGED],
        ),
        Caution::TooFast => (
            "too-fast",
            "That is faster than anybody should come down on a hitch. Figures for devices are no leave.",
            &[JUDGED, EN_341],
        ),
        Caution::TestTheBrake => (
            "test-the-brake",
            "Friction changes with rope, wear, wet and ice, and with where the hand is. Test yours low down, each time, before you trust it.",
            &[MUNTER, JUDGED],
        ),
        Caution::LetDown => (
            "let-down",
            "Whoever hauled you must be able to let you down, slowly, by friction and not by hand.",
            &[JUDGED],
        ),
    };
    let mut sources = Vec::new();
    add_ids(&mut sources, rests_on);
    CautionLine { id, grave: true, text: text.to_owned(), sources }
}

/// The height to come down from does not fit the tree.
pub(super) fn climb_above_crotch() -> CautionLine {
    let mut sources = Vec::new();
    add_ids(&mut sources, &[GEOMETRY]);
    let text = "The height to climb is more than that of the crotch: one of the two is wrong.";
    CautionLine { id: "climb-above-crotch", grave: true, text: text.to_owned(), sources }
}
