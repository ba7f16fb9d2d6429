//! Lengths as they are measured out: so many centimetres or inches, the last one begun.

use super::Course;
use crate::field::Spread;
use crate::quantity::Unit;

/// So much of a step came of adding up: 1 µm, by [`ADDING_UP`](super::ADDING_UP).
const NEARLY: f64 = 1e-4;

/// How many of a unit a length in metres takes, the last one begun.
#[must_use]
pub fn begun(length: f64, unit: &Unit) -> f64 {
    (unit.count(length) - NEARLY).ceil().max(0.0)
}

/// What the courses need as it is measured out, each piece by itself in whole units, in metres: never less than
/// [`need`](super::need).
#[must_use]
pub fn need_begun(courses: &[Course], unit: &Unit) -> Spread {
    let (mut low, mut likely, mut high) = (0.0_f64, 0.0_f64, 0.0_f64);
    for course in courses {
        let mut sums = [0.0; 3];
        for (_, length) in &course.pieces {
            for (sum, end) in sums.iter_mut().zip([length.low, length.likely, length.high]) {
                *sum += begun(end, unit);
            }
        }
        let [least, middle, most] = sums;
        (low, likely, high) = (low.max(least), likely.max(middle), high.max(most));
    }
    Spread::new(unit.si(low), unit.si(likely), unit.si(high))
}
