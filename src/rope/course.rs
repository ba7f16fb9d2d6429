//! The course of a rope in each state: its pieces and their sum.

use super::anchor::climbing_rope;
use super::sizes::Sizes;
use super::way::{Pick, Way};
use super::{Anchor, Piece, State, is_anchored};
use crate::climber::reach;
use crate::field::Spread;
use crate::reeving::{BodyKind, Rig};

/// The course of a rope in one state.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    /// The state.
    pub state: State,
    /// Its pieces that have a length, in metres.
    pub pieces: Vec<(Piece, Spread)>,
    /// Their sum: its low end is the sum of the low ends, its high end that of the high ones.
    pub total: Spread,
}

/// How far the moving hitch of a rig stands above the climber, or a helper's above the ground, at the most, in metres;
/// none where there is no such hitch.
///
/// # Source
/// The climber's reach from the lap to overhead, for somebody of 1.75 m and for 1.5 to 2.0 m: ANSUR II (2012),
/// computed; that range of statures is judged. A helper's 2 m, from 1 to 4: judged.
#[must_use]
pub fn section(rig: &Rig) -> Option<Spread> {
    rig.body(BodyKind::Carriage)?;
    Some(if rig.is_hauled() {
        Spread::new(1.0, 2.0, 4.0)
    } else {
        Spread::new(reach(1.5, 0.0).to_lap, reach(1.75, 0.0).to_lap, reach(2.0, 0.0).to_lap)
    })
}

/// The course of the climbing rope of a rig in every state that it can be in; without an anchor where the rope only runs over the crotch.
///
/// # Guarantees
/// Every length is at least nought and its ends are in order.
#[must_use]
pub fn courses(rig: &Rig, anchor: Option<Anchor>, sizes: &Sizes) -> Vec<Course> {
    let likely: Pick = |spread| spread.likely;
    let (low, high): (Pick, Pick) = (|spread| spread.low, |spread| spread.high);
    let section = section(rig).unwrap_or(Spread::point(0.0));
    let way = Way { rig, stops: climbing_rope(rig), anchor: anchor.filter(|_| is_anchored(rig)), sizes, section };
    let mut courses = Vec::new();
    for state in State::ALL {
        if state == State::Lowered && !way.can_lower() {
            continue;
        }
        let mut course = Course { state, pieces: Vec::new(), total: Spread::point(0.0) };
        for piece in Piece::ALL {
            let length = |rope: Pick, height: Pick| way.length(piece, state, rope, height);
            let length = Spread::new(length(low, high), length(likely, likely), length(high, low));
            if length.high > 0.0 {
                let total = &mut course.total;
                *total = Spread::new(total.low + length.low, total.likely + length.likely, total.high + length.high);
                course.pieces.push((piece, length));
            }
        }
        courses.push(course);
    }
    courses
}

/// What a rope comes to that does for all of its states: each end the greatest of theirs.
#[must_use]
pub fn need(courses: &[Course]) -> Spread {
    let mut need = Spread::point(0.0);
    for Course { total, .. } in courses {
        need = Spread::new(need.low.max(total.low), need.likely.max(total.likely), need.high.max(total.high));
    }
    need
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::reeving::{Body, Rope, Stop};

    const NONE: Spread = Spread::point(0.0);

    fn likely(rig: &Rig, crotch: f64, hitch: f64, state: State) -> Vec<(Piece, f64)> {
        let hitch = Spread::point(hitch);
        let sizes = Sizes { crotch, hitch, aside: 0.0, over: NONE, redirect: 0.0, knot: NONE, end: NONE, spare: NONE };
        let courses = courses(rig, Some(Anchor::Base), &sizes);
        let course = courses.into_iter().find(|course| course.state == state).unwrap();
        course.pieces.into_iter().map(|(piece, length)| (piece, length.likely)).collect()
    }

    fn rig(kinds: &[BodyKind], stops: Vec<Stop>) -> Rig {
        let bodies = kinds.iter().map(|kind| Body::new(*kind, "body")).collect();
        Rig::new(bodies, vec![Rope::new("rope", stops)]).unwrap()
    }

    /// Common practice, no source: 50 ft for a crotch at 30 ft and a hitch at 5 ft, before knots, tail and stopper.
    #[test]
    fn over_a_crotch_and_back_to_a_hitch_takes_twice_what_is_between() {
        let stops =
            vec![Stop::tied(1, "tie"), Stop::turn(0, "crotch"), Stop::hand(1, "hands"), Stop::hitch(1, "hitch")];
        let rig = rig(&[BodyKind::Tree, BodyKind::Climber], [stops, vec![Stop::free()]].concat());
        assert!(!is_anchored(&rig));
        assert_eq!(likely(&rig, 30.0, 5.0, State::Start), [(Piece::Up, 25.0), (Piece::Down, 25.0)]);
        // Off the rig, on the ground, both sides must reach.
        assert_eq!(likely(&rig, 30.0, 5.0, State::Down), [(Piece::Up, 30.0), (Piece::Down, 30.0)]);
    }

    /// By hand: 10 - 1 up to the crotch, 10 down to the helper, and 2 m up and down again to the hauling hitch.
    #[test]
    fn a_helper_at_the_foot_takes_the_rope_down_to_the_ground_and_what_they_haul_with() {
        use BodyKind::{Carriage, Climber, Ground, Tree};
        let stops = vec![Stop::tied(2, "tie"), Stop::turn(0, "crotch"), Stop::hitch(1, "hitch"), Stop::turn(3, "low")];
        let rest = vec![Stop::turn(1, "high"), Stop::hand(3, "helper"), Stop::free()];
        let rig = rig(&[Tree, Carriage, Climber, Ground], [stops, rest].concat());
        let wanted = [(Piece::Up, 9.0), (Piece::Down, 10.0), (Piece::InRig, 4.0)];
        assert_eq!(likely(&rig, 10.0, 1.0, State::Start), wanted);
    }

    /// By hand: half a metre is left above the lower hitch, and the tail goes up and down it once more.
    #[test]
    fn near_the_crotch_the_upper_hitch_has_no_more_room_than_there_is() {
        use BodyKind::{Carriage, Climber, Tree};
        let stops =
            vec![Stop::tied(0, "anchor"), Stop::hitch(1, "upper"), Stop::hitch(2, "lower"), Stop::turn(2, "low")];
        let rest = vec![Stop::turn(1, "high"), Stop::hand(2, "hands"), Stop::free()];
        let rig = rig(&[Tree, Carriage, Climber], [stops, rest].concat());
        let wanted = [(Piece::Up, 2.0), (Piece::Down, 0.5), (Piece::InRig, 1.0)];
        assert_eq!(likely(&rig, 2.0, 1.5, State::Start), wanted);
    }
}
