//! The rigs that are offered by name.

use super::BodyKind::{Carriage, Climber, Ground, Tree};
use super::{Backup, Body, BodyKind, Fault, Rig, Rope, Stop};
use crate::field::{Field, Kind, Row, choice};
use Mark::{Hand, Knot, Lower, Tie, Turn, Upper};

choice! {
    /// A rig of the catalogue.
    RigName {
        /// Hand over hand.
        HandOverHand = "hand-over-hand", "hand over hand, 1:1", "You lift your whole weight with each pull, one hand at a time; a friction hitch at the harness keeps what you gain.";
        /// A rope that moves over the crotch.
        MovingRope = "moving-rope", "moving rope, 2:1", "The rope is tied to you, runs over the crotch and comes back to your hands and hitch. You lift about half of your weight, plus losses, and pull twice the rope.";
        /// The rope's own tail as a 3:1.
        TailThree = "tail-3", "self-haul on the rope's tail, 3:1", "You lift about a third of your weight, plus losses, and pull three times the rope: its tail goes from the lower hitch round a turn at the harness, up round a turn at an upper hitch, and down to your hands.";
        /// The rope's own tail as a 5:1.
        TailFive = "tail-5", "self-haul on the rope's tail, 5:1", "You lift about a fifth of your weight, plus losses, and pull five times the rope: its tail goes round two pairs of turns.";
        /// The rope's own tail as a 7:1.
        TailSeven = "tail-7", "self-haul on the rope's tail, 7:1", "You lift about a seventh of your weight, plus losses, and pull seven times the rope: its tail goes round three pairs of turns.";
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
        GroundNine = "ground-9", "a helper hauls over the crotch, 9:1", "The helper has one 3:1 that pulls on another, each with a hitch on the rope and a fixed point at the foot.";
        /// One that somebody writes down.
        Own = "own", "a rig of your own", "You write it down stop by stop.";
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

impl RigName {
    /// The next rig of its family that has more advantage.
    #[must_use]
    pub const fn next(self) -> Option<Self> {
        Some(match self {
            Self::HandOverHand | Self::MovingRope => Self::TailThree,
            Self::TailThree => Self::TailFive,
            Self::TailFive => Self::TailSeven,
            Self::CordTwo => Self::CordThree,
            Self::CordThree => Self::CordFour,
            Self::CordFour => Self::CordFive,
            Self::GroundOne => Self::GroundThree,
            Self::GroundThree => Self::GroundFive,
            Self::GroundFive => Self::GroundNine,
            Self::TailSeven | Self::CordFive | Self::GroundNine | Self::Own => return None,
        })
    }

    /// Those whose stops are known here: every one but somebody's own.
    pub const CATALOGUE: &[Self] = Self::ALL.split_at(Self::Own as usize).0;

    /// The rig of this name.
    ///
    /// A knot in the tail is left out where the tail passes no turn it could jam at: it stops a hitch that slips, and
    /// does nothing when the hitch's cord fails. A helper's rig has no backup: nothing in it holds.
    ///
    /// # Errors
    /// For somebody's own, whose stops only they know; see [`notation`](super::notation).
    pub fn rig(self, backup: Backup) -> Result<Rig, Fault> {
        let (kinds, courses) = self.plan();
        let hauled = kinds.contains(&Ground);
        let mut bodies = Vec::new();
        for kind in kinds {
            let noun = match kind {
                Tree => "crotch",
                Carriage if hauled => "hitch",
                Carriage => "upper hitch",
                Climber => "climber",
                Ground => "ground",
            };
            bodies.push(Body::new(*kind, noun));
        }
        let mut ropes = Vec::new();
        for course in courses {
            let noun = match ropes.is_empty() {
                true if hauled => "rope",
                true => "climbing rope",
                false => "haul cord",
            };
            ropes.push(Rope::new(noun, stops(kinds, course, hauled, backup)));
        }
        Rig::new(bodies, ropes)
    }

    /// Its bodies, from the highest to the lowest, and the course of each rope.
    const fn plan(self) -> (&'static [BodyKind], &'static [&'static [Mark]]) {
        match self {
            Self::HandOverHand => (&[Tree, Climber], &[&[Tie(0), Hand(1), Lower(1)]]),
            Self::MovingRope => (&[Tree, Climber], &[&[Tie(1), Turn(0), Hand(1), Lower(1)]]),
            Self::TailThree => (SELF_HAUL, &[&[Tie(0), Upper(1), Lower(2), Turn(2), Turn(1), Knot(1), Hand(2)]]),
            Self::TailFive => {
                (SELF_HAUL, &[&[Tie(0), Upper(1), Lower(2), Turn(2), Turn(1), Turn(2), Turn(1), Knot(1), Hand(2)]])
            }
            Self::TailSeven => (
                SELF_HAUL,
                &[&[
                    Tie(0),
                    Upper(1),
                    Lower(2),
                    Turn(2),
                    Turn(1),
                    Turn(2),
                    Turn(1),
                    Turn(2),
                    Turn(1),
                    Knot(1),
                    Hand(2),
                ]],
            ),
            Self::CordTwo => (SELF_HAUL, &[CLIMBED, &[Tie(2), Turn(1), Hand(2)]]),
            Self::CordThree => (SELF_HAUL, &[CLIMBED, &[Tie(1), Turn(2), Turn(1), Hand(2)]]),
            Self::CordFour => (SELF_HAUL, &[CLIMBED, &[Tie(2), Turn(1), Turn(2), Turn(1), Hand(2)]]),
            Self::CordFive => (SELF_HAUL, &[CLIMBED, &[Tie(1), Turn(2), Turn(1), Turn(2), Turn(1), Hand(2)]]),
            Self::GroundOne => (&[Tree, Climber, Ground], &[&[Tie(1), Turn(0), Hand(2)]]),
            Self::GroundThree => (HAULED, &[&[Tie(2), Turn(0), Upper(1), Turn(3), Turn(1), Hand(3)]]),
            Self::GroundFive => (HAULED, &[&[Tie(2), Turn(0), Upper(1), Turn(3), Turn(1), Turn(3), Turn(1), Hand(3)]]),
            Self::GroundNine => (
                &[Tree, Carriage, Carriage, Climber, Ground],
                &[&[Tie(3), Turn(0), Upper(1), Turn(4), Turn(1), Upper(2), Turn(4), Turn(2), Hand(4)]],
            ),
            Self::Own => (&[], &[]),
        }
    }
}

const SELF_HAUL: &[BodyKind] = &[Tree, Carriage, Climber];
const HAULED: &[BodyKind] = &[Tree, Carriage, Climber, Ground];

/// The rope that is climbed on where another is hauled.
const CLIMBED: &[Mark] = &[Tie(0), Upper(1), Lower(2)];

/// A stop of a rope in the catalogue, on a body by its place; every rope ends in a loose tail.
#[derive(Clone, Copy)]
enum Mark {
    Tie(usize),
    /// A hitch that moves a body.
    Upper(usize),
    /// The hitch that holds the climber, and what backs it up.
    Lower(usize),
    Turn(usize),
    /// Where a knot in the tail would jam: it runs up from below the hands.
    Knot(usize),
    Hand(usize),
}

/// The stops of one rope.
fn stops(kinds: &[BodyKind], course: &[Mark], hauled: bool, backup: Backup) -> Vec<Stop> {
    let kind = |body: usize| kinds.get(body).copied().unwrap_or(Tree);
    let mut stops = Vec::new();
    for (at, mark) in course.iter().enumerate() {
        let stop = match *mark {
            Tie(body) => {
                let noun = match kind(body) {
                    Carriage => "hitch tie",
                    Climber => "harness tie",
                    _ => "anchor",
                };
                Stop::tied(body, noun)
            }
            Upper(1) if hauled => Stop::hitch(1, "hauling hitch"),
            Upper(body) if hauled => Stop::hitch(body, "second hauling hitch"),
            Upper(body) => Stop::hitch(body, "upper hitch"),
            Lower(body) => {
                if backup == Backup::SecondHitch {
                    stops.push(Stop::backup_hitch(body, "second hitch"));
                }
                Stop::hitch(body, "lower hitch")
            }
            Turn(body) => {
                // Turns are named from the hand, which is at the rope's end.
                let mut place = 0;
                for later in course.iter().skip(at + 1) {
                    place += usize::from(matches!(later, Turn(other) if kind(*other) == kind(body)));
                }
                let nouns = match kind(body) {
                    Tree => ["crotch"; 3],
                    Carriage => UPPER,
                    _ => LOWER,
                };
                Stop::turn(body, nouns.get(place).copied().unwrap_or_default())
            }
            Knot(body) => match backup {
                Backup::TailKnot { slack } => Stop::knot(body, slack, "knot in the tail"),
                _ => continue,
            },
            Hand(body) => Stop::hand(body, if hauled { "helper" } else { "hands" }),
        };
        stops.push(stop);
    }
    stops.push(Stop::free());
    stops
}

const UPPER: [&str; 3] = ["upper turn", "second upper turn", "third upper turn"];
const LOWER: [&str; 3] = ["lower turn", "second lower turn", "third lower turn"];

/// Hand over hand up one strand, a hitch at the harness holding what is gained.
///
/// # Errors
/// None that a caller can cause.
pub fn hand_over_hand(backup: Backup) -> Result<Rig, Fault> {
    RigName::HandOverHand.rig(backup)
}

/// The rope's own tail as a 3:1: from the lower hitch round the lower turn, up round the upper turn, down to the hand.
///
/// # Errors
/// None that a caller can cause.
pub fn tail_three_to_one(backup: Backup) -> Result<Rig, Fault> {
    RigName::TailThree.rig(backup)
}
