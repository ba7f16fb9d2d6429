//! Whether the trunk holds the climber upright.

use crate::field::{Field, Kind, Row, Spread, choice};

choice! {
    /// Whether the trunk holds somebody upright.
    Trunk {
        /// It does.
        Steady = "steady", "holds me upright", "";
        /// It does not.
        Unsteady = "unsteady", "does not hold me", "As after a spinal injury below the neck.";
        /// An injury at the neck: arms and hands may be weaker too.
        Cervical = "cervical", "injury at the neck", "No pull is guessed: measure yours.";
    }
}

impl Trunk {
    /// The share of a predicted pull that is left. None where nothing may be predicted. A pull that was measured is
    /// whole: it was pulled with the same trunk.
    ///
    /// # Source
    /// Judged, 0.85 from 0.70 to 1.0: with paraplegia arms are about as strong as others' (Haisma 2006, Kotajarvi
    /// 2002), but the shoulder's extension is weaker after high injuries (Souza 2005). After an injury at the neck any
    /// part of arm and hand may be weak, so there is no share.
    #[must_use]
    pub const fn share_of_prediction(self) -> Option<Spread> {
        match self {
            Self::Steady => Some(Spread::point(1.0)),
            Self::Unsteady => Some(Spread::new(0.70, 0.85, 1.0)),
            Self::Cervical => None,
        }
    }
}

/// Whether the climber's trunk holds them upright.
pub static TRUNK: Field<Trunk> = Field::new(Row {
    id: "trunk",
    noun: "your trunk",
    hint: "When you sit and pull without a backrest.",
    kind: Kind::Choice { options: Trunk::OPTIONS, likely: Some("steady") },
    why: "It changes a guessed pull, not a measured one, and what to be careful about.",
    private: true,
});
