//! The body and what it carries.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{CENTIMETRE, Dimension, INCH, KILOGRAM, Length, Mass, POUND};

/// Body mass, without clothes or kit.
pub static BODY_MASS: Field<Mass> = Field::new(Row {
    id: "bodyMass",
    noun: "body mass",
    hint: "Your own weight on a scale, without kit or chair.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Mass,
        least: 20.0,
        most: 250.0,
        example: 80.0,
        likely: None,
        bare: Some([KILOGRAM, POUND]),
    }),
    why: "From a child to beyond any harness's rating (judged).",
    private: true,
});

/// Clothes, harness, and all that hangs from them.
pub static KIT_MASS: Field<Mass> = Field::new(Row {
    id: "kitMass",
    noun: "clothes and kit",
    hint: "Clothes, harness, helmet, cords, tools, and the rope that hangs from you.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Mass,
        least: 0.0,
        most: 60.0,
        example: 8.0,
        likely: Some(Spread::new(4.0, 8.0, 15.0)),
        bare: Some([KILOGRAM, POUND]),
    }),
    why: "8 kg, from 4 to 15, and at most 60 are judged.",
    private: false,
});

/// Standing height.
pub static STATURE: Field<Length> = Field::new(Row {
    id: "stature",
    noun: "stature",
    hint: "How tall you are; it gives the length of your pull. If you cannot stand, measure the rope you pull instead.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.9,
        most: 2.3,
        example: 1.75,
        likely: None,
        bare: Some([CENTIMETRE, INCH]),
    }),
    why: "The range of living adults, with a margin (judged).",
    private: true,
});
