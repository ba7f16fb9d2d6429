//! How high the climb is.

use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{Dimension, FOOT, Length, METRE};

/// The height to be gained.
pub static CLIMB_HEIGHT: Field<Length> = Field::new(Row {
    id: "climbHeight",
    noun: "height to climb",
    hint: "From where you hang just clear of the ground or chair to where you want to be. It is less than the height of the crotch.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.2,
        most: 120.0,
        example: 11.0,
        likely: None,
        bare: Some([METRE, FOOT]),
    }),
    why: "No tree is taller than 120 m; below 20 cm there is nothing to climb (judged).",
    private: false,
});
