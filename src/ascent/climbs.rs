//! The likely climb and the sampled ones, and what their figures come to together.

use super::climb::Climb;
use super::outcome::{Outcome, Outcomes};
use super::{Gate, Plan};
use crate::chance::{Draws, Effort, Likely, spread_of};
use crate::field::Spread;
use crate::reeving::Rig;

/// The likely climb, and the sampled ones.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Climbs {
    likely: Climb,
    sampled: Vec<Climb>,
}

impl Climbs {
    /// Of a plan, none of them sampled yet.
    pub(crate) fn of(plan: &Plan) -> Self {
        Self { likely: Climb::of(plan, &Likely), sampled: Vec::new() }
    }

    /// Goes on sampling the same plan.
    pub(crate) fn go_on(&mut self, plan: &Plan, effort: Effort) {
        let more = self.count()..effort.count();
        self.sampled.reserve(more.len());
        for sample in more {
            self.sampled.push(Climb::of(plan, &Draws::sample(sample)));
        }
    }

    /// How many are sampled.
    pub(crate) fn count(&self) -> u32 {
        self.sampled.len() as u32
    }

    /// The likely climb.
    pub(crate) fn likely(&self) -> &Climb {
        &self.likely
    }

    /// What a figure comes to, where it is known.
    fn spread(&self, figure: &dyn Fn(&Climb) -> f64) -> Option<Spread> {
        let likely = figure(&self.likely);
        if likely.is_nan() {
            return None;
        }
        let mut samples = Vec::with_capacity(self.sampled.len());
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

    /// How the sampled climbs end; none while the strength of arms or hands is not known, where hands hold anything.
    pub(crate) fn outcomes(&self, by_hand: bool) -> Option<Outcomes> {
        let Climb { arms_share: arms, hands_share: hands, .. } = self.likely;
        if by_hand && hands.is_nan() {
            return None;
        }
        let mut ends = Vec::with_capacity(self.sampled.len());
        for climb in &self.sampled {
            ends.push(Outcome::of(climb)?);
        }
        Some(Outcomes { ends, likely: [arms, hands], counted: !self.likely.strokes.is_nan() })
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
