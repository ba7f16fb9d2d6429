//! What laws of order have in common: two answers that differ by one thing said, and a count of what was really compared.

use super::cases;
use super::plans::{Plan, draft, with};
use boughline::field::{Kind, Said, Spread};
use boughline::quantity::Dimension;
use boughline::question::Question;
use proptest::prelude::*;
use proptest::test_runner::{TestCaseResult, TestRunner};
use std::cell::RefCell;
use std::collections::BTreeMap;

/// The answers to a plan with less and with more said in a field; none where one of them is out of order.
macro_rules! less_and_more {
    ($of:ident, $plan:expr, $id:expr, $shares:expr $(, $effort:expr)?) => {{
        let ask = |share| $of::Inputs::of(&said_so_far(&$plan, $id, share)).ok().map(|inputs| $of::ask(&inputs $(, $effort)?));
        let (one, other): (f64, f64) = $shares;
        ask(one.min(other)).zip(ask(one.max(other)))
    }};
}
pub(crate) use less_and_more;

/// A plan in which a quantity is said, so far between its limits; nearer to the low one than not, as people are.
pub(crate) fn said_so_far(plan: &Plan, id: &'static str, share: f64) -> boughline::Draft {
    let Some(Kind::Quantity(limits)) = boughline::question::field(id).map(|row| row.kind) else {
        unreachable!("a quantity")
    };
    draft(&with(plan, id, Said::Number(limits.least + (limits.most - limits.least) * share * share)))
}

pub(crate) fn shares() -> impl Strategy<Value = (f64, f64)> {
    (0.0..=1.0_f64, 0.0..=1.0_f64)
}

/// The quantities of a question whose ids end so.
pub(crate) fn ending(question: Question, end: &str, dimension: Dimension) -> Vec<&'static str> {
    let is_such = |kind: &Kind| matches!(kind, Kind::Quantity(limits) if limits.dimension == dimension);
    let ids: Vec<_> =
        question.fields().iter().filter(|row| is_such(&row.kind) && row.id.ends_with(end)).map(|row| row.id).collect();
    assert!(!ids.is_empty(), "{end}");
    ids
}

/// Whether no end of one spread is above that of the other. Elimination may differ in the last places.
fn is_at_most(one: Spread, other: Spread) -> bool {
    let below = |one: f64, other: f64| one <= other + other.abs() * 1e-9 + 1e-12;
    below(one.low, other.low) && below(one.likely, other.likely) && below(one.high, other.high)
}

/// What was compared, by name: whether one was truly less than the other.
#[derive(Debug, Default)]
pub(crate) struct Compared(BTreeMap<&'static str, bool>);

impl Compared {
    /// Notes that something was compared, and whether what was said made a difference to it.
    pub(crate) fn note(&mut self, what: &'static str, differs: bool) {
        *self.0.entry(what).or_default() |= differs;
    }

    /// Whether no end of one spread is above that of the other.
    pub(crate) fn at_most(&mut self, what: &'static str, one: Spread, other: Spread) -> bool {
        self.note(what, !is_at_most(other, one));
        is_at_most(one, other)
    }

    pub(crate) fn in_order<T: PartialOrd + Copy>(&mut self, what: &'static str, one: T, other: T) -> bool {
        self.note(what, one < other);
        one <= other
    }
}

/// The least of a hundred cases in which something must have been compared, and of these in which it was truly less.
pub(crate) type Least = (&'static str, u32, u32);

/// Tries a law on so many cases. It also fails where it compared less than `least` says: then it says nothing.
pub(crate) fn holds<S: Strategy>(
    count: u32,
    least: &[Least],
    strategy: S,
    law: impl Fn(S::Value, &mut Compared) -> TestCaseResult,
) {
    let met: RefCell<BTreeMap<&str, [u32; 2]>> = RefCell::default();
    let tried = TestRunner::new(cases(count)).run(&strategy, |value| {
        let mut compared = Compared::default();
        law(value, &mut compared)?;
        let mut met = met.borrow_mut();
        for (what, differs) in compared.0 {
            let [all, truly] = met.entry(what).or_default();
            *all += 1;
            *truly += u32::from(differs);
        }
        Ok(())
    });
    if let Err(error) = tried {
        panic!("{error}");
    }
    let met = met.into_inner();
    println!("of {count}, compared and truly less: {met:?}");
    let is_enough = |(what, all, truly): &Least| {
        met.get(what).is_some_and(|met| met[0] * 100 >= all * count && met[1] * 100 >= truly * count)
    };
    let lacking: Vec<_> = least.iter().filter(|least| !is_enough(least)).collect();
    assert!(lacking.is_empty(), "of {count} cases, compared and truly less {met:?}: too few for {lacking:?}");
    assert_eq!(met.len(), least.len(), "what is compared has a least share");
}
