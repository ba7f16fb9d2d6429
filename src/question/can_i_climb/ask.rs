//! From inputs to an answer.

use super::{Answer, Inputs, Reckoning};
use crate::ascent::{self, Helps};
use crate::chance::Effort;

/// Whether this person can climb this: one pull, how many of them, and whether arms and hands last through them all.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every likely figure is that of the
/// likely values; low and high are the 5th and 95th percentiles of the samples.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    let mut reckoning = Reckoning::of(inputs.clone());
    reckoning.go_on(effort);
    reckoning.so_far()
}

/// What would help most: one thing at a time otherwise, ranked by what it does to the chance and to the share of strength.
/// None while the strength is not known.
///
/// # Guarantees
/// Total, and the same bits for the same inputs and effort on every machine. Every change is reckoned on the very same
/// samples, so that what differs is the change alone.
#[must_use]
pub fn helps(inputs: &Inputs, effort: Effort) -> Option<Helps> {
    ascent::helps(&inputs.plan, inputs.next.as_ref(), effort)
}
