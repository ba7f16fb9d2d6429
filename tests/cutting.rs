//! Cutting plans against an exhaustive search of their own, and the laws they keep.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::unwrap_used, clippy::indexing_slicing, reason = "what is missing fails the test")]

#[path = "cutting/effort.rs"]
mod effort;
#[path = "cutting/exhaustive.rs"]
mod exhaustive;
#[path = "cutting/laws.rs"]
mod laws;
#[path = "cutting/lists.rs"]
mod lists;
#[path = "cutting/orders.rs"]
mod orders;

use boughline::cord::cutting::{Best, Cutting, Order};

/// The best plan there is within so many steps; none where there is none.
fn best(order: &Order, steps: u64) -> Option<Best> {
    let mut cutting = Cutting::of(order).ok()?;
    cutting.go_on(steps);
    cutting.so_far()
}

/// What a plan counts, worked out anew from the order: cost, hanks, the longest single remainder.
fn counted(order: &Order, best: &Best) -> (u64, usize, u32) {
    let mut cost = 0;
    let mut longest = 0;
    for hank in &best.plan.hanks {
        cost += u64::from(order.cost(&order.stocks[hank.stock]));
        longest = longest.max(hank.left);
    }
    (cost, best.plan.hanks.len(), longest)
}

/// Whether every cord is cut once, every hank holds its cords and cuts, and none is used more often than there are.
fn assert_feasible(order: &Order, best: &Best) {
    let mut cut = vec![0; order.cords.len()];
    let mut used = vec![0; order.stocks.len()];
    for hank in &best.plan.hanks {
        assert!(!hank.cords.is_empty());
        used[hank.stock] += 1;
        let length: u32 = hank.cords.iter().map(|cord| order.cords[*cord]).sum();
        let (count, usable) = (hank.cords.len() as u32, order.stocks[hank.stock].length - order.end);
        let taken = length + order.kerf * (count - 1);
        assert!(taken <= usable, "{taken} out of {usable}");
        assert_eq!(hank.left, usable.saturating_sub(length + order.kerf * count));
        for cord in &hank.cords {
            cut[*cord] += 1;
        }
    }
    assert!(cut.iter().all(|count| *count == 1), "{cut:?}");
    for (stock, used) in order.stocks.iter().zip(used) {
        assert!(stock.limit.is_none_or(|limit| used <= limit));
    }
    assert!(best.least_cost <= best.cost);
    let (cost, hanks, _) = counted(order, best);
    assert_eq!(cost, u64::from(best.cost));
    if best.proved {
        assert_eq!((u64::from(best.least_cost), best.least_hanks as usize), (cost, hanks));
    }
}
