//! The cautions of all answers on one sheet: those that stop a plan stand with its verdict, the others further down.

use super::{Block, Section};
use crate::words::CautionLine;
use crate::words::template::worded;

/// Cautions after which nobody leaves the ground on a plan as it is; all others say what to heed on one that stands.
///
/// # Source
/// Judged: what drops somebody, leaves them hanging or ends a rope short, likely or at an end of its range. What the
/// verdict is capped by anyway is not among them, nor what only a label can tell.
const STOPPING: &[&str] = &[
    "no-rescue",
    "nothing-holds",
    "nothing-grips",
    "crotch-too-low",
    "climb-above-crotch",
    "rope-ends-above",
    "rope-too-short",
    "short-end",
    "short",
    "past-harness",
    "weak-cord",
    "cord-too-thick",
    "cord-melts",
    "melting-cord",
    "weak-hand",
    "too-fast",
];

/// What stands against the plan, each once.
pub(super) fn against(all: &[&[CautionLine]]) -> Section {
    let mut section = Section::of("against", "What stands against it", 2);
    let mut lines = Vec::new();
    for caution in all.concat() {
        if stops(&caution) {
            add(&mut lines, &caution);
        }
    }
    section.add(Block::list("", lines));
    section
}

/// All others, each once, those that can kill first.
pub(super) fn cautions(all: &[&[CautionLine]]) -> Section {
    let mut section = Section::of("cautions", "Cautions", 2);
    let mut lines = Vec::new();
    for grave in [true, false] {
        for caution in all.concat() {
            if caution.grave == grave && !stops(&caution) {
                add(&mut lines, &caution);
            }
        }
    }
    section.add(Block::list("", lines));
    section
}

fn stops(caution: &CautionLine) -> bool {
    STOPPING.contains(&caution.id)
}

fn add(lines: &mut Vec<String>, caution: &CautionLine) {
    let text = if caution.grave { worded("Warning: {}", &[&caution.text]) } else { caution.text.clone() };
    if !lines.contains(&text) {
        lines.push(text);
    }
}

#[cfg(test)]
mod tests {
    use super::STOPPING;

    #[test]
    fn what_stops_a_plan_are_cautions_there_are() {
        let published = include_str!("../../../tests/data/ids.txt");
        for id in STOPPING {
            assert!(published.lines().any(|line| line.strip_prefix("caution ") == Some(id)), "{id}");
        }
    }
}
