//! How tired somebody is, pull by pull.

use super::Tiring;
use crate::float;

/// The share of somebody's strength that is tired, from none to all of it.
///
/// ```text
///   pulling at a share s:  tired -> s F / R + (tired - s F / R) e^(-R t)        at rest:  tired -> tired e^(-r R t)
/// ```
///
/// # Guarantees
/// The very solution of the three compartments between changes of load, not a step towards it: what works is what the
/// load takes, and nothing at rest. A pull succeeds while [`left`](Self::left) is at least the share it takes.
///
/// # Source
/// Xia and Frey-Law 2008; recovery at rest after Looft 2018.
///
/// # Example
/// ```
/// use boughline::climber::{Tired, Tiring};
///
/// let pulled = Tired::FRESH.pulling(Tiring::ELBOW, 0.67, 1.5);
/// let rested = pulled.resting(Tiring::ELBOW, 8.0);
/// assert!(pulled.left() < rested.left() && rested.left() < 1.0);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tired(pub(super) f64);

impl Tired {
    /// Nothing is tired.
    pub const FRESH: Self = Self(0.0);

    /// After some seconds of pulling at a share of the whole strength.
    #[must_use]
    pub fn pulling(self, tiring: Tiring, share: f64, seconds: f64) -> Self {
        let settled = share * tiring.fatigue / tiring.recovery;
        Self(settled + (self.0 - settled) * float::exp(-tiring.recovery * seconds))
    }

    /// After some seconds of rest.
    #[must_use]
    pub fn resting(self, tiring: Tiring, seconds: f64) -> Self {
        Self(self.0 * float::exp(-tiring.rest * tiring.recovery * seconds))
    }

    /// The share of the strength that is left.
    #[must_use]
    pub fn left(self) -> f64 {
        1.0 - self.0
    }

    /// After so many pulls with a rest between each two, counted to the end of the last pull.
    ///
    /// # Guarantees
    /// What pull by pull comes to, by one sum.
    #[must_use]
    pub fn after_pulls(tiring: Tiring, share: f64, pull: f64, rest: f64, pulls: f64) -> Self {
        Self::FRESH.pulling(tiring, share, pull).times(tiring, pull, rest, pulls)
    }

    /// After so many of the pull that left somebody so tired, with a rest between each two.
    #[must_use]
    pub(super) fn times(self, tiring: Tiring, pull: f64, rest: f64, pulls: f64) -> Self {
        let fades = -tiring.recovery * (pull + tiring.rest * rest);
        Self(self.0 * (1.0 - float::exp(pulls * fades)) / (1.0 - float::exp(fades)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Tiring; 3] = [Tiring::SHOULDER, Tiring::ELBOW, Tiring::HAND];

    /// The differential equation itself, by Runge and Kutta's fourth order in steps of 10 ms.
    #[test]
    fn it_is_what_integrating_the_equation_comes_to() {
        let run = |tiring: Tiring, mut tired: f64, share: f64, seconds: f64| {
            let slope = |tired: f64| {
                let recovery = if share > 0.0 { tiring.recovery } else { tiring.rest * tiring.recovery };
                tiring.fatigue * share - recovery * tired
            };
            let step = 0.01;
            for _ in 0..(seconds / step).round() as usize {
                let one = slope(tired);
                let two = slope(tired + 0.5 * step * one);
                let three = slope(tired + 0.5 * step * two);
                let four = slope(tired + step * three);
                tired += step / 6.0 * (one + 2.0 * two + 2.0 * three + four);
            }
            tired
        };
        for tiring in ALL {
            let (mut exact, mut stepped) = (Tired::FRESH, 0.0);
            for (share, pull, rest) in [(0.67, 1.5, 8.0), (0.9, 1.2, 4.0), (0.3, 10.0, 60.0), (0.5, 300.0, 1.0)] {
                exact = exact.pulling(tiring, share, pull).resting(tiring, rest);
                stepped = run(tiring, run(tiring, stepped, share, pull), 0.0, rest);
                assert!((exact.0 - stepped).abs() < 1e-9, "{tiring:?}: {exact:?}, {stepped}");
            }
        }
    }

    #[test]
    fn many_pulls_by_one_sum_are_those_pull_by_pull() {
        for tiring in ALL {
            for (share, pull, rest) in [(0.67, 1.5, 8.0), (0.9, 1.2, 4.0), (0.3, 3.0, 0.0)] {
                let mut tired = Tired::FRESH;
                for pulls in 1..=80 {
                    tired = tired.pulling(tiring, share, pull);
                    let sum = Tired::after_pulls(tiring, share, pull, rest, f64::from(pulls));
                    assert!((sum.0 - tired.0).abs() < 1e-12, "{tiring:?} {pulls}");
                    tired = tired.resting(tiring, rest);
                }
            }
        }
    }

    /// Pulled for ever at the share that lasts, what is left settles at that share, where pulls are short.
    #[test]
    fn for_ever_is_the_lasting_share() {
        for tiring in ALL {
            for duty in [0.2, 0.5, 0.8] {
                let (share, whole) = (tiring.lasting(duty), 0.01);
                let left = Tired::after_pulls(tiring, share, whole * duty, whole * (1.0 - duty), 1e9).left();
                assert!((left - share).abs() < 1e-3, "{tiring:?} {duty}: {left} and {share}");
            }
        }
    }
}
