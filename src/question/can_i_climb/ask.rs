//! From inputs to an answer.

use super::{Answer, Inputs};
use crate::ascent::answer;
use crate::chance::Effort;

/// Whether this person can make one pull of this climb, and how many pulls it is.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every likely figure is that of the
/// likely values; low and high are the 5th and 95th percentiles of the samples.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    answer(&inputs.plan, effort)
}
