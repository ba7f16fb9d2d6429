//! A table of figures.

use crate::field::Spread;
use crate::source::Source;

/// A table of figures.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// Its id, which never changes.
    pub id: &'static str,
    /// What it shows.
    pub caption: &'static str,
    /// The heads of its columns.
    pub heads: Vec<&'static str>,
    /// Its rows, a cell for each head.
    pub rows: Vec<Vec<String>>,
    /// What it rests on.
    pub sources: Vec<Source>,
}

impl Table {
    /// A table without rows.
    pub(super) fn new(id: &'static str, caption: &'static str, heads: &[&'static str], sources: &[Source]) -> Self {
        Self { id, caption, heads: heads.to_vec(), rows: Vec::new(), sources: sources.to_vec() }
    }

    /// The table with a row more, and what that row rests on.
    pub(super) fn row(mut self, cells: Vec<String>, sources: &[Source]) -> Self {
        for source in sources {
            if !self.sources.contains(source) {
                self.sources.push(*source);
            }
        }
        self.rows.push(cells);
        self
    }
}

/// A number as it is printed: every digit that was said, and none that a conversion left behind.
#[must_use]
pub fn digits(value: f64) -> String {
    let rounded = format!("{value:.9e}").parse::<f64>().unwrap_or(value);
    // No nought below nought.
    format!("{}", if rounded == 0.0 { 0.0 } else { rounded }).replace('-', "−")
}

/// A range as it is printed: one number where it has no width.
pub(super) fn range(spread: Spread, size: f64) -> String {
    let [low, likely, high] = [spread.low, spread.likely, spread.high].map(|si| digits(si / size));
    if low == high { likely } else { format!("{likely} ({low} to {high})") }
}

/// Sources by name, for a row.
pub(super) fn ids(sources: &[Source]) -> String {
    sources.iter().map(|source| source.id).collect::<Vec<_>>().join(", ")
}
