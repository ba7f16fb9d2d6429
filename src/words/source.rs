//! A source as people read it.

use super::template::said;
use super::{CautionLine, Figure, SourceLine};
use crate::quantity::View;
use crate::source::{SOURCES, Source};

/// A source as people read it.
#[must_use]
pub fn source_line(source: &Source) -> SourceLine {
    let text = if cfg!(boughline_terse) {
        marked(source.id)
    } else {
        said("{} ({}).", &[], &[source.title, source.obtained.words()], View::default())
    };
    SourceLine { id: source.id, text }
}

/// What the module as shipped has for a title: an id between two marks, where the package puts the title.
fn marked(id: &str) -> String {
    const MARK: char = '\u{e000}';
    let mut text = String::from(MARK);
    text.push_str(id);
    text.push(MARK);
    text
}

/// The sources that figures, cautions and more rest on, each once, in the order of the table.
pub(super) fn cited(figures: &[&[Figure]], cautions: &[CautionLine], more: &[&'static str]) -> Vec<SourceLine> {
    let mut ids = more.to_vec();
    for list in figures {
        for figure in *list {
            ids.extend_from_slice(&figure.sources);
        }
    }
    for caution in cautions {
        ids.extend_from_slice(&caution.sources);
    }
    let mut lines = Vec::new();
    for source in SOURCES {
        if ids.contains(&source.id) {
            lines.push(source_line(source));
        }
    }
    lines
}
