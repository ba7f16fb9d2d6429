//! Durations.

use super::figures::{at_most, rounded};
use super::newtype::{counted_in, newtype};
use super::pieces::joined;
use super::unit::{Family, Unit};
use super::{Dimension, View};

newtype! {
    /// How long something takes.
    ///
    /// # Units
    ///
    /// Seconds inside.
    Duration
}

/// By definition, of seconds to a minute and of minutes to an hour.
const SIXTY: f64 = 60.0;

/// The second.
pub const SECOND: &Unit = &Unit::row(
    "s",
    &["sec", "secs", "second", "seconds"],
    Dimension::Duration,
    (1.0, 1.0),
    "by definition: the SI unit of time",
)
.within(MINUTE, SIXTY);

/// The minute.
pub const MINUTE: &Unit = &Unit::row(
    "min",
    &["mins", "minute", "minutes"],
    Dimension::Duration,
    (SIXTY, 1.0),
    "by definition: 60 seconds; NIST SP 811 (2008)",
)
.within(HOUR, SIXTY);

/// The hour.
pub const HOUR: &Unit = &Unit::row(
    "h",
    &["hr", "hrs", "hour", "hours"],
    Dimension::Duration,
    (SIXTY * SIXTY, 1.0),
    "by definition: 60 minutes; NIST SP 811 (2008)",
);

pub(super) const FAMILY: Family = Family { units: &[SECOND, MINUTE, HOUR], si: Some(SECOND), written };

counted_in! {
    Duration:
    SECOND, seconds, in_seconds;
    MINUTE, minutes, in_minutes;
}

/// The same in either system. Seconds are dropped from two minutes on: nobody climbs to the second.
fn written(si: f64, view: View) -> String {
    let seconds = rounded(si, 0);
    let minutes = rounded(MINUTE.count(si), 0);
    if si < 10.0 {
        at_most(si, 1, view) + " s"
    } else if seconds < SIXTY {
        at_most(seconds, 0, view) + " s"
    } else if si < 2.0 * SIXTY {
        in_two(seconds, "min", "s", view)
    } else if minutes < SIXTY {
        at_most(minutes, 0, view) + " min"
    } else {
        in_two(minutes, "h", "min", view)
    }
}

/// A whole number of the smaller unit as "1 min 20 s", or "2 min" when nothing is left over.
fn in_two(number: f64, bigger: &str, smaller: &str, view: View) -> String {
    let whole = (number / SIXTY).floor();
    let left = number - whole * SIXTY;
    let whole = at_most(whole, 0, view);
    if left <= 0.0 {
        joined(&[&whole, " ", bigger])
    } else {
        joined(&[&whole, " ", bigger, " ", &at_most(left, 0, view), " ", smaller])
    }
}
