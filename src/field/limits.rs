//! Limits of a quantity.

use super::{Reading, Refusal, Spread};
use crate::quantity::{Dimension, Unit, read, units};

/// Limits of a quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// What it measures.
    pub dimension: Dimension,
    /// The least that is taken, in SI.
    pub least: f64,
    /// The most that is taken, in SI.
    pub most: f64,
    /// A value as somebody might have it, in SI.
    pub example: f64,
    /// What is taken when nothing is said, in SI.
    pub likely: Option<Spread>,
    /// The unit a bare number gets, in SI view and in US view.
    pub bare: Option<[&'static Unit; 2]>,
}

impl Limits {
    pub(super) fn within(&self, si: f64, text: Option<&str>) -> Result<Reading, Refusal> {
        if !si.is_finite() {
            return Err(Refusal::NotFinite);
        }
        if (self.least..=self.most).contains(&si) {
            return Ok(Reading::Si(si));
        }
        let suggestion = text.and_then(|text| self.other_unit(text));
        Err(Refusal::OutOfRange { si, suggestion })
    }

    /// The same number with a unit that brings it into range, for someone who typed 175 for 175 cm.
    fn other_unit(&self, text: &str) -> Option<String> {
        let number = text.trim().trim_end_matches(|c: char| c.is_alphabetic() || c.is_whitespace());
        units()
            .filter(|unit| unit.dimension == self.dimension)
            .map(|unit| format!("{number} {}", unit.symbol))
            .find(|guess| read(guess, self.dimension, None).is_ok_and(|si| (self.least..=self.most).contains(&si)))
    }
}
