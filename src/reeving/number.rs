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
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fraction(Ratio<i64>);

impl Fraction {
    /// Nought.
    pub const ZERO: Self = Self(Ratio::new_raw(0, 1));
    /// One.
    pub const ONE: Self = Self(Ratio::new_raw(1, 1));

    /// `above / below`; none where `below` is nought.
    #[must_use]
    pub fn new(above: i64, below: i64) -> Option<Self> {
        (below != 0).then(|| Self(Ratio::new(above, below)))
    }

    /// The nearest `f64`.
    #[must_use]
    pub fn in_f64(self) -> f64 {
        *self.0.numer() as f64 / *self.0.denom() as f64
    }
}

impl From<i64> for Fraction {
    fn from(whole: i64) -> Self {
        Self(Ratio::from_integer(whole))
    }
}

/// Each operation is one function: inlined, their greatest common divisors are a tenth of the shipped module.
macro_rules! operation {
    ($trait:ident, $name:ident) => {
        impl $trait for Fraction {
            type Output = Self;

            #[inline(never)]
            fn $name(self, other: Self) -> Self {
                Self(self.0.$name(other.0))
            }
        }
    };
}
operation!(Add, add);
operation!(Sub, sub);
operation!(Mul, mul);
operation!(Div, div);

impl Neg for Fraction {
    type Output = Self;

    fn neg(self) -> Self {
        Self(-self.0)
    }
}

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
    const ZERO: Self = Self::ZERO;
    const ONE: Self = Self::ONE;

    fn is_nought(self) -> bool {
        self == Self::ZERO
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
