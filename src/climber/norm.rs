//! The grip of somebody of whom only sex and age are known, and perhaps stature.

use super::survey::{AGE_BANDS, DEVIATIONS, FEMALE_LINE, HEAVIEST, LEAST_GRIP, MALE_LINE, OLDEST, TWENTIETH};
use crate::field::{Field, Kind, Limits, Row, choice};
use crate::quantity::{Count, Dimension, Length, Mass};

choice! {
    /// A sex, as the survey knows it.
    Sex {
        /// Female.
        Female = "female", "female", "";
        /// Male.
        Male = "male", "male", "";
    }
}

/// Somebody whose grip is known only by who they are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Norm {
    /// Their sex.
    pub sex: Sex,
    /// Their age, in years; whoever is younger counts as 18.
    pub age: Count,
    /// Their stature, if it is known: it narrows the norm from 20 years on.
    pub stature: Option<Length>,
    /// Their body mass; it counts only beside a stature.
    pub body_mass: Mass,
}

impl Norm {
    /// The grip of both hands together of somebody so many standard deviations off the middle.
    ///
    /// # Units
    /// Newtons.
    ///
    /// # Guarantees
    /// More deviations never give less, and it is above nought.
    ///
    /// # Example
    /// ```
    /// use boughline::climber::{Norm, Sex};
    /// use boughline::quantity::{Count, Length, Mass};
    ///
    /// let man = Norm { sex: Sex::Male, age: Count::new(65.0), stature: None, body_mass: Mass::kilograms(95.0) };
    /// assert_eq!((man.combined_grip(0.0) / 9.80665).round(), 84.0);
    /// let tall = Norm { stature: Some(Length::centimetres(175.0)), ..man };
    /// assert_eq!((tall.combined_grip(0.0) / 9.80665 * 100.0).round(), 8245.0);
    /// ```
    #[must_use]
    pub fn combined_grip(&self, deviations: f64) -> f64 {
        let kilograms = match self.stature {
            Some(stature) if self.age.number() >= 20.0 => self.by_line(stature, deviations),
            _ => self.by_table(deviations),
        };
        Mass::kilograms(kilograms.max(LEAST_GRIP)).weight().in_newtons()
    }

    /// The grip of both hands together to plan on: four people in five of their kind have more.
    ///
    /// # Units
    /// Newtons.
    #[must_use]
    pub fn planning_grip(&self) -> f64 {
        self.combined_grip(TWENTIETH)
    }

    fn by_line(&self, stature: Length, deviations: f64) -> f64 {
        let line = match self.sex {
            Sex::Female => FEMALE_LINE,
            Sex::Male => MALE_LINE,
        };
        let years = self.age.number().min(OLDEST) - 50.0;
        line.at_fifty
            + line.year * years
            + line.year_squared * years * years
            + line.centimetre * (stature.in_centimetres() - 170.0)
            + line.kilogram * (self.body_mass.in_kilograms().min(HEAVIEST) - 80.0)
            + line.deviation * deviations
    }

    /// Straight between the percentiles, and on beyond the outer ones.
    fn by_table(&self, deviations: f64) -> f64 {
        let mut percentiles = [0; 5];
        for band in AGE_BANDS {
            if percentiles == [0; 5] || f64::from(band.from) <= self.age.number() {
                percentiles = match self.sex {
                    Sex::Female => band.female,
                    Sex::Male => band.male,
                };
            }
        }
        let mut kilograms = 0.0;
        let mut before: Option<(f64, f64)> = None;
        for (at, tenths) in DEVIATIONS.into_iter().zip(percentiles) {
            let here = f64::from(tenths) / 10.0;
            if let Some((left, low)) = before {
                kilograms = low + (here - low) * ((deviations - left) / (at - left));
                if deviations <= at {
                    break;
                }
            }
            before = Some((at, here));
        }
        kilograms
    }
}

/// The climber's sex.
pub static SEX: Field<Sex> = Field::new(Row {
    id: "sex",
    noun: "sex",
    hint: "Only to guess a grip, from a survey that knows these two. Choose the nearer, or enter a grip instead.",
    kind: Kind::Choice { options: Sex::OPTIONS, likely: None },
    why: "The survey of grip has no others.",
    private: true,
});

/// The climber's age.
pub static AGE: Field<Count> = Field::new(Row {
    id: "age",
    noun: "age",
    hint: "In years, only to guess a grip. The survey counts all over 80 alike: at 90, measure.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Count,
        least: 18.0,
        most: 100.0,
        example: 45.0,
        likely: None,
        bare: None,
    }),
    why: "18 is where the survey of adults begins; beyond 100 is judged.",
    private: true,
});
