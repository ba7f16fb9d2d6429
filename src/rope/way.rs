//! The way of a rope through a rig, piece by piece.

use super::sizes::{Sizes, aslant};
use super::{Anchor, Piece, State};
use crate::climber::STACK_LENGTH;
use crate::field::{Kind, Limits, Spread};
use crate::reeving::{BodyKind, Rig, Stop};

/// Which end of a range counts.
pub(super) type Pick = fn(Spread) -> f64;

/// The way of a rope through a rig.
pub(super) struct Way<'a> {
    pub(super) rig: &'a Rig,
    pub(super) stops: Vec<&'a Stop>,
    pub(super) anchor: Option<Anchor>,
    pub(super) sizes: &'a Sizes,
    pub(super) section: Spread,
}

impl Way<'_> {
    /// Whether somebody on the ground can let the climber down.
    pub(super) fn can_lower(&self) -> bool {
        self.rig.is_hauled() || self.anchor.is_some_and(Anchor::is_lowerable)
    }

    /// The length of a piece, for this end of whatever takes rope and that end of the climber's height, which saves it.
    pub(super) fn length(&self, piece: Piece, state: State, rope: Pick, height: Pick) -> f64 {
        let Self { anchor, sizes, .. } = *self;
        let crotch = sizes.crotch;
        let above = |stop: Option<&&Stop>| self.height(self.place(stop), state, rope, height);
        let (before, beyond) = self.sides();
        let own_tail = anchor == Some(Anchor::Canopy);
        let untied = state == State::Retrieve;
        match piece {
            Piece::Up if !self.goes_up(state) => 0.0,
            Piece::Up => crotch - above(before.last()),
            Piece::Over => rope(sizes.over),
            Piece::Down => crotch - above(beyond.last()),
            Piece::Redirect => sizes.redirect,
            Piece::Aside => {
                let mut aside = 0.0;
                for (counts, stop) in [(self.goes_up(state), before.last()), (true, beyond.last()), (own_tail, None)] {
                    // At the top the climber hangs under the crotch.
                    if counts && !(state == State::Top && self.place(stop) == BodyKind::Climber) {
                        aside += rope(aslant(crotch - above(stop), sizes.aside));
                    }
                }
                aside
            }
            Piece::InRig => {
                // The rope goes down to the last body on the way anyhow.
                let mut taken = above(beyond.last()) - above(beyond.first());
                for side in [before, beyond] {
                    for ends in side.windows(2) {
                        taken += (above(ends.first()) - above(ends.last())).abs();
                    }
                }
                taken.max(0.0)
            }
            Piece::Knot if untied && !anchor.is_some_and(stays_tied) => 0.0,
            Piece::Knot => rope(sizes.knot),
            Piece::Tail if own_tail => crotch,
            Piece::Reserve if state == State::Lowered && anchor.is_some_and(Anchor::is_lowerable) => crotch,
            Piece::Tail | Piece::Reserve => 0.0,
            // Nothing in the end may jam on the way out.
            Piece::End | Piece::Spare if untied => 0.0,
            Piece::End => rope(sizes.end),
            Piece::Spare => rope(sizes.spare),
        }
    }

    /// Whether the rope comes up to the crotch on the side where it is made fast.
    fn goes_up(&self, state: State) -> bool {
        match self.anchor {
            // Undone, it falls.
            Some(Anchor::CanopyHitch) if state == State::Retrieve => false,
            Some(anchor) => anchor.is_at_the_foot() || state.loop_is_down(),
            None => true,
        }
    }

    /// The kind of body that a stop is on. A rope that is nowhere else starts on the ground.
    fn place(&self, stop: Option<&&Stop>) -> BodyKind {
        stop.and_then(|stop| self.rig.kind_at(stop)).unwrap_or(BodyKind::Ground)
    }

    /// The stops of the climbing rope before the crotch, and those beyond it.
    fn sides(&self) -> (&[&Stop], &[&Stop]) {
        let crotch = self.stops.iter().position(|stop| self.rig.kind_at(stop) == Some(BodyKind::Tree)).unwrap_or(0);
        let (before, from) = self.stops.split_at_checked(crotch).unwrap_or((&self.stops, &[]));
        (before, from.get(1..).unwrap_or_default())
    }

    /// The height of a body of a kind above the ground.
    fn height(&self, kind: BodyKind, state: State, rope: Pick, height: Pick) -> f64 {
        let crotch = self.sizes.crotch;
        let start = height(self.sizes.hitch).min(crotch);
        let climber = match state {
            State::Start => start,
            State::Top => (crotch - rope(nearest())).max(start),
            _ => 0.0,
        };
        match kind {
            BodyKind::Tree => crotch,
            BodyKind::Ground => 0.0,
            BodyKind::Climber => climber,
            BodyKind::Carriage if !state.is_aloft() => 0.0,
            BodyKind::Carriage => {
                let foot = if self.rig.is_hauled() { 0.0 } else { climber };
                (foot + rope(self.section)).min(crotch)
            }
        }
    }
}

/// Whether the loop is still tied when it comes down.
fn stays_tied(anchor: Anchor) -> bool {
    matches!(anchor, Anchor::Canopy | Anchor::CanopyCord | Anchor::CanopyLink)
}

/// How near to the crotch the lower hitch comes, in metres: the length of the stack.
fn nearest() -> Spread {
    match STACK_LENGTH.row.kind {
        Kind::Quantity(Limits { likely: Some(stack), .. }) => stack,
        _ => Spread::point(0.0),
    }
}
