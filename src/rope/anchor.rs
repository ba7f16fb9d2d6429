//! Where the rope is made fast.

use crate::field::{Field, Kind, Row, choice};
use crate::reeving::{BodyKind, Rig};

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

/// Whether the climbing rope of a rig ends at the tree, and so needs an anchor; others run over the crotch.
#[must_use]
pub fn is_anchored(rig: &Rig) -> bool {
    let first = rig.ropes().first().and_then(|rope| rope.stops.first());
    first.and_then(|stop| rig.kind_at(stop)) == Some(BodyKind::Tree)
}
