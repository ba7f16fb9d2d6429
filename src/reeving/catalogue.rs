//! The rigs that are offered by name.

use super::{Body, BodyKind, Fault, Rig, Rope, Stop};
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Dimension, FOOT, Length, METRE};

choice! {
    /// A rig of the catalogue.
    RigName {
        /// Hand over hand.
        HandOverHand = "hand-over-hand", "hand over hand, 1:1", "You lift your whole weight with each pull, one hand at a time; a friction hitch at the harness keeps what you gain.";
        /// The rope's own tail as a 3:1.
        TailThree = "tail-3", "self-haul on the rope's tail, 3:1", "You lift about a third of your weight, plus losses, and pull three times the rope: its tail goes from the lower hitch round a turn at the harness, up round a turn at an upper hitch, and down to your hands.";
    }
}

choice! {
    /// What backs the lower hitch up.
    BackupKind {
        /// Nothing.
        None = "none", "nothing", "The lower hitch alone holds you.";
        /// A second hitch.
        SecondHitch = "second-hitch", "a second hitch above it", "Another hitch on the rope, clipped to the harness.";
        /// A knot in the tail.
        TailKnot = "tail-knot", "a knot in the tail", "A stopper knot in the rope's tail, tied again every few metres.";
    }
}

/// The rig to climb with.
pub static RIG: Field<RigName> = Field::new(Row {
    id: "rig",
    noun: "rig",
    hint: "",
    kind: Kind::Choice { options: RigName::OPTIONS, likely: None },
    why: "There is no cautious default: it is the question.",
    private: false,
});

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

impl RigName {
    /// The rig of this name.
    ///
    /// # Errors
    /// None that a caller can cause.
    pub fn rig(self, backup: Backup) -> Result<Rig, Fault> {
        match self {
            Self::HandOverHand => hand_over_hand(backup),
            Self::TailThree => tail_three_to_one(backup),
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

/// Hand over hand up one strand, a hitch at the harness holding what is gained.
///
/// A knot in the tail is left out: there is no turn for it to jam at. It stops a hitch that slips, and does nothing
/// when the hitch's cord fails.
///
/// # Errors
/// None that a caller can cause.
pub fn hand_over_hand(backup: Backup) -> Result<Rig, Fault> {
    let (tree, climber) = (0, 1);
    let mut stops = vec![Stop::tied(tree, "anchor"), Stop::hand(climber, "hands")];
    push_lower_hitch(&mut stops, climber, backup);
    stops.push(Stop::free());
    Rig::new(
        vec![Body::new(BodyKind::Tree, "crotch"), Body::new(BodyKind::Climber, "climber")],
        vec![Rope::new("climbing rope", stops)],
    )
}

/// The rope's own tail as a 3:1: from the lower hitch round the lower turn, up round the upper turn, down to the hand.
///
/// # Errors
/// None that a caller can cause.
pub fn tail_three_to_one(backup: Backup) -> Result<Rig, Fault> {
    let (tree, carriage, climber) = (0, 1, 2);
    let mut stops = vec![Stop::tied(tree, "anchor"), Stop::hitch(carriage, "upper hitch")];
    push_lower_hitch(&mut stops, climber, backup);
    stops.extend([Stop::turn(climber, "lower turn"), Stop::turn(carriage, "upper turn")]);
    if let Backup::TailKnot { slack } = backup {
        // It runs up from below the hands until the upper turn stops it.
        stops.push(Stop::knot(carriage, slack, "knot in the tail"));
    }
    stops.extend([Stop::hand(climber, "hands"), Stop::free()]);
    Rig::new(
        vec![
            Body::new(BodyKind::Tree, "crotch"),
            Body::new(BodyKind::Carriage, "upper hitch"),
            Body::new(BodyKind::Climber, "climber"),
        ],
        vec![Rope::new("climbing rope", stops)],
    )
}

fn push_lower_hitch(stops: &mut Vec<Stop>, climber: usize, backup: Backup) {
    if backup == Backup::SecondHitch {
        stops.push(Stop::backup_hitch(climber, "second hitch"));
    }
    stops.push(Stop::hitch(climber, "lower hitch"));
}
