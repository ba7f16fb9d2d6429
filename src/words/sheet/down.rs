//! The way down and the rescue, in short.

use super::{Block, Section};
use crate::words::template::worded;
use crate::words::{DescentReport, RescueReport};

/// What of a way down is read at the tree.
const SHOWN: &[&str] = &["holdForce", "handHolds", "sensibleSpeed", "descentTime"];

/// Coming down in short: hand, speed, steps.
pub(super) fn coming_down(report: &DescentReport, section: &mut Section) {
    section.say(&report.first);
    section.say(&report.second);
    let mut lines = Vec::new();
    for figure in &report.figures {
        if SHOWN.contains(&figure.id) {
            lines.push(vec![figure.noun.to_owned(), figure.text.clone(), figure.range.clone().unwrap_or_default()]);
        }
    }
    section.add(Block::table("", &["what", "likely", "range"], &lines));
    let mut steps = Vec::new();
    for step in &report.steps {
        steps.push(worded("{}: {} {}", &[step.noun, step.how, &step.held]));
    }
    section.add(Block::steps("", steps));
    if report.first != report.none {
        section.say(report.none);
    }
}

/// The rescue in short, with its blanks.
pub(super) fn rescue(report: &RescueReport, section: &mut Section) {
    section.say(&report.first);
    section.say(&report.second);
    section.add(Block::blanks(report.plan.clone()));
}

/// What to see to before going.
pub(super) fn before(report: &RescueReport, section: &mut Section) {
    let mut lines = Vec::new();
    for line in &report.before {
        lines.push(line.text.clone());
    }
    section.add(Block::list("", lines));
}
