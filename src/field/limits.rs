//! Limits of a quantity.

use super::{Reading, Refusal, Spread};
use crate::quantity::{Dimension, Unit, ending, joined, read, trimmed, units_of};

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

/// Below this a quantity is nothing: a hundredth of a millimetre or of a gram, for which no link has a text (judged).
const NEXT_TO_NOTHING: f64 = 1e-5;

impl Limits {
    pub(super) fn within(&self, si: f64, text: Option<&str>) -> Result<Reading, Refusal> {
        if !si.is_finite() {
            return Err(Refusal::NotFinite);
        }
        let si = if (0.0..NEXT_TO_NOTHING).contains(&si) { 0.0 } else { si };
        if self.contain(si) {
            return Ok(Reading::Si(si));
        }
        // Just outside, the unit was meant and the number is wrong.
        let far = si > 2.0 * self.most || si < self.least / 2.0;
        let suggestion = text.filter(|_| far).and_then(|text| self.other_unit(text));
        Err(Refusal::OutOfRange { said: text.map(|text| trimmed(text).to_owned()), si, suggestion })
    }

    fn contain(&self, si: f64) -> bool {
        self.least <= si && si <= self.most
    }

    /// The same number with a unit that brings it into range, for someone who typed 175 m for 175 cm.
    fn other_unit(&self, text: &str) -> Option<String> {
        let is_of_unit = |c: char| c.is_ascii_alphabetic() || matches!(c, ' ' | '/' | '-' | '°');
        let (number, _) = ending(trimmed(text), is_of_unit);
        for unit in units_of(self.dimension) {
            let guess = joined(&[number, " ", unit.symbol]);
            if read(&guess, self.dimension, None).is_ok_and(|si| self.contain(si)) {
                return Some(guess);
            }
        }
        None
    }
}
