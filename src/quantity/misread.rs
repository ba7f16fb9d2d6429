//! What can be wrong with a text that should say a quantity.

use super::{Dimension, Unit};

/// Why a text does not say a quantity: facts only, the sentences are written elsewhere.
#[derive(Clone, Debug, PartialEq)]
pub enum Misread {
    /// Nothing but space. Never zero.
    Empty,
    /// More than 60 characters.
    TooLong,
    /// No number where one should be, or something that is not quite one: `eleven`, `5.`, `+5`, `3 9/8`, `6 3`.
    NotANumber,
    /// `inf`, `nan`, a fraction over zero.
    NotFinite,
    /// `1e3`.
    Exponent,
    /// `1,200.5`, `1.2.3`.
    TwoSeparators,
    /// One separator and exactly three digits after it: thousands, or a decimal?
    Ambiguous {
        /// The number as written: `1,200`.
        said: String,
        /// How to write it if thousands were meant: `1200`.
        whole: String,
        /// How to write it if a decimal was meant: `1.2`. With a point; both are readable as they stand.
        decimal: String,
    },
    /// A number with no unit, where only a unit makes it a quantity.
    NoUnit {
        /// What was to be measured.
        dimension: Dimension,
    },
    /// A unit that nobody here knows.
    UnknownUnit {
        /// The unit as written.
        said: String,
    },
    /// A unit of something else, such as kilograms for a force.
    WrongDimension {
        /// The unit as understood.
        said: &'static Unit,
        /// What was to be measured.
        wanted: Dimension,
    },
    /// The smaller unit first, or the same twice: `3 in 6 ft`, `6 ft 3 ft`.
    Unordered,
    /// Two units that are not written together: `6 ft 20 cm`, `1 m 20 cm`, `1 h 20 s`.
    Unpaired {
        /// The unit written first.
        first: &'static Unit,
        /// The unit written after it.
        second: &'static Unit,
    },
    /// A fraction of the bigger unit with the smaller one after it: `6.5 ft 3 in`.
    BrokenWhole {
        /// The bigger unit.
        unit: &'static Unit,
    },
    /// As much of the smaller unit as makes one of the bigger, or more: `6 ft 12 in`.
    Overflow {
        /// The smaller unit.
        part: &'static Unit,
        /// The bigger unit.
        whole: &'static Unit,
    },
}
