//! What the arms pull, as far as the grip tells.

use crate::field::{Field, Kind, Row, Spread, choice};
use crate::float;

choice! {
    /// Whether somebody trains pulling.
    Training {
        /// They do not.
        Untrained = "untrained", "no", "";
        /// They do.
        TrainedPulling = "trained-pulling", "yes", "Chin-ups, rowing or climbing, every week.";
    }
}

/// What two arms pull down over the grip of both hands, for somebody untrained.
///
/// # Source
/// Judged, between two lines of evidence: pull-down maxima (Johnson 2009) over the grip of a national survey give 0.60
/// for women and 0.78 for men; an isometric strength field (La Delfa and Potvin 2017) 0.36 to 0.55.
pub const PULL_OVER_GRIP: Spread = Spread::new(0.50, 0.65, 0.85);

/// The same for somebody who trains pulling.
///
/// # Source
/// Judged; trained pullers reach 0.8 to 1.35 (Macias 2015).
pub const TRAINED_PULL_OVER_GRIP: Spread = Spread::new(0.70, 0.85, 1.2);

/// What one person's pull is off what their grip foretells: one standard deviation of its logarithm.
///
/// # Source
/// Judged: about 25 %.
pub const PREDICTION_ERROR: f64 = 0.25;

impl Training {
    /// What two arms pull down over the grip of both hands.
    #[must_use]
    pub const fn pull_over_grip(self) -> Spread {
        match self {
            Self::Untrained => PULL_OVER_GRIP,
            Self::TrainedPulling => TRAINED_PULL_OVER_GRIP,
        }
    }
}

/// What two arms pull through a stroke, from the grip of both hands together, `deviations` standard deviations off what
/// it foretells.
///
/// # Units
/// Newtons.
///
/// # Example
/// ```
/// use boughline::climber::{Training, predicted_pull};
///
/// let over_grip = Training::Untrained.pull_over_grip().likely;
/// assert_eq!(predicted_pull(800.0, over_grip, 0.0).round(), 520.0);
/// ```
#[must_use]
pub fn predicted_pull(grip: f64, over_grip: f64, deviations: f64) -> f64 {
    grip * over_grip * float::exp(PREDICTION_ERROR * deviations)
}

/// Whether the climber trains pulling.
pub static TRAINING: Field<Training> = Field::new(Row {
    id: "training",
    noun: "trains pulling",
    hint: "Only to guess a pull from a grip; a pull that you measured says more.",
    kind: Kind::Choice { options: Training::OPTIONS, likely: Some("untrained") },
    why: "Untrained is the cautious default.",
    private: true,
});

#[cfg(test)]
mod tests {
    use super::*;

    /// e^0.25 is 1.284, by any table.
    #[test]
    fn one_deviation_is_a_quarter_in_logarithms() {
        let more = predicted_pull(800.0, 0.65, 1.0) / predicted_pull(800.0, 0.65, 0.0);
        let less = predicted_pull(800.0, 0.65, -1.0) / predicted_pull(800.0, 0.65, 0.0);
        assert!((more - 1.284_025).abs() < 1e-6 && (more * less - 1.0).abs() < 1e-12);
    }
}
