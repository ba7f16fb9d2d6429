//! What is wrong with a text that should say a rig.

use crate::field::{Refusal, Row};

/// What is wrong with a text that should say a rig, and where.
#[derive(Debug, Clone, PartialEq)]
pub struct Mistake {
    /// The line, from 1.
    pub line: usize,
    /// The stop in it, from 1.
    pub stop: usize,
    /// The very word; where something is missing, the one it is missing behind, or nothing.
    pub word: String,
    /// What is wrong.
    pub wrong: Wrong,
}

/// What is wrong with a word of the notation.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Wrong {
    /// Nothing stands there.
    NoStop,
    /// It is nothing that a rope does.
    NotDone,
    /// No place is said.
    NoPlace,
    /// It is no place.
    NotAPlace,
    /// A moving place is said and the one above it is not.
    Skips,
    /// Only the climber, or somebody on the ground, has the driving hand.
    NotByHand,
    /// A helper stands in the tree or on the ground.
    NotByHelper,
    /// A rope can be tied only at an end.
    TiedOnTheWay,
    /// It is no kind of turn.
    NotATurn,
    /// It is no amount.
    NotAnAmount {
        /// The row of the amount that is wanted.
        row: &'static Row,
        /// Why it is none.
        refusal: Box<Refusal>,
    },
    /// No amount is said.
    NoAmount {
        /// The row of the amount that is wanted.
        row: &'static Row,
    },
    /// Nothing more is to be said there.
    TooMuch,
    /// A second hand that drives.
    SecondHand,
    /// No stop is on the climber.
    NoClimber,
    /// More strands than the model takes.
    TooLarge,
}
