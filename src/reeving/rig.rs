//! A rig as data: bodies in order of height, and ropes as the stops they make from one end to the other.

use super::{Fault, Noun, Stop, What};

/// The most bodies that may move (climber and carriages); see [`Fraction`](super::Fraction).
pub const MOST_MOVING: usize = 6;
/// The most strands a rig may have in all; see [`Fraction`](super::Fraction).
pub const MOST_STRANDS: usize = 32;

/// What a body is to the model.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BodyKind {
    /// Does not move, and holds everything up.
    Tree,
    /// Massless: an upper hitch with its pulley, a traveller on a haul line.
    Carriage,
    /// The one who is to be lifted.
    Climber,
    /// Does not move, and lies below everything.
    Ground,
}

/// Something ropes act on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Body {
    /// What it is to the model.
    pub kind: BodyKind,
    /// What people call it.
    pub noun: Noun,
}

impl Body {
    /// A body of a kind.
    #[must_use]
    pub fn new(kind: BodyKind, noun: impl Into<Noun>) -> Self {
        Self { kind, noun: noun.into() }
    }

    /// Whether it can move.
    #[must_use]
    pub fn moves(&self) -> bool {
        matches!(self.kind, BodyKind::Carriage | BodyKind::Climber)
    }
}

/// A rope: its stops, from one end to the other.
#[derive(Debug, Clone, PartialEq)]
pub struct Rope {
    /// What people call it.
    pub noun: Noun,
    /// Its stops; strand `i` joins stops `i` and `i + 1`.
    pub stops: Vec<Stop>,
}

/// Bodies and ropes that fit together.
///
/// ```text
///   crotch        x          bodies, from the highest to the lowest
///                 |
///   upper hitch   #--.       one rope: tied to the crotch, gripped by the upper
///                 |  o       hitch, through the lower hitch, round the lower turn,
///   climber       #o_|\      up round the upper turn and down to the hand
///                      hand
/// ```
///
/// # Guarantees
/// There is one climber; a tree comes first and a ground last; every stop but a loose tail is on a body of the rig;
/// ropes end tied or free and are neither inside; there is at most one driving hand. Turns, hitches and helpers are
/// numbered in the order of ropes and along them: a rope with one helper keeps its number written from either end,
/// several on one rope change places.
#[derive(Debug, Clone, PartialEq)]
pub struct Rig {
    pub(super) bodies: Vec<Body>,
    pub(super) ropes: Vec<Rope>,
    pub(super) turns: usize,
    pub(super) hitches: usize,
    pub(super) helpers: usize,
    /// Asked in every climb, and so worked out once.
    hauled: bool,
    upper_turns: Option<usize>,
}

impl Rope {
    /// A rope that makes these stops.
    #[must_use]
    pub fn new(noun: impl Into<Noun>, stops: Vec<Stop>) -> Self {
        Self { noun: noun.into(), stops }
    }
}

impl Rig {
    /// A rig of these bodies, from the highest to the lowest, and these ropes.
    ///
    /// # Errors
    /// A [`Fault`] that names what does not fit.
    pub fn new(bodies: Vec<Body>, mut ropes: Vec<Rope>) -> Result<Self, Fault> {
        let count = |kind| bodies.iter().filter(|body| body.kind == kind).count();
        if count(BodyKind::Climber) != 1 || count(BodyKind::Tree) > 1 || count(BodyKind::Ground) > 1 {
            return Err(Fault::NotOneClimber);
        }
        for (at, body) in bodies.iter().enumerate() {
            let last = at + 1 == bodies.len();
            if body.kind == BodyKind::Tree && at > 0 || body.kind == BodyKind::Ground && !last {
                return Err(Fault::OutOfOrder { body: at });
            }
        }
        let strands: usize = ropes.iter().map(|rope| rope.stops.len().saturating_sub(1)).sum();
        if bodies.iter().filter(|body| body.moves()).count() > MOST_MOVING || strands > MOST_STRANDS {
            return Err(Fault::TooLarge);
        }
        let (mut turns, mut hitches, mut hands, mut helpers) = (0, 0, 0, 0);
        for (at, rope) in ropes.iter_mut().enumerate() {
            let last = rope.stops.len().saturating_sub(1);
            if last == 0 {
                return Err(Fault::NoSuchEnd { rope: at });
            }
            for (place, stop) in rope.stops.iter_mut().enumerate() {
                let is_end = place == 0 || place == last;
                if is_end != matches!(stop.what, What::Tied | What::Free) {
                    return Err(Fault::NoSuchEnd { rope: at });
                }
                let there =
                    stop.body.map_or(stop.what == What::Free, |body| stop.what != What::Free && body < bodies.len());
                if !there {
                    return Err(Fault::NoSuchBody { rope: at, stop: place });
                }
                let counter = match &mut stop.what {
                    What::Turn(number) => Some((number, &mut turns)),
                    What::Hitch(number) => Some((number, &mut hitches)),
                    What::Helper(number) => Some((number, &mut helpers)),
                    What::Hand if hands > 0 => return Err(Fault::SecondHand { rope: at }),
                    What::Hand => {
                        hands += 1;
                        None
                    }
                    // Whatever is not a length is refused with what is less than none.
                    What::Knot(slack) if !(slack.in_metres() >= 0.0 && slack.in_metres().is_finite()) => {
                        return Err(Fault::OutOfRange);
                    }
                    What::Tied | What::Knot(_) | What::Free => None,
                };
                if let Some((number, counter)) = counter {
                    *number = *counter;
                    *counter += 1;
                }
            }
        }
        let rig = Self { bodies, ropes, turns, hitches, helpers, hauled: false, upper_turns: None };
        let hauled =
            rig.stops().any(|stop| matches!(stop.what, What::Hand) && rig.kind_at(stop) == Some(BodyKind::Ground));
        let upper_turns = rig.body(BodyKind::Carriage).filter(|_| !hauled).map(|carriage| {
            rig.stops().filter(|stop| stop.body == Some(carriage) && matches!(stop.what, What::Turn(_))).count()
        });
        Ok(Self { hauled, upper_turns, ..rig })
    }

    /// The bodies, from the highest to the lowest.
    #[must_use]
    pub fn bodies(&self) -> &[Body] {
        &self.bodies
    }

    /// The ropes.
    #[must_use]
    pub fn ropes(&self) -> &[Rope] {
        &self.ropes
    }

    /// The first body of a kind.
    #[must_use]
    pub fn body(&self, kind: BodyKind) -> Option<usize> {
        self.bodies.iter().position(|body| body.kind == kind)
    }

    /// The bodies that move, as places in [`bodies`](Self::bodies).
    pub(super) fn moving(&self) -> Vec<usize> {
        let mut moving = Vec::new();
        for (at, body) in self.bodies.iter().enumerate() {
            if body.moves() {
                moving.push(at);
            }
        }
        moving
    }

    /// The kind of the body that a stop is on.
    #[must_use]
    pub fn kind_at(&self, stop: &Stop) -> Option<BodyKind> {
        self.bodies.get(stop.body?).map(|body| body.kind)
    }

    /// The turns, by rope and stop: those between the driving hand and the start of its rope from the hand on, those
    /// beyond it, and each other rope's from its end.
    #[must_use]
    pub fn turns_from_hand(&self) -> Vec<(usize, usize)> {
        let (mut near, mut beyond, mut others) = (Vec::new(), Vec::new(), Vec::new());
        for (at, rope) in self.ropes.iter().enumerate() {
            let hand = rope.stops.iter().position(|stop| stop.what == What::Hand);
            for (place, stop) in rope.stops.iter().enumerate().rev() {
                if matches!(stop.what, What::Turn(_)) {
                    match hand {
                        None => others.push((at, place)),
                        Some(hand) if place < hand => near.push((at, place)),
                        Some(_) => beyond.push((at, place)),
                    }
                }
            }
        }
        while let Some(turn) = beyond.pop() {
            near.push(turn);
        }
        for turn in others {
            near.push(turn);
        }
        near
    }

    /// Whether a stop is a hitch that holds the climber, and not a backup of one.
    pub(crate) fn is_main_hitch(&self, stop: &Stop) -> bool {
        matches!(stop.what, What::Hitch(_)) && !stop.backup && self.kind_at(stop) == Some(BodyKind::Climber)
    }

    /// Whether a stop is a tie on the ground and the one beyond it a turn in the tree.
    pub(super) fn is_foot_tie(&self, tie: &Stop, beyond: &Stop) -> bool {
        tie.what == What::Tied
            && self.kind_at(tie) == Some(BodyKind::Ground)
            && matches!(beyond.what, What::Turn(_))
            && self.kind_at(beyond) == Some(BodyKind::Tree)
    }

    /// Whether somebody on the ground drives it.
    #[must_use]
    pub fn is_hauled(&self) -> bool {
        self.hauled
    }

    /// How many turns the upper hitch carries, where there is one that the climber pushes up.
    pub(crate) fn upper_turns(&self) -> Option<usize> {
        self.upper_turns
    }

    /// Every stop, in the order of ropes and along them.
    pub fn stops(&self) -> impl Iterator<Item = &Stop> {
        self.ropes.iter().flat_map(|rope| &rope.stops)
    }
}
