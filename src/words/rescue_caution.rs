//! Cautions about being stuck as sentences, each with the sources it rests on.

use super::CautionLine;
use super::caution::caution_line;
use super::descent_caution::climb_above_crotch;
use super::figure::add_ids;
use crate::ascent::BodyCaution;
use crate::quantity::View;
use crate::question::can_i_climb;
use crate::question::rescue::Caution;
use crate::source::{AFAG401, HSIAO, JUDGED, Source, TURNER};

/// The caution as people read it.
pub(super) fn rescue_caution(caution: Caution, view: View) -> CautionLine {
    let (id, text, rests_on): (_, &str, &[Source]) = match caution {
        // The same on every page.
        Caution::Arithmetic => return caution_line(can_i_climb::Caution::Arithmetic, view),
        Caution::HangingStill => return caution_line(can_i_climb::Caution::HangingStill, view),
        Caution::HaulHard => return caution_line(can_i_climb::Caution::HaulHard, view),
        Caution::HarnessClock => return caution_line(can_i_climb::Caution::Body(BodyCaution::HarnessClock), view),
        Caution::ClimbAboveCrotch => return climb_above_crotch(),
        Caution::NoRescue => (
            "no-rescue",
            "On this plan nobody gets you to the ground in time if you cannot help yourself. That alone is reason not to go up.",
            &[TURNER, JUDGED],
        ),
        Caution::Tight => (
            "tight",
            "One thing that takes longer than planned, and the time is over. Cut the way short or bring more people.",
            &[TURNER, JUDGED],
        ),
        Caution::TwoPeople => (
            "two-people",
            "There have to be at least two people at all tree climbing, one of them on the ground, able and equipped to rescue at once.",
            &[AFAG401],
        ),
        Caution::HalfOwnWeight => (
            "half-own-weight",
            "Pulling down, nobody pulls more than half of their own weight for long, and about 250 N (56 lbf) for minutes.",
            &[JUDGED],
        ),
        Caution::Rehearse => (
            "rehearse",
            "Every time here is judged. Rehearse with a watch, low down, with the people and the gear of the day; another study found 9 minutes in a full-body harness, and the shorter of the two counts.",
            &[HSIAO, JUDGED],
        ),
        Caution::AfterRescue => (
            "after-rescue",
            "After any time hanging still call for medical help, whatever the climber says. Emergency services are seldom there within these minutes.",
            &[JUDGED],
        ),
    };
    let mut sources = Vec::new();
    add_ids(&mut sources, rests_on);
    CautionLine { id, grave: true, text: text.to_owned(), sources }
}
