//! The length of a coil against the curve itself.

#![allow(clippy::disallowed_methods, reason = "a test’s own reckoning, to a few places")]

use boughline::cord::CordUse;
use boughline::hitch::{coil, girth};
use proptest::prelude::*;
use std::f64::consts::TAU;

/// The length of one coil as a sum of short straight pieces: the middle of the cord, on the surface of the rope.
fn along_the_curve(rope: f64, cord: f64, along: f64) -> f64 {
    const PIECES: usize = 20_000;
    let radius = (rope + cord) / 2.0;
    let at = |piece: usize| {
        let turned = TAU * piece as f64 / PIECES as f64;
        [radius * turned.cos(), radius * turned.sin(), along * piece as f64 / PIECES as f64]
    };
    let distance = |one: [f64; 3], other: [f64; 3]| {
        one.iter().zip(other).map(|(one, other)| (one - other) * (one - other)).sum::<f64>().sqrt()
    };
    (0..PIECES).map(|piece| distance(at(piece), at(piece + 1))).sum()
}

proptest! {
    #[test]
    fn a_coil_is_as_long_as_its_helix(rope in 0.005..0.025_f64, cord in 0.002..0.016_f64, strands in 1..=2_u32) {
        let along = cord * f64::from(strands);
        let (reckoned, measured) = (coil(girth(rope, 0.0, cord), along), along_the_curve(rope, cord, along));
        prop_assert!((reckoned / measured - 1.0).abs() < 1e-7, "{reckoned} {measured}");
    }

    /// A belt round two equal bars that touch is two half circles and twice the way between their middles.
    #[test]
    fn round_two_equal_bars_it_is_a_belt(bar in 0.005..0.02_f64, cord in 0.002..0.016_f64) {
        let belt = girth(bar, 0.0, cord) + 2.0 * bar;
        prop_assert!((girth(bar, bar, cord) - belt).abs() < 1e-12);
    }
}

/// The belt round unlike bars, whose straight sides lean: the formula for alike ones is short by less than 1 in 300.
#[test]
fn round_rope_and_carabiner_the_belt_is_as_good_as_exact() {
    for (rope, bar, cord) in [(0.009, 0.012, 0.006), (0.0105, 0.012, 0.007), (0.016, 0.012, 0.008)] {
        let (big, small) = (f64::max(rope, bar), f64::min(rope, bar));
        let (one, other, apart) = ((big + cord) / 2.0, (small + cord) / 2.0, (big + small) / 2.0);
        let lean: f64 = (one - other) / apart;
        let sides = 2.0 * (apart * apart - (one - other) * (one - other)).sqrt();
        let exact = sides + one * (TAU / 2.0 + 2.0 * lean.asin()) + other * (TAU / 2.0 - 2.0 * lean.asin());
        let reckoned = girth(rope, bar, cord);
        assert!((0.0..1.0 / 300.0).contains(&(1.0 - reckoned / exact)), "{reckoned} {exact}");
    }
}

/// One table: every hitch has a file of its own, and every file is a use.
#[test]
fn every_hitch_is_in_the_table() {
    let source = include_str!("../../src/hitch/mod.rs");
    let patterns = source.lines().filter(|line| line.starts_with("pub use") && !line.contains(['{', '}']));
    let names: Vec<&str> = patterns.filter(|line| !line.contains("Pattern")).collect();
    let used = include_str!("../../src/cord/cord_use.rs");
    for line in &names {
        let name = line.rsplit("::").next().unwrap_or_default().trim_end_matches(';');
        assert!(used.contains(&format!("&{name},")), "give {name} a variant of CordUse in src/cord/cord_use.rs");
    }
    assert!(names.len() >= 14, "they are found at all: {names:?}");
    let hitches = CordUse::ALL.iter().filter(|cord_use| cord_use.is_hitch() || **cord_use == CordUse::Garda);
    assert_eq!(hitches.count(), names.len());
    for cord_use in CordUse::ALL {
        let pattern = cord_use.pattern();
        assert!(!pattern.sources.is_empty() && !pattern.ends.is_empty() && pattern.usual > 0.0, "{cord_use:?}");
        assert!((1..=4).contains(&pattern.legs) && pattern.crossing <= 2 && pattern.eyes <= 2, "{cord_use:?}");
    }
}
