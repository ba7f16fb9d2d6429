//! The cutting plan.

use super::Chapter;
use super::formula::formula;
use super::unit::{COUNT, M, MM, one, usual};
use crate::cord::cutting::{Cutting, EXACT_CORDS, MOST_CORDS, Order, Stock};
use crate::cord::{END_ALLOWANCE, KERF};
use crate::question::cut_plan::USUAL_HANKS;
use crate::source::{GEOMETRY, JUDGED};

/// Tenths of a millimetre.
const TENTHS: f64 = 10_000.0;

/// What two cords leave of one hank, in metres.
fn left(hank: f64, one: f64, other: f64) -> Option<f64> {
    let tenths = |metres: f64| (metres * TENTHS).round() as u32;
    let stock = Stock { length: tenths(hank), price: None, limit: None };
    let order = Order {
        cords: vec![tenths(one), tenths(other)],
        stocks: vec![stock],
        kerf: tenths(usual(&KERF.row).likely),
        end: tenths(usual(&END_ALLOWANCE.row).likely),
    };
    let best = Cutting::of(&order).ok()?.so_far()?;
    Some(f64::from(best.plan.hanks.first()?.left) / TENTHS)
}

pub(super) fn chapter() -> Chapter {
    let [least, .., most] = USUAL_HANKS;
    Chapter::new(
        "cutting",
        "Cutting plan",
        "Which cords come out of which hanks: the least price or length, then the fewest hanks, then the largest single remainder. Whole numbers throughout, tenths of a millimetre, so that the plan is the same on every machine and whatever the order of the list.",
        vec![
            formula("remainder", "What two cords leave of a hank")
                .words("The hank, less what its ends are no use for, less the cords, less what every cut takes; what is left lies behind one cut more.")
                .symbols(M, "r = h − e − (c + b) − 2 × k")
                .term("r", "remainder", M)
                .term("h", "hank", M)
                .term("c", "one cord, as cut", M)
                .term("b", "the other", M)
                .figure("e", "lost of every hank", usual(&END_ALLOWANCE.row), M, &[JUDGED])
                .figure("k", "lost at every cut", usual(&KERF.row), M, &[JUDGED])
                .from(&[GEOMETRY])
                .used("Out of which hanks?")
                .example(&[("h", 5.0), ("c", 1.8), ("b", 2.1)], |x| {
                    left(x.of("h"), x.of("c"), x.of("b")).unwrap_or(f64::NAN)
                }),
            formula("plan-limits", "How a plan is found")
                .words("Few cords are tried in every partition. Beyond that a plan counts as proved where it meets a bound that no plan can beat; else the answer says how far off it may be at the most. Effort is counted in steps.")
                .figure("", "every partition is tried up to so many cords of a kind", one(EXACT_CORDS as f64), COUNT, &[JUDGED])
                .figure("", "most cords of a kind", one(MOST_CORDS as f64), COUNT, &[JUDGED])
                .figure("", "shortest hank, where none are said", one(least), M, &[JUDGED])
                .figure("", "longest hank, where none are said", one(most), M, &[JUDGED])
                .figure("", "lost at every cut, the same", usual(&KERF.row), MM, &[JUDGED])
                .from(&[GEOMETRY])
                .used("Out of which hanks?"),
        ],
    )
}
