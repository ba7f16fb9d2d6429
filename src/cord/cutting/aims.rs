//! The three aims as one number, the less the better: cost, then hanks, then what the largest remainder lacks.

/// Cost, hanks and the largest remainder of some hanks, in one number: 32, 8 and 24 bits.
///
/// # Guarantees
/// Adding the same hank to two of them never turns their order round: costs and hanks add up, and the larger of two
/// remainders stays the larger or becomes the same. So the best plan of some cords can be made of best plans of fewer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Aims(u64);

const LACK: u64 = (1 << 24) - 1;

impl Aims {
    /// Of no hank.
    pub(super) const NONE: Self = Self(LACK);
    /// Worse than any.
    pub(super) const WORST: Self = Self(u64::MAX);

    /// Of one hank.
    pub(super) const fn of_hank(cost: u32, left: u32) -> Self {
        let lack = LACK.saturating_sub(left as u64);
        Self((cost as u64) << 32 | 1 << 24 | lack)
    }

    /// Of both together.
    pub(super) const fn and(self, other: Self) -> Self {
        let (lack, others) = (self.0 & LACK, other.0 & LACK);
        let bought = (self.0 - lack) + (other.0 - others);
        Self(bought | if lack < others { lack } else { others })
    }

    /// Cost and hanks alone: `cost << 8 | hanks`.
    pub(super) const fn buy(self) -> u64 {
        self.0 >> 24
    }
}
