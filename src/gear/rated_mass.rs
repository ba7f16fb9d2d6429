//! What the gear is rated to carry of a person.

use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{Dimension, KILOGRAM, Mass, POUND};

/// The least of what the labels allow.
pub static RATED_MASS: Field<Mass> = Field::new(Row {
    id: "ratedMass",
    noun: "greatest user mass on the labels",
    hint: "The least that is printed on the labels of harness, connectors, pulleys and devices, for the person with all they carry.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Mass,
        least: 40.0,
        most: 300.0,
        example: 140.0,
        likely: None,
        bare: Some([KILOGRAM, POUND]),
    }),
    why: "Ratings stand between 100 and 150 kg; the rest is room (judged).",
    private: false,
});

/// The mass that harnesses are tested with, in kilograms.
pub const TEST_RATING: f64 = 100.0;

/// A mass past most ratings, in kilograms (judged: ratings of 136 to 150 kg exist).
pub const PAST_MOST: f64 = 140.0;
