//! Orders by dice.

use boughline::cord::cutting::{Order, Stock};

/// A die whose throws are always the same.
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x2545_f491_4f6c_dd1d)
    }

    /// A number from `least` to `most`.
    pub(crate) fn from(&mut self, least: u32, most: u32) -> u32 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        least + ((self.0 >> 33) % u64::from(most - least + 1)) as u32
    }
}

/// Up to nine cords and three stocks, with and without prices, kerf, end allowance and limits.
pub(crate) fn small(seed: u64) -> Order {
    let mut dice = Dice::new(seed);
    // Few lengths, so that much comes out even; or any.
    let step = [1_000, 2_500, 1, 254][dice.from(0, 3) as usize];
    let count = dice.from(1, 9);
    let cords = (0..count).map(|_| dice.from(3_000 / step, 40_000 / step) * step).collect();
    let stocks = (0..dice.from(1, 3))
        .map(|_| Stock {
            length: dice.from(10_000 / step, 100_000 / step) * step,
            price: (dice.from(0, 2) > 0).then(|| [0, 500, 700, 1200][dice.from(0, 3) as usize]),
            limit: (dice.from(0, 1) > 0).then(|| dice.from(0, 4)),
        })
        .collect();
    Order {
        cords,
        stocks,
        kerf: [0, 50, 1_000][dice.from(0, 2) as usize],
        end: [0, 500, 2_000][dice.from(0, 2) as usize],
    }
}

/// Cords for a tree or several: 0.3 to 4 m to the centimetre, out of two to six of the lengths that are sold, half of
/// them priced with a little less a metre for the longer ones, with and without remnants at home.
pub(crate) fn realistic(seed: u64, count: u32) -> Order {
    let mut dice = Dice::new(seed);
    let cords = (0..count).map(|_| dice.from(30, 400) * 100).collect();
    let priced = dice.from(0, 1) == 0;
    let mut stocks = Vec::new();
    let wanted = dice.from(2, 6);
    while stocks.len() < wanted as usize {
        let metres = dice.from(5, 50);
        let a_metre = 100 - metres + dice.from(0, 20);
        stocks.push(Stock { length: metres * 10_000, price: priced.then_some(metres * a_metre), limit: None });
    }
    if dice.from(0, 3) == 0 {
        stocks.push(Stock { length: dice.from(50, 600) * 100, price: Some(0), limit: Some(1) });
    }
    Order { cords, stocks, kerf: 50, end: 500 }
}

/// Cords around a third of a hank, of which three go into one or do not.
pub(crate) fn hard(seed: u64, count: u32) -> Order {
    let mut dice = Dice::new(seed);
    let cords = (0..count).map(|_| dice.from(280, 380) * 100).collect();
    let stock = |metres: u32| Stock { length: metres * 10_000, price: None, limit: None };
    Order { cords, stocks: vec![stock(10), stock(7)], kerf: 50, end: 500 }
}
