//! An answer in the making.

use super::{Answer, Inputs};
use crate::ascent::{Climbs, so_far};
use crate::chance::Effort;

/// An answer in the making, which can go on where it stopped: whoever shows what it comes to so far need not begin again.
///
/// # Guarantees
/// However many steps it took, the answer is that of [`ask`](super::ask) at the effort it has come to, to the last bit.
///
/// # Example
/// ```
/// use boughline::Draft;
/// use boughline::question::Effort;
/// use boughline::question::can_i_climb::{Inputs, Reckoning, ask};
///
/// let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "tail-3");
/// let inputs = Inputs::of(&draft).map_err(|errors| errors.len())?;
/// let mut reckoning = Reckoning::of(inputs.clone());
/// reckoning.go_on(Effort::samples(100));
/// reckoning.go_on(Effort::samples(300));
/// assert_eq!(reckoning.so_far(), ask(&inputs, Effort::samples(300)));
/// # Ok::<(), usize>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Reckoning {
    inputs: Inputs,
    climbs: Climbs,
}

impl Reckoning {
    /// Nothing reckoned yet but the likely climb.
    #[must_use]
    pub fn of(inputs: Inputs) -> Self {
        let climbs = Climbs::of(&inputs.plan);
        Self { inputs, climbs }
    }

    /// Goes on to an effort, if it has not come so far.
    pub fn go_on(&mut self, effort: Effort) {
        self.climbs.go_on(&self.inputs.plan, effort);
    }

    /// Whether it can come to an effort for these inputs by going on.
    #[must_use]
    pub fn leads_to(&self, inputs: &Inputs, effort: Effort) -> bool {
        self.inputs == *inputs && self.climbs.count() <= effort.count()
    }

    /// What it comes to so far.
    #[must_use]
    pub fn so_far(&self) -> Answer {
        so_far(&self.inputs.plan, &self.climbs)
    }
}
