//! Grip as a line in age, stature and body mass.

use super::squares::least_squares;
use super::{Surveyed, mean, prints, surveyed};
use boughline::climber::{FEMALE_LINE, HEAVIEST, LEAST_GRIP, Line, MALE_LINE, Norm, OLDEST, Sex};
use boughline::quantity::{Count, Force, Length, Mass};

/// Those of a sex whom the line is fitted to: 20 and over, measured.
fn fitted(of: Sex) -> Vec<Surveyed> {
    surveyed(|person| person.sex == of && person.age >= 20.0 && person.body.is_some())
}

/// What a line multiplies, and the grip.
fn observed(person: &Surveyed) -> ([f64; 5], f64, f64) {
    let (height, mass) = person.body.expect("measured");
    let years = person.age - 50.0;
    ([1.0, years, years * years, height - 170.0, mass - 80.0], person.grip, person.weight)
}

#[test]
fn the_lines_are_the_least_squares_of_the_survey() {
    for (of, line, people) in [(Sex::Female, FEMALE_LINE, 4918), (Sex::Male, MALE_LINE, 4792)] {
        let observed: Vec<_> = fitted(of).iter().map(observed).collect();
        assert_eq!(observed.len(), people);
        let (found, left) = least_squares(&observed);
        let Line { at_fifty, year, year_squared, centimetre, kilogram, deviation } = line;
        assert!(prints(found[0], &format!("{at_fifty:.3}")), "{found:?}");
        for (found, shipped) in found[1..].iter().zip([year, year_squared, centimetre, kilogram]) {
            assert!(prints(*found, &format!("{shipped:.4}")), "{found} for {shipped}");
        }
        assert!(prints(left, &format!("{deviation:.2}")), "{left}");
    }
}

/// 85.919 - 0.4572 x 15 - 0.0116 x 225 + 0.7791 x 5 + 0.1402 x 15.
#[test]
fn a_man_of_65_of_175_cm_and_95_kg_grips_82_45_kg() {
    let norm = Norm {
        sex: Sex::Male,
        age: Count::new(65.0),
        stature: Some(Length::centimetres(175.0)),
        body_mass: Mass::kilograms(95.0),
    };
    let grip = |deviations: f64| Force::newtons(norm.combined_grip(deviations)).in_kilograms_force();
    assert!(prints(grip(0.0), "82.45"), "{}", grip(0.0));
    assert!((grip(1.0) - grip(0.0) - 14.16).abs() < 1e-9);
    assert!(prints(Force::newtons(norm.planning_grip()).in_kilograms_force(), "70.53"), "82.45 - 0.8416 x 14.16");
}

/// What the heaviest squeeze less than their line, and that the line would go on rising for them.
#[test]
fn past_the_heaviest_the_survey_is_weaker_than_its_line() {
    for (of, line, weaker) in [(Sex::Female, FEMALE_LINE, 1.0..7.5), (Sex::Male, MALE_LINE, 2.0..4.5)] {
        let heavy: Vec<Surveyed> =
            fitted(of).into_iter().filter(|person| person.body.is_some_and(|(_, mass)| mass > HEAVIEST)).collect();
        assert!(heavy.len() > 190);
        for (from, to) in [(120.0, 130.0), (130.0, 140.0), (140.0, 150.0), (150.0, 300.0)] {
            let mut band = heavy.clone();
            band.retain(|person| person.body.is_some_and(|(_, mass)| (from..to).contains(&mass)));
            let grip = mean(&band, |person| person.grip);
            let weight: f64 = band.iter().map(|person| person.weight).sum();
            let expected: f64 = band.iter().map(|person| person.weight * on(&line, person)).sum::<f64>() / weight;
            assert!(weaker.contains(&(expected - grip)), "{of:?} of {from} kg: {expected} for {grip}");
        }
        let norm = |mass: f64| {
            let stature = Some(Length::centimetres(175.0));
            Norm { sex: of, age: Count::new(40.0), stature, body_mass: Mass::kilograms(mass) }.combined_grip(0.0)
        };
        assert_eq!(norm(HEAVIEST).to_bits(), norm(200.0).to_bits());
    }
}

fn on(line: &Line, person: &Surveyed) -> f64 {
    let coefficients = [line.at_fifty, line.year, line.year_squared, line.centimetre, line.kilogram];
    observed(person).0.iter().zip(coefficients).map(|(x, coefficient)| x * coefficient).sum()
}

#[test]
fn at_the_ends_of_age_the_line_stops() {
    let norm = |age: f64, stature: Option<Length>| Norm {
        sex: Sex::Female,
        age: Count::new(age),
        stature,
        body_mass: Mass::kilograms(60.0),
    };
    let tall = Some(Length::centimetres(180.0));
    assert_eq!(norm(OLDEST, tall).combined_grip(0.0).to_bits(), norm(100.0, tall).combined_grip(0.0).to_bits());
    // Fitted from 20 on: before, the table alone speaks.
    assert_eq!(norm(19.0, tall).combined_grip(0.5).to_bits(), norm(19.0, None).combined_grip(0.5).to_bits());
    assert!(norm(20.0, tall).combined_grip(0.0) > norm(20.0, None).combined_grip(0.0));
}

#[test]
fn far_draws_never_come_to_nothing() {
    let norm = Norm {
        sex: Sex::Female,
        age: Count::new(100.0),
        stature: Some(Length::metres(0.9)),
        body_mass: Mass::kilograms(20.0),
    };
    for norm in [norm, Norm { stature: None, ..norm }] {
        let grip = Force::newtons(norm.combined_grip(-8.0)).in_kilograms_force();
        assert!((grip - LEAST_GRIP).abs() < 1e-9, "{grip}");
    }
}
