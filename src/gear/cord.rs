//! Accessory cord: what hitches and haul cords are made of.

use super::{CORD, Fibre, Knot};
use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{Dimension, Force, Length, MILLIMETRE};

/// The thinnest cord for a hitch that somebody's life hangs on.
///
/// # Source
/// At least 8 mm, 10 mm recommended, on a working rope of 10 to 14 mm: Health and Safety Executive, leaflet AFAG401.
/// Mountaineers' backup loops are 5 to 7 mm and at most half the rope: another rule for another use.
pub const LEAST_LIFE_CORD: Length = Length::metres(MILLIMETRE.si(8.0));

const fn diameter(id: &'static str, noun: &'static str, example: f64) -> Field<Length> {
    Field::new(Row {
        id,
        noun,
        hint: "Its diameter, from its label. From 4 to 8 mm a standard says what it bears at least.",
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Length,
            least: MILLIMETRE.si(2.0),
            most: MILLIMETRE.si(16.0),
            example: MILLIMETRE.si(example),
            likely: None,
            bare: Some([MILLIMETRE, MILLIMETRE]),
        }),
        why: "Thinner is string, thicker is no cord (judged).",
        private: false,
    })
}

/// The cord of the hitches.
pub static HITCH_CORD: Field<Length> = diameter("hitchCord", "cord of the hitches", 8.0);
/// The haul cord.
pub static HAUL_CORD: Field<Length> = diameter("haulCord", "haul cord", 7.0);
/// The cord of slings: foot loops, hand loops, bridges, lanyards.
pub static SLING_CORD: Field<Length> = diameter("slingCord", "cord of the sling", 6.0);

/// The least that accessory cord of a diameter bears in a straight pull; none outside the standard's 4 to 8 mm.
///
/// ```text
///   0.2 kN x (diameter in mm)^2
/// ```
///
/// # Source
/// EN 564.
///
/// # Example
/// ```
/// use boughline::gear::cord_minimum;
/// use boughline::quantity::{Force, Length};
///
/// assert_eq!(cord_minimum(Length::millimetres(6.0)), Some(Force::kilonewtons(7.2)));
/// assert_eq!(cord_minimum(Length::millimetres(10.0)), None);
/// ```
#[must_use]
pub fn cord_minimum(diameter: Length) -> Option<Force> {
    let millimetres = MILLIMETRE.count(diameter.in_metres());
    // A diameter said in another unit comes back from metres with a rounding.
    let rounded = (millimetres * 1e6).round() / 1e6;
    let covered = (4.0..=8.0).contains(&rounded);
    covered.then(|| CORD.force * (rounded * rounded))
}

/// What a loop, or a hitch's cord with both legs on one connector, bears in a straight pull: two legs, each of what its
/// knots leave of the cord.
///
/// # Source
/// Geometry, with equal legs; a hitch's coils share unequally and are not reckoned. 7 mm nylon loops with a double
/// fisherman's broke at the pin, not the knot, at 14.6 to 16.0 kN (Moyer, ITRS 2000), which twice 0.50 of the standard's
/// 9.8 kN stays under.
#[must_use]
pub fn loop_strength(cord: Force, ends: Knot, fibre: Fibre) -> Force {
    cord * (2.0 * ends.kept(fibre).likely)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// EN 564: 4 mm 3.2, 6 mm 7.2, 8 mm 12.8 kN.
    #[test]
    fn the_standards_rows_come_out() {
        for (millimetres, kilonewtons) in [(4.0, 3.2), (5.0, 5.0), (6.0, 7.2), (7.0, 9.8), (8.0, 12.8)] {
            let minimum = cord_minimum(Length::millimetres(millimetres)).unwrap().in_newtons();
            assert!((minimum - kilonewtons * 1e3).abs() < 1e-6, "{millimetres}");
        }
        for outside in [0.0, 3.9, 8.1, 11.0, f64::NAN] {
            assert_eq!(cord_minimum(Length::millimetres(outside)), None, "{outside}");
        }
    }

    /// Moyer 2000: 14.6 to 16.0 kN.
    #[test]
    fn a_seven_millimetre_loop_is_reckoned_under_what_loops_broke_at() {
        let cord = cord_minimum(Length::millimetres(7.0)).unwrap();
        assert!(loop_strength(cord, Knot::Any, Fibre::Nylon).in_newtons() <= 14_600.0);
    }
}
