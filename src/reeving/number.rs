//! What both kinds of arithmetic offer the elimination: exact fractions for motion, floats for forces.

use core::fmt::Debug;
use core::ops::{Add, Div, Mul, Neg, Sub};
use num_rational::Ratio;

/// An exact fraction.
///
/// # Guarantees
/// With at most [`MOST_MOVING`](super::MOST_MOVING) moving bodies and [`MOST_STRANDS`](super::MOST_STRANDS) strands
/// every entry met in an elimination is a ratio of minors whose size Hadamard's bound keeps below 2 million, so that
/// no product of three of them leaves an `i64`.
pub type Fraction = Ratio<i64>;

/// A number the elimination can work in.
pub trait Number:
    Copy
    + Debug
    + PartialOrd
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + Neg<Output = Self>
{
    /// Nought.
    const ZERO: Self;
    /// One.
    const ONE: Self;

    /// Whether this counts as nought: exactly for fractions, within rounding for floats.
    fn is_nought(self) -> bool;

    /// The size without the sign.
    fn size(self) -> Self {
        if self < Self::ZERO { -self } else { self }
    }
}

impl Number for Fraction {
    const ZERO: Self = Ratio::new_raw(0, 1);
    const ONE: Self = Ratio::new_raw(1, 1);

    fn is_nought(self) -> bool {
        *self.numer() == 0
    }
}

impl Number for f64 {
    const ZERO: Self = 0.0;
    const ONE: Self = 1.0;

    /// Tensions are per unit of pull or load, so an absolute line serves (judged: rounding in systems of this size
    /// stays below 1e-13).
    fn is_nought(self) -> bool {
        self.abs() < 1e-10
    }
}
