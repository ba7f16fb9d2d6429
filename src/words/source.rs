//! A source as people read it.

use super::template::said;
use super::{CautionLine, Figure, SourceLine};
use crate::quantity::{View, joined};
use crate::source::{SOURCES, Source};

/// A source as people read it.
#[must_use]
pub fn source_line(source: &Source) -> SourceLine {
    // The module as shipped has no titles: the package puts them where it finds an id between these marks.
    let text = if cfg!(boughline_terse) {
        joined(&["\u{e000}", source.id, "\u{e000}"])
    } else {
        said("{} ({}).", &[], &[source.title, source.obtained.words()], View::default())
    };
    SourceLine { id: source.id, text }
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
