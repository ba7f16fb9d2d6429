//! Friction of a rope round something round.

use crate::field::Spread;
use crate::float;
use crate::quantity::Angle;

/// The friction of rope on bark.
///
/// # Source
/// From memory: 0.2 to 0.3 smooth, 0.4 to 0.6 rough. Likely as on sawn timber, 0.36 (Delaney 2022, p. 88). Tension past half
/// a turn of bark is e^(-0.20 π) to e^(-0.60 π) of what it was.
pub const BARK_FRICTION: Spread = Spread::new(0.20, 0.36, 0.60);

/// The taut tension over the slack one, of a rope that lies round an angle and slips.
///
/// ```text
///   dT / d(angle) = friction x T        taut / slack = e^(friction x angle)
/// ```
///
/// # Guarantees
/// At least one.
///
/// # Source
/// Geometry (the capstan equation). One figure for friction is an average: the same rope and host give quite other ones
/// for raising than for lowering.
///
/// # Example
/// ```
/// use boughline::quantity::Angle;
/// use boughline::tree::ratio;
///
/// assert_eq!((ratio(0.175, Angle::degrees(180.0)) * 100.0).round(), 173.0);
/// ```
#[must_use]
pub fn ratio(friction: f64, angle: Angle) -> f64 {
    float::exp(friction * angle.in_radians())
}

/// The friction that a load, raised and lowered over the same host, tells of.
///
/// ```text
///   ln(raise / lower) / (2 x angle)
/// ```
///
/// # Source
/// Geometry; R. Delaney, Physics for Roping Technicians (2022), p. 88.
#[must_use]
pub fn friction(raise: f64, lower: f64, angle: Angle) -> f64 {
    float::ln(raise / lower) / (2.0 * angle.in_radians())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Delaney 2022 p. 88, a load of 75 kg, kgf: raise, lower, degrees, friction as printed.
    #[test]
    fn published_pairs_give_the_printed_friction() {
        for (raise, lower, degrees, printed) in [
            (98.0, 50.0, 90.0, 0.21),
            (88.0, 35.0, 180.0, 0.15),
            (125.0, 37.0, 180.0, 0.19),
            (140.0, 31.0, 180.0, 0.24),
            (179.0, 17.0, 180.0, 0.37),
            (140.0, 15.0, 180.0, 0.36),
            (135.0, 34.0, 90.0, 0.44),
        ] {
            let found = friction(raise, lower, Angle::degrees(degrees));
            assert!((found - printed).abs() <= 0.005 + 1e-9, "{raise} {lower}: {found}");
        }
    }

    /// Delaney 2022 p. 88, at 0.175: a quarter, a half and a whole turn.
    #[test]
    fn published_turns_give_the_printed_ratios() {
        for (degrees, printed) in [(90.0, 1.32), (180.0, 1.73), (360.0, 3.00)] {
            assert!((ratio(0.175, Angle::degrees(degrees)) - printed).abs() <= 0.005, "{degrees}");
        }
    }

    /// Steps of the differential equation (Runge and Kutta's fourth order) come to the same.
    #[test]
    fn integrating_the_equation_comes_to_the_exponential() {
        for (mu, degrees) in [(0.05, 30.0), (0.175, 360.0), (0.36, 180.0), (0.6, 540.0)] {
            let angle = Angle::degrees(degrees);
            let (steps, mut tension) = (1000, 1.0);
            let step = angle.in_radians() / f64::from(steps);
            for _ in 0..steps {
                let slope = |tension: f64| mu * tension;
                let one = slope(tension);
                let two = slope(tension + step / 2.0 * one);
                let three = slope(tension + step / 2.0 * two);
                let four = slope(tension + step * three);
                tension += step / 6.0 * (one + 2.0 * two + 2.0 * three + four);
            }
            assert!((ratio(mu, angle) / tension - 1.0).abs() < 1e-9, "{mu} {degrees}");
        }
    }
}
