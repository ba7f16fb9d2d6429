//! How many arms, or hands, are at it.

use crate::field::choice;

choice! {
    /// How many arms pulled.
    Arms {
        /// Both.
        Two = "two", "both arms", "Both hands on the rope or bar.";
        /// One.
        One = "one", "one arm", "One hand; the other idle.";
    }
}

impl Arms {
    /// How many.
    #[must_use]
    pub const fn count(self) -> f64 {
        match self {
            Self::Two => 2.0,
            Self::One => 1.0,
        }
    }
}
