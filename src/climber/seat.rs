//! Where the climber sits at the start, and how low they hang in the harness.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{CENTIMETRE, Dimension, INCH, Length};

/// How high the climber sits at the start.
pub static SEAT_HEIGHT: Field<Length> = Field::new(Row {
    id: "seatHeight",
    noun: "seat above the ground at the start",
    hint: "How high what you sit on is when the rope takes your weight; a wheelchair’s seat is at about half a metre or 20 in. If you start standing, half of your stature.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.0,
        most: 10.0,
        example: 0.40,
        likely: Some(Spread::new(0.0, 0.40, 0.90)),
        bare: Some([CENTIMETRE, INCH]),
    }),
    why: "0.40 m, hanging with the feet just clear of the ground, from 0 on the ground to 0.90 standing, is judged; so are the 10 m.",
    private: true,
});

/// How far the seat hangs below the harness's attachment, in metres.
///
/// # Source
/// Judged: under load an attachment stands between the top of the thighs, 0.2 m above what one sits on, and the lower end of
/// the breastbone, half a metre above it.
pub const SEAT_BELOW: Spread = Spread::new(0.20, 0.35, 0.50);
