//! How long somebody hangs in the harness.

use crate::descent::SENSIBLE_SPEED;

/// How long somebody whose legs do not move may hang before a climb is at best at their limit, in seconds.
///
/// # Source
/// Judged, from 7 to 13 minutes: hanging still in a sit harness, the earliest near-faint came at 13.4 min (Rauch 2019).
pub const HARNESS_CLOCK: f64 = 600.0;

/// The time to plan a climb on, where legs do not move: so much less that the climber is down within the clock.
pub(super) fn within_the_clock(allowed: f64, height: f64) -> f64 {
    allowed.min((HARNESS_CLOCK - height / SENSIBLE_SPEED).max(0.0))
}

/// From leaving the seat to being back on it, in seconds.
#[must_use]
pub fn hanging(climb_time: f64, height: f64) -> f64 {
    climb_time + height / SENSIBLE_SPEED
}
