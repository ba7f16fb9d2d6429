//! The likely climb and the sampled ones, and what their figures come to together.

use super::climb::Climb;
use super::{Gate, Inputs};
use crate::chance::{Draws, Likely, spread_of};
use crate::field::Spread;
use crate::question::Effort;
use crate::reeving::Rig;

/// The likely climb, and the sampled ones.
pub(super) struct Climbs {
    likely: Climb,
    pub(super) sampled: Vec<Climb>,
}

impl Climbs {
    pub(super) fn of(inputs: &Inputs, effort: Effort) -> Self {
        let mut sampled = Vec::new();
        for sample in 0..effort.count() {
            sampled.push(Climb::of(inputs, &Draws::sample(sample)));
        }
        Self { likely: Climb::of(inputs, &Likely), sampled }
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
    pub(super) fn maybe(&self, to: &mut Option<Spread>, figure: fn(&Climb) -> f64) {
        *to = self.spread(&figure);
    }

    /// Puts a figure that is always known where it belongs.
    pub(super) fn always(&self, to: &mut Spread, figure: fn(&Climb) -> f64) {
        if let Some(spread) = self.spread(&figure) {
            *to = spread;
        }
    }

    /// What somebody has, and the share of it that one pull takes, where they are known.
    pub(super) fn gate(&self, capacity: fn(&Climb) -> f64, share: fn(&Climb) -> f64) -> Option<Gate> {
        Some(Gate { capacity: self.spread(&capacity)?, share: self.spread(&share)? })
    }

    /// The tension of every strand, rope by rope.
    pub(super) fn tensions(&self, to: &mut Vec<Vec<Spread>>, rig: &Rig) {
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
