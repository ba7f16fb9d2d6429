//! What the legs do.

use super::Trunk;
use crate::field::{Field, Kind, Row, choice};

choice! {
    /// What somebody's legs do.
    Legs {
        /// Nothing.
        None = "none", "do not move", "Paralysed, missing, or not to be used.";
        /// They help.
        Some = "some", "help a little", "They push, but not your whole weight, or not often.";
        /// They lift the whole body.
        Full = "full", "carry me", "They lift your whole weight, step after step.";
    }
}

choice! {
    /// Whether somebody climbs a flight of stairs without the handrail and without getting out of breath.
    Stairs {
        /// They do.
        Yes = "yes", "yes", "";
        /// They do not.
        No = "no", "no", "";
    }
}

/// What the climber's legs do. Where it is not said, nothing is claimed of them.
pub static LEGS: Field<Legs> = Field::new(Row {
    id: "legs",
    noun: "your legs",
    hint: "Legs that carry you may be a way up of their own; legs that do not move make hanging in a harness harder.",
    kind: Kind::Choice { options: Legs::OPTIONS, likely: None },
    why: "Nothing is taken for granted of anybody's legs.",
    private: true,
});

/// Whether the climber takes stairs well.
pub static STAIRS: Field<Stairs> = Field::new(Row {
    id: "stairs",
    noun: "a flight of stairs",
    hint: "Can you climb one without the handrail and without getting out of breath?",
    kind: Kind::Choice { options: Stairs::OPTIONS, likely: None },
    why: "What climbers ask before a climb by the legs (common practice, no source).",
    private: true,
});

/// Whether legs hang still in a harness: they do not move, or the trunk does not hold and nobody said that they carry.
pub(crate) fn hangs_still(legs: Option<Legs>, trunk: Option<Trunk>) -> bool {
    let unsteady = trunk.is_some_and(|trunk| trunk != Trunk::Steady);
    legs == Some(Legs::None) || unsteady && legs != Some(Legs::Full)
}
