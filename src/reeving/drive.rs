//! What the forces are worked out from: the losses, and what drives the rig.

use super::Rig;

/// The share of tension that passes each turn and each sliding hitch, in the order they are numbered.
#[derive(Debug, Clone, PartialEq)]
pub struct Losses {
    /// Tension out over tension in, for each turn.
    pub turns: Vec<f64>,
    /// Tension out over tension in, for each hitch while it slides.
    pub hitches: Vec<f64>,
}

impl Losses {
    /// No losses at all.
    #[must_use]
    pub fn none(rig: &Rig) -> Self {
        Self { turns: vec![1.0; rig.turns], hitches: vec![1.0; rig.hitches] }
    }

    /// Whether there is one share for each of so many turns and hitches, more than nought and at most one.
    pub(super) fn fit(&self, turns: usize, hitches: usize) -> bool {
        let mut fit = self.turns.len() == turns && self.hitches.len() == hitches;
        for kept in self.turns.iter().chain(&self.hitches) {
            fit &= *kept > 0.0 && *kept <= 1.0;
        }
        fit
    }
}

/// What the forces are worked out from.
#[derive(Debug, Clone, PartialEq)]
pub enum Drive {
    /// The driving hand pulls with this, the helpers with these (none: nothing).
    Pull(f64, Vec<f64>),
    /// No hand is on; the climber weighs this.
    Load(f64),
}

impl Drive {
    /// The greatest force in it; none where one is not finite.
    pub(super) fn size(&self) -> Option<f64> {
        let (first, others): (f64, &[f64]) = match self {
            Self::Pull(pull, helpers) => (*pull, helpers),
            Self::Load(load) => (*load, &[]),
        };
        let mut size = first.abs();
        let mut finite = first.is_finite();
        for force in others {
            finite &= force.is_finite();
            size = size.max(force.abs());
        }
        finite.then_some(size)
    }

    /// The same drive with every force divided by one.
    pub(super) fn over(&self, by: f64) -> Self {
        let mut drive = self.clone();
        match &mut drive {
            Self::Pull(pull, helpers) => {
                *pull /= by;
                for force in helpers {
                    *force /= by;
                }
            }
            Self::Load(load) => *load /= by,
        }
        drive
    }
}
