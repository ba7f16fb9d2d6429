//! What gets hot on the way down.

use super::{Slab, skin_rise};
use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::gear::Fibre;
use crate::quantity::{Dimension, Duration, FOOT, FOOT_A_MINUTE, Length, METRE, METRE_A_MINUTE, Ratio, SECOND, Speed};

/// How fast they come down.
pub static SPEED: Field<Speed> = Field::new(Row {
    id: "descentSpeed",
    noun: "speed going down",
    hint: "How fast you mean to come down while you move; 30 m a minute is two seconds a metre. Left open, as fast as the hitch’s cord likely bears, and 30 m a minute at the most.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Speed,
        least: 0.02,
        most: 2.0,
        example: 0.2,
        likely: None,
        bare: Some([METRE_A_MINUTE, FOOT_A_MINUTE]),
    }),
    why: "At most 0.5 m/s on a hitch is judged; 2 m/s is the limit of EN 341 for devices.",
    private: false,
});

/// How far between stops.
pub static REST_EVERY: Field<Length> = Field::new(Row {
    id: "descentStops",
    noun: "way between stops",
    hint: "How far you come down before you stop and feel the hitch. Left open, all in one go.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.3,
        most: 60.0,
        example: 2.0,
        likely: None,
        bare: Some([METRE, FOOT]),
    }),
    why: "From a hand's breadth of rope to no stop at all.",
    private: false,
});

/// How long each stop is.
pub static REST_FOR: Field<Duration> = Field::new(Row {
    id: "descentRest",
    noun: "each stop",
    hint: "How long you stop.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Duration,
        least: 0.0,
        most: 600.0,
        example: 10.0,
        likely: Some(Spread::point(10.0)),
        bare: Some([SECOND, SECOND]),
    }),
    why: "10 s is judged: long enough to feel a hitch with the back of the hand.",
    private: false,
});

/// The share of the heat that stays in the hitch's cord, where friction is added below it.
pub static HEAT_SHARE: Field<Ratio> = Field::new(share(Spread::new(0.05, 0.10, 0.30)));

/// The same field where the hitch alone brakes.
pub static HEAT_SHARE_ALONE: Field<Ratio> = Field::new(share(Spread::new(0.10, 0.30, 0.50)));

const fn share(likely: Spread) -> Row {
    Row {
        id: "heatShare",
        noun: "heat that stays in the hitch’s cord",
        hint: "The rest goes off with the rope, into the added friction and into the air.",
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Ratio,
            least: 0.0,
            most: 1.0,
            example: likely.likely,
            likely: Some(likely),
            bare: None,
        }),
        why: "Judged, nobody published it: 0.10, from 0.05 to 0.30, where friction is added below; 0.30, from 0.10 to 0.50, of a hitch alone.",
        private: false,
    }
}

/// As many runs as the sum is made of at the most.
const MOST_PIECES: f64 = 40.0;

/// How warm the air and the cord are to begin with, in degrees Celsius (judged).
pub const AIR: Spread = Spread::new(0.0, 20.0, 40.0);

/// Somebody on the way down, in SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heat {
    /// What hangs on the rope, in newtons.
    pub weight: f64,
    /// How far down, in metres.
    pub height: f64,
    /// How fast while they move, in metres a second.
    pub speed: f64,
    /// How far between stops, in metres; none: in one go.
    pub stops: Option<f64>,
    /// How long each stop is, in seconds.
    pub rest: f64,
}

impl Heat {
    /// How long it takes with the stops on the way, in seconds.
    #[must_use]
    pub fn time(&self) -> f64 {
        self.height / self.speed + (self.pieces() - 1.0) * self.rest
    }

    /// In how many pieces they come down.
    fn pieces(&self) -> f64 {
        // A last piece of next to nothing came of dividing.
        self.stops.map_or(1.0, |way| (self.height / way - 1e-9).ceil().max(1.0))
    }

    /// What the way down turns into heat, in joules.
    #[must_use]
    pub fn energy(&self) -> f64 {
        self.weight * self.height
    }

    /// How much of it a second while they move, in watts.
    #[must_use]
    pub fn power(&self) -> f64 {
        self.weight * self.speed
    }

    /// How much the rope warms if all of it spread through the rope that passes, in kelvin: the same for every height and
    /// speed.
    #[must_use]
    pub fn rope_rise(&self, mass_a_metre: f64, specific_heat: f64) -> f64 {
        self.weight / (mass_a_metre * specific_heat)
    }

    /// How much the hitch's cord warms if a share of the heat spread evenly through it, in kelvin.
    #[must_use]
    pub fn cord_rise(&self, share: f64, diameter: f64, length: f64, fibre: Fibre) -> f64 {
        let warmth = fibre.warmth();
        share * self.energy() / (warmth.mass_a_metre(diameter) * length * warmth.specific_heat)
    }

    /// How much the side of the hitch's cord that lies on the rope warms at the most, in kelvin.
    ///
    /// # Guarantees
    /// At least [`cord_rise`](Self::cord_rise) in one go. The cord counts as a strip as wide as it is thick, of its round's area (judged:
    /// a pressed cord lies flat), and nothing leaves it, which errs on the hot side.
    #[must_use]
    pub fn face_rise(&self, share: f64, diameter: f64, length: f64, fibre: Fibre) -> f64 {
        let warmth = fibre.warmth();
        let slab = Slab {
            thickness: std::f64::consts::FRAC_PI_4 * diameter,
            conductivity: warmth.conductivity,
            by_volume: warmth.by_volume(),
        };
        let flux = share * self.power() / (length * diameter);
        let (mut runs, mut hottest) = (Vec::new(), 0.0);
        // More pieces than this are taken for so many longer ones, which errs on the hot side.
        let pieces = self.pieces();
        let longer = (pieces / MOST_PIECES).max(1.0);
        let piece = self.stops.unwrap_or(self.height) * longer;
        let (mut done, mut time) = (0.0, 0.0);
        for _ in 0..pieces.min(MOST_PIECES) as u32 {
            let way = piece.min(self.height - done);
            let end = time + way / self.speed;
            runs.push((time, end));
            let rise = skin_rise(&slab, flux, &runs, end);
            hottest = if rise > hottest { rise } else { hottest };
            time = end + self.rest * longer;
            done += way;
        }
        hottest
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::STANDARD_GRAVITY;

    fn going(height: f64, speed: f64) -> Heat {
        Heat { weight: 80.0 * STANDARD_GRAVITY, height, speed, stops: None, rest: 10.0 }
    }

    /// 80 kg at 2 m/s make 1.57 kW, and 20 m of them 15.7 kJ.
    #[test]
    fn energy_and_power_are_as_published() {
        assert_eq!(format!("{:.2}", going(20.0, 2.0).power() / 1e3), "1.57");
        assert_eq!(format!("{:.1}", going(20.0, 2.0).energy() / 1e3), "15.7");
    }

    /// Nylon 6.6, 1,460 J/(kg K) (Morton and Hearle, table 6.1), 75 g/m: 7.2 K, whatever the height.
    #[test]
    fn heat_that_spreads_through_the_rope_warms_it_little() {
        for height in [1.0, 20.0] {
            assert_eq!(format!("{:.1}", going(height, 0.5).rope_rise(0.075, 1460.0)), "7.2");
        }
    }

    /// By hand: 30 % of 15.7 kJ over 0.0458 kg/m x 0.8 packed x 0.8 m x 1,430 J/(kg K) is about 90 K.
    #[test]
    fn heat_that_stays_in_the_cord_warms_it_about_ninety_kelvin() {
        let rise = going(20.0, 0.5).cord_rise(0.30, 0.008, 0.8, Fibre::Nylon);
        assert!((rise - 90.0).abs() < 2.0, "{rise}");
    }

    /// By hand: 2.1 m by 0.7 m are three pieces and two stops; 6.9 m by 0.3 m are 23 and 22.
    #[test]
    fn stops_are_counted_between_pieces() {
        for (height, way, time) in [(2.1, 0.7, 2.1 / 0.5 + 20.0), (6.9, 0.3, 6.9 / 0.5 + 220.0), (1.0, 2.0, 2.0)] {
            let found = Heat { stops: Some(way), ..going(height, 0.5) }.time();
            assert!((found - time).abs() < 1e-9, "{height} {way}: {found}");
        }
    }

    #[test]
    fn many_short_pieces_are_never_reckoned_cooler_than_they_are() {
        let face = |way: f64| Heat { stops: Some(way), ..going(80.0, 0.5) }.face_rise(0.1, 0.008, 0.8, Fibre::Nylon);
        assert!(face(0.4) >= face(2.0) * 0.8 && face(0.4) <= face(4.0));
    }

    #[test]
    fn faster_is_hotter_stops_are_cooler_and_the_face_is_hottest() {
        let face = |heat: Heat| heat.face_rise(0.30, 0.008, 0.8, Fibre::Nylon);
        let one = going(20.0, 0.5);
        assert!(face(one) > one.cord_rise(0.30, 0.008, 0.8, Fibre::Nylon));
        assert!(face(going(20.0, 1.0)) > face(one) && face(going(10.0, 0.5)) < face(one));
        let with_stops = face(Heat { stops: Some(2.0), ..one });
        assert!(with_stops < face(one), "{with_stops}");
        assert!(face(Heat { stops: Some(2.0), rest: 60.0, ..one }) < with_stops);
        assert!(face(Heat { weight: one.weight * 1.1, ..one }) > face(one));
    }
}
