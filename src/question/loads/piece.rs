//! The pieces of gear that a rig is made of.

use crate::gear::TurnKind;
use crate::reeving::{BodyKind, Rig, Stop, What};

/// What a piece of gear is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PieceKind {
    /// The climbing rope, or a helper's.
    Rope,
    /// A rope that hauls and is not climbed on.
    HaulCord,
    /// The cord of a friction hitch.
    HitchCord,
    /// A connector.
    Connector,
    /// A pulley.
    Pulley,
    /// A ring.
    Ring,
    /// A tie to the tree or at its foot.
    Anchor,
    /// A knot in the tail.
    Knot,
    /// The crotch.
    Crotch,
    /// The second limb that the rope is led over.
    Redirect,
    /// Where the harness takes the rig.
    Harness,
}

/// A piece of gear, and where it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Piece {
    /// What it is.
    pub kind: PieceKind,
    /// Its rope, where it is on one.
    pub rope: Option<usize>,
    /// Its stop, where it is at one.
    pub stop: Option<usize>,
}

impl Piece {
    /// The stop it is at.
    #[must_use]
    pub fn stop_in<'a>(&self, rig: &'a Rig) -> Option<&'a Stop> {
        rig.ropes().get(self.rope?)?.stops.get(self.stop?)
    }
}

/// Every piece of a rig, ropes first, with turns of these kinds.
pub(super) fn pieces(rig: &Rig, turns: &[TurnKind], redirect: bool) -> Vec<Piece> {
    let mut pieces = Vec::new();
    for (at, rope) in rig.ropes().iter().enumerate() {
        let comes_to_tree = rope.stops.iter().any(|stop| rig.kind_at(stop) == Some(BodyKind::Tree));
        let kind = if comes_to_tree { PieceKind::Rope } else { PieceKind::HaulCord };
        pieces.push(Piece { kind, rope: Some(at), stop: None });
    }
    for (at, rope) in rig.ropes().iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            for kind in at_stop(rig, stop, turns) {
                pieces.push(Piece { kind: *kind, rope: Some(at), stop: Some(place) });
            }
        }
    }
    let mut whole = |kind| pieces.push(Piece { kind, rope: None, stop: None });
    whole(PieceKind::Harness);
    whole(PieceKind::Crotch);
    if redirect {
        whole(PieceKind::Redirect);
    }
    pieces
}

/// What a rig is joined with at a stop.
fn at_stop(rig: &Rig, stop: &Stop, turns: &[TurnKind]) -> &'static [PieceKind] {
    let on = rig.kind_at(stop);
    match stop.what {
        What::Tied if matches!(on, Some(BodyKind::Tree | BodyKind::Ground)) => &[PieceKind::Anchor],
        What::Tied => &[PieceKind::Connector],
        What::Hitch(_) => &[PieceKind::HitchCord, PieceKind::Connector],
        What::Turn(number) => match turns.get(number) {
            Some(TurnKind::BearingPulley | TurnKind::BushPulley) => &[PieceKind::Pulley, PieceKind::Connector],
            Some(TurnKind::Carabiner) => &[PieceKind::Connector],
            Some(TurnKind::Ring) => &[PieceKind::Ring],
            Some(TurnKind::Bark) | None => &[],
        },
        What::Knot(_) => &[PieceKind::Knot],
        What::Hand | What::Helper(_) | What::Free => &[],
    }
}
