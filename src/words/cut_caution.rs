//! Cautions about cutting as sentences, each with the sources it rests on.

use super::CautionLine;
use super::caution::caution_line;
use super::figure::add_ids;
use crate::quantity::View;
use crate::question::can_i_climb;
use crate::question::cut_plan::Caution;
use crate::source::JUDGED;

/// The caution as people read it.
pub(super) fn cut_caution(caution: Caution, view: View) -> CautionLine {
    let (id, text) = match caution {
        // The same on every page.
        Caution::Arithmetic => return caution_line(can_i_climb::Caution::Arithmetic, view),
        Caution::MeasureHank => (
            "measure-hank",
            "Measure each hank before the first cut: a label gives a round length, and what is on the reel may be less.",
        ),
        Caution::TieOneFirst => (
            "tie-one-first",
            "Tie one of each, load it and measure it before you cut the rest: cords and hands differ.",
        ),
        Caution::UsualHanks => (
            "usual-hanks",
            "Nobody said which hanks there are, so 5, 10, 20, 30 and 50 m (164 ft) are taken: lengths one can usually buy, from memory. Enter those you can have.",
        ),
    };
    let mut sources = Vec::new();
    add_ids(&mut sources, &[JUDGED]);
    CautionLine { id, grave: false, text: text.to_owned(), sources }
}
