//! What a rope needs beside the way up and down.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{CENTIMETRE, Dimension, FOOT, INCH, Length, METRE, Unit};

const fn allowance(
    id: &'static str,
    noun: &'static str,
    hint: &'static str,
    likely: Spread,
    (most, bare): (f64, [&'static Unit; 2]),
    why: &'static str,
) -> Row {
    let limits = Limits {
        dimension: Dimension::Length,
        least: 0.0,
        most,
        example: likely.likely,
        likely: Some(likely),
        bare: Some(bare),
    };
    Row { id, noun, hint, kind: Kind::Quantity(limits), why, private: false }
}

/// The rope that lies over the crotch.
pub static OVER_CROTCH: Field<Length> = Field::new(allowance(
    "overCrotch",
    "rope over the crotch",
    "What lies over the crotch, or round the limb or stem up there.",
    Spread::new(0.1, 0.3, 0.8),
    (10.0, [CENTIMETRE, INCH]),
    "0.3 m, from 0.1 to 0.8, is judged: half the girth of a limb 6 to 50 cm thick.",
));

/// The rope in the knot or tie that makes it fast; its default is that of a knot at the crotch.
pub static ANCHOR_KNOT: Field<Length> = Field::new(knot("rope in the anchor's knot", Spread::new(0.7, 1.0, 2.0)));

/// The same field where the rope is made fast at the foot, with the default of a tie round a stem.
pub static BASE_TIE: Field<Length> = Field::new(knot("rope in the tie at the foot", Spread::new(1.2, 2.5, 5.0)));

/// The same field where a device at the foot pays out, with the default of its wraps.
pub static DEVICE_WRAPS: Field<Length> = Field::new(knot("rope in the device at the foot", Spread::new(0.7, 1.5, 3.0)));

const fn knot(noun: &'static str, likely: Spread) -> Row {
    allowance(
        "anchorKnot",
        noun,
        "What the knot at the crotch takes, or the tie or the device at the foot: for each turn round a stem add its girth.",
        likely,
        (30.0, [METRE, FOOT]),
        "Judged. 1 m, from 0.7 to 2, at the crotch: a double fisherman's takes 67 diameters with its tails (read). 2.5 m, from 1.2 to 5, at the foot: that, and the girth of a stem 15 cm to 1.3 m thick. 1.5 m, from 0.7 to 3, in a device at the foot: its wraps, and a knot that backs it up.",
    )
}

/// What a stopper and the shortest tail take, in metres.
///
/// # Source
/// About 23 cm for the knot and at least 10 cm of tail: read; see [`KNOT_PAGES`](crate::source::KNOT_PAGES).
pub const STOPPER_AND_TAIL: f64 = 0.23 + 0.10;

/// The stopper in the end, and the tail below it.
pub static ROPE_TAIL: Field<Length> = Field::new(allowance(
    "ropeTail",
    "stopper and tail below it",
    "The rope in the stopper knot at its end, and the tail that hangs from the knot.",
    Spread::new(STOPPER_AND_TAIL, 0.40, 0.60),
    (10.0, [CENTIMETRE, INCH]),
    "About 0.23 m for the stopper and at least 0.10 m or ten diameters of tail (read); 0.40 m, up to 0.60, is judged.",
));

/// What is to lie on the ground.
pub static ROPE_SPARE: Field<Length> = Field::new(allowance(
    "ropeSpare",
    "rope to spare",
    "What is to lie on the ground, for heights and knots that turn out larger.",
    Spread::new(0.5, 1.0, 2.0),
    (50.0, [METRE, FOOT]),
    "1 m, from 0.5 to 2, is judged.",
));
