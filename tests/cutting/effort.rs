//! How much is done at a time, and that what is claimed once stays so.

use super::orders::{Dice, hard, realistic, small};
use super::{assert_feasible, counted};
use boughline::cord::cutting::{Cutting, Order, Stock};

/// The most steps at a time: the longest round of packing one choice of hanks, and a little.
const MOST_AT_A_TIME: u64 = (1 << 17) + (1 << 12);

fn stock(length: u32) -> Stock {
    Stock { length, price: None, limit: None }
}

/// The largest lists there can be: 60 hanks of 5 to 64 m, each a little off the metre, and 200 cords.
fn sixty_hanks() -> Order {
    let mut dice = Dice::new(60);
    let cords = (0..200).map(|_| dice.from(3_000, 40_000)).collect();
    let stocks = (0..60).map(|at| stock(50_000 + at * 10_000 + dice.from(0, 99))).collect();
    Order { cords, stocks, kerf: 50, end: 500 }
}

/// Long cords to a tenth of a millimetre, out of three long hanks.
fn long_cords() -> Order {
    let mut dice = Dice::new(3);
    let cords = (0..200).map(|_| dice.from(200_000, 600_000)).collect();
    Order { cords, stocks: vec![stock(4_000_000), stock(4_500_000), stock(5_000_000)], kerf: 50, end: 500 }
}

#[test]
fn the_largest_lists_can_be_stopped_at_any_time() {
    for order in [sixty_hanks(), long_cords()] {
        let mut cutting = Cutting::of(&order).expect("an order");
        let mut most = 0;
        while cutting.more() && cutting.steps() < 200_000 {
            let before = cutting.steps();
            cutting.go_on(before + 1);
            most = most.max(cutting.steps() - before);
        }
        println!("{most} steps at a time, {} in all", cutting.steps());
        assert!(most <= MOST_AT_A_TIME, "{most}");
        let best = cutting.so_far().expect("a plan");
        assert_feasible(&order, &best);
        assert!(best.least_cost > best.cost / 10 * 9, "{} of {}", best.least_cost, best.cost);
    }
}

/// More cords than subsets take, so few that much comes out even.
fn middling(seed: u64) -> Order {
    let mut order = small(seed);
    order.cords = order.cords.iter().cycle().take(13 + seed as usize % 8).copied().collect();
    order
}

#[test]
fn what_is_claimed_proved_never_changes() {
    let (mut proved, mut remainders) = (0, 0);
    for seed in 0..1_000 {
        let order = match seed % 10 {
            0 => realistic(seed, 25),
            1 => hard(seed, 14),
            _ => middling(seed),
        };
        let Ok(mut cutting) = Cutting::of(&order) else { continue };
        let (mut bought, mut whole) = (None, None);
        loop {
            if let Some(best) = cutting.so_far() {
                let (cost, hanks, left) = counted(&order, &best);
                assert!(bought.is_none_or(|before| best.proved && before == (cost, hanks)), "{seed}");
                assert!(whole.is_none_or(|before| best.remainder_proved && before == left), "{seed}");
                bought = best.proved.then_some((cost, hanks));
                whole = best.remainder_proved.then_some(left);
            }
            if !cutting.more() || cutting.steps() > 30_000 {
                break;
            }
            cutting.go_on(cutting.steps() + 1);
        }
        proved += usize::from(bought.is_some());
        remainders += usize::from(whole.is_some());
    }
    println!("{proved} proved, {remainders} with the remainder");
    assert!(proved > 500 && remainders > 200, "{proved} {remainders}");
}
