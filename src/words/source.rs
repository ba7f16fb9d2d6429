//! A source as people read it.

use super::SourceLine;
use super::template::said;
use crate::quantity::View;
use crate::source::Source;

/// A source as people read it.
#[must_use]
pub fn source_line(source: &Source) -> SourceLine {
    SourceLine { id: source.id, text: said("{} ({}).", &[], &[source.title, source.obtained.words()], View::default()) }
}
