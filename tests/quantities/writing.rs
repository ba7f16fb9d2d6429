//! What is written for people and for links.

use super::{SI, SI_COMMA, US, US_COMMA, VIEWS};
use boughline::quantity::{Dimension, Misread, canonical_si, percent, plain, read, written};

/// SI value, text in metric, text in the other system.
type Answered = (f64, &'static str, &'static str);

#[test]
fn answers_are_written_with_the_digits_they_earn() {
    let ft = 0.3048;
    let lb = 0.453_592_37;
    let lbf = 4.448_221_615_260_5;
    let deg = 0.017_453_292_519_943_295;
    let tables: &[(Dimension, &[Answered])] = &[
        (
            Dimension::Length,
            &[
                (0.0, "0 m", "0 ft"),
                (0.00001, "0 m", "0 ft"),
                (0.0002, "0.2 mm", "0 ft"),
                (0.0095, "9.5 mm", "0.4 in"),
                (0.00996, "1 cm", "0.4 in"),
                (0.011, "1.1 cm", "0.4 in"),
                (0.0996, "10 cm", "3.9 in"),
                (0.75, "75 cm", "2 ft 6 in"),
                (0.994, "99 cm", "3 ft 3 in"),
                (0.995, "1 m", "3 ft 3 in"),
                (1.905, "1.91 m", "6 ft 3 in"),
                (9.994, "9.99 m", "32 ft 9 in"),
                (9.996, "10 m", "32 ft 10 in"),
                (11.0, "11 m", "36 ft 1 in"),
                (11.04, "11 m", "36 ft 3 in"),
                (11.05, "11.1 m", "36 ft 3 in"),
                (23.94 / 12.0 * ft, "61 cm", "23.9 in"),
                (23.96 / 12.0 * ft, "61 cm", "2 ft"),
                (71.6 / 12.0 * ft, "1.82 m", "6 ft"),
                (-1.905, "−1.91 m", "−6 ft 3 in"),
                (-0.00001, "0 m", "0 ft"),
            ],
        ),
        (
            Dimension::Mass,
            &[
                (0.0, "0 kg", "0 lb"),
                (94.0, "94 kg", "207 lb"),
                (94.34, "94.3 kg", "208 lb"),
                (99.94, "99.9 kg", "220 lb"),
                (99.96, "100 kg", "220 lb"),
                (120.4, "120 kg", "265 lb"),
                (0.4 * lb, "0.2 kg", "0 lb"),
            ],
        ),
        (
            Dimension::Force,
            &[
                (0.0, "0 N", "0 lbf"),
                (-0.01, "0 N", "0 lbf"),
                (9.94, "9.9 N", "2.2 lbf"),
                (9.96, "10 N", "2.2 lbf"),
                (400.4, "400 N", "90 lbf"),
                (999.4, "999 N", "225 lbf"),
                (999.6, "1 kN", "225 lbf"),
                (1234.0, "1.23 kN", "277 lbf"),
                (22_000.0, "22 kN", "4946 lbf"),
                (9.96 * lbf, "44 N", "10 lbf"),
            ],
        ),
        (
            Dimension::Angle,
            &[
                (0.0, "0°", "0°"),
                (45.0 * deg, "45°", "45°"),
                (7.46 * deg, "7.5°", "7.5°"),
                (9.96 * deg, "10°", "10°"),
                (-112.4 * deg, "−112°", "−112°"),
                (-0.01 * deg, "0°", "0°"),
            ],
        ),
        (
            Dimension::Energy,
            &[
                (0.0, "0 J", "0 ft-lbf"),
                (9.94, "9.9 J", "7.3 ft-lbf"),
                (400.4, "400 J", "295 ft-lbf"),
                (999.4, "999 J", "737 ft-lbf"),
                (999.6, "1 kJ", "737 ft-lbf"),
                (1355.0, "1.36 kJ", "999 ft-lbf"),
                (1355.2, "1.36 kJ", "1000 ft-lbf"),
                (8629.8, "8.63 kJ", "6370 ft-lbf"),
                (9_996.0, "10 kJ", "7370 ft-lbf"),
                (12_345.0, "12.3 kJ", "9110 ft-lbf"),
            ],
        ),
        (
            Dimension::Power,
            &[(0.0, "0 W", "0 W"), (7.46, "7.5 W", "7.5 W"), (9.96, "10 W", "10 W"), (1234.4, "1234 W", "1234 W")],
        ),
        (
            Dimension::Speed,
            &[
                (0.0, "0 m/min", "0 ft/min"),
                (0.1, "6 m/min", "20 ft/min"),
                (0.0123, "0.7 m/min", "2.4 ft/min"),
                (0.166, "10 m/min", "33 ft/min"),
                (0.99, "59 m/min", "195 ft/min"),
                (0.992, "1 m/s", "195 ft/min"),
                (1.38, "1.4 m/s", "272 ft/min"),
                (-0.1, "−6 m/min", "−20 ft/min"),
            ],
        ),
        (
            Dimension::Duration,
            &[
                (0.0, "0 s", "0 s"),
                (2.5, "2.5 s", "2.5 s"),
                (9.96, "10 s", "10 s"),
                (45.0, "45 s", "45 s"),
                (59.6, "1 min", "1 min"),
                (110.0, "1 min 50 s", "1 min 50 s"),
                (560.0, "9 min", "9 min"),
                (599.6, "10 min", "10 min"),
                (2100.0, "35 min", "35 min"),
                (3571.0, "1 h", "1 h"),
                (3900.0, "1 h 5 min", "1 h 5 min"),
            ],
        ),
        (
            Dimension::Ratio,
            &[(0.0, "0.00", "0.00"), (0.9, "0.90", "0.90"), (2.625, "2.63", "2.63"), (-0.001, "0.00", "0.00")],
        ),
    ];
    let rows = tables.iter().flat_map(|&(dimension, rows)| rows.iter().map(move |&row| (dimension, row)));
    for (dimension, (value, si, us)) in rows {
        assert_eq!(written(value, dimension, SI), si, "{value}");
        assert_eq!(written(value, dimension, US), us, "{value}");
        assert_eq!(written(value, dimension, SI_COMMA), si.replace('.', ","), "{value}");
        assert_eq!(written(value, dimension, US_COMMA), us.replace('.', ","), "{value}");
    }
}

#[test]
fn what_has_no_figure_is_written_so_that_nobody_reads_a_number() {
    for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, f64::MAX, -1e30] {
        for dimension in Dimension::ALL {
            for view in VIEWS {
                assert_eq!(written(value, dimension, view), "—");
            }
            assert_eq!(canonical_si(value, dimension), "");
        }
    }
    assert_eq!(read("—", Dimension::Ratio, None), Err(Misread::NotANumber));
}

/// Found by half an hour of mutated texts: so many feet that the inches are lost in rounding.
#[test]
fn no_length_has_less_than_no_inches_left_over() {
    for si in [1_399_999_999_999_991.5, 1e15, 1e14 + 0.3] {
        let text = written(si, Dimension::Length, US);
        assert!(!text.contains('−'), "{text}");
        let back = read(&text, Dimension::Length, None).expect("it is read back");
        assert!((back - si).abs() < 0.31, "{text}");
    }
}

#[test]
fn a_share_is_written_in_whole_per_cent_that_can_be_read() {
    assert_eq!(percent(2.0 / 3.0, SI), "67 %");
    assert_eq!(percent(-0.05, SI), "−5 %");
    assert_eq!(percent(1.0, SI_COMMA), "100 %");
    assert_eq!(read(&percent(0.67, SI), Dimension::Ratio, None), Ok(0.67));
    assert_eq!(plain(2.6, 2, SI_COMMA), "2,60");
}

#[test]
fn an_si_value_in_a_link_is_short_and_plain() {
    assert_eq!(canonical_si(11.0, Dimension::Length), "11m");
    assert_eq!(canonical_si(-0.0, Dimension::Length), "0m");
    assert_eq!(canonical_si(94.3, Dimension::Mass), "94.3kg");
    assert_eq!(canonical_si(-400.0, Dimension::Force), "-400N");
    assert_eq!(canonical_si(2.625, Dimension::Duration), "2.6250s");
    assert_eq!(canonical_si(0.9, Dimension::Ratio), "0.9");
    assert_eq!(canonical_si(0.2, Dimension::Speed), "0.2m-per-s");
    assert_eq!(canonical_si(0.785_398_163_397_448_3, Dimension::Angle), "0.7853981633974483rad");
}
