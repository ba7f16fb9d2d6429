//! A figure with its range.

/// A figure with its range: the least, the likely and the greatest it is taken to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// The low end.
    pub low: f64,
    /// The likely value.
    pub likely: f64,
    /// The high end.
    pub high: f64,
}

impl Spread {
    /// A range around a likely value.
    #[must_use]
    pub const fn new(low: f64, likely: f64, high: f64) -> Self {
        Self { low, likely, high }
    }

    /// The same range in another measure: times a factor that is not negative.
    #[must_use]
    pub const fn scaled(self, by: f64) -> Self {
        Self::new(self.low * by, self.likely * by, self.high * by)
    }

    /// A value that is known, without a range.
    #[must_use]
    pub const fn point(value: f64) -> Self {
        Self { low: value, likely: value, high: value }
    }
}
