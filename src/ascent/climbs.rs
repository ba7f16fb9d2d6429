//! The likely climb and the sampled ones, and what their figures come to together.

use super::Plan;
use super::climb::Climb;
use super::verdict::{Decided, Verdict, verdict};
use crate::chance::{Draws, Effort, Likely, sort, spread_of};
use crate::field::Spread;
use crate::reeving::Rig;

/// What somebody has, and the share of it that one pull takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gate {
    /// What they have, in newtons.
    pub capacity: Spread,
    /// Need over capacity.
    pub share: Spread,
}

/// The likely climb, and the sampled ones.
pub(crate) struct Climbs {
    likely: Climb,
    sampled: Vec<Climb>,
}

impl Climbs {
    pub(crate) fn of(plan: &Plan, effort: Effort) -> Self {
        let mut sampled = Vec::new();
        for sample in 0..effort.count() {
            sampled.push(Climb::of(plan, &Draws::sample(sample)));
        }
        Self { likely: Climb::of(plan, &Likely), sampled }
    }

    /// What a figure comes to, where it is known.
    fn spread(&self, figure: &dyn Fn(&Climb) -> f64) -> Option<Spread> {
        let likely = figure(&self.likely);
        if likely.is_nan() {
            return None;
        }
        let mut samples = Vec::new();
        for climb in &self.sampled {
            let sample = figure(climb);
            if !sample.is_nan() {
                samples.push(sample);
            }
        }
        Some(spread_of(likely, samples))
    }

    /// Puts a figure where it belongs, if it is known.
    pub(crate) fn maybe(&self, to: &mut Option<Spread>, figure: fn(&Climb) -> f64) {
        *to = self.spread(&figure);
    }

    /// Puts a figure that is always known where it belongs.
    pub(crate) fn always(&self, to: &mut Spread, figure: fn(&Climb) -> f64) {
        if let Some(spread) = self.spread(&figure) {
            *to = spread;
        }
    }

    /// What somebody has, and the share of it that one pull takes, where they are known.
    pub(crate) fn gate(&self, capacity: fn(&Climb) -> f64, share: fn(&Climb) -> f64) -> Option<Gate> {
        Some(Gate { capacity: self.spread(&capacity)?, share: self.spread(&share)? })
    }

    /// The verdict, of a plan with or without something missing, on what hands hold or a helper hauls; none while the
    /// strength of arms or hands is not known.
    pub(crate) fn verdict(&self, grip_is_entered: bool, complete: bool, by_hand: bool) -> Option<Verdict> {
        let Climb { arms_share: arms, hands_share: grasp, .. } = self.likely;
        if by_hand && grasp.is_nan() {
            return None;
        }
        let mut strains = Vec::new();
        let (mut stuck, mut weak) = (0, 0);
        for climb in &self.sampled {
            let strain = climb.strain()?;
            weak += u32::from(strain > 1.0);
            stuck += u32::from(climb.is_stuck());
            strains.push(if climb.is_stuck() { f64::INFINITY } else { strain });
        }
        sort(&mut strains);
        let tighter = if stuck > weak {
            Decided::Stroke
        } else if arms > 1.0 && grasp > 1.0 && grip_is_entered {
            Decided::ArmsAndHands
        } else if grasp > arms {
            Decided::Hands
        } else {
            Decided::Arms
        };
        let stuck = f64::from(stuck) / self.sampled.len().max(1) as f64;
        Some(verdict(&strains, stuck, tighter, complete))
    }

    /// The tension of every strand, rope by rope.
    pub(crate) fn tensions(&self, to: &mut Vec<Vec<Spread>>, rig: &Rig) {
        let mut at = 0;
        for rope in rig.ropes() {
            let mut spreads = Vec::new();
            for _ in 1..rope.stops.len() {
                let tension = |climb: &Climb| climb.tensions.get(at).copied().unwrap_or(0.0);
                if let Some(spread) = self.spread(&tension) {
                    spreads.push(spread);
                }
                at += 1;
            }
            to.push(spreads);
        }
    }
}
