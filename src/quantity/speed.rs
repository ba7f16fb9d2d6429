//! Speeds.

use super::duration::MINUTE;
use super::figures::{at_most, rounded, whole_from_ten};
use super::length::FOOT;
use super::newtype::{counted_in, newtype};
use super::unit::{Family, Unit};
use super::{Dimension, System, View};

newtype! {
    /// A speed: of a climb, of rope.
    ///
    /// # Units
    ///
    /// Metres a second inside.
    Speed
}

/// The metre a second.
pub const METRE_A_SECOND: &Unit = &Unit::row(
    "m/s",
    &["m-per-s", "m/sec", "mps", "metre per second", "metres per second", "meter per second", "meters per second"],
    Dimension::Speed,
    (1.0, 1.0),
    "by definition: the SI unit of speed",
);

/// The metre a minute.
pub const METRE_A_MINUTE: &Unit = &Unit::row(
    "m/min",
    &["m-per-min", "metre per minute", "metres per minute", "meter per minute", "meters per minute"],
    Dimension::Speed,
    (1.0, MINUTE.size),
    "by definition: a metre in 60 seconds",
);

/// The foot a minute.
pub const FOOT_A_MINUTE: &Unit = &Unit::row(
    "ft/min",
    &["ft-per-min", "fpm", "foot per minute", "feet per minute"],
    Dimension::Speed,
    (FOOT.fraction().0, FOOT.fraction().1 * MINUTE.size),
    "by definition: a foot in 60 seconds; NIST SP 811 (2008), appendix B",
);

pub(super) const FAMILY: Family =
    Family { units: &[METRE_A_SECOND, METRE_A_MINUTE, FOOT_A_MINUTE], si: Some(METRE_A_SECOND), written };

counted_in! {
    Speed:
    METRE_A_SECOND, metres_a_second, in_metres_a_second;
    METRE_A_MINUTE, metres_a_minute, in_metres_a_minute;
    FOOT_A_MINUTE, feet_a_minute, in_feet_a_minute;
}

/// By the minute below a stroll, 1 m/s (judged; walking is 1.2 to 1.5): climbing is slow.
fn written(si: f64, view: View) -> String {
    match view.system {
        System::Si if rounded(METRE_A_MINUTE.count(si), 0) >= MINUTE.size => at_most(si, 1, view) + " m/s",
        System::Si => whole_from_ten(METRE_A_MINUTE.count(si), view) + " m/min",
        System::Us => whole_from_ten(FOOT_A_MINUTE.count(si), view) + " ft/min",
    }
}
