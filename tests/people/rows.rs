//! The surveys' rows.

use boughline::climber::Sex;

pub(crate) const GRIP: &str = include_str!("../data/people/nhanes_grip_micro_18plus.csv");

/// The cells of a table under a head that is as expected.
pub(crate) fn rows(text: &'static str, head: &str, between: char) -> Vec<Vec<&'static str>> {
    let mut lines = text.lines();
    assert_eq!(lines.next(), Some(head));
    lines.map(|line| line.split(between).collect()).collect()
}

pub(crate) fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("“{text}” is no number"))
}

pub(crate) fn sex(letter: &str) -> Sex {
    match letter {
        "F" => Sex::Female,
        "M" => Sex::Male,
        other => panic!("“{other}” is no sex of the survey"),
    }
}

/// Somebody in NHANES 2011-2014.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Surveyed {
    /// The first year of the two that they were met in.
    pub(crate) year: u16,
    pub(crate) sex: Sex,
    /// In years; 80 stands for all from 80 on.
    pub(crate) age: f64,
    /// In centimetres and kilograms; not everybody was measured.
    pub(crate) body: Option<(f64, f64)>,
    /// Best of the right hand and best of the left, in kilograms.
    pub(crate) grip: f64,
    /// How many people they stand for.
    pub(crate) weight: f64,
}

impl Surveyed {
    /// In whole tenths, so that sums are exact.
    pub(crate) fn tenths(&self) -> (u64, u64) {
        ((self.grip * 10.0).round() as u64, (self.weight * 10.0).round() as u64)
    }
}

/// Everybody in the survey for whom something holds.
pub(crate) fn surveyed(who: impl Fn(&Surveyed) -> bool) -> Vec<Surveyed> {
    let mut people = Vec::new();
    for cells in rows(GRIP, "year,sex,age,height_cm,weight_kg,grip_combo_kg,weight4yr", ',') {
        let &[year, letter, age, height, mass, grip, weight] = cells.as_slice() else {
            panic!("seven columns: {cells:?}")
        };
        let person = Surveyed {
            year: year.parse().expect(year),
            sex: sex(letter),
            age: number(age),
            body: (!height.is_empty() && !mass.is_empty()).then(|| (number(height), number(mass))),
            grip: number(grip),
            weight: number(weight),
        };
        if who(&person) {
            people.push(person);
        }
    }
    people
}

#[test]
fn the_survey_is_whole() {
    let people = surveyed(|_| true);
    assert_eq!(people.len(), 10_386);
    let weakest = people.iter().map(|person| person.grip).fold(f64::INFINITY, f64::min);
    assert_eq!((weakest * 10.0).round().to_bits(), 148.0_f64.to_bits());
    assert!(people.iter().all(|person| (18.0..=80.0).contains(&person.age) && person.weight > 0.0));
}
