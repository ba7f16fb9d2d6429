//! Near the crotch, and at the start: what is worse never makes it better.

use super::better::{at_most, numbers, words};
use super::cases;
use super::plans::{Plan, plans, with};
use boughline::field::{Said, Spread};
use proptest::prelude::*;

/// The plan under a crotch, and over an edge.
fn under(plan: &Plan, crotch: f64, edge: f64) -> Plan {
    with(&with(plan, "crotchHeight", Said::Number(crotch)), "platformHeight", Said::Number(edge))
}

fn known_at_most(one: Option<Spread>, other: Option<Spread>) -> Result<(), TestCaseError> {
    prop_assert_eq!(one.is_some(), other.is_some());
    prop_assert!(one.zip(other).is_none_or(|(one, other)| at_most(one, other)), "{:?} then {:?}", one, other);
    Ok(())
}

proptest! {
    #![proptest_config(cases(128))]

    #[test]
    fn a_longer_stack_never_brings_the_seat_higher(
        plan in plans(),
        places in (1.0..=120.0_f64, 0.2..=120.0_f64),
        stack in (0.1..=1.5_f64, 0.1..=1.5_f64),
    ) {
        let (short, long) = numbers(&under(&plan, places.0, places.1), "stackLength", stack.0, stack.1);
        known_at_most(long.top.seat, short.top.seat)?;
        known_at_most(long.top.over_edge, short.top.over_edge)?;
        known_at_most(short.top.left, long.top.left)?;
        prop_assert!(short.top.seat.is_some() && short.top.over_edge.is_some());
    }

    #[test]
    fn a_higher_edge_is_never_easier_to_get_over(
        plan in plans(),
        crotch in 1.0..=120.0_f64,
        edge in (0.2..=120.0_f64, 0.2..=120.0_f64),
    ) {
        let (low, high) = numbers(&under(&plan, crotch, 1.0), "platformHeight", edge.0, edge.1);
        known_at_most(high.top.over_edge, low.top.over_edge)?;
        prop_assert!(low.top.over_edge.is_some());
        prop_assert_eq!(low.top.seat, high.top.seat);
    }

    #[test]
    fn a_higher_crotch_never_brings_the_seat_lower(plan in plans(), crotch in (1.0..=120.0_f64, 1.0..=120.0_f64)) {
        let (low, high) = numbers(&plan, "crotchHeight", crotch.0, crotch.1);
        known_at_most(low.top.seat, high.top.seat)?;
        known_at_most(high.top.left, low.top.left)?;
        prop_assert!(at_most(low.taken_up.stretch, high.taken_up.stretch));
    }

    /// No quantile of a dynamic rope is stiffer than the same one of another kind.
    #[test]
    fn a_stiffer_rope_never_needs_more_strokes_that_raise_nobody(
        plan in plans(),
        stiff in prop::sample::select(vec!["low-stretch-a", "low-stretch-b", "tree-line"]),
    ) {
        let (soft, stiff) = words(&plan, "ropeKind", "dynamic", stiff);
        known_at_most(stiff.taken_up.strokes, soft.taken_up.strokes)?;
        known_at_most(stiff.taken_up.all_strokes, soft.taken_up.all_strokes)?;
        prop_assert!(at_most(stiff.taken_up.stretch, soft.taken_up.stretch));
        prop_assert_eq!(stiff.strokes, soft.strokes);
        prop_assert_eq!(stiff.rope_handled, soft.rope_handled);
    }

    #[test]
    fn a_rope_made_fast_at_the_foot_never_gives_less(plan in plans()) {
        let (crotch, foot) = words(&plan, "anchor", "canopy", "base");
        prop_assert!(at_most(crotch.taken_up.stretch, foot.taken_up.stretch));
    }
}
