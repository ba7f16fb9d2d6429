//! What was said in a field, and what it comes to.

use super::Named;
use crate::quantity::Misread;

/// One thing said in a field.
#[derive(Debug, Clone, PartialEq)]
pub enum Said {
    /// Text, as typed.
    Text(String),
    /// A number in SI.
    Number(f64),
    /// Something that no field takes: what it was.
    Other(&'static str),
}

/// What one thing said in a field comes to.
#[derive(Debug, Clone, PartialEq)]
pub enum Reading {
    /// A quantity, in SI.
    Si(f64),
    /// A choice, by its place in the list.
    Choice(usize),
    /// A text in the form that the field has.
    Text(String),
}

/// Why what was said is no value of a field.
#[derive(Debug, Clone, PartialEq)]
pub enum Refusal {
    /// Said to be nothing.
    Empty,
    /// Not of a type that the field takes: what it was.
    WrongType {
        /// What it was: "null", "yes or no".
        said: &'static str,
    },
    /// Not a number, or endless.
    NotFinite,
    /// The text does not say a quantity of this kind.
    Misread {
        /// The text.
        said: String,
        /// What is wrong with it.
        misread: Misread,
    },
    /// A quantity outside the limits.
    OutOfRange {
        /// The text; none where a number was said.
        said: Option<String>,
        /// The quantity, in SI.
        si: f64,
        /// The same number with a unit that would fit.
        suggestion: Option<String>,
    },
    /// A text that is not in the form that the field has; whoever knows the form knows where.
    Miswritten {
        /// The text.
        said: String,
    },
    /// Not one of the options.
    UnknownChoice {
        /// What was said.
        said: String,
        /// The options.
        options: &'static [Named],
    },
}
