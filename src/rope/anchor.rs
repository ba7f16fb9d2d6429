//! Where the rope is made fast.

use crate::field::{Field, Kind, Row, choice};
use crate::reeving::{BodyKind, Rig, Stop};

choice! {
    /// Where the rope is made fast.
    Anchor {
        /// Tied off at the crotch; its own tail pulls it down again.
        Canopy = "canopy", "at the crotch, its tail to the ground", "A loop drawn tight round the crotch from the ground; the tail that hangs from its knot pulls it down again.";
        /// A loop round the crotch that a thin cord pulls down again.
        CanopyCord = "canopy-cord", "at the crotch, with a retrieval cord", "The same loop; a thin cord tied to its knot pulls it down again, so that the rope can be a third shorter.";
        /// A loop round the stem that a quick link closes.
        CanopyLink = "canopy-link", "at the crotch, on a quick link", "The loop is closed by a quick link, a steel ring that screws shut; a thin cord tied to the link pulls it down again.";
        /// A hitch that a thin cord undoes from the ground.
        CanopyHitch = "canopy-hitch", "at the crotch, on a releasable hitch", "A hitch closes the loop, and a pull on its thin cord undoes it: the rope falls. It is locked while anyone is on the rope.";
        /// Tied off at the foot.
        Base = "base", "at the foot of the tree", "Up from a tie at the foot, over the crotch and down to you. Nobody can let you down from a plain tie.";
        /// Made fast at the foot in a device that pays out.
        BaseLowerable = "base-lowerable", "at the foot, in a lowering device", "Up from a device at the foot that pays out under load, over the crotch and down to you: a helper there who has rehearsed it can let you down, as far as the rope lies ready.";
    }
}

impl Anchor {
    /// Whether the rope is made fast at the foot, and loads the crotch from both sides.
    #[must_use]
    pub const fn is_at_the_foot(self) -> bool {
        matches!(self, Self::Base | Self::BaseLowerable)
    }

    /// Whether somebody at the foot can let the climber down.
    #[must_use]
    pub const fn is_lowerable(self) -> bool {
        matches!(self, Self::BaseLowerable)
    }

    /// Whether a cord of its own brings the rope down from the crotch.
    #[must_use]
    pub const fn needs_retrieval_cord(self) -> bool {
        matches!(self, Self::CanopyCord | Self::CanopyLink | Self::CanopyHitch)
    }
}

/// Where the rope is made fast.
pub static ANCHOR: Field<Anchor> = Field::new(Row {
    id: "anchor",
    noun: "anchor",
    hint: "",
    kind: Kind::Choice { options: Anchor::OPTIONS, likely: None },
    why: "There is no cautious default: each fails in its own way.",
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
