//! Counts.

use super::View;
use super::figures::at_most;
use super::newtype::newtype;
use super::unit::Family;

newtype! {
    /// How many of something: years, strokes a minute. It is written as a bare number.
    ///
    /// # Units
    ///
    /// None.
    Count
}

pub(super) const FAMILY: Family = Family { units: &[], si: None, written };

impl Count {
    /// So many.
    #[must_use]
    pub const fn new(number: f64) -> Self {
        Self(number)
    }

    /// How many.
    #[must_use]
    pub const fn number(self) -> f64 {
        self.0
    }
}

fn written(si: f64, view: View) -> String {
    at_most(si, 1, view)
}
