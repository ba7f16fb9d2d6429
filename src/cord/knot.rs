//! What the knots in a cord take of it.

use crate::hitch::{CONNECTOR_STOCK, coil, girth};

/// A barrel of so many laps round a strand of the same cord, without its tail. In metres.
///
/// ```text
///     ___________
///   --|  | |  |  |---   laps round the strand, and back through under them
///     `--'-'--'--`
/// ```
///
/// # Source
/// Geometry: each lap a coil on the cord itself; the way back as long as the laps are wide, and a diameter in and out. A
/// double fisherman's is two barrels of two laps, 33.5 diameters; with its tails on 6 mm that is the 0.40 m, or 67
/// diameters, that a New Zealand caving association's page adds to a loop. One of two laps on 11 mm rope takes about the
/// 23 cm that are read of a stopper.
#[must_use]
pub fn barrel(laps: f64, cord: f64) -> f64 {
    laps * coil(girth(cord, 0.0, cord), cord) + (laps + 2.0) * cord
}

/// An eye drawn tight on a connector: once round its metal. In metres.
///
/// # Source
/// Geometry.
#[must_use]
pub fn eye(cord: f64) -> f64 {
    girth(CONNECTOR_STOCK, 0.0, cord)
}

/// The shortest tail of a knot, in metres.
///
/// # Source
/// At least ten diameters and at least 10 cm: read; see [`KNOT_PAGES`](crate::source::KNOT_PAGES).
#[must_use]
pub fn shortest_tail(cord: f64) -> f64 {
    (10.0 * cord).max(0.10)
}
