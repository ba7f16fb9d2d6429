//! What a while of pulling or of rest does to somebody.

use super::{Tired, Tiring};
use crate::float;

/// What a while of pulling, of rest, or of both does: so much of what was tired stays, and so much comes on top.
///
/// ```text
///   tired -> gained + kept x tired
/// ```
///
/// # Guarantees
/// Whatever follows whatever, it is what one after the other comes to.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Spell {
    gained: f64,
    kept: f64,
}

impl Spell {
    /// Some seconds of pulling at a share of the whole strength.
    pub(crate) fn pulling(tiring: Tiring, share: f64, seconds: f64) -> Self {
        let kept = float::exp(-tiring.recovery * seconds);
        Self { gained: share * tiring.fatigue / tiring.recovery * (1.0 - kept), kept }
    }

    /// Some seconds of rest.
    pub(crate) fn resting(tiring: Tiring, seconds: f64) -> Self {
        Self { gained: 0.0, kept: float::exp(-tiring.rest * tiring.recovery * seconds) }
    }

    /// This, and then that.
    pub(crate) fn then(self, next: Self) -> Self {
        Self { gained: next.gained + next.kept * self.gained, kept: self.kept * next.kept }
    }

    /// This so many times over; it must not keep all.
    pub(crate) fn times(self, count: f64) -> Self {
        let kept = float::exp(count * float::ln(self.kept));
        Self { gained: self.gained * (1.0 - kept) / (1.0 - self.kept), kept }
    }

    /// How tired it leaves somebody.
    pub(crate) fn after(self, Tired(tired): Tired) -> Tired {
        Tired(self.gained + self.kept * tired)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_one_thing_after_the_other() {
        for tiring in [Tiring::SHOULDER, Tiring::ELBOW, Tiring::HAND] {
            let spell = Spell::pulling(tiring, 0.6, 1.5).then(Spell::resting(tiring, 8.0));
            let mut tired = Tired::FRESH.pulling(tiring, 0.9, 20.0);
            let begun = tired;
            for count in 0..50 {
                let at_once = spell.times(f64::from(count)).after(begun);
                assert!((at_once.left() - tired.left()).abs() < 1e-13, "{tiring:?} {count}");
                tired = tired.pulling(tiring, 0.6, 1.5).resting(tiring, 8.0);
            }
        }
    }
}
