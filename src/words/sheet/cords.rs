//! Rope, cords and everything to buy, in short.

use super::{Block, Section};
use crate::words::template::worded;
use crate::words::{CordReport, CutReport, RopeReport};

/// The rope in short.
pub(super) fn rope(report: &RopeReport, section: &mut Section) {
    for text in [&report.first, &report.buy, &report.owned] {
        section.say(text);
    }
}

/// The cord that was asked for.
pub(super) fn cord(report: &CordReport, section: &mut Section) {
    section.say(&report.first);
    section.say(&report.second);
}

/// What is cut out of which hank.
pub(super) fn cuts(report: &CutReport, section: &mut Section) {
    for kind in &report.kinds {
        section.say(&worded("{}: {} {}", &[&kind.noun, &kind.text, &kind.proof]));
        let mut lines = Vec::new();
        for hank in &kind.hanks {
            let mut line = worded("{}: ", &[&hank.noun]);
            for cut in &hank.cuts {
                line.push_str(&worded(if cut.noun.is_empty() { "{}{}, " } else { "{} {}, " }, &[&cut.noun, &cut.text]));
            }
            line.push_str(&worded("{} {}", &[&hank.left.noun, &hank.left.text]));
            lines.push(line);
        }
        section.add(Block::list("", lines));
    }
    for note in &report.notes {
        section.say(note);
    }
}

/// Everything to buy.
pub(super) fn shopping(report: &CutReport, section: &mut Section) {
    if report.shopping.is_empty() {
        section.say(&report.first);
    }
    section.add(Block::list("", report.shopping.clone()));
}
