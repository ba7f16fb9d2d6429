//! The length of a cord before a knot is in it, piece by piece from one end to the other; and back.

use super::knot::{barrel, eye, shortest_tail};
use super::{Piece, Place};
use crate::field::Spread;
use crate::gear::Ends;
use crate::hitch::Pattern;

/// What a cord is made for. All lengths in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Make {
    /// How it is laid.
    pub pattern: &'static Pattern,
    /// How its ends are made.
    pub ends: Ends,
    /// The diameter of the rope; nothing where it goes round none.
    pub rope: f64,
    /// The diameter of the cord.
    pub cord: f64,
    /// Its coils, as climbers count them.
    pub coils: f64,
    /// Its crossings.
    pub crossings: f64,
    /// What is to hang for the hand.
    pub hand_end: Spread,
    /// What somebody's own coils and knots take, over what the model makes of them.
    pub fit: Option<f64>,
    /// What is left of the end that the tying begins with; none where both legs are to be alike.
    pub working_end: Option<f64>,
}

/// What is known of a cord's length, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Wanted {
    /// What hangs free, all legs together; of what has no coils its span.
    Legs(Spread),
    /// All between the ends: legs, coils and crossings.
    Run(f64),
    /// The whole.
    Cut(f64),
}

/// The pieces of a cord.
#[derive(Debug, Clone, PartialEq)]
pub struct Cut {
    /// From the end that the tying begins with to the other, in metres.
    pub pieces: Vec<(Piece, Place, Spread)>,
    /// The whole.
    pub total: Spread,
    /// What hangs free, all legs together, or the span.
    pub legs: Spread,
    /// All between the ends: legs, coils and crossings.
    pub run: Spread,
    /// From the end that the tying begins with to the first coil.
    pub working_end: Spread,
}

/// What is too short, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Short {
    /// Nothing is left to hang: what goes without legs.
    Legs(f64),
    /// The working end is shorter than what is in it, or longer than there is cord: from so much to so much.
    WorkingEnd([f64; 2]),
}

/// What coils and crossings take, over what they do drawn close.
///
/// # Source
/// Judged: cord flattens as it is drawn tight, and does not always lie close.
pub const DRESSED: Spread = Spread::new(0.93, 1.0, 1.10);
/// What knots and eyes take, over what their geometry says.
///
/// # Source
/// Judged.
pub const KNOTTED: Spread = Spread::new(0.85, 1.0, 1.2);
/// What tails are left, over the shortest.
///
/// # Source
/// Judged: nobody ties to the centimetre, and shorter is too short.
pub const LEFT: Spread = Spread::new(1.0, 1.0, 1.5);
/// What is still not sure once somebody's own way of tying is known (judged).
pub const FITTED: Spread = Spread::new(0.97, 1.0, 1.03);

/// The laps of a stopper, and of each barrel of a double fisherman's.
const TWO_LAPS: f64 = 2.0;
/// The laps of a scaffold knot. A button takes as much of each of its two ends (judged).
const THREE_LAPS: f64 = 3.0;

type Pick = fn(Spread) -> f64;

/// The lengths of a make's pieces, with one end of every range.
struct Laid {
    tail: [f64; 2],
    knot: [f64; 2],
    eye: [f64; 2],
    coils: f64,
    crossings: f64,
    hand_end: f64,
    legs: f64,
    first_leg: f64,
}

impl Make {
    /// The laps of the knot at the end that the tying begins with, and at the other; of a cord without knots none.
    fn laps(&self) -> [f64; 2] {
        match (self.ends, self.pattern.eyes) {
            (Ends::Sewn, 1) => [TWO_LAPS, 0.0],
            (Ends::Sewn, _) => [0.0; 2],
            (Ends::Loop | Ends::DoubleOverhand, _) => [TWO_LAPS; 2],
            (Ends::Scaffold, 1) => [TWO_LAPS, THREE_LAPS],
            (Ends::Scaffold | Ends::Button, _) => [THREE_LAPS; 2],
        }
    }

    /// Whether the end that the tying begins with has an eye, and the other.
    fn eyes(&self) -> [bool; 2] {
        let tied = matches!(self.ends, Ends::Scaffold | Ends::DoubleOverhand);
        [tied && self.pattern.eyes == 2, tied]
    }

    /// Whether it is closed, and its finished length that of its inside: half of what is between its ends.
    #[must_use]
    pub fn is_loop(&self) -> bool {
        matches!(self.ends, Ends::Loop | Ends::Button) || self.ends == Ends::Sewn && self.pattern.eyes == 0
    }

    /// The finished length of its pieces: the inside of a loop, and with whatever hangs for the hand.
    #[must_use]
    pub fn finished(&self, cut: &Cut) -> Spread {
        let Spread { low, likely, high } = cut.run.scaled(if self.is_loop() { 0.5 } else { 1.0 });
        let hand = self.hand_end;
        Spread::new(low + hand.low, likely + hand.likely, high + hand.high)
    }

    /// What somebody's coils and knots take, over what the model makes of them, from what they cut and the legs, or the span,
    /// that it left.
    #[must_use]
    pub fn fitted(&self, cut: f64, legs: f64) -> f64 {
        let bare = Self { fit: None, ..*self }.bare(|spread| spread.likely);
        let tails = bare.tail[0] + bare.tail[1] + bare.hand_end;
        (cut - tails - legs) / (bare.sum() - tails)
    }

    /// Everything but the legs.
    fn bare(&self, pick: Pick) -> Laid {
        let Self { pattern, rope, cord, .. } = *self;
        let of = |spread| self.fit.map_or_else(|| pick(spread), |fit| pick(FITTED) * fit);
        let mut laid = Laid {
            tail: [0.0; 2],
            knot: [0.0; 2],
            eye: [0.0; 2],
            coils: 0.0,
            crossings: 0.0,
            hand_end: pick(self.hand_end),
            legs: 0.0,
            first_leg: 0.0,
        };
        for (((tail, knot), eyed), (laps, has_eye)) in
            laid.tail.iter_mut().zip(&mut laid.knot).zip(&mut laid.eye).zip(self.laps().into_iter().zip(self.eyes()))
        {
            if laps > 0.0 {
                *tail = shortest_tail(cord) * pick(LEFT);
                *knot = barrel(laps, cord) * of(KNOTTED);
            }
            if has_eye {
                *eyed = eye(cord) * of(KNOTTED);
            }
        }
        let [coiled, crossed] = pattern.on_the_rope(rope, cord, self.coils, self.crossings);
        laid.coils = coiled * of(DRESSED);
        laid.crossings = crossed * of(DRESSED);
        laid
    }

    /// The lengths of the pieces, with one end of every range.
    fn laid(&self, wanted: Wanted, pick: Pick) -> Laid {
        let mut laid = self.bare(pick);
        laid.legs = match wanted {
            Wanted::Legs(legs) => pick(legs),
            Wanted::Run(run) => run - laid.coils - laid.crossings,
            Wanted::Cut(cut) => cut - laid.sum(),
        };
        laid.first_leg = match self.working_end {
            Some(end) => end - self.before_leg(&laid),
            None if self.pattern.legs == 1 => 0.0,
            None => laid.legs / 2.0,
        };
        laid
    }

    /// What the working end has in it beside its leg.
    fn before_leg(&self, laid: &Laid) -> f64 {
        let crossed = if self.pattern.legs == 1 {
            laid.crossings
        } else if self.pattern.crossing == 2 {
            laid.crossings / 2.0
        } else {
            0.0
        };
        laid.tail[0] + laid.knot[0] + laid.eye[0] + crossed
    }

    /// The pieces of the cord.
    ///
    /// # Errors
    /// What is too short for the rest.
    pub fn cut(&self, wanted: Wanted) -> Result<Cut, Short> {
        let [low, likely, high] = [
            self.laid(wanted, |spread| spread.low),
            self.laid(wanted, |spread| spread.likely),
            self.laid(wanted, |spread| spread.high),
        ];
        // Less than nothing by the last place is nothing.
        if likely.legs < -1e-9 {
            return Err(Short::Legs(match wanted {
                Wanted::Cut(cut) => cut - likely.legs,
                Wanted::Legs(_) | Wanted::Run(_) => likely.coils + likely.crossings,
            }));
        }
        let before = self.before_leg(&likely);
        if likely.first_leg < -1e-9 || likely.first_leg > likely.legs + 1e-9 {
            return Err(Short::WorkingEnd([before, before + likely.legs]));
        }
        // What one piece takes more another may have less: each has its own ends.
        let between = |length: fn(&Laid) -> f64| ordered([&low, &likely, &high].map(|laid| length(laid).max(0.0)));
        let coiled = self.coils > 0.0;
        let span = if coiled { Piece::Leg } else { Piece::Span };
        let mut pieces = Vec::new();
        let mut add = |piece, place, length: Spread| {
            if length.high > 0.0 {
                pieces.push((piece, place, length));
            }
        };
        add(Piece::Tail, Place::First, between(|laid| laid.tail[0]));
        add(Piece::Knot, Place::First, between(|laid| laid.knot[0]));
        add(Piece::Eye, Place::First, between(|laid| laid.eye[0]));
        add(Piece::HandEnd, Place::First, between(|laid| laid.hand_end));
        if coiled {
            add(Piece::Leg, Place::First, between(|laid| laid.first_leg));
            add(Piece::Coils, Place::Middle, between(|laid| laid.coils));
            add(Piece::Crossings, Place::Middle, between(|laid| laid.crossings));
            add(Piece::Leg, Place::Second, between(|laid| laid.legs - laid.first_leg));
        } else {
            add(span, Place::Middle, between(|laid| laid.legs));
        }
        add(Piece::Eye, Place::Second, between(|laid| laid.eye[1]));
        add(Piece::Knot, Place::Second, between(|laid| laid.knot[1]));
        add(Piece::Tail, Place::Second, between(|laid| laid.tail[1]));
        let mut sum = 0.0;
        for (.., length) in &pieces {
            sum += length.likely;
        }
        let total = match wanted {
            Wanted::Cut(cut) => Spread::point(cut),
            Wanted::Legs(_) | Wanted::Run(_) => ordered([low.sum(), sum, high.sum()]),
        };
        let ends = [&low, &likely, &high]
            .map(|laid| self.working_end.unwrap_or_else(|| self.before_leg(laid) + laid.first_leg.max(0.0)));
        Ok(Cut {
            pieces,
            total,
            legs: between(|laid| laid.legs),
            run: between(|laid| laid.legs + laid.coils + laid.crossings),
            working_end: ordered(ends),
        })
    }
}

/// A range whose ends may have come the other way round.
fn ordered([one, likely, other]: [f64; 3]) -> Spread {
    Spread::new(one.min(likely).min(other), likely, one.max(likely).max(other))
}

impl Laid {
    /// All of it.
    fn sum(&self) -> f64 {
        let [tail, knot, eye] = [self.tail, self.knot, self.eye].map(|[one, other]| one + other);
        tail + knot + eye + self.coils + self.crossings + self.hand_end + self.legs
    }
}
