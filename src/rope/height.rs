//! Heights above the ground.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{CENTIMETRE, Dimension, FOOT, Length, METRE};

/// The height of the crotch that the rope runs over.
pub static CROTCH_HEIGHT: Field<Length> = Field::new(Row {
    id: "crotchHeight",
    noun: "height of the crotch",
    hint: "From the ground to where the rope runs over. Measure it with the throw line; a guess is often far off.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 1.0,
        most: 120.0,
        example: 12.0,
        likely: None,
        bare: Some([METRE, FOOT]),
    }),
    why: "No tree is taller than 120 m; below 1 m nobody hangs clear of the ground (judged).",
    private: false,
});

/// How high the lower hitch is at the start.
pub static HITCH_HEIGHT: Field<Length> = Field::new(Row {
    id: "hitchHeight",
    noun: "lower hitch above the ground",
    hint: "When you hang just clear of the ground or chair.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.2,
        most: 10.0,
        example: 1.5,
        likely: Some(Spread::new(1.0, 1.5, 1.8)),
        bare: Some([CENTIMETRE, FOOT]),
    }),
    why: "1.5 m, from 1 to 1.8, is judged; 5 ft is common practice, no source. Below 0.2 m nobody hangs clear (judged).",
    private: false,
});

/// The edge that the climber wants to get over.
pub static PLATFORM_HEIGHT: Field<Length> = Field::new(Row {
    id: "platformHeight",
    noun: "edge of a platform or stand",
    hint: "From the ground to the edge that your seat is to come over, if there is one.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.2,
        most: 120.0,
        example: 10.0,
        likely: None,
        bare: Some([METRE, FOOT]),
    }),
    why: "No tree is taller than 120 m; below 20 cm there is nothing to climb (judged).",
    private: false,
});
