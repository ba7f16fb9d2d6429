//! Ratios.

use super::figures::plain;
use super::newtype::newtype;
use super::unit::{Family, Unit};
use super::{Dimension, View};

newtype! {
    /// One thing over another of its kind: an efficiency, an advantage, a share.
    ///
    /// # Units
    ///
    /// None: 0.9 is 90 %.
    Ratio
}

/// The per cent sign as a unit.
pub const PERCENT: &Unit =
    &Unit::row("%", &["percent", "per cent"], Dimension::Ratio, (1.0, 100.0), "by definition: one in a hundred");

pub(super) const FAMILY: Family = Family { units: &[PERCENT], si: None, written };

impl Ratio {
    /// The ratio itself.
    #[must_use]
    pub const fn new(value: f64) -> Self {
        Self(value)
    }

    /// The ratio of so many per cent.
    #[must_use]
    pub const fn percent(number: f64) -> Self {
        Self(PERCENT.si(number))
    }

    /// Its value: 0.9 for 90 %.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

fn written(si: f64, view: View) -> String {
    plain(si, 2, view)
}
