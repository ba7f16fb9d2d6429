//! What is read, and to which bits.

use boughline::quantity::{
    Dimension, FOOT, INCH, KILOGRAM, METRE, MILLIMETRE, Misread, PERCENT, canonical, read, tidy, units,
};

/// Text, SI value, canonical text.
type Accepted = (&'static str, f64, &'static str);

const ACCEPTED: &[(Dimension, &[Accepted])] = &[
    (
        Dimension::Length,
        &[
            ("11 m", 11.0, "11m"),
            ("11m", 11.0, "11m"),
            ("  11   m  ", 11.0, "11m"),
            ("11\u{a0}m", 11.0, "11m"),
            ("11,5m", 11.5, "11.5m"),
            ("11.5 m", 11.5, "11.5m"),
            ("11.50 m", 11.5, "11.5m"),
            ("011 m", 11.0, "11m"),
            ("11 metres", 11.0, "11m"),
            ("11 METERS", 11.0, "11m"),
            ("1 metre", 1.0, "1m"),
            ("11 M", 11.0, "11m"),
            ("1.2345 m", 1.2345, "1.2345m"),
            ("0.125 m", 0.125, "0.125m"),
            ("0,125 m", 0.125, "0.125m"),
            ("75 cm", 0.75, "75cm"),
            ("9.5 mm", 0.0095, "9.5mm"),
            ("1 200 mm", 1.2, "1200mm"),
            ("1\u{a0}200 mm", 1.2, "1200mm"),
            ("1\u{2009}200\u{2009}mm", 1.2, "1200mm"),
            ("1\u{202f}200\u{202f}mm", 1.2, "1200mm"),
            ("1 234 567,5 mm", 1234.5675, "1234567.5mm"),
            ("36 ft", 10.9728, "36ft"),
            ("36 feet", 10.9728, "36ft"),
            ("1 Foot", 0.3048, "1ft"),
            ("1 inch", 0.0254, "1in"),
            ("6 ft 3 in", 1.905, "6ft3in"),
            ("6ft3in", 1.905, "6ft3in"),
            ("6 feet 3 inches", 1.905, "6ft3in"),
            ("6'3\"", 1.905, "6ft3in"),
            ("6′ 3″", 1.905, "6ft3in"),
            ("6’3”", 1.905, "6ft3in"),
            ("75 in", 1.905, "75in"),
            ("6′ 3½″", 1.9177, "6ft3.5in"),
            ("6' 3½\"", 1.9177, "6ft3.5in"),
            ("6' 3 ½\"", 1.9177, "6ft3.5in"),
            ("6' 3 1/2\"", 1.9177, "6ft3.5in"),
            ("6' 3 1/8\"", 1.908_175, "6ft3.1250in"),
            ("6' ½\"", 1.8415, "6ft0.5in"),
            ("6'", 1.8288, "6ft"),
            ("3/8 in", 0.009_525, "0.375in"),
            ("9/8 in", 0.028_575, "1.1250in"),
            ("⅜ in", 0.009_525, "0.375in"),
            ("6 1/2 ft", 1.9812, "6.5ft"),
            ("-6 ft 3 in", -1.905, "-6ft3in"),
            ("−2 m", -2.0, "-2m"),
            ("-0 m", 0.0, "0m"),
            ("0 ft 3 in", 0.0762, "0ft3in"),
        ],
    ),
    (
        Dimension::Mass,
        &[
            ("94kg", 94.0, "94kg"),
            ("94 kilograms", 94.0, "94kg"),
            ("94 KG", 94.0, "94kg"),
            ("207 lb", 93.893_620_59, "207lb"),
            ("207 lbs", 93.893_620_59, "207lb"),
            ("207 Pounds", 93.893_620_59, "207lb"),
            ("15 st 4 lb", 97.068_767_18, "15st4lb"),
            ("15 stone 4 pounds", 97.068_767_18, "15st4lb"),
            ("15 st", 95.254_397_7, "15st"),
        ],
    ),
    (
        Dimension::Force,
        &[
            ("400 N", 400.0, "400N"),
            ("400 newtons", 400.0, "400N"),
            ("400 n", 400.0, "400N"),
            ("0.4 kN", 400.0, "0.4kN"),
            ("0,4 KN", 400.0, "0.4kN"),
            ("90 lbf", 400.339_945_373_445, "90lbf"),
            ("90 pounds-force", 400.339_945_373_445, "90lbf"),
            ("90 pounds force", 400.339_945_373_445, "90lbf"),
            ("41 kgf", 402.072_65, "41kgf"),
            ("41 kilograms-force", 402.072_65, "41kgf"),
        ],
    ),
    // π/180 and 0.45359237 × 9.80665 × 0.3048 times the number, to sixty digits and rounded once: NIST SP 811 (2008),
    // table 6 and appendix B.8.
    (
        Dimension::Angle,
        &[
            ("45°", 0.785_398_163_397_448_3, "45deg"),
            ("45 °", 0.785_398_163_397_448_3, "45deg"),
            ("45 deg", 0.785_398_163_397_448_3, "45deg"),
            ("30 degrees", 0.523_598_775_598_298_9, "30deg"),
            ("1 Degree", 0.017_453_292_519_943_295, "1deg"),
            ("60 deg", 1.047_197_551_196_597_9, "60deg"),
            ("22,5°", 0.392_699_081_698_724_14, "22.5deg"),
            ("90 deg", 1.570_796_326_794_896_6, "90deg"),
            ("120 deg", 2.094_395_102_393_195_7, "120deg"),
            ("-15 deg", -0.261_799_387_799_149_46, "-15deg"),
            ("0.5 rad", 0.5, "0.5rad"),
            ("2 radians", 2.0, "2rad"),
        ],
    ),
    (
        Dimension::Energy,
        &[
            ("8600 J", 8600.0, "8600J"),
            ("1 joule", 1.0, "1J"),
            ("8.6 kJ", 8600.0, "8.6kJ"),
            ("8,6 KJ", 8600.0, "8.6kJ"),
            ("12 kilojoules", 12_000.0, "12kJ"),
            ("1 ft-lbf", 1.355_817_948_331_400_4, "1ft-lbf"),
            ("3 ft·lbf", 4.067_453_844_994_201, "3ft-lbf"),
            ("50 ft lbf", 67.790_897_416_570_02, "50ft-lbf"),
            ("50 foot-pounds", 67.790_897_416_570_02, "50ft-lbf"),
            ("50 Foot Pounds-Force", 67.790_897_416_570_02, "50ft-lbf"),
            ("6330 ft-lb", 8_582.327_612_937_765, "6330ft-lbf"),
            ("6 330 ft lbs", 8_582.327_612_937_765, "6330ft-lbf"),
            ("72 1/2 ft-lbf", 98.296_801_254_026_53, "72.5ft-lbf"),
        ],
    ),
    (
        Dimension::Power,
        &[("150 W", 150.0, "150W"), ("150w", 150.0, "150W"), ("1 watt", 1.0, "1W"), ("7,5 watts", 7.5, "7.5W")],
    ),
    (
        Dimension::Speed,
        &[
            ("0.5 m/s", 0.5, "0.5m-per-s"),
            ("1,4 m/sec", 1.4, "1.4m-per-s"),
            ("2 metres per second", 2.0, "2m-per-s"),
            ("12 m/min", 0.2, "12m-per-min"),
            ("12 M/MIN", 0.2, "12m-per-min"),
            ("-6 meters per minute", -0.1, "-6m-per-min"),
            ("1 ft/min", 0.005_08, "1ft-per-min"),
            ("40 fpm", 0.2032, "40ft-per-min"),
            ("40 feet per minute", 0.2032, "40ft-per-min"),
            ("1/2 ft/min", 0.002_54, "0.5ft-per-min"),
        ],
    ),
    (
        Dimension::Duration,
        &[
            ("45 s", 45.0, "45s"),
            ("45 sec", 45.0, "45s"),
            ("90 min", 5400.0, "90min"),
            ("90 minutes", 5400.0, "90min"),
            ("1 h 30 min", 5400.0, "1h30min"),
            ("1 hour 30 minutes", 5400.0, "1h30min"),
            ("2 min 10 s", 130.0, "2min10s"),
            ("1 h 2 min 3,5 s", 3723.5, "1h2min3.5s"),
            ("1,5 h", 5400.0, "1.5h"),
        ],
    ),
    (
        Dimension::Ratio,
        &[
            ("90 %", 0.9, "0.9"),
            ("90%", 0.9, "0.9"),
            ("7 percent", 0.07, "0.07"),
            ("7 per cent", 0.07, "0.07"),
            ("0.9", 0.9, "0.9"),
            ("0,9", 0.9, "0.9"),
            ("2 5/8", 2.625, "2.6250"),
            ("-0", 0.0, "0"),
        ],
    ),
    (Dimension::Count, &[("45", 45.0, "45"), ("5,5", 5.5, "5.5"), ("2 1/2", 2.5, "2.5")]),
];

pub(super) fn accepted() -> impl Iterator<Item = (Dimension, Accepted)> {
    ACCEPTED.iter().flat_map(|&(dimension, rows)| rows.iter().map(move |&row| (dimension, row)))
}

#[test]
fn what_people_write_is_read_to_the_last_bit() {
    for (dimension, (text, si, _)) in accepted() {
        assert_eq!(read(text, dimension, None).map(f64::to_bits), Ok(si.to_bits()), "{text}");
    }
}

#[test]
fn a_default_unit_changes_nothing_that_has_a_unit() {
    for (dimension, (text, si, _)) in accepted() {
        for default in units().filter(|unit| unit.dimension == dimension) {
            assert_eq!(read(text, dimension, Some(default)).map(f64::to_bits), Ok(si.to_bits()), "{text}");
        }
    }
}

#[test]
fn a_link_says_it_without_spaces_in_canonical_symbols() {
    for (dimension, (text, si, link)) in accepted() {
        assert_eq!(canonical(text, dimension).as_deref(), Ok(link), "{text}");
        assert_eq!(read(link, dimension, None).map(f64::to_bits), Ok(si.to_bits()), "{text}");
    }
}

#[test]
fn a_bare_number_takes_the_default_unit() {
    assert_eq!(read("11,5", Dimension::Length, Some(METRE)), Ok(11.5));
    assert_eq!(read("36", Dimension::Length, Some(FOOT)), Ok(10.9728));
    assert_eq!(read("1 200", Dimension::Length, Some(MILLIMETRE)), Ok(1.2));
    assert_eq!(read("-3 1/2", Dimension::Length, Some(INCH)), Ok(-0.0889));
    assert_eq!(read("36", Dimension::Length, None), Err(Misread::NoUnit { dimension: Dimension::Length }));
}

#[test]
fn a_bare_ratio_is_itself_whatever_the_default() {
    assert_eq!(read("0.9", Dimension::Ratio, Some(PERCENT)), Ok(0.9));
    assert_eq!(tidy(" 0.9 ", Dimension::Ratio, PERCENT), "0.9");
}

#[test]
fn a_default_of_another_dimension_is_refused_like_a_written_one() {
    let wrong = Misread::WrongDimension { said: KILOGRAM, wanted: Dimension::Force };
    assert_eq!(read("80", Dimension::Force, Some(KILOGRAM)), Err(wrong));
}
