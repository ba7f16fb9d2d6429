//! What is wrong with a list.

use crate::field::{Refusal, Row};

/// What is wrong with a list, and where.
#[derive(Debug, Clone, PartialEq)]
pub struct Mistake {
    /// The row, from 1.
    pub row: usize,
    /// The very part; empty where one is missing.
    pub part: String,
    /// What is wrong.
    pub wrong: Wrong,
}

/// What is wrong with a part of a list.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Wrong {
    /// A part that each row has is missing.
    Missing {
        /// What it should say.
        row: &'static Row,
    },
    /// It is not what stands there.
    NotAnAmount {
        /// What it should say.
        row: &'static Row,
        /// Why it does not.
        refusal: Box<Refusal>,
    },
    /// It is no whole number.
    NotWhole,
    /// It is nothing that stands in such a row, or is said twice.
    NotWanted,
    /// More cords than are reckoned with.
    TooManyCords,
    /// More rows than are reckoned with.
    TooManyRows,
}
