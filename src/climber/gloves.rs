//! What the hands wear.

use crate::field::{Field, Kind, Row, choice};

choice! {
    /// What the hands wear.
    Gloves {
        /// Nothing.
        None = "none", "no gloves", "";
        /// Smooth gloves.
        Slick = "slick", "smooth gloves", "Cloth or worn leather: the hand slips sooner than bare.";
        /// Rubbered gloves.
        Rubbered = "rubbered", "rubbered gloves", "Palms and fingers coated with rubber.";
    }
}

impl Gloves {
    /// The friction of the hand on what it holds.
    ///
    /// # Source
    /// Hur 2012, on a metal handle: slick polyester 0.32, bare skin 0.50, rubber-coated 0.74. That rope is alike is
    /// judged.
    #[must_use]
    pub const fn friction(self) -> f64 {
        match self {
            Self::None => 0.50,
            Self::Slick => 0.32,
            Self::Rubbered => 0.74,
        }
    }
}

/// What the climber's hands wear.
pub static GLOVES: Field<Gloves> = Field::new(Row {
    id: "gloves",
    noun: "gloves",
    hint: "Smooth gloves slip on bare rope.",
    kind: Kind::Choice { options: Gloves::OPTIONS, likely: Some("none") },
    why: "Most measurements are of bare hands.",
    private: false,
});
