//! How long the climb may take.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{Dimension, Duration, MINUTE};

/// The longest that can be allowed, in seconds (judged).
pub(super) const MOST: f64 = 14_400.0;

/// The time from the first pull to the height.
pub static TIME_ALLOWED: Field<Duration> = Field::new(Row {
    id: "timeAllowed",
    noun: "time you allow",
    hint: "From your first pull until you are up, rests and all. Hanging to rest costs no strength, so something must end it.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Duration,
        least: 60.0,
        most: MOST,
        example: 1800.0,
        likely: Some(Spread::point(1800.0)),
        bare: Some([MINUTE, MINUTE]),
    }),
    why: "30 minutes is judged: an hour's hanging in a sit harness made three in ten nearly faint.",
    private: false,
});
