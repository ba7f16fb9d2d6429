//! Where somebody stands.

/// Where somebody stands, the best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Level {
    /// Most sampled climbs come to the height in time, and everything a plan needs has been entered.
    WithinReach,
    /// Some do, or something is missing or past a limit.
    AtLimit,
    /// Hardly any do, or the labels or the crotch do not allow it.
    OutOfReach,
}

/// The share of sampled climbs from which on a climb is within reach (judged).
pub const AT_LEAST_WITHIN: f64 = 0.8;
/// The share of sampled climbs under which a climb is out of reach (judged).
pub const UNDER_IS_OUT: f64 = 0.2;

impl Level {
    /// The level that a share of sampled climbs comes to, whatever else a plan lacks.
    #[must_use]
    pub fn of(share: f64) -> Self {
        if share < UNDER_IS_OUT {
            Self::OutOfReach
        } else if share < AT_LEAST_WITHIN {
            Self::AtLimit
        } else {
            Self::WithinReach
        }
    }
}
