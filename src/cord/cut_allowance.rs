//! What cutting takes beside the cords.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{CENTIMETRE, Dimension, INCH, Length, MILLIMETRE, Unit};

const fn allowance(
    (id, noun, hint): (&'static str, &'static str, &'static str),
    likely: Spread,
    most: f64,
    bare: [&'static Unit; 2],
    why: &'static str,
) -> Field<Length> {
    let limits = Limits {
        dimension: Dimension::Length,
        least: 0.0,
        most,
        example: likely.likely,
        likely: Some(likely),
        bare: Some(bare),
    };
    Field::new(Row { id, noun, hint, kind: Kind::Quantity(limits), why, private: false })
}

/// What every cut takes.
pub static KERF: Field<Length> = allowance(
    ("kerf", "lost at every cut", "What cutting and melting both new ends takes off a cord."),
    Spread::new(0.002, 0.005, 0.010),
    0.1,
    [MILLIMETRE, INCH],
    "5 mm, from 2 to 10, is judged: a few millimetres shrink back from a hot blade at each of two ends.",
);

/// What is of no use of a hank.
pub static END_ALLOWANCE: Field<Length> = allowance(
    (
        "endAllowance",
        "lost of every hank",
        "What its two ends take: lumps, labels, kinks, and a label that says too much.",
    ),
    Spread::new(0.0, 0.05, 0.20),
    5.0,
    [CENTIMETRE, INCH],
    "5 cm, up to 20, is judged.",
);
