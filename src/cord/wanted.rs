//! What a cord should come out at.

use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{CENTIMETRE, Dimension, FOOT, INCH, Length, METRE, Unit};

pub(super) const fn length(
    (id, noun, hint): (&'static str, &'static str, &'static str),
    (example, most): (f64, f64),
    why: &'static str,
) -> Field<Length> {
    counted_in([CENTIMETRE, INCH], (id, noun, hint), (example, most), why)
}

/// The same of what people count in metres and feet.
pub(super) const fn long(
    names: (&'static str, &'static str, &'static str),
    limits: (f64, f64),
    why: &'static str,
) -> Field<Length> {
    counted_in([METRE, FOOT], names, limits, why)
}

const fn counted_in(
    bare: [&'static Unit; 2],
    (id, noun, hint): (&'static str, &'static str, &'static str),
    (example, most): (f64, f64),
    why: &'static str,
) -> Field<Length> {
    Field::new(Row {
        id,
        noun,
        hint,
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Length,
            least: 0.0,
            most,
            example,
            likely: None,
            bare: Some(bare),
        }),
        why,
        private: false,
    })
}

/// What hangs free of a hitch, all its legs together.
pub static FREE_LEG: Field<Length> = length(
    (
        "freeLeg",
        "free legs in all",
        "The cord between the hitch and its connector, all legs added up: 20 cm for one that hangs by two legs of 10 cm.",
    ),
    (0.20, 10.0),
    "As much as is usual for the hitch unless you say so (judged); more than 10 m is no leg (judged).",
);

/// What the finished cord measures off the rope.
pub static FINISHED_LENGTH: Field<Length> = length(
    (
        "finishedLength",
        "finished length",
        "Of the cord by itself, off the rope: a loop’s inside length pulled straight, a cord with eyes from eye to eye.",
    ),
    (0.75, 60.0),
    "As much as is usual unless you say so (judged); no cord here is longer than 60 m (judged).",
);

/// What is left hanging of the end that the tying begins with.
pub static WORKING_END: Field<Length> = length(
    (
        "workingEnd",
        "working end to begin with",
        "The cord from its end to where the first coil begins: one leg, with its knot and tail.",
    ),
    (0.35, 10.0),
    "As long as makes both legs alike unless you say so (geometry).",
);
