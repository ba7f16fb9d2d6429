//! What both kinds of arithmetic offer the elimination: exact fractions for motion, floats for forces.

use num_rational::Ratio;

/// An exact fraction.
///
/// # Guarantees
/// Nobody outside can reckon with it, so that nothing overflows: with at most
/// [`MOST_MOVING`](super::MOST_MOVING) moving bodies and [`MOST_STRANDS`](super::MOST_STRANDS) strands every entry met
/// in an elimination is a ratio of minors whose size Hadamard's bound keeps below 2 million, so that no product of
/// three of them leaves an `i64`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Fraction(Ratio<i64>);

impl Fraction {
    /// Nought.
    pub const ZERO: Self = Self(Ratio::new_raw(0, 1));
    /// One.
    pub const ONE: Self = Self(Ratio::new_raw(1, 1));

    /// `above / below`; none where `below` is nought, or where either is the one whole number without a negative.
    #[must_use]
    pub fn new(above: i64, below: i64) -> Option<Self> {
        (below != 0 && above != i64::MIN && below != i64::MIN).then(|| Self::reduced(above, below))
    }

    /// `above / below` in lowest terms; `below` is not nought.
    #[inline(never)]
    fn reduced(above: i64, below: i64) -> Self {
        let common = common(above, below) * below.signum();
        Self(Ratio::new_raw(share(above, common), share(below, common)))
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

/// A number the elimination can work in.
pub(super) trait Number: Copy {
    /// Nought.
    const ZERO: Self;

    fn plus(self, other: Self) -> Self;
    fn minus(self, other: Self) -> Self;
    fn times(self, other: Self) -> Self;
    /// The quotient; `other` is not nought.
    fn over(self, other: Self) -> Self;

    /// Whether this counts as nought: exactly for fractions, within rounding for floats.
    fn is_nought(self) -> bool;

    fn is_less(self, other: Self) -> bool;

    /// The size without the sign.
    fn size(self) -> Self {
        if self.is_less(Self::ZERO) { Self::ZERO.minus(self) } else { self }
    }
}

/// A whole number divided by one that is not nought and divides it.
fn share(whole: i64, by: i64) -> i64 {
    whole.checked_div(by).unwrap_or_default()
}

/// The greatest number, more than nought, that divides both.
#[inline(never)]
fn common(mut one: i64, mut other: i64) -> i64 {
    while other != 0 {
        (one, other) = (other, one.wrapping_rem(other));
    }
    one.abs()
}

/// One function reduces for all four: with a divisor search in each, they are a tenth of the shipped module.
impl Number for Fraction {
    const ZERO: Self = Self::ZERO;

    #[inline(never)]
    fn plus(self, other: Self) -> Self {
        let (below, other_below) = (*self.0.denom(), *other.0.denom());
        let common = common(below, other_below);
        let (own, others) = (share(below, common), share(other_below, common));
        Self::reduced(self.0.numer() * others + other.0.numer() * own, own * other_below)
    }

    fn minus(self, other: Self) -> Self {
        self.plus(Self(Ratio::new_raw(-other.0.numer(), *other.0.denom())))
    }

    fn times(self, other: Self) -> Self {
        Self::reduced(self.0.numer() * other.0.numer(), self.0.denom() * other.0.denom())
    }

    fn over(self, other: Self) -> Self {
        Self::reduced(self.0.numer() * other.0.denom(), self.0.denom() * other.0.numer())
    }

    fn is_nought(self) -> bool {
        *self.0.numer() == 0
    }

    /// By the difference, which is here already: comparing without overflow is a page of code.
    fn is_less(self, other: Self) -> bool {
        *self.minus(other).0.numer() < 0
    }
}

impl Number for f64 {
    const ZERO: Self = 0.0;

    fn plus(self, other: Self) -> Self {
        self + other
    }

    fn minus(self, other: Self) -> Self {
        self - other
    }

    fn times(self, other: Self) -> Self {
        self * other
    }

    fn over(self, other: Self) -> Self {
        self / other
    }

    /// Forces are worked out with a drive of one, so an absolute line serves (judged: rounding in systems of this size
    /// stays below 1e-13).
    fn is_nought(self) -> bool {
        self.abs() < 1e-10
    }

    fn is_less(self, other: Self) -> bool {
        self < other
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_fraction_is_none() {
        for (above, below) in [(1, 0), (i64::MIN, -1), (1, i64::MIN)] {
            assert_eq!(Fraction::new(above, below), None);
        }
        assert_eq!(Fraction::new(6, -4).map(Fraction::in_f64), Some(-1.5));
    }

    /// Against the arithmetic of the type inside.
    #[test]
    fn sums_and_products_are_exact_and_in_lowest_terms() {
        let all = (-6..=6).flat_map(|above| (1..=6).map(move |below| (above, below)));
        for (one, other) in all.clone().flat_map(|one| all.clone().map(move |other| (one, other))) {
            let (a, b) = (Fraction::new(one.0, one.1).unwrap(), Fraction::new(other.0, other.1).unwrap());
            let (x, y) = (Ratio::new(one.0, one.1), Ratio::new(other.0, other.1));
            assert_eq!((a.plus(b).0, a.minus(b).0, a.times(b).0), (x + y, x - y, x * y));
            assert_eq!((a.is_less(b), a.is_nought()), (x < y, x == Ratio::ZERO));
            if y != Ratio::ZERO {
                assert_eq!(a.over(b).0, x / y);
                assert!(*a.over(b).0.denom() > 0);
            }
        }
    }
}
