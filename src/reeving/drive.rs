//! What the forces are worked out from: the losses, and what drives the rig.

use super::{Number, Rig};

/// The share of tension that passes each turn and each sliding hitch, in the order they are numbered.
#[derive(Debug, Clone, PartialEq)]
pub struct Losses<N> {
    /// Tension out over tension in, for each turn.
    pub turns: Vec<N>,
    /// Tension out over tension in, for each hitch while it slides.
    pub hitches: Vec<N>,
}

impl<N: Number> Losses<N> {
    /// No losses at all.
    #[must_use]
    pub fn none(rig: &Rig) -> Self {
        Self { turns: vec![N::ONE; rig.turns], hitches: vec![N::ONE; rig.hitches] }
    }
}

/// What the forces are worked out from.
#[derive(Debug, Clone, PartialEq)]
pub enum Drive<N> {
    /// The driving hand pulls with this, the further hands with these (none: nothing).
    Pull(N, Vec<N>),
    /// No hand is on; the climber weighs this.
    Load(N),
}
