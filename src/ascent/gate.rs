//! What somebody has, against what is asked of it.

use crate::field::Spread;

/// What somebody has, and the share of it that one pull takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gate {
    /// What they have, in newtons.
    pub capacity: Spread,
    /// Need over capacity.
    pub share: Spread,
}
