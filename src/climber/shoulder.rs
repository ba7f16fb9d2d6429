//! How far up the arms go.

use crate::field::{Field, Kind, Row, Spread, choice};

choice! {
    /// How far up somebody's arms go.
    ShoulderReach {
        /// As far as there is.
        Full = "full", "straight overhead", "";
        /// Not so far.
        Limited = "limited", "not all the way", "Stiff or sore shoulders: about seven tenths of the reach are reckoned with. Measuring the rope you pull tells more.";
    }
}

impl ShoulderReach {
    /// The share of the reach that is kept.
    ///
    /// # Source
    /// Judged, 0.7 from 0.5 to 0.9: those surveyed were soldiers, and nobody has measured stiff shoulders so.
    #[must_use]
    pub const fn kept(self) -> Spread {
        match self {
            Self::Full => Spread::point(1.0),
            Self::Limited => Spread::new(0.5, 0.7, 0.9),
        }
    }
}

/// How far up the climber's arms go.
pub static SHOULDER_REACH: Field<ShoulderReach> = Field::new(Row {
    id: "shoulderReach",
    noun: "how far your arms go up",
    hint: "Try it sitting, with something in the hand; it gives the length of your pull. Left open, all the way is reckoned with.",
    kind: Kind::Choice { options: ShoulderReach::OPTIONS, likely: None },
    why: "Those surveyed were soldiers, whose arms go all the way up; seven tenths for stiff shoulders are judged.",
    private: true,
});
