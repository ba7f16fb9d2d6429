//! How far the hands travel in a stroke, and how long a stroke takes.

use super::Hold;
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{CENTIMETRE, Count, Dimension, INCH, Length};

choice! {
    /// How the climber sits while pulling.
    Posture {
        /// Upright.
        Upright = "upright", "sitting upright", "Back straight; the pull ends above the chest.";
        /// Leaning back.
        LeaningBack = "leaning-back", "leaning back", "Leaning away from the rope; the whole reach is used.";
    }
}

/// How far somebody reaches, sitting, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reach {
    /// From the overhead grip down to the chest.
    pub to_chest: f64,
    /// From the overhead grip down to the lap.
    pub to_lap: f64,
}

impl Reach {
    /// The reach of arms that keep a share of it.
    #[must_use]
    pub fn kept(self, share: f64) -> Self {
        Self { to_chest: self.to_chest * share, to_lap: self.to_lap * share }
    }
}

/// What the reach from overhead to the chest is of stature, in metres on top, and its standard deviation: see [`reach`].
pub const TO_CHEST: (f64, f64, f64) = (0.4802, 0.0012, 0.046);

/// The same of the reach from overhead to the lap.
pub const TO_LAP: (f64, f64, f64) = (0.6940, -0.1061, 0.041);

/// The reach of somebody of a stature, `deviations` standard deviations off the mean.
///
/// # Units
/// Metres.
///
/// # Source
/// ANSUR II (2012), computed from its microdata: to chest 0.4802 stature + 1.2 mm, SD 46 mm; to lap
/// 0.6940 stature - 106.1 mm, SD 41 mm. Soldiers: somebody with stiff shoulders reaches less.
#[must_use]
pub fn reach(stature: f64, deviations: f64) -> Reach {
    Reach {
        to_chest: TO_CHEST.0 * stature + TO_CHEST.1 + TO_CHEST.2 * deviations,
        to_lap: TO_LAP.0 * stature + TO_LAP.1 + TO_LAP.2 * deviations,
    }
}

/// The share of the reach from overhead to chest that a pull uses.
///
/// # Source
/// Judged, chosen to meet the progress that climbers report (common practice, no source).
#[must_use]
pub fn share_used(posture: Posture, hold: Hold) -> Spread {
    if posture == Posture::LeaningBack || hold.is_loop() { Spread::point(1.0) } else { Spread::new(0.55, 0.70, 0.85) }
}

/// One pull, in seconds (judged).
pub const PULL_TIME: Spread = Spread::new(1.2, 1.35, 1.5);

/// Moving the upper hitch, in seconds (judged).
pub const RESET_TIME: Spread = Spread::new(4.0, 8.0, 15.0);

/// What the stack grows by for each pair of turns beyond the first, in metres.
///
/// # Source
/// Judged: one more turn and its connector at either end, side by side with the first. Its range is within the stack
/// length's own.
pub const EXTRA_PAIR: f64 = 0.05;

/// How the climber sits.
pub static POSTURE: Field<Posture> = Field::new(Row {
    id: "posture",
    noun: "how you pull",
    hint: "If your trunk does not hold you, measure the rope you pull instead.",
    kind: Kind::Choice { options: Posture::OPTIONS, likely: Some("upright") },
    why: "Upright is the cautious default.",
    private: false,
});

/// One's own figure for the travel of the hands.
pub static HAND_TRAVEL: Field<Length> = Field::new(Row {
    id: "handTravel",
    noun: "rope pulled each stroke, measured",
    hint: "Only if you have measured it: how much rope your hands take in one pull, sitting as you would climb.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.05,
        most: 1.5,
        example: 0.60,
        likely: None,
        bare: Some([CENTIMETRE, INCH]),
    }),
    why: "Beyond the longest reach in ANSUR II.",
    private: true,
});

/// How close the hitches and their turn come.
pub static STACK_LENGTH: Field<Length> = Field::new(Row {
    id: "stackLength",
    noun: "stack length",
    hint: "The length of both hitches, the turns and the connectors pushed together.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.1,
        most: 1.5,
        example: 0.45,
        likely: Some(Spread::new(0.30, 0.45, 0.70)),
        bare: Some([CENTIMETRE, INCH]),
    }),
    why: "0.45 m, from 0.30 to 0.70, is judged.",
    private: false,
});

/// How often the climber pulls.
pub static CADENCE: Field<Count> = Field::new(Row {
    id: "cadence",
    noun: "strokes a minute",
    hint: "Count your pulls through one whole minute, rests included.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Count,
        least: 1.0,
        most: 40.0,
        example: 6.0,
        likely: None,
        bare: None,
    }),
    why: "Hard pulls go 5 to 10 a minute, 15 to 20 only below a third of one's best; over 40 nobody moves a hitch (judged).",
    private: false,
});

#[cfg(test)]
mod tests {
    use super::*;

    /// ANSUR II, men of stature 1750 ± 25 mm, n = 1186 (computed from the microdata): 841 mm to the chest, 1112 mm to
    /// the lap. The regression is over both sexes, so a tenth of its standard deviation is allowed.
    #[test]
    fn reach_meets_the_survey_rows() {
        let reach = reach(1.75, 0.0);
        assert!((reach.to_chest - 0.841).abs() < 0.0046, "{reach:?}");
        assert!((reach.to_lap - 1.112).abs() < 0.0041, "{reach:?}");
    }
}
