//! What would catch the climber if the lower hitch failed.

use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Dimension, FOOT, Length, METRE};

choice! {
    /// What backs the lower hitch up.
    BackupKind {
        /// Nothing.
        None = "none", "nothing", "The lower hitch alone holds you.";
        /// A second hitch.
        SecondHitch = "second-hitch", "a second hitch above it", "Another hitch on the rope, clipped to the harness.";
        /// A knot in the tail.
        TailKnot = "tail-knot", "a knot in the tail", "A stopper knot in the rope's tail, tied again and again as you rise.";
    }
}

/// What backs the lower hitch up.
pub static BACKUP: Field<BackupKind> = Field::new(Row {
    id: "backup",
    noun: "backup to the lower hitch",
    hint: "",
    kind: Kind::Choice { options: BackupKind::OPTIONS, likely: Some("none") },
    why: "What is not there cannot hold.",
    private: false,
});

/// The rope that runs before a knot in the tail catches.
pub static KNOT_SLACK: Field<Length> = Field::new(Row {
    id: "knotSlack",
    noun: "rope to the knot",
    hint: "How much rope would run before the knot in the tail catches.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.0,
        most: 30.0,
        example: 2.0,
        likely: Some(Spread::new(0.5, 2.0, 4.0)),
        bare: Some([METRE, FOOT]),
    }),
    why: "A knot every few metres is common practice, no source; 2 m, from 0.5 to 4, is judged.",
    private: false,
});

impl BackupKind {
    /// The backup, with the rope that runs before a knot catches.
    #[must_use]
    pub const fn with_slack(self, slack: Length) -> Backup {
        match self {
            Self::None => Backup::None,
            Self::SecondHitch => Backup::SecondHitch,
            Self::TailKnot => Backup::TailKnot { slack },
        }
    }
}

/// What would catch the climber if the lower hitch failed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Backup {
    /// Nothing.
    #[default]
    None,
    /// A second hitch on the rope, above the lower one, clipped to the harness.
    SecondHitch,
    /// A stopper knot in the rope's tail.
    TailKnot {
        /// The rope that runs before the knot catches.
        slack: Length,
    },
}
