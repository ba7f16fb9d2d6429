//! What no plan may break.

use super::orders::{Dice, hard, realistic, small};
use super::{assert_feasible, best, counted};
use boughline::cord::cutting::{Cutting, Order};

/// Every cord, the longest first, out of the first hank of one stock that has room.
fn first_fit(order: &Order, stock: usize) -> Option<(u64, usize)> {
    let mut cords = order.cords.clone();
    cords.sort_unstable_by(|one, other| other.cmp(one));
    let usable = order.stocks[stock].length.checked_sub(order.end)?;
    let mut hanks: Vec<u32> = Vec::new();
    for cord in cords {
        match hanks.iter_mut().find(|taken| **taken + order.kerf + cord <= usable) {
            Some(taken) => *taken += order.kerf + cord,
            None if cord <= usable => hanks.push(cord),
            None => return None,
        }
    }
    let enough = order.stocks[stock].limit.is_none_or(|limit| hanks.len() <= limit as usize);
    enough.then(|| (u64::from(order.cost(&order.stocks[stock])) * hanks.len() as u64, hanks.len()))
}

#[test]
fn forty_cords_are_never_worse_than_first_fit_nor_below_the_bound() {
    let mut proved = 0;
    for seed in 0..60 {
        for order in [realistic(seed, 40), hard(seed, 40)] {
            let found = best(&order, 200_000).expect("a plan");
            assert_feasible(&order, &found);
            let (cost, hanks, _) = counted(&order, &found);
            assert!(cost >= u64::from(found.least_cost));
            for stock in 0..order.stocks.len() {
                if let Some(fit) = first_fit(&order, stock) {
                    assert!((cost, hanks) <= fit, "{seed}: {cost} {hanks} {fit:?}");
                }
            }
            proved += usize::from(found.proved);
        }
    }
    assert!(proved > 60, "{proved}");
}

#[test]
fn the_order_of_cords_and_hanks_is_of_no_account() {
    for seed in 0..40 {
        for order in [small(seed), realistic(seed, 25), hard(seed, 20)] {
            let mut turned = order.clone();
            turned.cords.reverse();
            turned.stocks.reverse();
            let mut dice = Dice::new(seed);
            let at = dice.from(0, turned.cords.len() as u32 - 1) as usize;
            turned.cords.rotate_left(at);
            let (one, other) = (best(&order, 50_000), best(&turned, 50_000));
            let told = |order: &Order, best: &boughline::cord::cutting::Best| {
                let lengths = |cords: &[usize]| cords.iter().map(|cord| order.cords[*cord]).collect::<Vec<_>>();
                let hanks = &best.plan.hanks;
                hanks.iter().map(|hank| (order.stocks[hank.stock], lengths(&hank.cords), hank.left)).collect::<Vec<_>>()
            };
            assert_eq!(one.map(|best| told(&order, &best)), other.map(|best| told(&turned, &best)), "{seed}");
        }
    }
}

#[test]
fn a_cheaper_or_longer_stock_never_makes_it_worse() {
    for seed in 0..200 {
        let order = small(seed);
        let Some(before) = best(&order, 1) else { continue };
        let mut cheaper = order.clone();
        cheaper.stocks[0].price = cheaper.stocks[0].price.map(|price| price / 2);
        if order.is_priced() {
            let after = best(&cheaper, 1).expect("a plan");
            assert!(after.cost <= before.cost, "{seed}");
            let mut longer = order.clone();
            longer.stocks[0].length += 7_000;
            let after = best(&longer, 1).expect("a plan");
            assert!((after.cost, after.plan.hanks.len()) <= (before.cost, before.plan.hanks.len()), "{seed}");
        }
        let mut more = order.clone();
        more.stocks.push(boughline::cord::cutting::Stock { length: 123_450, price: Some(900), limit: None });
        if order.is_priced() {
            assert!(best(&more, 1).expect("a plan").cost <= before.cost, "{seed}");
        }
    }
}

#[test]
fn more_effort_is_never_worse_and_steps_are_of_no_account() {
    for seed in 0..30 {
        for order in [realistic(seed, 40), hard(seed, 30)] {
            let mut cutting = Cutting::of(&order).expect("an order");
            let mut before = None;
            for steps in [10, 3_000, 20_000, 100_000, 400_000] {
                cutting.go_on(steps);
                assert_eq!(cutting.so_far(), best(&order, steps), "{seed}");
                let now = cutting.so_far().map(|best| (counted(&order, &best), best.least_cost));
                if let (Some(((cost, hanks, left), least)), Some(((now_cost, now_hanks, now_left), now_least))) =
                    (before, now)
                {
                    assert!((now_cost, now_hanks, u32::MAX - now_left) <= (cost, hanks, u32::MAX - left), "{seed}");
                    assert!(now_least >= least, "{seed}");
                }
                before = now;
            }
        }
    }
}

/// The rest of the claim, that it takes at most 200 ms, is for the benchmark of the shipped module.
#[test]
fn nearly_all_realistic_orders_of_forty_cords_are_proved() {
    let proved = |of: fn(u64, u32) -> Order| {
        let is_proved = |seed: &u64| {
            let order = of(*seed, 40);
            let found = best(&order, 5_000_000).expect("a plan");
            assert_feasible(&order, &found);
            found.proved
        };
        (1_000..1_100).filter(is_proved).count()
    };
    let (usual, thirds) = (proved(realistic), proved(hard));
    println!("{usual} of 100 proved; of cords around a third of a hank {thirds}");
    assert!(usual >= 95 && thirds >= 80, "{usual} {thirds}");
}
