//! What can be asked of somebody all day.

use crate::float;

/// The share of the greatest effort that can be asked all day, for efforts that take `duty` of a shift of so many seconds.
///
/// ```text
///   1 - (duty - 1 / shift)^0.24        1 where all efforts together take less than a second
/// ```
///
/// # Guarantees
/// Between nought and one, and never more for more duty. The easy line: a climb is minutes, once. Good to 7 % of the
/// greatest effort.
///
/// # Source
/// Potvin 2012, Hum Factors 54:175; the form with the shift is that of its author's published workbook.
///
/// # Example
/// ```
/// use boughline::climber::all_day_share;
///
/// assert_eq!((all_day_share(0.25, 28_800.0) * 1e4).round(), 2830.0);
/// ```
#[must_use]
pub fn all_day_share(duty: f64, shift: f64) -> f64 {
    let over = duty - 1.0 / shift;
    if over <= 0.0 { 1.0 } else { 1.0 - float::exp(0.24 * float::ln(over)) }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Potvin 2012, and golden values of the author's workbook at a shift of 25,200 s (read).
    #[test]
    fn published_rows() {
        for (duty, shift, wanted, digits) in [
            (0.05, 28_800.0, 0.5128, 1e-4),
            (0.25, 28_800.0, 0.2830, 1e-4),
            (0.5, 28_800.0, 0.1533, 1e-4),
            (420.0 / 25_200.0, 25_200.0, 0.625_893_52, 1e-8),
            (100.0 / 25_200.0, 25_200.0, 0.735_383_87, 1e-8),
        ] {
            let found = all_day_share(duty, shift);
            assert!((found - wanted).abs() < 0.51 * digits, "{duty} of {shift}: {found}");
        }
        assert_eq!(all_day_share(1.0 / 28_800.0, 28_800.0).to_bits(), 1.0_f64.to_bits());
    }

    #[test]
    fn more_duty_never_leaves_more() {
        for step in 0..100 {
            let at = |step: i32| all_day_share(f64::from(step) / 100.0, 28_800.0);
            assert!(at(step) >= at(step + 1) && (0.0..=1.0).contains(&at(step)));
        }
    }
}
