//! How a hitch lies on the rope.

use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{Count, Dimension};

const fn count(id: &'static str, noun: &'static str, hint: &'static str, (least, example): (f64, f64)) -> Field<Count> {
    Field::new(Row {
        id,
        noun,
        hint,
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Count,
            least,
            most: 20.0,
            example,
            likely: None,
            bare: None,
        }),
        why: "As many as are usual for the hitch unless you say so; twenty is more than anybody ties (judged).",
        private: false,
    })
}

/// How often the cord goes round the rope.
pub static HITCH_COILS: Field<Count> = count(
    "hitchCoils",
    "number of coils",
    "How often its cord goes round the rope, as climbers count: three for a prusik of three wraps, whose cord lies double.",
    (1.0, 3.0),
);

/// How often it crosses over itself.
pub static HITCH_CROSSINGS: Field<Count> = count(
    "hitchCrossings",
    "number of crossings",
    "How often its cord crosses the rope half way round, over what already lies there: a bridge, a braid.",
    (0.0, 1.0),
);
