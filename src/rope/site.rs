//! What the place adds to the way of the rope.

use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{CENTIMETRE, Dimension, FOOT, INCH, Length, METRE, Unit};

const fn of_the_site(
    id: &'static str,
    noun: &'static str,
    hint: &'static str,
    (example, most, bare): (f64, f64, [&'static Unit; 2]),
    why: &'static str,
) -> Field<Length> {
    let limits = Limits { dimension: Dimension::Length, least: 0.0, most, example, likely: None, bare: Some(bare) };
    Field::new(Row { id, noun, hint, kind: Kind::Quantity(limits), why, private: false })
}

/// The girth of what the rope lies on.
pub static STEM_GIRTH: Field<Length> = of_the_site(
    "stemGirth",
    "girth of stem or limb at the crotch",
    "A loop takes all of it, a rope that only lies over it half. Nothing where you enter the rope over the crotch.",
    (0.8, 10.0, [CENTIMETRE, INCH]),
    "Geometry; a stem 3 m thick is 10 m round.",
);

/// How far from under the crotch people stand.
pub static FOOT_OFFSET: Field<Length> = of_the_site(
    "footOffset",
    "from the stem to where you stand",
    "How far from under the crotch you start, tie and haul, if it is not right below. Each part that comes down is counted as straight down and then along the ground.",
    (3.0, 100.0, [METRE, FOOT]),
    "Geometry: aslant is shorter, and the low end of the range. 100 m is judged.",
);

/// The rope that redirects take.
pub static REDIRECT_ROPE: Field<Length> = of_the_site(
    "redirectRope",
    "rope that redirects take",
    "What the way over a second crotch or a pulley is longer than the straight one.",
    (2.0, 100.0, [METRE, FOOT]),
    "It depends on the tree; measure it. 100 m is judged.",
);
