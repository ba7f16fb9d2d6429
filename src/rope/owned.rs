//! What the rope that somebody has comes to.

use super::{ADDING_UP, Anchor, Course, Piece, Sizes, State, courses, highest, need};
use crate::field::Spread;
use crate::reeving::Rig;

/// The rope that somebody has. In metres.
#[derive(Debug, Clone, PartialEq)]
pub struct Owned {
    /// Its length.
    pub length: f64,
    /// The highest crotch for it: if everything takes the most it may, as likely as not, and at the best; none where it goes
    /// over none.
    pub highest: [Option<f64>; 3],
    /// How much less it is than the need.
    pub short: Spread,
    /// How far its end hangs above the ground on the way down, with its stopper, where it comes down from the crotch and
    /// not to the ground.
    pub above: Option<Spread>,
}

/// The highest crotch for a rope: if everything takes the most it may, as likely as not, and at the best.
#[must_use]
pub fn heights(rope: f64, rig: &Rig, anchor: Option<Anchor>, sizes: &Sizes) -> [Option<f64>; 3] {
    let ends: [fn(Spread) -> f64; 3] = [|need| need.high, |need| need.likely, |need| need.low];
    ends.map(|end| highest(rope, &|crotch| end(need(&courses(rig, anchor, &Sizes { crotch, ..*sizes })))))
}

/// By how much a rope ends above the ground on the way down, with its stopper, in metres.
#[must_use]
pub fn ends_above(length: f64, all: &[Course]) -> Spread {
    let mut to_the_ground = Spread::point(0.0);
    for course in all {
        if course.state == State::Down {
            to_the_ground = course.total;
            for (piece, spare) in &course.pieces {
                if *piece == Piece::Spare {
                    let Spread { low, likely, high } = to_the_ground;
                    to_the_ground = Spread::new(low - spare.low, likely - spare.likely, high - spare.high);
                }
            }
        }
    }
    lacks(to_the_ground, length)
}

/// What a rope comes to over the crotch that was planned, in metres.
#[must_use]
pub fn owned(length: f64, highest: [Option<f64>; 3], all: &[Course], need: Spread, crotch: f64) -> Owned {
    let Spread { low, likely, high } = ends_above(length, all);
    // What lacks more than the height does not even come down from the crotch.
    let comes_down = high > ADDING_UP && likely < crotch;
    let above = comes_down.then(|| Spread::new(low, likely, high.min(crotch)));
    Owned { length, highest, short: lacks(need, length), above }
}

/// What a need is more than there is.
fn lacks(need: Spread, length: f64) -> Spread {
    let more = |end: f64| (end - length).max(0.0);
    Spread::new(more(need.low), more(need.likely), more(need.high))
}
