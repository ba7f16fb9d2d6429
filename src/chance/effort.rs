//! How much work an answer may take.

/// How much work an answer may take, in samples: counted, never timed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Effort(u32);

impl Effort {
    /// Enough to follow somebody typing.
    pub const QUICK: Self = Self(500);
    /// The most of each of many climbs side by side.
    pub const SIDE_BY_SIDE: Self = Self(4_000);
    /// What links, tests and printed sheets use, and the most that is ever used.
    pub const FULL: Self = Self(20_000);

    /// This many samples, brought between the least that shows a spread and [`FULL`](Self::FULL).
    #[must_use]
    pub fn samples(samples: u32) -> Self {
        Self(samples.clamp(50, Self::FULL.0))
    }

    /// How many samples.
    #[must_use]
    pub const fn count(self) -> u32 {
        self.0
    }
}
