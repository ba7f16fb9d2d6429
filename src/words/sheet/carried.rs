//! What the parts of the rig carry, in short: those over what they bear, those that come nearest to it, the single ones.
//! Those that bear less than is asked stand in the answer's second sentence.

use super::{Block, Section};
use crate::words::{LoadLine, LoadsReport};

/// So many parts that come nearest to what they bear are shown: what is read at a glance.
const NEAREST: usize = 3;

/// The loads in short.
pub(super) fn carried(report: &LoadsReport, section: &mut Section) {
    section.say(&report.first);
    section.say(&report.second);
    let (mut lines, mut unknown) = (Vec::new(), Vec::new());
    for (state, line) in worst(report) {
        if line.strength.is_none() {
            unknown.push(line.noun.clone());
        } else if lines.len() < NEAREST || line.standing == "short" {
            let text =
                |figure: &Option<crate::words::Figure>| figure.as_ref().map_or_else(String::new, |it| it.text.clone());
            let names = [line.noun.clone(), state.to_owned(), line.peak.text.clone()];
            let mut row = names.to_vec();
            row.extend([text(&line.strength), text(&line.ratio), line.text.clone()]);
            lines.push(row);
        }
    }
    let head = ["part", "worst", "peak", "bears", "times the peak", "stands"];
    section.add(Block::table("The parts that come nearest to what they bear:", &head, &lines));
    section.add(Block::list("Not known what they bear:", unknown));
    if let Some(state) = report.states.iter().find(|state| state.possible) {
        section.say(&state.singles);
    }
    section.say(&report.limb.text);
}

/// Every part in the state in which it comes nearest to what it bears, the worst first.
fn worst(report: &LoadsReport) -> Vec<(&str, &LoadLine)> {
    let mut worst: Vec<(&str, &LoadLine)> = Vec::new();
    for state in &report.states {
        for line in &state.parts {
            match worst.iter_mut().find(|(_, known)| known.noun == line.noun) {
                Some(known) if least(line) < least(known.1) => *known = (state.noun, line),
                Some(_) => {}
                None => worst.push((state.noun, line)),
            }
        }
    }
    let mut sorted = Vec::new();
    while let Some(at) = lowest(&worst) {
        sorted.push(worst.remove(at));
    }
    sorted
}

fn lowest(lines: &[(&str, &LoadLine)]) -> Option<usize> {
    let mut lowest: Option<(usize, f64)> = None;
    for (at, (_, line)) in lines.iter().enumerate() {
        if lowest.is_none_or(|(_, ratio)| least(line) < ratio) {
            lowest = Some((at, least(line)));
        }
    }
    lowest.map(|(at, _)| at)
}

/// How many times its peak it bears at the least; endless where that is not known.
fn least(line: &LoadLine) -> f64 {
    line.ratio.as_ref().and_then(|ratio| ratio.low).unwrap_or(f64::INFINITY)
}
