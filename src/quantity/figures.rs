//! Decimal figures: for people, and for links.

use super::decimal::{self, pointed};
use super::pieces::{ending, is_nought, is_separator};
use super::{Decimal, View};

/// What stands where a figure would, when there is none.
pub(super) const NO_FIGURE: &str = "—";

/// The most decimals a figure is written with.
const MOST_DECIMALS: usize = 9;

/// The number with exactly `decimals` decimals (9 at most), halves rounded away from zero, in the view's decimal mark.
/// Never "-0"; the minus is the true one, because screen readers pass over a hyphen. A number that is not finite, or
/// has more digits than an `f64` tells apart, is "—".
///
/// # Example
///
/// ```
/// use boughline::quantity::{Decimal, View, plain};
///
/// let comma = View { decimal: Decimal::Comma, ..View::default() };
/// assert_eq!(plain(2.625, 2, View::default()), "2.63");
/// assert_eq!(plain(2.625, 2, comma), "2,63");
/// ```
#[must_use]
pub fn plain(number: f64, decimals: usize, view: View) -> String {
    let decimals = decimals.min(MOST_DECIMALS);
    let scaled = (number.abs() * scale(decimals)).round();
    // Also where it is no number: every comparison with one fails.
    let is_told_apart = scaled < EVERY_WHOLE;
    if !is_told_apart {
        return NO_FIGURE.to_owned();
    }
    let mark = if view.decimal == Decimal::Point { '.' } else { ',' };
    let mut text = pointed(scaled as u64, decimals, mark);
    if number < 0.0 && scaled > 0.0 {
        text.insert(0, '−');
    }
    text
}

/// Up to here every whole number is an `f64`: 2^53, by definition of its format.
const EVERY_WHOLE: f64 = 9_007_199_254_740_992.0;

fn scale(decimals: usize) -> f64 {
    (0..decimals).fold(1.0, |scale, _| scale * 10.0)
}

/// The share in whole per cent: "67 %".
///
/// # Example
///
/// ```
/// use boughline::quantity::{View, percent};
///
/// assert_eq!(percent(2.0 / 3.0, View::default()), "67 %");
/// ```
#[must_use]
pub fn percent(ratio: f64, view: View) -> String {
    let hundredths = plain(ratio * 100.0, 0, view);
    if hundredths == NO_FIGURE { hundredths } else { hundredths + " %" }
}

/// The number with `decimals` decimals at most: zeros at the end are dropped.
pub(super) fn at_most(number: f64, decimals: usize, view: View) -> String {
    let text = plain(number, decimals, view);
    if decimals == 0 {
        return text;
    }
    ending(ending(&text, is_nought).0, is_separator).0.to_owned()
}

/// The number without decimals from ten on, with one at most below.
pub(super) fn whole_from_ten(number: f64, view: View) -> String {
    let decimals = if number < 10.0 { 1 } else { 0 };
    at_most(number, decimals, view)
}

/// The number rounded to `decimals` decimals, halves away from zero; itself where it is too big to have any.
pub(super) fn rounded(number: f64, decimals: usize) -> f64 {
    let scale = scale(decimals);
    let scaled = number * scale;
    if scaled.abs() < EVERY_WHOLE { scaled.round() / scale } else { number }
}

/// The shortest decimal that reads back to the same bits, for a number that is not negative. Three decimals get a
/// fourth, a zero: `1.234` could be meant for 1234, so the reader refuses it. Empty where there is none.
pub(super) fn shortest(number: f64) -> String {
    let Some((digits, decimals)) = decimal::shortest(number) else { return String::new() };
    let mut text = pointed(digits, decimals, '.');
    if decimals == 3 && digits >= 1000 {
        text.push('0');
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn zero_has_no_sign() {
        assert_eq!(plain(-0.0, 1, View::default()), "0.0");
        assert_eq!(plain(-0.04, 1, View::default()), "0.0");
        assert_eq!(plain(-0.05, 1, View::default()), "−0.1");
        assert_eq!(percent(-0.001, View::default()), "0 %");
    }

    #[test]
    fn what_is_not_finite_has_no_figure() {
        for number in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(plain(number, 2, View::default()), NO_FIGURE);
            assert_eq!(percent(number, View::default()), NO_FIGURE);
            assert_eq!(at_most(number, 2, View::default()), NO_FIGURE);
        }
    }

    #[test]
    fn zeros_are_dropped_only_after_the_decimal_mark() {
        assert_eq!(at_most(100.0, 0, View::default()), "100");
        assert_eq!(at_most(100.0, 2, View::default()), "100");
        assert_eq!(at_most(100.5, 2, View::default()), "100.5");
    }

    #[test]
    fn any_number_of_decimals_is_answered() {
        assert_eq!(plain(1.5, usize::MAX, View::default()), "1.500000000");
        assert_eq!(plain(f64::MAX, 0, View::default()), NO_FIGURE);
        assert_eq!(plain(9_007_199_254_740_991.0, 0, View::default()), "9007199254740991");
    }

    #[test]
    fn three_decimals_get_a_fourth_unless_after_a_zero() {
        assert_eq!(shortest(1.234), "1.2340");
        assert_eq!(shortest(0.234), "0.234");
        assert_eq!(shortest(1.2345), "1.2345");
    }
}
