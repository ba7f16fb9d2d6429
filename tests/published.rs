//! Gear and trees against what is published of them: figures that no other table of these tests holds.
#![cfg(not(target_arch = "wasm32"))]

use boughline::descent::METAL_FRICTION;
use boughline::field::Spread;
use boughline::gear::{FULL_BODY_LIMIT, Fibre, Knot, RopeKind, TurnKind};
use boughline::quantity::{Angle, POUND_FORCE};
use boughline::tree::{BARK_FRICTION, friction, ratio};

fn is_within(published: f64, Spread { low, high, .. }: Spread) -> bool {
    low <= published && published <= high
}

/// Delaney 2022 p. 90, Prattley 2016, Setnicka 1977.
#[test]
fn every_published_turn_is_within_the_range_of_its_kind() {
    for (kind, published) in [
        (TurnKind::BearingPulley, &[0.83, 0.91, 0.93][..]),
        (TurnKind::BushPulley, &[0.75, 0.80]),
        (TurnKind::Carabiner, &[0.53, 0.59, 0.66]),
    ] {
        for kept in published {
            assert!(is_within(*kept, kind.kept()), "{kind:?} {kept}");
        }
    }
}

/// Half a turn of metal at 0.15 to 0.24 and of bark at its own friction, by the capstan equation.
#[test]
fn ring_and_bark_keep_what_the_capstan_equation_leaves() {
    let kept = |friction: f64| 1.0 / ratio(friction, Angle::degrees(180.0));
    let (ring, bark) = (TurnKind::Ring.kept(), TurnKind::Bark.kept());
    for (told, friction) in [
        (ring.low, METAL_FRICTION.high),
        (ring.high, METAL_FRICTION.low),
        (bark.low, BARK_FRICTION.high),
        (bark.likely, BARK_FRICTION.likely),
        (bark.high, BARK_FRICTION.low),
    ] {
        assert!((told - kept(friction)).abs() <= 0.005, "{told} for {}", kept(friction));
    }
}

/// Delaney 2022 p. 88: 75 kg raised with 140 kgf and lowered with 15 over half a turn of sawn timber; bars of aluminium
/// and steel 0.15 to 0.24.
#[test]
fn the_friction_of_timber_and_metal_is_that_of_the_table() {
    assert!((friction(140.0, 15.0, Angle::degrees(180.0)) - BARK_FRICTION.likely).abs() <= 0.005);
    for (raised, lowered, end) in [(88.0, 35.0, METAL_FRICTION.low), (140.0, 31.0, METAL_FRICTION.high)] {
        assert!((friction(raised, lowered, Angle::degrees(180.0)) - end).abs() <= 0.005, "{end}");
    }
}

/// Static rope 71 to 89 kN and dynamic 18 to 36 kN at a strain of one (quoting Attaway).
#[test]
fn ropes_stretch_as_published() {
    for kind in [RopeKind::LowStretchA, RopeKind::LowStretchB] {
        let Spread { likely, high, .. } = kind.modulus();
        assert!(likely >= 71e3 && (high - 89e3).abs() < 500.0, "{kind:?}");
    }
    let Spread { low, high, .. } = RopeKind::Dynamic.modulus();
    assert!((low - 18e3).abs() < 500.0 && (high - 36e3).abs() < 500.0);
}

/// A figure-eight in aramid 0.40 and in 7 mm nylon 0.92 (Moyer, Tusting and Harmston 2000), 0.50 to plan on (Delaney 2022,
/// p. 30), the best of five 0.618 (Saez and others 2024), an overhand 0.45 (FM 3-05.70), an eye 0.95 (1964 US table).
#[test]
fn knots_keep_what_is_published() {
    for (knot, fibre, published) in [
        (Knot::Any, Fibre::Aramid, 0.40),
        (Knot::Any, Fibre::Hmpe, 0.40),
        (Knot::Any, Fibre::Nylon, 0.50),
        (Knot::Any, Fibre::Polyester, 0.50),
        (Knot::Overhand, Fibre::Nylon, 0.45),
        (Knot::Eye, Fibre::Nylon, 0.95),
    ] {
        assert!((knot.kept(fibre).likely - published).abs() < 0.005, "{knot:?} {fibre:?}");
    }
    assert!(is_within(0.92, Knot::Any.kept(Fibre::Nylon)) && is_within(0.618, Knot::Any.kept(Fibre::Nylon)));
}

/// 8 kN, which the same rule writes as 1,800 lbf (29 CFR 1926.502(d), from memory).
#[test]
fn the_limit_of_a_harness_is_that_of_the_rule() {
    assert!((FULL_BODY_LIMIT.in_newtons() / POUND_FORCE.si(1800.0) - 1.0).abs() < 0.005);
}

/// Nylon 6 melts near 220 degrees Celsius, polyester at 250 to 260, high-modulus polyethylene at 147; nylon 6 takes 1,430
/// and polyester 1,030 J to warm a kilogram by a kelvin (Morton and Hearle, table 6.1).
#[test]
fn fibres_melt_and_warm_as_published() {
    for (fibre, melts) in
        [(Fibre::Nylon, 220.0..=220.0), (Fibre::Polyester, 250.0..=260.0), (Fibre::Hmpe, 147.0..=147.0)]
    {
        assert!(melts.contains(&fibre.warmth().fails), "{fibre:?}");
    }
    for (fibre, joules) in [(Fibre::Nylon, 1430.0), (Fibre::Polyester, 1030.0)] {
        assert!((fibre.warmth().specific_heat - joules).abs() < 0.5, "{fibre:?}");
    }
}
