//! Seeded sampling: sample `i` draws the same whatever the inputs, and the same bits on every machine.

mod effort;
mod rank;

pub use effort::Effort;
pub(crate) use rank::ranked;
pub use rank::{percentile, spread_of};

use crate::field::Spread;
use crate::float;

/// Picks one value of each thing that varies: the likely one, or a sample's.
pub trait Pick {
    /// A value of a spread.
    ///
    /// # Guarantees
    /// Exactly the likely value where the spread has no width.
    fn of(&self, thing: u32, spread: Spread) -> f64;

    /// How many standard deviations off the mean something is.
    fn deviations(&self, thing: u32) -> f64;
}

/// Picks the likely value of everything.
#[derive(Debug, Clone, Copy)]
pub struct Likely;

impl Pick for Likely {
    fn of(&self, _: u32, spread: Spread) -> f64 {
        spread.likely
    }

    fn deviations(&self, _: u32) -> f64 {
        0.0
    }
}

/// The draws of one sample. Each thing that varies has a number of its own, so that adding one never moves another.
///
/// # Source
/// The mixing step is that of `SplitMix64`: G. L. Steele, D. Lea and C. H. Flood, "Fast splittable pseudorandom number
/// generators", OOPSLA 2014 (from memory).
#[derive(Debug, Clone, Copy)]
pub struct Draws {
    sample: u64,
}

/// The increment of `SplitMix64`: 2^64 over the golden ratio, made odd.
const GOLDEN: u64 = 0x9e37_79b9_7f4a_7c15;

fn mixed(mut z: u64) -> u64 {
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

impl Draws {
    /// The draws of sample number `sample`.
    #[must_use]
    pub fn sample(sample: u32) -> Self {
        Self { sample: mixed(u64::from(sample).wrapping_add(1).wrapping_mul(GOLDEN)) }
    }

    /// A number between nought and one, neither included, for the thing numbered `thing`.
    #[must_use]
    pub fn uniform(self, thing: u32) -> f64 {
        let bits = mixed(self.sample.wrapping_add(u64::from(thing).wrapping_add(1).wrapping_mul(GOLDEN)));
        // 52 bits and a half: exact, and never nought or one.
        ((bits >> 12) as f64 + 0.5) / 4_503_599_627_370_496.0
    }
}

impl Pick for Draws {
    /// Triangular, from the low end to the high end with the peak at the likely value.
    fn of(&self, thing: u32, spread: Spread) -> f64 {
        triangular(spread, self.uniform(thing))
    }

    /// Standard normal.
    fn deviations(&self, thing: u32) -> f64 {
        normal(self.uniform(thing))
    }
}

/// The inverse of the triangular distribution.
#[must_use]
pub fn triangular(spread: Spread, at: f64) -> f64 {
    let Spread { low, likely, high } = spread;
    let width = high - low;
    if width <= 0.0 {
        return likely;
    }
    let rise = likely - low;
    if at * width < rise {
        low + (at * width * rise).sqrt()
    } else {
        high - ((1.0 - at) * width * (high - likely)).sqrt()
    }
}

/// The inverse of the standard normal distribution.
///
/// # Guarantees
/// Relative error below 1.2e-9.
///
/// # Source
/// P. J. Acklam, "An algorithm for computing the inverse normal cumulative distribution function" (2003; coefficients
/// from memory, checked in a test against published quantiles).
fn normal(at: f64) -> f64 {
    const EDGE: f64 = 0.02425;
    if at < EDGE {
        tail((-2.0 * float::ln(at)).sqrt())
    } else if at > 1.0 - EDGE {
        -tail((-2.0 * float::ln(1.0 - at)).sqrt())
    } else {
        let q = at - 0.5;
        let r = q * q;
        let over = ((((-3.969_683_028_665_376e1 * r + 2.209_460_984_245_205e2) * r - 2.759_285_104_469_687e2) * r
            + 1.383_577_518_672_69e2)
            * r
            - 3.066_479_806_614_716e1)
            * r
            + 2.506_628_277_459_239;
        let under = ((((-5.447_609_879_822_406e1 * r + 1.615_858_368_580_409e2) * r - 1.556_989_798_598_866e2) * r
            + 6.680_131_188_771_972e1)
            * r
            - 1.328_068_155_288_572e1)
            * r
            + 1.0;
        q * over / under
    }
}

fn tail(q: f64) -> f64 {
    let over = ((((-7.784_894_002_430_293e-3 * q - 3.223_964_580_411_365e-1) * q - 2.400_758_277_161_838) * q
        - 2.549_732_539_343_734)
        * q
        + 4.374_664_141_464_968)
        * q
        + 2.938_163_982_698_783;
    let under = (((7.784_695_709_041_462e-3 * q + 3.224_671_290_700_398e-1) * q + 2.445_134_137_142_996) * q
        + 3.754_408_661_907_416)
        * q
        + 1.0;
    over / under
}

#[cfg(test)]
mod tests {
    use super::*;

    /// `SplitMix64` from seed 1234567, the vector commonly printed with its reference code (from memory).
    #[test]
    fn mixing_gives_the_reference_vector() {
        let mut state: u64 = 1_234_567;
        let mut next = || {
            state = state.wrapping_add(GOLDEN);
            mixed(state)
        };
        assert_eq!(
            [next(), next(), next()],
            [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423]
        );
    }

    /// Standard normal quantiles as any handbook prints them.
    #[test]
    fn normal_quantiles_are_those_of_the_handbooks() {
        for (at, wanted) in [(0.5, 0.0), (0.95, 1.644_854), (0.975, 1.959_964), (0.995, 2.575_829), (0.001, -3.090_232)]
        {
            assert!((normal(at) - wanted).abs() < 5e-7, "{at}: {}", normal(at));
        }
    }

    #[test]
    fn a_triangle_has_its_closed_form_mean_and_stays_inside() {
        let spread = Spread::new(0.4, 0.55, 0.66);
        let samples: Vec<f64> = (0..20_000).map(|i| Draws::sample(i).of(3, spread)).collect();
        assert!(samples.iter().all(|v| (0.4..=0.66).contains(v)));
        let mean = samples.iter().sum::<f64>() / 20_000.0;
        // Three standard errors of the mean of a triangle of variance (a2 + b2 + c2 - ab - ac - bc) / 18.
        assert!((mean - (0.4 + 0.55 + 0.66) / 3.0).abs() < 3.0 * 0.0534 / 20_000_f64.sqrt(), "{mean}");
    }

    #[test]
    fn a_point_is_drawn_exactly() {
        assert_eq!(Draws::sample(7).of(1, Spread::point(0.1)).to_bits(), 0.1_f64.to_bits());
    }
}
