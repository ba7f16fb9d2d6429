//! The reverse: a rope of what a height needs goes as high as that, and no higher.

use super::plans::{draft, with, without};
use super::rope_plans::rope_plans;
use super::{answer, plans::Plan};
use boughline::field::{Said, Spread};
use boughline::question::rope_length::{Answer, Caution, Inputs, ask};
use proptest::prelude::*;
use proptest::test_runner::Config;

/// What a rope can be said to be.
const LEAST: f64 = 2.0;
const MOST: f64 = 400.0;

fn owning(plan: &Plan, rope: f64) -> Answer {
    answer(&with(plan, "ropeOwned", Said::Number(rope)))
}

/// How high the crotch is that the rope is measured for, at each end: what saves rope first.
fn ends(need: Spread) -> [f64; 3] {
    [need.high, need.likely, need.low]
}

proptest! {
    #![proptest_config(Config { cases: 512, failure_persistence: None, ..Config::default() })]

    #[test]
    fn a_rope_of_what_a_height_needs_goes_as_high_as_that(plan in rope_plans()) {
        let planned = answer(&plan);
        for (end, need) in ends(planned.need).into_iter().enumerate() {
            prop_assume!((LEAST..=MOST).contains(&need));
            let owned = owning(&plan, need).owned.expect("it was said");
            let height = owned.highest[end].expect("it goes as high as it was planned");
            prop_assert!((height - planned.crotch).abs() < 1e-6, "{} for {}", height, planned.crotch);
        }
    }

    /// To be sure no more than as likely as not, and that no more than at the best; a longer rope no less.
    #[test]
    fn heights_are_in_order_and_a_longer_rope_goes_no_less_high(plan in rope_plans(), one in LEAST..=MOST, other in LEAST..=MOST) {
        let highest = |rope: f64| owning(&plan, rope).owned.expect("it was said").highest.map(|height| height.unwrap_or(-1.0));
        let (short, long) = (highest(one.min(other)), highest(one.max(other)));
        prop_assert!(short.is_sorted() && long.is_sorted());
        prop_assert!(short.iter().zip(&long).all(|(short, long)| short <= long));
    }

    /// What a rope lacks is what would be enough, and its end is as far above the ground as it lacks on the way down.
    #[test]
    fn a_rope_is_said_to_be_short_where_it_is(plan in rope_plans(), rope in LEAST..=MOST) {
        let owned = owning(&plan, rope);
        let of = owned.owned.expect("it was said");
        let cautions: Vec<_> = owned.cautions.iter().filter(|caution| matches!(caution, Caution::RopeEndsAbove { .. } | Caution::RopeTooShort { .. })).collect();
        prop_assert_eq!(cautions.is_empty(), rope >= owned.need.high - 1e-6);
        prop_assert!((of.short.likely - (owned.need.likely - rope).max(0.0)).abs() < 1e-9);
        let ends_above = cautions.iter().any(|caution| matches!(caution, Caution::RopeEndsAbove { .. }));
        prop_assert_eq!(ends_above, of.above.is_some());
        if let Some(above) = of.above {
            prop_assert!(above.likely <= of.short.likely + 1e-9 && above.likely < owned.crotch && above.high <= owned.crotch);
            // So much more rope, and it reaches the ground for sure.
            if rope + above.high <= MOST && above.high < owned.crotch {
                let longer = owning(&plan, rope + above.high + 1e-5).owned.expect("it was said");
                prop_assert_eq!(longer.above, None);
            }
        }
    }

    /// Without a height the rope that is had says it: the highest to be sure, which needs all of that rope.
    #[test]
    fn without_a_height_the_rope_says_how_high(plan in rope_plans(), rope in LEAST..=MOST) {
        let plan = with(&without(&plan, &["crotchHeight"]), "ropeOwned", Said::Number(rope));
        match Inputs::of(&draft(&plan)) {
            Ok(inputs) => {
                let answer = ask(&inputs);
                prop_assert!(!answer.planned && answer.crotch > 1.0);
                prop_assert!((answer.need.high - rope).abs() < 1e-6, "{:?} of {}", answer.need, rope);
                let owned = answer.owned.expect("it was said");
                prop_assert!((owned.highest[0].expect("it goes over one") - answer.crotch).abs() < 1e-6);
                prop_assert!(owned.short.high < 1e-6);
            }
            Err(errors) => {
                // Only where it goes over none.
                prop_assert_eq!(errors.len(), 1);
                prop_assert_eq!(&errors[0].fields, &["ropeOwned"]);
            }
        }
    }
}
