//! How much of one's strength lasts, pull after pull.

/// How fast muscles tire and recover, each second.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tiring {
    /// The share of what works that tires.
    pub fatigue: f64,
    /// The share of what is tired that recovers.
    pub recovery: f64,
    /// How many times faster it recovers at rest.
    pub rest: f64,
}

impl Tiring {
    /// The muscles of the shoulder.
    ///
    /// # Source
    /// Frey-Law and others 2012, J Biomech 45:1803 (fatigue and recovery); Looft and Frey-Law 2020 (rest): read in
    /// abstracts.
    pub const SHOULDER: Self = Self { fatigue: 0.0182, recovery: 0.001_68, rest: 15.0 };

    /// The muscles of the elbow.
    ///
    /// # Source
    /// Rakshit and others 2021, J Biomech 110695, pooled (quoted).
    pub const ELBOW: Self = Self { fatigue: 0.010_86, recovery: 0.002_25, rest: 4.93 };

    /// The muscles of hand and grip.
    ///
    /// # Source
    /// Rakshit and others 2021, J Biomech 110695 (quoted).
    pub const HAND: Self = Self { fatigue: 0.012_27, recovery: 0.001_34, rest: 9.1 };

    /// The same muscles where they tire so many times faster.
    #[must_use]
    pub fn faster(self, times: f64) -> Self {
        Self { fatigue: self.fatigue * times, ..self }
    }

    /// The share of one's strength that can be asked for ever, at work for `duty` of the time.
    ///
    /// ```text
    ///   k = recovery / fatigue x (duty + rest x (1 - duty)) / duty      share = k / (1 + k)
    /// ```
    ///
    /// # Guarantees
    /// Between nought and one; one where nothing is asked. The kind edge: the model was fitted to still holding, and
    /// measured pulls repeated for twelve minutes at a third of the time topped out at 0.37.
    ///
    /// # Source
    /// The model of three compartments: Xia and Frey-Law 2008, with recovery at rest after Looft 2018. The edge:
    /// J Physiol 592:4775.
    ///
    /// # Example
    /// ```
    /// use boughline::climber::Tiring;
    ///
    /// assert_eq!((Tiring::SHOULDER.lasting(0.5) * 1000.0).round(), 596.0);
    /// ```
    #[must_use]
    pub fn lasting(self, duty: f64) -> f64 {
        let working = self.fatigue * duty;
        let recovering = self.recovery * (duty + self.rest * (1.0 - duty));
        recovering / (recovering + working)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The fractions that the published parameters give, to three figures.
    #[test]
    fn published_parameters_give_the_lasting_shares() {
        for (muscles, duty, wanted) in [
            (Tiring::SHOULDER, 0.5, 0.596),
            (Tiring::SHOULDER, 1.0 / 3.0, 0.741),
            (Tiring::SHOULDER, 1.0, 0.085),
            (Tiring::HAND, 0.5, 0.524),
        ] {
            assert!((muscles.lasting(duty) - wanted).abs() < 0.000_51, "{muscles:?} {duty}");
        }
        assert_eq!(Tiring::SHOULDER.lasting(0.0).to_bits(), 1.0_f64.to_bits());
    }

    #[test]
    fn more_work_never_lasts_longer() {
        for step in 1..100 {
            let at = |step: i32| Tiring::SHOULDER.lasting(f64::from(step) / 100.0);
            assert!(at(step) >= at(step + 1));
        }
    }
}
