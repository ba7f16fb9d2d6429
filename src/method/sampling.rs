//! How ranges become chances.

use super::Chapter;
use super::formula::formula;
use super::unit::{COUNT, RATIO, one};
use crate::chance::{Effort, triangular};
use crate::field::Spread;
use crate::source::{GEOMETRY, JUDGED};

pub(super) fn chapter() -> Chapter {
    let count = |effort: Effort| one(f64::from(effort.count()));
    Chapter::new(
        "sampling",
        "How ranges become chances",
        "Everything that varies is drawn anew for each sampled climb, and the climb is reckoned whole. Sample number i draws the same whatever was typed and on whatever machine, so that the same link gives the same answer, and two rigs are compared on the same climbs. What ranges are shown are the 5th and 95th percentiles of the samples; the number between is the climb at likely values.",
        vec![
            formula("triangular", "A value drawn from a range, where it falls below the likely value")
                .words("A triangle over the range with its peak at the likely value. Above the likely value the other side of the triangle is used in the same way.")
                .symbols(RATIO, "x = a + √(u × (b − a) × (m − a))")
                .term("x", "the value", RATIO)
                .term("u", "a number between 0 and 1, drawn evenly", RATIO)
                .term("a", "low end", RATIO)
                .term("m", "likely value", RATIO)
                .term("b", "high end", RATIO)
                .from(&[GEOMETRY])
                .used("Every figure with a range. What people deviate from a norm is drawn from a normal distribution.")
                .example(&[("u", 0.25), ("a", 0.4), ("m", 0.55), ("b", 0.66)], |x| {
                    triangular(Spread::new(x.of("a"), x.of("m"), x.of("b")), x.of("u"))
                }),
            formula("samples", "Sampled climbs")
                .words("Counted, never timed, so that an answer is the same everywhere. More follow once typing stops.")
                .figure("", "while somebody types", count(Effort::QUICK), COUNT, &[JUDGED])
                .figure("", "of each rig, side by side", count(Effort::SIDE_BY_SIDE), COUNT, &[JUDGED])
                .figure("", "in full: links, printed sheets", count(Effort::FULL), COUNT, &[JUDGED])
                .from(&[JUDGED])
                .used("Every chance."),
        ],
    )
    .note(
        "a triangle is a judgement too",
        "That figures vary as a triangle between their ends, and apart from each other, is judged. Published data say little of how they are spread, and some surely go together.",
        &[JUDGED],
    )
}
