//! What is refused, and why.

use boughline::quantity::{
    CENTIMETRE, DEGREE, Dimension, FOOT, FOOT_POUND, HOUR, INCH, JOULE, KILOGRAM, KILOJOULE, KILONEWTON, METRE,
    METRE_A_MINUTE, MILLIMETRE, MINUTE, Misread, NEWTON, PERCENT, POUND, POUND_FORCE, RADIAN, SECOND, STONE, Unit,
    canonical, read, tidy,
};

fn ambiguous(said: &str, whole: &str, decimal: &str) -> Misread {
    Misread::Ambiguous { said: said.to_owned(), whole: whole.to_owned(), decimal: decimal.to_owned() }
}

fn wrong(said: &'static Unit, wanted: Dimension) -> Misread {
    Misread::WrongDimension { said, wanted }
}

fn unpaired(first: &'static Unit, second: &'static Unit) -> Misread {
    Misread::Unpaired { first, second }
}

fn overflow(part: &'static Unit, whole: &'static Unit) -> Misread {
    Misread::Overflow { part, whole }
}

fn broken(unit: &'static Unit) -> Misread {
    Misread::BrokenWhole { unit }
}

fn no_unit(dimension: Dimension) -> Misread {
    Misread::NoUnit { dimension }
}

fn unknown(said: &str) -> Misread {
    Misread::UnknownUnit { said: said.to_owned() }
}

#[test]
fn one_separator_before_three_digits_is_ambiguous_except_after_a_zero() {
    let rows = [
        ("1,200", "1,200", "1200", "1.2"),
        ("1.200 m", "1.200", "1200", "1.2"),
        ("-1,200 m", "1,200", "1200", "1.2"),
        ("1,234 m", "1,234", "1234", "1.2340"),
        ("12.000 m", "12.000", "12000", "12"),
        ("1234,567 m", "1234,567", "1234567", "1234.5670"),
        ("1 200,500 m", "1 200,500", "1200500", "1200.5"),
        ("01.125 m", "01.125", "1125", "1.1250"),
        ("6 ft 1.125 in", "1.125", "1125", "1.1250"),
        ("1,200 bananas", "1,200", "1200", "1.2"),
    ];
    for (text, said, whole, decimal) in rows {
        let misread = read(text, Dimension::Length, Some(METRE));
        assert_eq!(misread, Err(ambiguous(said, whole, decimal)), "{text}");
        for either in [whole, decimal] {
            assert!(read(either, Dimension::Length, Some(METRE)).is_ok(), "{text}: {either}");
        }
    }
    assert_eq!(read("0,125", Dimension::Length, Some(METRE)), Ok(0.125));
    assert_eq!(read("00.125", Dimension::Length, Some(METRE)), Ok(0.125));
    assert_eq!(read("-0.125", Dimension::Length, Some(METRE)), Ok(-0.125));
}

#[test]
fn what_is_not_a_length_says_why() {
    let rows = [
        ("", Misread::Empty),
        (" \u{a0}\t\n ", Misread::Empty),
        ("-", Misread::NotANumber),
        ("m", Misread::NotANumber),
        ("eleven metres", Misread::NotANumber),
        ("m 11", Misread::NotANumber),
        ("+11 m", Misread::NotANumber),
        ("--11 m", Misread::NotANumber),
        ("- 11 m", Misread::NotANumber),
        ("(11 m)", Misread::NotANumber),
        ("~11 m", Misread::NotANumber),
        ("5. m", Misread::NotANumber),
        ("5.", Misread::NotANumber),
        (".5 m", Misread::NotANumber),
        ("6 ft .5 in", Misread::NotANumber),
        ("6 ft -3 in", Misread::NotANumber),
        ("6 3", Misread::NotANumber),
        ("12 34 m", Misread::NotANumber),
        ("1  200 mm", Misread::NotANumber),
        ("1 2000 mm", Misread::NotANumber),
        ("1200 300 mm", Misread::NotANumber),
        ("0 200 mm", Misread::NotANumber),
        ("3 9/8 in", Misread::NotANumber),
        ("3 8/8 in", Misread::NotANumber),
        ("3 125/1000 in", Misread::NotANumber),
        ("3.5 1/2 in", Misread::NotANumber),
        ("3.5½ in", Misread::NotANumber),
        ("3/8/2 in", Misread::NotANumber),
        ("3/8.5 in", Misread::NotANumber),
        ("3/ in", Misread::NotANumber),
        ("/8 in", Misread::NotANumber),
        ("3 / 8 in", Misread::NotANumber),
        ("½½ in", Misread::NotANumber),
        ("5-6 m", Misread::NotANumber),
        ("5 – 6 m", unknown("–")),
        ("٣ m", Misread::NotANumber),
        ("１１ m", Misread::NotANumber),
        ("0x1F m", unknown("x")),
        ("1_000 m", unknown("_")),
        ("inf", Misread::NotFinite),
        ("-Infinity m", Misread::NotFinite),
        ("∞ m", Misread::NotFinite),
        ("NaN", Misread::NotFinite),
        ("1/0 in", Misread::NotFinite),
        ("3 1/0 in", Misread::NotFinite),
        ("0/0 in", Misread::NotFinite),
        ("1e3 m", Misread::Exponent),
        ("1E-3", Misread::Exponent),
        ("1.5e+3 m", Misread::Exponent),
        ("1,200.5 m", Misread::TwoSeparators),
        ("1.200,5 m", Misread::TwoSeparators),
        ("1.2.3", Misread::TwoSeparators),
        ("1,200,000", Misread::TwoSeparators),
        ("1..2 m", Misread::TwoSeparators),
        ("11 yd", unknown("yd")),
        ("11 m tall", unknown("m tall")),
        ("11 m.", unknown("m.")),
        ("6 ft, 3 in", unknown("ft,")),
        ("6 ft and 3 in", unknown("ft and")),
        ("45°", wrong(DEGREE, Dimension::Length)),
        ("6'3", no_unit(Dimension::Length)),
        ("6 ft 3", no_unit(Dimension::Length)),
        ("94 kg", wrong(KILOGRAM, Dimension::Length)),
        ("15 st 4 lb", wrong(STONE, Dimension::Length)),
        ("90 %", wrong(PERCENT, Dimension::Length)),
        ("6 ft 3 lb", wrong(POUND, Dimension::Length)),
        ("3 in 6 ft", Misread::Unordered),
        ("6 ft 3 ft", Misread::Unordered),
        ("6 ft 3 in 2 in", Misread::Unordered),
        ("6 ft 20 cm", unpaired(FOOT, CENTIMETRE)),
        ("1 m 20 cm", unpaired(METRE, CENTIMETRE)),
        ("1 m 3 in", unpaired(METRE, INCH)),
        ("6.5 ft 3 in", broken(FOOT)),
        ("6½' 3\"", broken(FOOT)),
        ("6 ft 12 in", overflow(INCH, FOOT)),
        ("6 ft 36 1/2 in", overflow(INCH, FOOT)),
    ];
    for (text, misread) in rows {
        assert_eq!(read(text, Dimension::Length, None), Err(misread.clone()), "{text}");
        assert_eq!(canonical(text, Dimension::Length), Err(misread), "{text}");
        assert_eq!(tidy(text, Dimension::Length, METRE), text.trim(), "{text}");
    }
}

#[test]
fn other_dimensions_refuse_what_is_not_theirs() {
    let rows = [
        ("94 kg", Dimension::Force, wrong(KILOGRAM, Dimension::Force)),
        ("90 lb", Dimension::Force, wrong(POUND, Dimension::Force)),
        ("90 lbf", Dimension::Mass, wrong(POUND_FORCE, Dimension::Mass)),
        ("11 m", Dimension::Ratio, wrong(METRE, Dimension::Ratio)),
        ("1 h 30 m", Dimension::Duration, wrong(METRE, Dimension::Duration)),
        ("6' 3\"", Dimension::Duration, wrong(FOOT, Dimension::Duration)),
        ("1 h 20 s", Dimension::Duration, unpaired(HOUR, SECOND)),
        ("20 s 1 h", Dimension::Duration, Misread::Unordered),
        ("1 min 60 s", Dimension::Duration, overflow(SECOND, MINUTE)),
        ("1.5 h 30 min", Dimension::Duration, broken(HOUR)),
        ("1:30", Dimension::Duration, unknown(":")),
        ("15 st 14 lb", Dimension::Mass, overflow(POUND, STONE)),
        ("2 kg 3 lb", Dimension::Mass, unpaired(KILOGRAM, POUND)),
        ("1 kN 200 N", Dimension::Force, unpaired(KILONEWTON, NEWTON)),
        ("45", Dimension::Angle, no_unit(Dimension::Angle)),
        ("45 grad", Dimension::Angle, unknown("grad")),
        ("45° 30'", Dimension::Angle, wrong(FOOT, Dimension::Angle)),
        ("1 rad 5 deg", Dimension::Angle, unpaired(RADIAN, DEGREE)),
        ("45° C", Dimension::Angle, unknown("° C")),
        ("50 ft", Dimension::Energy, wrong(FOOT, Dimension::Energy)),
        ("50 lbf", Dimension::Energy, wrong(POUND_FORCE, Dimension::Energy)),
        ("50 ft - lbf", Dimension::Energy, unknown("ft - lbf")),
        ("5 Nm", Dimension::Energy, unknown("Nm")),
        ("300 kcal", Dimension::Energy, unknown("kcal")),
        ("1 kJ 200 J", Dimension::Energy, unpaired(KILOJOULE, JOULE)),
        ("50 ft-lbf", Dimension::Force, wrong(FOOT_POUND, Dimension::Force)),
        ("150", Dimension::Power, no_unit(Dimension::Power)),
        ("1 hp", Dimension::Power, unknown("hp")),
        ("1 kW", Dimension::Power, unknown("kW")),
        ("150 J/s", Dimension::Power, unknown("J/s")),
        ("12 m", Dimension::Speed, wrong(METRE, Dimension::Speed)),
        ("12 min", Dimension::Speed, wrong(MINUTE, Dimension::Speed)),
        ("5 km/h", Dimension::Speed, unknown("km/h")),
        ("12 m / min", Dimension::Speed, unknown("m / min")),
        ("12 m/min", Dimension::Length, wrong(METRE_A_MINUTE, Dimension::Length)),
        ("12 m-min", Dimension::Speed, unknown("m-min")),
        ("90 % 0.5", Dimension::Ratio, Misread::NotANumber),
        ("1.200", Dimension::Ratio, ambiguous("1.200", "1200", "1.2")),
        ("3:1", Dimension::Ratio, unknown(":")),
        ("true", Dimension::Ratio, Misread::NotANumber),
        ("null", Dimension::Ratio, Misread::NotANumber),
    ];
    for (text, dimension, misread) in rows {
        assert_eq!(read(text, dimension, None), Err(misread), "{text}");
    }
}

#[test]
fn sixty_characters_are_read_and_one_more_is_refused() {
    let sixty = format!("{}1m", "0".repeat(58));
    assert_eq!(read(&sixty, Dimension::Length, None), Ok(1.0));
    assert_eq!(read(&format!("0{sixty}"), Dimension::Length, None), Err(Misread::TooLong));
    // Characters are counted, not bytes, and not the space around them.
    assert_eq!(read(&format!(" {sixty}\u{a0}"), Dimension::Length, None), Ok(1.0));
    assert_eq!(read(&"½".repeat(60), Dimension::Length, None), Err(Misread::NotANumber));
    assert_eq!(read(&"½".repeat(61), Dimension::Length, None), Err(Misread::TooLong));
    assert_eq!(read(&"9".repeat(5_000_000), Dimension::Length, Some(METRE)), Err(Misread::TooLong));
}

#[test]
fn a_canonical_text_too_long_to_read_again_is_refused() {
    // Exactly 1e-33 has more decimals than a link carries.
    let text = format!("0.{}1%", "0".repeat(30));
    assert!(read(&text, Dimension::Ratio, None).is_ok());
    assert_eq!(canonical(&text, Dimension::Ratio), Err(Misread::TooLong));
}

#[test]
fn a_bare_number_gets_its_unit_and_nothing_else_changes() {
    assert_eq!(tidy(" 11,5 ", Dimension::Length, METRE), "11,5 m");
    assert_eq!(tidy("3 1/2", Dimension::Length, FOOT), "3 1/2 ft");
    assert_eq!(tidy("1 200", Dimension::Length, MILLIMETRE), "1 200 mm");
    assert_eq!(tidy("-5", Dimension::Mass, KILOGRAM), "-5 kg");
    assert_eq!(tidy(" 6'3 ", Dimension::Length, INCH), "6'3");
    assert_eq!(tidy("94 kg", Dimension::Force, NEWTON), "94 kg");
    // With " m" it could no longer be read.
    let longest = "1".repeat(59);
    assert_eq!(tidy(&longest, Dimension::Length, METRE), longest);
}
