//! What a unit's row is.

use super::{Dimension, View};
use crate::told::told;

/// A unit of measure, from its exact definition.
#[derive(Clone, Debug)]
pub struct Unit {
    /// The canonical symbol, as in answers and, but for a stroke, in links: `ft`.
    pub symbol: &'static str,
    /// Whatever else people write for it: names, plurals, marks.
    pub names: &'static [&'static str],
    /// What it measures.
    pub dimension: Dimension,
    /// Its size in the SI unit of its dimension.
    pub size: f64,
    /// Where the size comes from: "by definition: …".
    pub source: &'static str,
    // The size as the fraction it is defined by, both whole: so a whole number of feet is converted with one rounding.
    times: f64,
    over: f64,
    within: Option<(&'static Unit, f64)>,
}

/// No two units share a symbol.
impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.symbol == other.symbol
    }
}

impl Unit {
    /// A unit of `times / over` SI units.
    pub(super) const fn row(
        symbol: &'static str,
        names: &'static [&'static str],
        dimension: Dimension,
        (times, over): (f64, f64),
        source: &'static str,
    ) -> Self {
        Self { symbol, names, dimension, size: times / over, source: told(source), times, over, within: None }
    }

    /// The same unit, written after `bigger` as in `6 ft 3 in`, `count` to one of `bigger`.
    pub(super) const fn within(mut self, bigger: &'static Self, count: f64) -> Self {
        self.within = Some((bigger, count));
        self
    }

    /// The SI value of `number` of these.
    #[must_use]
    pub const fn si(&self, number: f64) -> f64 {
        number * self.times / self.over
    }

    /// How many of these make up the SI value `si`.
    #[must_use]
    pub const fn count(&self, si: f64) -> f64 {
        si * self.over / self.times
    }

    /// The bigger unit it may be written after, and how many of it make one of those.
    #[must_use]
    pub const fn bigger(&self) -> Option<(&'static Self, f64)> {
        self.within
    }

    /// Its definition as a fraction, for units defined from it.
    pub(super) const fn fraction(&self) -> (f64, f64) {
        (self.times, self.over)
    }

    /// Whether people write it `word`, in exactly these letters.
    pub(super) fn is_written(&self, word: &str) -> bool {
        self.symbol == word || self.names.contains(&word)
    }

    /// Whether people write it `word`, in capitals or not.
    pub(super) fn is_written_in_any_case(&self, word: &str) -> bool {
        self.symbol.eq_ignore_ascii_case(word) || self.names.iter().any(|name| name.eq_ignore_ascii_case(word))
    }
}

/// One dimension's row in the table: its units and how it is written.
pub(super) struct Family {
    /// Its units, the SI unit first where it has one.
    pub(super) units: &'static [&'static Unit],
    /// The unit whose size is one. A ratio has none: its bare number is itself.
    pub(super) si: Option<&'static Unit>,
    /// The text for an SI value that is finite and not negative.
    pub(super) written: fn(f64, View) -> String,
}
