//! One step of the change from going up to going down, and what holds the climber while it is made.

use crate::reeving::{BodyKind, Part, Rig, Stop, What, is_held, single_parts};

/// What is done in a step.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Does {
    /// Hang on the hitch, both hands off.
    Rest,
    /// Tie a knot in the rope just below the hitch, and clip it to the harness.
    BackUp,
    /// Take whatever moves on the rope above off it.
    TakeOff,
    /// Put the brake on the rope between hitch and knot, and tie it off.
    SetBrake,
    /// Ease the hitch until the brake carries.
    WeighBrake,
    /// Undo the brake's tie, its rope in the hand.
    FreeBrake,
    /// Tie the next knot further down, then undo this one.
    MoveKnot,
}

/// A step, and the rig as it hangs while the step is made.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// What is done.
    pub does: Does,
    /// The rig.
    pub rig: Rig,
    /// What is opened or moved in it, by rope and stop: it holds nobody meanwhile.
    pub moved: Vec<(usize, usize)>,
}

/// How many things hold the climber, whatever hands do.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Attached {
    /// Nothing.
    None,
    /// One hitch, brake or knot, whose failure drops them.
    One,
    /// Two or more hitches, brakes or knots: any of them may fail. Anchor, rope and a tie at the harness stay as they are in
    /// every step and are not counted.
    Two,
}

impl Step {
    /// What holds the climber while the step is made, every hand off and without what is moved.
    ///
    /// # Source
    /// Geometry.
    #[must_use]
    pub fn attached(&self) -> Attached {
        let Some(left) = without(&self.rig, &self.moved) else { return Attached::None };
        if !is_held(&left) {
            return Attached::None;
        }
        for part in single_parts(&left) {
            if let Part::Stop { rope, stop } = part
                && let Some(stop) = left.ropes().get(rope).and_then(|rope| rope.stops.get(stop))
                && matches!(stop.what, What::Hitch(_) | What::Knot(_))
                && left.kind_at(stop) == Some(BodyKind::Climber)
            {
                return Attached::One;
            }
        }
        Attached::Two
    }

    /// What could hold the climber while the step is made: every hitch and knot on them that is not moved.
    #[must_use]
    pub fn holding(&self) -> Vec<String> {
        let mut nouns = Vec::new();
        for (at, rope) in self.rig.ropes().iter().enumerate() {
            for (place, stop) in rope.stops.iter().enumerate() {
                if matches!(stop.what, What::Hitch(_) | What::Knot(_))
                    && self.rig.kind_at(stop) == Some(BodyKind::Climber)
                    && !self.moved.contains(&(at, place))
                {
                    nouns.push(stop.noun.clone().into_owned());
                }
            }
        }
        nouns
    }

    /// Whether the climber's rope is also tied to them, which stays as it is.
    #[must_use]
    pub fn is_tied_on(&self) -> bool {
        let tie = |stop: &Stop| stop.what == What::Tied && self.rig.kind_at(stop) == Some(BodyKind::Climber);
        self.along().iter().any(|(stop, _)| tie(stop))
    }

    /// The stops of the climber's rope on the tree and on themselves, from the anchor down, and whether each is moved.
    #[must_use]
    pub fn along(&self) -> Vec<(&Stop, bool)> {
        let mut list = Vec::new();
        let climber = |stop: &Stop| self.rig.kind_at(stop) == Some(BodyKind::Climber);
        for (at, rope) in self.rig.ropes().iter().enumerate() {
            if !rope.stops.iter().any(|stop| matches!(stop.what, What::Hitch(_)) && climber(stop)) {
                continue;
            }
            for (place, stop) in rope.stops.iter().enumerate() {
                if stop.what != What::Free {
                    list.push((stop, self.moved.contains(&(at, place))));
                }
            }
            let on_tree = |stop: Option<&(&Stop, bool)>| {
                stop.is_some_and(|(stop, _)| self.rig.kind_at(stop) == Some(BodyKind::Tree))
            };
            if !on_tree(list.first()) && on_tree(list.last()) {
                list.reverse();
            }
            break;
        }
        list
    }

    /// Whether two things hold the climber, or one while nothing is moved.
    #[must_use]
    pub fn is_sound(&self) -> bool {
        match self.attached() {
            Attached::None => false,
            Attached::One => self.moved.is_empty(),
            Attached::Two => true,
        }
    }
}

/// The rig without these stops; none where nothing is left of it.
fn without(rig: &Rig, moved: &[(usize, usize)]) -> Option<Rig> {
    let mut ropes = rig.ropes().to_vec();
    for (at, rope) in ropes.iter_mut().enumerate() {
        let mut kept = Vec::new();
        for (place, stop) in rope.stops.drain(..).enumerate() {
            if !moved.contains(&(at, place)) {
                kept.push(stop);
            }
        }
        // What was tied at an end hangs loose now.
        let is_end = |stop: Option<&Stop>| stop.is_some_and(|stop| matches!(stop.what, What::Tied | What::Free));
        if !is_end(kept.first()) {
            kept.insert(0, Stop::free());
        }
        if !is_end(kept.last()) {
            kept.push(Stop::free());
        }
        rope.stops = kept;
    }
    Rig::new(rig.bodies().to_vec(), ropes).ok()
}
