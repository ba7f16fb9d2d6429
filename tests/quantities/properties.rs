//! What holds of any text and any value.

use super::{VIEWS, spellings, typed};
use boughline::quantity::{
    Angle, Dimension, Duration, Energy, Force, Length, Mass, Power, Quantity, Ratio, Speed, System, Unit, canonical,
    canonical_si, read, units, written,
};
use proptest::prelude::*;

/// The coarsest that a figure with its zeros dropped may have been rounded to: the rules of the storey again, in SI.
fn half_a_step(si: f64, dimension: Dimension, system: System) -> f64 {
    let size = si.abs();
    0.5 * match (dimension, system) {
        (Dimension::Length, System::Si) if size > 9.99 => 0.1,
        (Dimension::Length, System::Si) if size > 0.099 => 0.01,
        (Dimension::Length, System::Si) if size > 0.0099 => 0.001,
        (Dimension::Length, System::Si) => 0.0001,
        (Dimension::Length, System::Us) if size > 0.608 => 0.0254,
        (Dimension::Length, System::Us) => 0.00254,
        (Dimension::Mass, System::Si) if size > 99.9 => 1.0,
        (Dimension::Mass, System::Si) => 0.1,
        (Dimension::Mass, System::Us) => 0.453_592_37,
        (Dimension::Force, System::Si) if size > 999.4 => 10.0,
        (Dimension::Force, System::Si) if size > 9.9 => 1.0,
        (Dimension::Force, System::Si) => 0.1,
        (Dimension::Force, System::Us) if size > 44.0 => 4.448_221_615_260_5,
        (Dimension::Force, System::Us) => 0.444_822_161_526_05,
        (Dimension::Angle, _) if size > 0.173 => 0.017_453_292_519_943_295,
        (Dimension::Angle, _) => 0.001_745_329_251_994_329_5,
        (Dimension::Energy, System::Si) if size > 9_994.0 => 100.0,
        (Dimension::Energy, System::Si) if size > 999.4 => 10.0,
        (Dimension::Energy, System::Si) if size > 9.9 => 1.0,
        (Dimension::Energy, System::Si) => 0.1,
        (Dimension::Energy, System::Us) if size > 1355.0 => 13.558_179_483_314_004,
        (Dimension::Energy, System::Us) if size > 13.4 => 1.355_817_948_331_400_4,
        (Dimension::Energy, System::Us) => 0.135_581_794_833_140_04,
        (Dimension::Power, _) if size > 9.9 => 1.0,
        (Dimension::Power, _) => 0.1,
        (Dimension::Speed, System::Si) if size > 0.99 => 0.1,
        (Dimension::Speed, System::Si) if size > 0.165 => 1.0 / 60.0,
        (Dimension::Speed, System::Si) => 0.1 / 60.0,
        (Dimension::Speed, System::Us) if size > 0.050 => 0.005_08,
        (Dimension::Speed, System::Us) => 0.000_508,
        (Dimension::Duration, _) if size > 119.4 => 60.0,
        (Dimension::Duration, _) if size > 9.9 => 1.0,
        (Dimension::Duration, _) => 0.1,
        (Dimension::Ratio, _) => 0.01,
        (Dimension::Count, _) => 0.1,
    }
}

fn dimensions() -> impl Strategy<Value = Dimension> {
    prop::sample::select(Dimension::ALL.to_vec())
}

fn any_unit() -> impl Strategy<Value = &'static Unit> {
    prop::sample::select(units().collect::<Vec<_>>())
}

/// Without `powi`, whose last bit depends on the target.
fn scaled(digits: f64, magnitude: i32) -> f64 {
    format!("{digits}e{magnitude}").parse().unwrap_or(f64::NAN)
}

/// Magnitudes as evenly as possible, both signs.
fn values() -> impl Strategy<Value = f64> {
    (1.0..10.0_f64, -5..6_i32, any::<bool>()).prop_map(|(digits, magnitude, negative)| {
        let value = scaled(digits, magnitude);
        if negative { -value } else { value }
    })
}

/// Text of the pieces people use, in any order: most of it nonsense, a good part of it nearly right.
fn nearly() -> impl Strategy<Value = String> {
    let pieces = [
        "0", "1", "3", "12", "200", "1 200", ".", ",", "/", "1/2", "½", "-", "−", " ", " ", " ", "\u{a0}", "m", "ft",
        "in", "'", "\"", "′", "kg", "lb", "st", "N", "kN", "lbf", "h", "min", "s", "%", "°", "deg", "ft-", "J", "W",
        "m/", "e", "inf", "pounds-", "force",
    ];
    prop::collection::vec(prop::sample::select(pieces.to_vec()), 0..9).prop_map(|pieces| pieces.concat())
}

/// A number as people may write it.
fn numbers() -> impl Strategy<Value = String> {
    prop_oneof![
        "[0-9]{1,6}",
        "[1-9][0-9]{0,2}( [0-9]{3}){1,2}",
        "[0-9]{1,4}[.,][0-9]{1,2}",
        "0[.,][0-9]{1,9}",
        "[0-9]{1,3}[.,][0-9]{4,9}",
        "[0-9]{1,2}/[1-9][0-9]?",
        "[0-9]{1,3} 1/[2-9]",
        "[0-9]{1,3} ?[½⅓⅔¼¾⅕⅙⅛⅜⅝⅞]",
    ]
}

/// A readable quantity with its unit, or two units where they go together.
fn readable() -> impl Strategy<Value = (String, Dimension)> {
    let spelled = any_unit()
        .prop_flat_map(|unit| (prop::sample::select(spellings(unit).collect::<Vec<_>>()), Just(unit.dimension)));
    let single = ("[-−]?", numbers(), "[ \u{a0}\u{202f}]?", spelled)
        .prop_map(|(sign, number, space, (unit, dimension))| (format!("{sign}{number}{space}{unit}"), dimension));
    let pairs: Vec<_> = units().filter_map(|unit| unit.bigger().map(|(bigger, _)| (bigger, unit))).collect();
    let paired = (prop::sample::select(pairs), "[-−]?", "[0-9]{1,4}", "[0-9]([.,][0-9]{1,2}|½| 3/8)?").prop_map(
        |((bigger, smaller), sign, whole, part)| {
            (format!("{sign}{whole} {} {part} {}", bigger.symbol, smaller.symbol), bigger.dimension)
        },
    );
    prop_oneof![single, paired]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 10_000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_text_whatever_upsets_the_reader(text in any::<String>(), dimension in dimensions(), default in any_unit()) {
        typed::quantity(&text, dimension, default);
    }

    #[test]
    fn nearly_right_text_does_not_upset_the_reader(text in nearly(), dimension in dimensions(), default in any_unit()) {
        typed::quantity(&text, dimension, default);
    }

    #[test]
    fn readable_text_is_read_with_either_mark_and_keeps_its_bits((text, dimension) in readable(), default in any_unit()) {
        let si = read(&text, dimension, None);
        prop_assert!(si.is_ok(), "{:?} {:?}", text, si);
        prop_assert!(canonical(&text, dimension).is_ok(), "{:?}", text);
        for other in [text.replace('.', ","), text.replace(',', ".")] {
            prop_assert_eq!(read(&other, dimension, None), si.clone(), "{}", other);
        }
        typed::quantity(&text, dimension, default);
    }

    #[test]
    fn every_unit_reads_a_number_as_its_constructor_takes_it(unit in any_unit(), halves in 0..2_000_000_u32) {
        let number = f64::from(halves) / 2.0;
        prop_assert_eq!(read(&format!("{number} {}", unit.symbol), unit.dimension, None), Ok(unit.si(number)));
        let back = unit.count(unit.si(number));
        prop_assert!((back - number).abs() <= 2.0 * f64::EPSILON * number, "{} {}", back, number);
    }

    #[test]
    fn an_si_value_in_a_link_keeps_its_bits(digits in 1.0..10.0_f64, magnitude in -5..15_i32, dimension in dimensions()) {
        let si = scaled(digits, magnitude);
        for si in [si, -si] {
            let link = canonical_si(si, dimension);
            prop_assert_eq!(read(&link, dimension, None).map(f64::to_bits), Ok(si.to_bits()), "{}", link);
        }
    }

    #[test]
    fn what_is_written_reads_back_within_its_last_figure(si in values(), dimension in dimensions(), view in prop::sample::select(VIEWS.to_vec())) {
        let text = written(si, dimension, view);
        let back = read(&text, dimension, None);
        prop_assert!(back.is_ok(), "{} {:?}", text, back);
        let back = back.unwrap();
        let slack = 4.0 * f64::EPSILON * si.abs();
        prop_assert!((back - si).abs() <= half_a_step(si, dimension, view.system) + slack, "{} {}", si, text);
        // What has been rounded once is not rounded again.
        prop_assert_eq!(written(back, dimension, view), text);
    }

    #[test]
    fn a_newtype_keeps_its_si_value(si in values()) {
        prop_assert_eq!(Length::from_si(si).si(), si);
        prop_assert_eq!(Length::metres(si), Length::from_si(si));
        prop_assert_eq!(Mass::kilograms(si), Mass::from_si(si));
        prop_assert_eq!(Force::newtons(si), Force::from_si(si));
        prop_assert_eq!(Duration::seconds(si), Duration::from_si(si));
        prop_assert_eq!(Ratio::new(si), Ratio::from_si(si));
        prop_assert_eq!(Angle::radians(si), Angle::from_si(si));
        prop_assert_eq!(Energy::joules(si), Energy::from_si(si));
        prop_assert_eq!(Power::watts(si), Power::from_si(si));
        prop_assert_eq!(Speed::metres_a_second(si), Speed::from_si(si));
    }
}
