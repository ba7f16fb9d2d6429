//! A source as people read it.

use super::SourceLine;
use super::template::said;
use crate::quantity::View;
use crate::source::{SOURCES, Source};

/// A source as people read it.
#[must_use]
pub fn source_line(source: &Source) -> SourceLine {
    SourceLine { id: source.id, text: said("{} ({}).", &[], &[source.title, source.obtained.words()], View::default()) }
}

/// The sources of these ids, each once, in the order of the table.
pub(super) fn source_lines(ids: &[&str]) -> Vec<SourceLine> {
    let mut lines = Vec::new();
    for source in SOURCES {
        if ids.contains(&source.id) {
            lines.push(source_line(source));
        }
    }
    lines
}
