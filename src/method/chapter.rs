//! A chapter of the method.

use super::{Formula, Table};
use crate::source::Source;

/// Something said without a formula.
#[derive(Debug, Clone, PartialEq)]
pub struct Note {
    /// What it is about.
    pub about: &'static str,
    /// What is said.
    pub says: &'static str,
    /// What it rests on.
    pub sources: &'static [Source],
}

/// A chapter of the method.
#[derive(Debug, Clone, PartialEq)]
pub struct Chapter {
    /// Its id, which never changes.
    pub id: &'static str,
    /// Its title.
    pub title: &'static str,
    /// What it is about, in a few sentences.
    pub about: &'static str,
    /// Its formulas.
    pub formulas: Vec<Formula>,
    /// Its tables.
    pub tables: Vec<Table>,
    /// What is said without a formula.
    pub notes: Vec<Note>,
}

impl Chapter {
    /// A chapter of formulas.
    pub(super) fn new(id: &'static str, title: &'static str, about: &'static str, formulas: Vec<Formula>) -> Self {
        Self { id, title, about, formulas, tables: Vec::new(), notes: Vec::new() }
    }

    /// The chapter with a table more.
    pub(super) fn table(mut self, table: Table) -> Self {
        self.tables.push(table);
        self
    }

    /// The chapter with something more that is said without a formula.
    pub(super) fn note(mut self, about: &'static str, says: &'static str, sources: &'static [Source]) -> Self {
        self.notes.push(Note { about, says, sources });
        self
    }

    /// All that it rests on.
    #[must_use]
    pub fn sources(&self) -> Vec<Source> {
        let mut all = Vec::new();
        for formula in &self.formulas {
            all.extend(formula.sources());
        }
        for table in &self.tables {
            all.extend_from_slice(&table.sources);
        }
        for note in &self.notes {
            all.extend_from_slice(note.sources);
        }
        all
    }
}
