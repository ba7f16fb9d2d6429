//! What a hitch drags while it slides, and gives back when it takes the load.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{CENTIMETRE, Dimension, INCH, Length, Ratio};

/// The share of tension kept past the lower hitch while it slides up the rope.
pub static HITCH_DRAG: Field<Ratio> = Field::new(Row {
    id: "hitchDrag",
    noun: "kept past the sliding hitch",
    hint: "The tension that gets past the lower hitch while it rides up, as 0.9 or 90 %.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Ratio,
        least: 0.3,
        most: 1.0,
        example: 0.90,
        likely: Some(Spread::new(0.80, 0.90, 1.0)),
        bare: None,
    }),
    why: "0.90, from 0.80 to 1.0, is judged: nobody published it. Below 0.3 the hitch grips (judged).",
    private: false,
});

/// The height that a hitch gives back when it takes the load.
pub static SETBACK: Field<Length> = Field::new(Row {
    id: "setback",
    noun: "setback",
    hint: "How far you sink when the lower hitch takes your weight, each stroke.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.0,
        most: 0.5,
        example: 0.05,
        likely: Some(Spread::new(0.02, 0.05, 0.10)),
        bare: Some([CENTIMETRE, INCH]),
    }),
    why: "Judged, to agree with the progress that climbers report (common practice, no source).",
    private: false,
});
