//! The rigs that are offered by name.

use super::{Body, BodyKind, Fault, Rig, Rope, Stop};
use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Dimension, FOOT, Length, METRE};

choice! {
    /// A rig of the catalogue.
    RigName {
        /// Hand over hand.
        HandOverHand = "hand-over-hand", "hand over hand, 1:1", "You lift your whole weight with each pull, one hand at a time; a friction hitch at the harness keeps what you gain.";
        /// A rope that moves over the crotch.
        MovingRope = "moving-rope", "moving rope, 2:1", "The rope is tied to you, runs over the crotch and comes back to your hands and hitch. It lifts you by half of what you pull.";
        /// The rope's own tail as a 3:1.
        TailThree = "tail-3", "self-haul on the rope's tail, 3:1", "You lift about a third of your weight, plus losses, and pull three times the rope: its tail goes from the lower hitch round a turn at the harness, up round a turn at an upper hitch, and down to your hands.";
        /// The rope's own tail as a 5:1.
        TailFive = "tail-5", "self-haul on the rope's tail, 5:1", "The tail goes round two pairs of turns.";
        /// The rope's own tail as a 7:1.
        TailSeven = "tail-7", "self-haul on the rope's tail, 7:1", "The tail goes round three pairs of turns.";
        /// A cord of its own as a 2:1.
        CordTwo = "haul-cord-2", "self-haul on a haul cord, 2:1", "A cord from your harness goes up round a turn at the upper hitch and down to your hands.";
        /// A cord of its own as a 3:1.
        CordThree = "haul-cord-3", "self-haul on a haul cord, 3:1", "A cord from the upper hitch goes round a turn at the harness, one at the upper hitch, and down to your hands.";
        /// A cord of its own as a 4:1.
        CordFour = "haul-cord-4", "self-haul on a haul cord, 4:1", "The cord starts at the harness and goes up twice.";
        /// A cord of its own as a 5:1.
        CordFive = "haul-cord-5", "self-haul on a haul cord, 5:1", "The cord starts at the upper hitch and goes round two pairs of turns.";
        /// Hauled over the crotch.
        GroundOne = "ground-1", "a helper hauls over the crotch, 1:1", "The rope is tied to you, runs over the crotch, and a helper pulls its other end.";
        /// Hauled over the crotch with a 3:1.
        GroundThree = "ground-3", "a helper hauls over the crotch, 3:1", "The helper has a 3:1 between a hitch on the rope and a fixed point at the foot.";
        /// Hauled over the crotch with a 5:1.
        GroundFive = "ground-5", "a helper hauls over the crotch, 5:1", "The helper has a 5:1 between a hitch on the rope and a fixed point at the foot.";
        /// Hauled over the crotch with a 3:1 on a 3:1.
        GroundNine = "ground-9", "a helper hauls over the crotch, 9:1", "One 3:1 pulls on another.";
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
            Self::MovingRope => moving_rope(backup),
            Self::TailThree => tail_three_to_one(backup),
            Self::TailFive => tail(2, backup),
            Self::TailSeven => tail(3, backup),
            Self::CordTwo => haul_cord(1, backup),
            Self::CordThree => haul_cord(2, backup),
            Self::CordFour => haul_cord(3, backup),
            Self::CordFive => haul_cord(4, backup),
            Self::GroundOne => ground_haul(0, 0),
            Self::GroundThree => ground_haul(1, 1),
            Self::GroundFive => ground_haul(1, 2),
            Self::GroundNine => ground_haul(2, 1),
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
/// A knot in the tail is left out where the tail passes no turn it could jam at: it stops a hitch that slips, and does
/// nothing when the hitch's cord fails.
///
/// # Errors
/// None that a caller can cause.
pub fn hand_over_hand(backup: Backup) -> Result<Rig, Fault> {
    let (tree, climber) = (0, 1);
    let mut stops = vec![Stop::tied(tree, "anchor"), Stop::hand(climber, "hands")];
    push_lower_hitch(&mut stops, climber, backup);
    stops.push(Stop::free());
    Rig::new(bodies(&[BodyKind::Tree, BodyKind::Climber]), vec![Rope::new("climbing rope", stops)])
}

/// A rope that is tied to the climber, runs over the crotch, and comes back to the hands and the hitch below them.
///
/// # Errors
/// None that a caller can cause.
pub fn moving_rope(backup: Backup) -> Result<Rig, Fault> {
    let (tree, climber) = (0, 1);
    let mut stops = vec![Stop::tied(climber, "harness tie"), Stop::turn(tree, "crotch"), Stop::hand(climber, "hands")];
    push_lower_hitch(&mut stops, climber, backup);
    stops.push(Stop::free());
    Rig::new(bodies(&[BodyKind::Tree, BodyKind::Climber]), vec![Rope::new("climbing rope", stops)])
}

/// The rope's own tail as a 3:1: from the lower hitch round the lower turn, up round the upper turn, down to the hand.
///
/// # Errors
/// None that a caller can cause.
pub fn tail_three_to_one(backup: Backup) -> Result<Rig, Fault> {
    tail(1, backup)
}

/// The rope's own tail round so many pairs of turns.
fn tail(pairs: usize, backup: Backup) -> Result<Rig, Fault> {
    let mut stops = up_to_the_lower_hitch(backup);
    push_turns(&mut stops, CLIMBER, 2 * pairs);
    if let Backup::TailKnot { slack } = backup {
        // It runs up from below the hands until the upper turn stops it.
        stops.push(Stop::knot(CARRIAGE, slack, "knot in the tail"));
    }
    self_haul(stops, None)
}

/// A haul cord round so many turns: it starts wherever the last one comes to be at the upper hitch.
fn haul_cord(turns: usize, backup: Backup) -> Result<Rig, Fault> {
    let mut main = up_to_the_lower_hitch(backup);
    main.push(Stop::free());
    let (start, noun) = if turns % 2 == 1 { (CLIMBER, "harness tie") } else { (CARRIAGE, "hitch tie") };
    let mut cord = vec![Stop::tied(start, noun)];
    push_turns(&mut cord, CLIMBER + CARRIAGE - start, turns);
    self_haul(cord, Some(main))
}

// The bodies of a self-haul.
const CARRIAGE: usize = 1;
const CLIMBER: usize = 2;

fn up_to_the_lower_hitch(backup: Backup) -> Vec<Stop> {
    let mut stops = vec![Stop::tied(0, "anchor"), Stop::hitch(CARRIAGE, "upper hitch")];
    push_lower_hitch(&mut stops, CLIMBER, backup);
    stops
}

/// A self-haul, its hands on the rope of these stops.
fn self_haul(mut hauled: Vec<Stop>, climbed: Option<Vec<Stop>>) -> Result<Rig, Fault> {
    hauled.extend([Stop::hand(CLIMBER, "hands"), Stop::free()]);
    let ropes = match climbed {
        Some(main) => vec![Rope::new("climbing rope", main), Rope::new("haul cord", hauled)],
        None => vec![Rope::new("climbing rope", hauled)],
    };
    Rig::new(bodies(&[BodyKind::Tree, BodyKind::Carriage, BodyKind::Climber]), ropes)
}

/// So many turns, the first on `body`, then by turns at climber and upper hitch; named from the hand.
fn push_turns(stops: &mut Vec<Stop>, mut body: usize, turns: usize) {
    for left in (0..turns).rev() {
        let nouns = if body == CARRIAGE { UPPER } else { LOWER };
        stops.push(Stop::turn(body, noun(nouns, left / 2)));
        body = CLIMBER + CARRIAGE - body;
    }
}

const UPPER: [&str; 3] = ["upper turn", "second upper turn", "third upper turn"];
const LOWER: [&str; 3] = ["lower turn", "second lower turn", "third lower turn"];

fn noun(nouns: [&'static str; 3], place: usize) -> &'static str {
    nouns.get(place).copied().unwrap_or_default()
}

/// A helper on the ground hauls over the crotch, with so many pairs of turns between the foot and each moving hitch.
fn ground_haul(moving: usize, pairs: usize) -> Result<Rig, Fault> {
    let mut kinds = vec![BodyKind::Tree];
    kinds.resize(1 + moving, BodyKind::Carriage);
    kinds.extend([BodyKind::Climber, BodyKind::Ground]);
    let ground = moving + 2;
    let mut stops = vec![Stop::tied(moving + 1, "harness tie"), Stop::turn(0, "crotch")];
    for hitch in 1..=moving {
        stops.push(Stop::hitch(hitch, if hitch == 1 { "hauling hitch" } else { "second hauling hitch" }));
        for pair in (0..pairs).rev() {
            let place = pair + (moving - hitch) * pairs;
            stops.extend([Stop::turn(ground, noun(LOWER, place)), Stop::turn(hitch, noun(UPPER, place))]);
        }
    }
    stops.extend([Stop::hand(ground, "helper"), Stop::free()]);
    Rig::new(bodies(&kinds), vec![Rope::new("rope", stops)])
}

fn bodies(kinds: &[BodyKind]) -> Vec<Body> {
    let mut bodies = Vec::new();
    for kind in kinds {
        let noun = match kind {
            BodyKind::Tree => "crotch",
            BodyKind::Carriage if kinds.contains(&BodyKind::Ground) => "hauling hitch",
            BodyKind::Carriage => "upper hitch",
            BodyKind::Climber => "climber",
            BodyKind::Ground => "ground",
        };
        bodies.push(Body::new(*kind, noun));
    }
    bodies
}

fn push_lower_hitch(stops: &mut Vec<Stop>, climber: usize, backup: Backup) {
    if backup == Backup::SecondHitch {
        stops.push(Stop::backup_hitch(climber, "second hitch"));
    }
    stops.push(Stop::hitch(climber, "lower hitch"));
}
