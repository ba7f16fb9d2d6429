//! Somebody on the ground who pulls too.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{Dimension, Force, KILOGRAM_FORCE, POUND_FORCE};

/// What a helper on the ground pulls, for minutes.
pub static HELPER_PULL: Field<Force> = Field::new(Row {
    id: "helperPull",
    noun: "helper's pull",
    hint: "What a helper on the ground pulls for minutes, by hand, without jerking; of several, together.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Force,
        least: 20.0,
        most: 1500.0,
        example: 250.0,
        likely: Some(Spread::new(150.0, 250.0, 350.0)),
        bare: Some([KILOGRAM_FORCE, POUND_FORCE]),
    }),
    why: "250 N, from 150 to 350, is judged; the most is several people's (judged).",
    private: false,
});
