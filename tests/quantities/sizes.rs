//! The size of every unit, from its definition.
//!
//! The oracle is NIST SP 811 (2008), appendix B (international foot, pound, standard gravity) and the SI.

use super::spellings;
use boughline::quantity::{
    Angle, Dimension, Duration, Energy, Force, Length, Mass, Power, Quantity, Ratio, STANDARD_GRAVITY, Speed, read,
    unit, units,
};

/// Symbol and size by definition, SP 811 appendix B: written as the definitions are, not as the crate has them.
const SIZES: [(&str, f64); 24] = [
    ("m", 1.0),
    ("cm", 0.01),
    ("mm", 0.001),
    ("ft", 0.3048),
    ("in", 0.0254),
    ("kg", 1.0),
    ("st", 6.350_293_18),
    ("lb", 0.453_592_37),
    ("N", 1.0),
    ("kN", 1000.0),
    ("lbf", 4.448_221_615_260_5),
    ("kgf", 9.806_65),
    ("rad", 1.0),
    ("deg", std::f64::consts::PI / 180.0), // table 6
    ("s", 1.0),
    ("min", 60.0),
    ("h", 3600.0),
    ("J", 1.0),
    ("kJ", 1000.0),
    ("ft-lbf", 1.355_817_948_331_400_4), // 0.45359237 × 9.80665 × 0.3048, which is exact
    ("W", 1.0),
    ("m/s", 1.0),
    ("m/min", 1.0 / 60.0),
    ("ft/min", 0.005_08), // 0.3048 / 60
];

#[test]
fn every_unit_has_the_size_of_its_definition_to_the_last_bit() {
    for (symbol, size) in SIZES.into_iter().chain([("%", 0.01)]) {
        assert_eq!(unit(symbol).map(|unit| unit.size.to_bits()), Some(size.to_bits()), "{symbol}");
    }
    let sized = |symbol: &str| symbol == "%" || SIZES.iter().any(|(known, _)| *known == symbol);
    let unsized_units: Vec<&str> = units().map(|unit| unit.symbol).filter(|symbol| !sized(symbol)).collect();
    assert!(unsized_units.is_empty(), "write in SIZES what is the definition of {unsized_units:?}");
    assert_eq!(STANDARD_GRAVITY.to_bits(), 9.806_65_f64.to_bits());
}

#[test]
fn every_unit_names_its_source_and_can_be_found() {
    for row in units() {
        assert!(row.source.starts_with("by definition: "), "{}", row.symbol);
        assert_eq!(unit(row.symbol), Some(row));
        assert_eq!(row.si(1.0).to_bits(), row.size.to_bits(), "{}", row.symbol);
    }
    assert_eq!(unit("FT"), None);
    assert_eq!(unit(""), None);
}

#[test]
fn every_bigger_unit_is_as_many_of_the_smaller_as_it_says() {
    let mut pairs = Vec::new();
    for row in units() {
        if let Some((bigger, count)) = row.bigger() {
            assert_eq!(row.si(count).to_bits(), bigger.size.to_bits(), "{}", row.symbol);
            pairs.push((bigger.symbol, row.symbol));
        }
    }
    assert_eq!(pairs, [("ft", "in"), ("st", "lb"), ("min", "s"), ("h", "min")]);
}

#[test]
fn every_spelling_of_every_unit_is_read_in_any_case() {
    for row in units() {
        for spelling in spellings(row) {
            for said in [spelling.to_owned(), spelling.to_uppercase(), spelling.to_lowercase()] {
                let text = format!("3 {said}");
                assert_eq!(read(&text, row.dimension, None), Ok(row.si(3.0)), "{text}");
            }
        }
    }
}

#[test]
fn no_spelling_means_two_units() {
    let all: Vec<String> = units().flat_map(spellings).map(str::to_lowercase).collect();
    let mut once = all.clone();
    once.sort();
    once.dedup();
    assert_eq!(all.len(), once.len());
}

#[test]
fn every_dimension_but_a_bare_count_has_units_and_each_a_noun_of_its_own() {
    for dimension in Dimension::ALL {
        let has_units = units().any(|unit| unit.dimension == dimension);
        assert_eq!(has_units, dimension != Dimension::Count, "{dimension:?}");
        assert_eq!(dimension.noun(), format!("{dimension:?}").to_lowercase());
    }
}

#[test]
fn a_whole_degree_is_the_nearest_number_there_is() {
    // n × π/180 to sixty digits, rounded once; multiplying by std's π and dividing misses these.
    for (degrees, radians) in [
        (15.0, 0.261_799_387_799_149_46),
        (30.0, 0.523_598_775_598_298_9),
        (60.0, 1.047_197_551_196_597_9),
        (120.0, 2.094_395_102_393_195_7),
    ] {
        assert_eq!(Angle::degrees(degrees).in_radians(), radians);
        assert_ne!(degrees * std::f64::consts::PI / 180.0, radians);
    }
}

#[test]
fn weight_is_mass_under_standard_gravity() {
    // 94.3 kg x 9.80665 m/s², worked by hand.
    assert_eq!(Mass::kilograms(94.3).weight(), Force::newtons(924.767_095));
    assert_eq!(Mass::kilograms(41.0).weight(), Force::kilograms_force(41.0));
    // 90 lb under gravity is 90 lbf; two roundings on the one way, one on the other.
    let (hung, pulled) = (Mass::pounds(90.0).weight().si(), Force::pounds_force(90.0).si());
    assert!((hung - pulled).abs() <= pulled * f64::EPSILON, "{hung} {pulled}");
}

#[test]
fn a_quantity_only_adds_to_its_own_kind() {
    let both = Length::metres(1.5) + Length::centimetres(50.0) - Length::millimetres(1000.0);
    assert_eq!(both, Length::metres(1.0));
    assert_eq!(Force::newtons(400.0) * 2.0 / 4.0, Force::kilonewtons(0.2));
    assert!(Duration::minutes(1.0) < Duration::seconds(61.0));
    assert_eq!(Ratio::percent(90.0).value(), Ratio::new(0.9).value());
}

#[test]
fn a_quantity_says_how_many_of_a_unit_it_is() {
    assert_eq!(Length::feet(36.0).in_feet(), 36.0);
    assert_eq!(Length::feet(6.25).in_inches(), 75.0);
    assert_eq!(Length::inches(1.0).in_millimetres(), 25.4);
    assert_eq!(Length::metres(0.75).in_centimetres(), 75.0);
    assert_eq!(Length::centimetres(75.0).in_metres(), 0.75);
    assert_eq!(Mass::pounds(207.0).in_pounds(), 207.0);
    assert_eq!(Mass::kilograms(94.0).in_kilograms(), 94.0);
    assert_eq!(Force::kilonewtons(0.4).in_newtons(), 400.0);
    assert_eq!(Force::newtons(400.0).in_kilonewtons(), 0.4);
    assert_eq!(Force::pounds_force(90.0).in_pounds_force(), 90.0);
    assert_eq!(Force::kilograms_force(41.0).in_kilograms_force(), 41.0);
    assert_eq!(Duration::seconds(90.0).in_minutes(), 1.5);
    assert_eq!(Duration::minutes(1.5).in_seconds(), 90.0);
    assert_eq!(Angle::degrees(90.0).in_radians(), std::f64::consts::FRAC_PI_2);
    assert_eq!(Angle::radians(std::f64::consts::FRAC_PI_4).in_degrees(), 45.0);
    assert_eq!(Energy::kilojoules(8.6).in_joules(), 8600.0);
    assert_eq!(Energy::joules(8600.0).in_kilojoules(), 8.6);
    assert_eq!(Energy::foot_pounds(6330.0).in_foot_pounds(), 6330.0);
    assert_eq!(Power::watts(150.0).in_watts(), 150.0);
    assert_eq!(Speed::metres_a_minute(12.0).in_metres_a_second(), 0.2);
    assert_eq!(Speed::metres_a_second(0.2).in_metres_a_minute(), 12.0);
    assert_eq!(Speed::feet_a_minute(40.0).in_feet_a_minute(), 40.0);
}
