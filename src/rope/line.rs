//! The thin lines beside the rope.

use super::sizes::{Sizes, aslant};
use crate::field::Spread;

/// What tying a thin line takes, in metres: judged, with a knot of 67 diameters of 3 mm as its likely value's better half.
pub const LINE_TIE: Spread = Spread::new(0.2, 0.3, 1.0);

/// The line that stays in the tree to pull the rope up again: a loop down both sides, and its tie. In metres.
#[must_use]
pub fn preset_line(sizes: &Sizes) -> Spread {
    let (side, over) = (side(sizes), sizes.over);
    let both = |side: f64, over: f64, tie: f64| 2.0 * side + over + tie;
    Spread::new(
        both(side.low, over.low, LINE_TIE.low),
        both(side.likely, over.likely, LINE_TIE.likely),
        both(side.high, over.high, LINE_TIE.high),
    )
}

/// The cord that brings an anchor down from the crotch, and its tie. In metres.
#[must_use]
pub fn retrieval_cord(sizes: &Sizes) -> Spread {
    let Spread { low, likely, high } = side(sizes);
    Spread::new(low + LINE_TIE.low, likely + LINE_TIE.likely, high + LINE_TIE.high)
}

/// From the crotch to where people stand.
fn side(sizes: &Sizes) -> Spread {
    let Spread { low, likely, high } = aslant(sizes.crotch, sizes.aside);
    Spread::new(sizes.crotch + low, sizes.crotch + likely, sizes.crotch + high)
}
