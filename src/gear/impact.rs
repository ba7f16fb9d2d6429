//! What a rope pulls when it stops a fall.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{Dimension, FOOT, Force, KILONEWTON, Length, METRE};

/// The most that a full-body harness may pull on somebody who falls.
///
/// # Source
/// OSHA: 8 kN.
pub const FULL_BODY_LIMIT: Force = Force::newtons(KILONEWTON.si(8.0));

/// The same for a seat harness: well below; 4 kN.
///
/// # Source
/// Reviewed in 10.1007/s40870-015-0015-5.
pub const SEAT_HARNESS_LIMIT: Force = Force::newtons(KILONEWTON.si(4.0));

/// How far somebody drops before the rope is taut.
pub static SLACK: Field<Length> = Field::new(Row {
    id: "slack",
    noun: "slack you might fall into",
    hint: "How far you would drop before the rope is taut: slack that a hitch nobody tended lets grow, or a step down.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.0,
        most: 10.0,
        example: 0.5,
        likely: Some(Spread::new(0.2, 0.5, 1.0)),
        bare: Some([METRE, FOOT]),
    }),
    why: "Half a metre, from 0.2 to 1, is judged: a stroke or two that the hitch did not follow. Past 10 m nothing here holds true.",
    private: false,
});

/// How far somebody falls over how much rope is out; endless where none is.
///
/// # Source
/// By definition.
#[must_use]
pub fn fall_factor(fall: Length, rope_out: Length) -> f64 {
    let (fall, out) = (fall.in_metres(), rope_out.in_metres());
    // What is not known stays so.
    if fall <= 0.0 { 0.0 } else { fall / out }
}

/// What the rope pulls at most when it stops a fall.
///
/// ```text
///   W (1 + sqrt(1 + 2 f M / W))      f the fall factor, M the force at a strain of one
/// ```
///
/// # Guarantees
/// Twice the weight for a fall of nothing: a load let go on a rope that is just taut.
///
/// # Source
/// Geometry and a rope that gives evenly (Wexler; Attaway, Rope System Analysis). Stems that give, hitches that slip and
/// bodies that bend are left out: all lessen it, none can be counted on.
///
/// # Example
/// ```
/// use boughline::gear::arrest_force;
/// use boughline::quantity::Force;
///
/// assert_eq!(arrest_force(Force::newtons(900.0), 0.0, 80e3), Force::newtons(1800.0));
/// ```
#[must_use]
pub fn arrest_force(weight: Force, factor: f64, modulus: f64) -> Force {
    let weight = weight.in_newtons();
    // Multiplied out, so that no weight is no force.
    Force::newtons(weight + (weight * weight + 2.0 * factor * modulus * weight).sqrt())
}

/// How far rope gives under somebody who hangs still.
#[must_use]
pub fn stretch(weight: Force, rope_out: Length, modulus: f64) -> Length {
    rope_out * (weight.in_newtons() / modulus)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The energy of the fall, stretch and all, is in the rope when it stops: W (fall + x) = M x^2 / (2 L).
    #[test]
    fn the_fall_ends_in_the_rope() {
        for (weight, fall, out, modulus) in
            [(600.0, 0.0, 3.0, 80e3), (900.0, 0.5, 3.0, 80e3), (900.0, 1.0, 12.0, 25e3), (1400.0, 2.0, 2.0, 19.6e3)]
        {
            let factor = fall_factor(Length::metres(fall), Length::metres(out));
            let peak = arrest_force(Force::newtons(weight), factor, modulus).in_newtons();
            let given = out * peak / modulus;
            let (fallen, held) = (weight * (fall + given), modulus * given * given / (2.0 * out));
            assert!((fallen / held - 1.0).abs() < 1e-9, "{weight} {fall} {out}");
        }
    }

    /// Steps through the fall (velocity Verlet) come to the same peak.
    #[test]
    fn stepping_through_the_fall_comes_to_the_same_peak() {
        let (weight, fall, out, modulus, gravity) = (900.0, 0.6, 4.0, 80e3, 9.80665);
        let mass = weight / gravity;
        let pull = |gone: f64| if gone > fall { modulus * (gone - fall) / out } else { 0.0 };
        let (mut gone, mut speed, mut peak, step) = (0.0, 0.0, 0.0_f64, 1e-5);
        while speed >= 0.0 {
            let before = gravity - pull(gone) / mass;
            gone += speed * step + 0.5 * before * step * step;
            speed += 0.5 * (before + gravity - pull(gone) / mass) * step;
            peak = peak.max(pull(gone));
        }
        let factor = fall_factor(Length::metres(fall), Length::metres(out));
        let told = arrest_force(Force::newtons(weight), factor, modulus).in_newtons();
        assert!((peak / told - 1.0).abs() < 1e-5, "{peak} {told}");
    }

    #[test]
    fn more_fall_more_weight_and_stiffer_rope_never_pull_less() {
        let force =
            |weight: f64, factor: f64, modulus: f64| arrest_force(Force::newtons(weight), factor, modulus).in_newtons();
        for step in 0..20 {
            let (low, high) = (f64::from(step) * 0.1, f64::from(step + 1) * 0.1);
            assert!(force(900.0, low, 80e3) < force(900.0, high, 80e3));
            assert!(force(400.0 + 50.0 * low, 0.3, 80e3) < force(400.0 + 50.0 * high, 0.3, 80e3));
            assert!(force(900.0, 0.3, 20e3 + 1e4 * low) < force(900.0, 0.3, 20e3 + 1e4 * high));
        }
    }

    #[test]
    fn no_rope_out_stops_nobody_softly() {
        let factor = fall_factor(Length::metres(0.5), Length::metres(0.0));
        assert!(arrest_force(Force::newtons(900.0), factor, 80e3).in_newtons().is_infinite());
        assert_eq!(fall_factor(Length::metres(0.0), Length::metres(0.0)).to_bits(), 0.0_f64.to_bits());
        assert!(fall_factor(Length::metres(f64::NAN), Length::metres(3.0)).is_nan());
        assert_eq!(arrest_force(Force::newtons(0.0), 0.3, 80e3), Force::newtons(0.0));
    }
}
