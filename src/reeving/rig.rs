//! A rig as data: bodies in order of height, and ropes as the stops they make from one end to the other.

use super::Fault;
use crate::quantity::Length;
use std::borrow::Cow;

/// What people call a part.
pub type Noun = Cow<'static, str>;

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

/// What a rope does at a stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum What {
    /// The rope is tied here; only at a rope's end.
    Tied,
    /// The rope turns round something; the number counts turns through the rig, ropes in order.
    Turn(usize),
    /// A friction hitch sits on the rope; the number counts hitches through the rig.
    Hitch(usize),
    /// A hand pulls here; the number counts hands through the rig, and hand 0 drives.
    Hand(usize),
    /// A stopper knot, which catches once this much rope has run.
    Knot(Length),
    /// The rope's loose tail.
    Free,
}

/// One stop of a rope.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// The body it is on, as a place in [`Rig::bodies`]; none for a loose tail.
    pub body: Option<usize>,
    /// What the rope does there.
    pub what: What,
    /// What people call it.
    pub noun: Noun,
    /// Whether it does nothing until what it backs up is gone.
    pub backup: bool,
}

impl Stop {
    fn on(body: usize, what: What, noun: impl Into<Noun>) -> Self {
        Self { body: Some(body), what, noun: noun.into(), backup: false }
    }

    /// The rope's end, tied to a body.
    #[must_use]
    pub fn tied(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Tied, noun)
    }

    /// A turn round a pulley, ring, carabiner or limb on a body.
    #[must_use]
    pub fn turn(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Turn(0), noun)
    }

    /// A friction hitch whose cord is clipped to a body.
    #[must_use]
    pub fn hitch(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Hitch(0), noun)
    }

    /// A second hitch on a body that carries nothing until the first is gone.
    #[must_use]
    pub fn backup_hitch(body: usize, noun: impl Into<Noun>) -> Self {
        Self { backup: true, ..Self::hitch(body, noun) }
    }

    /// A hand of someone who hangs on, or stands on, a body.
    #[must_use]
    pub fn hand(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Hand(0), noun)
    }

    /// A stopper knot that jams at a body once `slack` of rope has run.
    #[must_use]
    pub fn knot(body: usize, slack: Length, noun: impl Into<Noun>) -> Self {
        Self { backup: true, ..Self::on(body, What::Knot(slack), noun) }
    }

    /// Whether there is a part here that can fail.
    #[must_use]
    pub fn can_fail(&self) -> bool {
        !matches!(self.what, What::Hand(_) | What::Free)
    }

    /// The loose tail.
    #[must_use]
    pub fn free() -> Self {
        Self { body: None, what: What::Free, noun: "loose tail".into(), backup: false }
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
/// There is one climber; every stop is on a body of the rig; ropes end tied or free and are neither inside; turns,
/// hitches and hands are numbered in the order they come.
#[derive(Debug, Clone, PartialEq)]
pub struct Rig {
    pub(super) bodies: Vec<Body>,
    pub(super) ropes: Vec<Rope>,
    pub(super) turns: usize,
    pub(super) hitches: usize,
    pub(super) hands: usize,
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
        let strands: usize = ropes.iter().map(|rope| rope.stops.len().saturating_sub(1)).sum();
        if bodies.iter().filter(|body| body.moves()).count() > MOST_MOVING || strands > MOST_STRANDS {
            return Err(Fault::TooLarge);
        }
        let (mut turns, mut hitches, mut hands) = (0, 0, 0);
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
                if stop.body.is_some_and(|body| body >= bodies.len()) {
                    return Err(Fault::NoSuchBody { rope: at, stop: place });
                }
                let counter = match &mut stop.what {
                    What::Turn(number) => Some((number, &mut turns)),
                    What::Hitch(number) => Some((number, &mut hitches)),
                    What::Hand(number) => Some((number, &mut hands)),
                    What::Tied | What::Knot(_) | What::Free => None,
                };
                if let Some((number, counter)) = counter {
                    *number = *counter;
                    *counter += 1;
                }
            }
        }
        Ok(Self { bodies, ropes, turns, hitches, hands })
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

    /// Every stop, in the order of ropes and along them.
    pub fn stops(&self) -> impl Iterator<Item = &Stop> {
        self.ropes.iter().flat_map(|rope| &rope.stops)
    }
}
