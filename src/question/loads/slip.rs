//! What a slip comes to: the arrest, from the start of the climb to its top.

use super::Inputs;
use crate::chance::{Likely, Pick};
use crate::field::Spread;
use crate::quantity::{Force, Length};

/// What a slip comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// How far the climber drops before the rope is taut, in metres.
    pub slack: Spread,
    /// Drop over rope out at the top.
    pub factor: f64,
    /// Heights of the lower hitch above the ground, in metres.
    pub heights: Vec<f64>,
    /// What the climber is stopped with at each height on rope of a likely stiffness, in newtons.
    pub likely: Vec<f64>,
    /// The same on the stiffest rope of the kind.
    pub stiff: Vec<f64>,
    /// From which height of the lower hitch on a catch comes before the ground, in metres; none where none does.
    pub lowest_catch: Option<f64>,
}

/// The share of the weight that the most loaded strand carries at rest.
pub(super) type Share = f64;

// Apart from what an ascent draws.
const SLACK: u32 = 5001;
const SETBACK: u32 = 5002;
const MODULUS: u32 = 5003;

/// What stops the climber over their weight, after a drop with so much rope out.
///
/// A rope that hangs on several strands gives less for the same pull: its strands pull together.
fn over_weight(weight: f64, drop: f64, out: f64, modulus: f64, share: Share) -> f64 {
    let factor = crate::gear::fall_factor(Length::metres(drop), Length::metres(out));
    crate::gear::arrest_force(Force::newtons(weight), factor, modulus / share).in_newtons() / weight
}

impl Inputs {
    /// What stops the climber over their weight: after the slack, or after what the hitch gives back.
    pub(super) fn stopped(&self, weight: f64, share: Share, pick: &dyn Pick) -> Option<[f64; 2]> {
        let [crotch, _, top] = self.heights?;
        let modulus = pick.of(MODULUS, self.gear.rope.modulus());
        let stopped = |drop: f64| over_weight(weight, drop, crotch - top, modulus, share);
        Some([stopped(pick.of(SETBACK, self.setback)), stopped(pick.of(SLACK, self.slack))])
    }

    /// The slip from the start to the top.
    pub(super) fn slip(&self, weight: f64, share: Share) -> Option<Slip> {
        const STEPS: u32 = 24;
        let [crotch, start, top] = self.heights?;
        let modulus = self.gear.rope.modulus();
        let drop = Likely.of(SLACK, self.slack);
        let mut slip = Slip {
            slack: self.slack,
            factor: drop / (crotch - top),
            heights: Vec::new(),
            likely: Vec::new(),
            stiff: Vec::new(),
            lowest_catch: None,
        };
        for step in 0..=STEPS {
            let height = start + (top - start) * f64::from(step) / f64::from(STEPS);
            let out = crotch - height;
            slip.heights.push(height);
            slip.likely.push(weight * over_weight(weight, drop, out, modulus.likely, share));
            slip.stiff.push(weight * over_weight(weight, drop, out, modulus.high, share));
        }
        // Rope that gives most, and a hitch that gives back most: the drop is longest, and never less higher up
        // than the height gained; so the first height that clears it is the lowest.
        let clears = |height: f64| {
            let out = crotch - height;
            let pull = weight * over_weight(weight, self.slack.high, out, modulus.low, share);
            let given = out * pull * share / modulus.low;
            height - start >= self.slack.high + given + self.setback.high
        };
        if clears(top) {
            let (mut low, mut high) = (start, top);
            for _ in 0..40 {
                let middle = 0.5 * (low + high);
                if clears(middle) { high = middle } else { low = middle }
            }
            slip.lowest_catch = Some(high);
        }
        Some(slip)
    }
}
