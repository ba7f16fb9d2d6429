//! The states a rig can be in, and the same rig made fast at the foot of the tree.

use super::held::drop_without_hands;
use super::{Body, BodyKind, Fault, Phase, Rig, Rope, Stop, What};
use crate::field::choice;
use crate::quantity::Length;

choice! {
    /// What a rig is doing.
    State {
        /// The climber pulls.
        Climbing = "climbing", "climbing", "You pull, and rise.";
        /// Every hand is off.
        Resting = "resting", "resting on the hitch", "No hand is on the rope.";
        /// Somebody on the ground gives rope.
        Lowered = "lowered", "being lowered", "Somebody on the ground gives rope, and you sink.";
        /// Somebody on the ground takes rope.
        Hauled = "hauled", "being hauled", "Somebody on the ground pulls, and you rise.";
    }
}

/// Why a rig cannot be in a state, and what that tells of what would make it possible.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WhyNot {
    /// Nobody hangs on to a rope that they pull themselves: somebody on the ground hauls.
    NotByTheClimber,
    /// No tie and no hitch holds the climber once every hand is off.
    NothingHolds,
    /// Only a knot holds the climber, once rope has run to it.
    OnlyAKnot,
    /// The rope is tied in the crotch, or comes back to the climber: nothing of it can be given or taken on the ground. An
    /// anchor at the foot of the tree that pays out rope would make it possible, or a second rope.
    NothingOnTheGround,
}

/// The rig as it is in a state, and the phase it is then in.
///
/// # Guarantees
/// For a climber on a rope that is made fast at the foot of the tree, being lowered and being hauled are a reeving of
/// their own: rope from the climber's hitch, which grips, over the crotch to whoever stands at the foot.
///
/// # Errors
/// [`WhyNot`].
///
/// # Source
/// Geometry.
///
/// # Example
/// ```
/// use boughline::reeving::{Backup, State, WhyNot, catalogue, in_state, made_fast_at_the_foot};
///
/// let rig = catalogue::hand_over_hand(Backup::None)?;
/// assert_eq!(in_state(&rig, State::Lowered).err(), Some(WhyNot::NothingOnTheGround));
/// let at_the_foot = made_fast_at_the_foot(&rig).transpose()?;
/// assert!(at_the_foot.is_some_and(|rig| in_state(&rig, State::Lowered).is_ok()));
/// # Ok::<(), boughline::reeving::Fault>(())
/// ```
pub fn in_state(rig: &Rig, state: State) -> Result<(Rig, Phase), WhyNot> {
    match state {
        State::Climbing if rig.is_hauled() => Err(WhyNot::NotByTheClimber),
        State::Climbing => Ok((rig.clone(), Phase::pull(rig))),
        State::Resting => match drop_without_hands(rig) {
            None => Err(WhyNot::NothingHolds),
            Some(drop) if drop > Length::metres(0.0) => Err(WhyNot::OnlyAKnot),
            Some(_) => Ok((rig.clone(), Phase::hold(rig))),
        },
        State::Lowered | State::Hauled => {
            let hauled = rig.is_hauled();
            let moved = if hauled { Some(rig.clone()) } else { from_the_foot(rig) };
            let moved = moved.ok_or(WhyNot::NothingOnTheGround)?;
            let mut phase = if state == State::Hauled { Phase::pull(&moved) } else { Phase::lower(&moved) };
            if !hauled {
                // Nobody at the rope's end tends the climber's own hitch.
                phase.grips.fill(true);
            }
            Ok((moved, phase))
        }
    }
}

/// Whether the first thing on a rope beyond the crotch that is not a hand holds it: whoever gives rope at the foot then
/// gives it to the climber alone, and not to a tackle.
fn hangs_plainly(beyond: &[&Stop]) -> bool {
    let holds = beyond.iter().find(|stop| !stop.backup && !matches!(stop.what, What::Hand | What::Helper(_)));
    holds.is_some_and(|stop| matches!(stop.what, What::Tied | What::Hitch(_)))
}

/// The rope of a rig that is made fast on the ground and goes over the tree next, in the hand of somebody at its foot.
fn from_the_foot(rig: &Rig) -> Option<Rig> {
    for rope in &rig.ropes {
        let mut stops: Vec<&Stop> = rope.stops.iter().collect();
        for _ in 0..2 {
            if let [tie, turn, rest @ ..] = stops.as_slice()
                && hangs_plainly(rest)
                && rig.is_foot_tie(tie, turn)
            {
                let body = |kind| Some(Body::new(kind, rig.bodies.get(rig.body(kind)?)?.noun.clone()));
                let bodies = vec![body(BodyKind::Tree)?, body(BodyKind::Climber)?, body(BodyKind::Ground)?];
                let holds = |stop: &&Stop| {
                    rig.is_main_hitch(stop) || stop.what == What::Tied && rig.kind_at(stop) == Some(BodyKind::Climber)
                };
                let mut stops = match rig.stops().find(holds) {
                    Some(hitch) if hitch.what != What::Tied => {
                        vec![Stop::free(), Stop::hitch(1, hitch.noun.clone())]
                    }
                    tie => vec![Stop::tied(1, tie.map_or("harness tie".into(), |tie| tie.noun.clone()))],
                };
                stops.extend([Stop::turn(0, turn.noun.clone()), Stop::hand(2, "helper at the foot"), Stop::free()]);
                return Rig::new(bodies, vec![Rope::new(rope.noun.clone(), stops)]).ok();
            }
            stops.reverse();
        }
    }
    None
}

/// Whether a rope of a rig is tied on the ground and goes over the tree next.
#[must_use]
pub fn is_made_fast_at_the_foot(rig: &Rig) -> bool {
    let starts = |stops: &[Stop]| matches!(stops, [tie, turn, ..] if rig.is_foot_tie(tie, turn));
    let ends = |stops: &[Stop]| matches!(stops, [.., turn, tie] if rig.is_foot_tie(tie, turn));
    rig.ropes.iter().any(|rope| starts(&rope.stops) || ends(&rope.stops))
}

/// The rig with its rope over the crotch and tied at the foot of the tree, where it was tied in the crotch; none where
/// nothing was.
///
/// # Errors
/// A [`Fault`] where that is too large.
#[must_use]
pub fn made_fast_at_the_foot(rig: &Rig) -> Option<Result<Rig, Fault>> {
    let tree = rig.body(BodyKind::Tree)?;
    let mut bodies = rig.bodies.clone();
    // It is the lowest, so that no other body changes its place.
    let ground = rig.body(BodyKind::Ground).unwrap_or(bodies.len());
    if ground == bodies.len() {
        bodies.push(Body::new(BodyKind::Ground, "ground"));
    }
    let (mut ropes, mut moved) = (Vec::new(), false);
    for rope in &rig.ropes {
        let mut stops = Vec::new();
        let last = rope.stops.len().saturating_sub(1);
        for (at, stop) in rope.stops.iter().enumerate() {
            let tied = stop.what == What::Tied && stop.body == Some(tree);
            let [tie, turn] = [Stop::tied(ground, "foot tie"), Stop::turn(tree, "crotch")];
            match (tied, at == last) {
                (true, false) => stops.extend([tie, turn]),
                (true, true) => stops.extend([turn, tie]),
                _ => stops.push(stop.clone()),
            }
            moved |= tied;
        }
        ropes.push(Rope::new(rope.noun.clone(), stops));
    }
    moved.then(|| Rig::new(bodies, ropes))
}
