//! Where the rope is made fast.

use crate::field::{Field, Kind, Row, choice};
use crate::reeving::{BodyKind, Rig, Stop};

choice! {
    /// Where the rope is made fast.
    Anchor {
        /// Tied off at the crotch; its own tail pulls it down again.
        Canopy = "canopy", "at the crotch, its tail to the ground", "A loop drawn tight round the crotch from the ground; the tail that hangs from its knot pulls it down again.";
        /// Tied off at the foot.
        Base = "base", "at the foot of the tree", "Up from the foot, over the crotch and down to you.";
    }
}

/// Where the rope is made fast.
pub static ANCHOR: Field<Anchor> = Field::new(Row {
    id: "anchor",
    noun: "anchor",
    hint: "",
    kind: Kind::Choice { options: Anchor::OPTIONS, likely: None },
    why: "There is no cautious default: each is safer in its own way.",
    private: false,
});

/// The stops of the rope that comes to the tree, without loose tails, from the end that is tied there if one is; none
/// where no rope comes to it.
pub(super) fn climbing_rope(rig: &Rig) -> Vec<&Stop> {
    let on_tree = |stop: Option<&&Stop>| stop.and_then(|stop| rig.kind_at(stop)) == Some(BodyKind::Tree);
    let mut stops: Vec<&Stop> = Vec::new();
    for rope in rig.ropes() {
        let mut comes = false;
        for stop in rope.stops.iter().filter(|stop| stop.body.is_some()) {
            comes |= on_tree(Some(&stop));
            stops.push(stop);
        }
        if comes {
            break;
        }
        stops.clear();
    }
    if on_tree(stops.first()) || !on_tree(stops.last()) {
        return stops;
    }
    let mut turned = Vec::new();
    while let Some(stop) = stops.pop() {
        turned.push(stop);
    }
    turned
}

/// Whether the climbing rope of a rig ends at the tree, and so needs an anchor; others run over the crotch.
#[must_use]
pub fn is_anchored(rig: &Rig) -> bool {
    climbing_rope(rig).first().and_then(|stop| rig.kind_at(stop)) == Some(BodyKind::Tree)
}

/// Whether a rope of a rig comes to the tree.
#[must_use]
pub fn comes_to_tree(rig: &Rig) -> bool {
    !climbing_rope(rig).is_empty()
}
