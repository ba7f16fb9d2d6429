//! What a slip comes to: the arrest, from the start of the climb to its top.

use super::Inputs;
use crate::ascent::all_up;
use crate::chance::{Likely, Pick};
use crate::field::Spread;
use crate::gear::{arrest_force, fall_factor};
use crate::quantity::{Force, Length};

/// What a slip comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// How far the climber drops before the rope is taut and the hitch holds, in metres.
    pub drop: Spread,
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

/// The share of the weight that the most loaded strand carries at rest: ropes that share pull together.
pub(super) type Share = f64;

// Apart from what an ascent draws.
const DROP: u32 = 5001;
const MODULUS: u32 = 5003;

impl Inputs {
    /// What stops the climber over their weight, after a drop near the top, where least rope is out.
    pub(super) fn stopped(&self, weight: f64, share: Share, drop: Spread, pick: &dyn Pick) -> Option<f64> {
        let [crotch, _, top] = self.heights?;
        let modulus = pick.of(MODULUS, self.gear.rope.modulus()) / share;
        Some(arrest(weight, pick.of(DROP, drop), crotch - top, modulus) / weight)
    }

    /// The slip from the start to the top.
    pub(super) fn slip(&self, share: Share, drop: Spread) -> Option<Slip> {
        const STEPS: u32 = 24;
        let [crotch, start, top] = self.heights?;
        let weight = all_up(self.body_mass, &self.kit_mass, &Likely);
        let modulus = self.gear.rope.modulus().scaled(1.0 / share);
        let mut slip = Slip {
            drop,
            factor: factor(drop.likely, crotch - top),
            heights: Vec::new(),
            likely: Vec::new(),
            stiff: Vec::new(),
            lowest_catch: None,
        };
        for step in 0..=STEPS {
            let height = start + (top - start) * f64::from(step) / f64::from(STEPS);
            slip.heights.push(height);
            slip.likely.push(arrest(weight, drop.likely, crotch - height, modulus.likely));
            slip.stiff.push(arrest(weight, drop.likely, crotch - height, modulus.high));
        }
        // The heaviest climber on rope that gives most, all of it down to a tie at the foot: the fall is longest, and
        // never less higher up than the height gained; so the first height that clears it is the lowest.
        let heaviest = self.body_mass.weight().in_newtons() + self.kit_mass.high * crate::quantity::STANDARD_GRAVITY;
        let beyond = if self.at_the_foot { crotch } else { 0.0 };
        let clears = |height: f64| {
            let out = crotch - height + beyond;
            let given = (out + drop.high) * arrest(heaviest, drop.high, out, modulus.low) / modulus.low;
            height - start >= drop.high + given
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

/// The drop over the rope that stops it: as much as hangs above the climber, and the drop itself.
fn factor(drop: f64, out: f64) -> f64 {
    fall_factor(Length::metres(drop), Length::metres(out + drop))
}

/// What stops somebody, in newtons.
fn arrest(weight: f64, drop: f64, out: f64, modulus: f64) -> f64 {
    arrest_force(Force::newtons(weight), factor(drop, out), modulus).in_newtons()
}
