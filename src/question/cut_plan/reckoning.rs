//! An answer in the making.

use super::answer::{Answer, Caution, KindPlan, Outcome};
use super::inputs::Inputs;
use super::kind::TENTHS;
use crate::chance::Effort;
use crate::cord::cutting::{Cutting, Fault};

/// The cutting plans.
///
/// # Guarantees
/// Total, and the same bits for the same inputs on every machine; more effort never makes a plan worse.
#[must_use]
pub fn ask(inputs: &Inputs, effort: Effort) -> Answer {
    let mut reckoning = Reckoning::of(inputs.clone());
    reckoning.go_on(effort);
    reckoning.so_far()
}

/// An answer in the making, which can go on where it stopped: whoever stops it keeps the best so far.
///
/// # Guarantees
/// However many steps it took, the answer is that of [`ask`] at the effort it has come to.
///
/// # Example
/// ```
/// use boughline::Draft;
/// use boughline::question::Effort;
/// use boughline::question::cut_plan::{Inputs, Reckoning, ask};
///
/// let draft = Draft::new().set("cords", "30 ~ 6 mm ~ 1.83 m\n20 ~ 6 mm ~ 3.1 m").set("hanks", "any ~ 10 m");
/// let inputs = Inputs::of(&draft).map_err(|errors| errors.len())?;
/// let mut reckoning = Reckoning::of(inputs.clone());
/// reckoning.go_on(Effort::samples(50));
/// reckoning.go_on(Effort::samples(200));
/// assert_eq!(reckoning.so_far(), ask(&inputs, Effort::samples(200)));
/// # Ok::<(), usize>(())
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Reckoning {
    inputs: Inputs,
    /// Of each kind.
    cuttings: Vec<Result<Cutting, Fault>>,
    effort: u32,
}

/// The steps of a search that count as one sample: about as much work (judged).
pub(super) const STEPS: u64 = 250;

impl Reckoning {
    /// First plans, and those that are exact at once.
    #[must_use]
    pub fn of(inputs: Inputs) -> Self {
        let mut cuttings = Vec::new();
        for kind in &inputs.kinds {
            cuttings.push(Cutting::of(&kind.order(inputs.kerf, inputs.end)));
        }
        Self { inputs, cuttings, effort: 0 }
    }

    /// Goes on to an effort, for each diameter and fibre, if it has not come so far.
    pub fn go_on(&mut self, effort: Effort) {
        self.effort = self.effort.max(effort.count());
        for cutting in self.cuttings.iter_mut().flatten() {
            cutting.go_on(u64::from(effort.count()) * STEPS);
        }
    }

    /// Whether it can come to an effort for these inputs by going on.
    #[must_use]
    pub fn leads_to(&self, inputs: &Inputs, effort: Effort) -> bool {
        self.effort <= effort.count() && self.inputs == *inputs
    }

    /// What it comes to so far.
    #[must_use]
    pub fn so_far(&self) -> Answer {
        let Inputs { kinds, gear, rig_cords, rope, kerf, end, assumed } = &self.inputs;
        let (mut plans, mut steps, mut more) = (Vec::new(), 0, false);
        let mut cautions = vec![Caution::Arithmetic, Caution::MeasureHank, Caution::TieOneFirst];
        if kinds.iter().any(|kind| kind.is_usual) {
            cautions.push(Caution::UsualHanks);
        }
        for (kind, cutting) in kinds.iter().zip(&self.cuttings) {
            let mut goes_on = false;
            let outcome = match cutting {
                Ok(cutting) => {
                    steps += cutting.steps();
                    goes_on = cutting.more();
                    let runs_out = Outcome::RunsOut { proved: cutting.is_certain() };
                    cutting.so_far().map_or(runs_out, Outcome::Plan)
                }
                Err(Fault::TooLong { cord, most }) => Outcome::TooLong { cord: *cord, most: f64::from(*most) / TENTHS },
                Err(Fault::TooMuch) => Outcome::TooMuch,
            };
            // What was not proved in the last round is left at that.
            more |= goes_on;
            let is_priced = kind.order(*kerf, *end).is_priced();
            plans.push(KindPlan { kind: kind.clone(), is_priced, outcome, more: goes_on });
        }
        Answer {
            kinds: plans,
            gear: gear.clone(),
            rig_cords: rig_cords.clone(),
            rope: rope.clone(),
            kerf: *kerf,
            end: *end,
            assumed: assumed.clone(),
            cautions,
            steps,
            more,
        }
    }
}
