//! Every way to cut, one after another.

use super::orders::small;
use super::{assert_feasible, best, counted};
use boughline::cord::cutting::{Cutting, Fault, Order};

/// A search through every way to part the cords into hanks, with every hank for every part.
struct Every<'a> {
    order: &'a Order,
    /// Stock, length cut, and how many cords.
    hanks: Vec<(usize, u32, u32)>,
    used: Vec<u32>,
    best: Option<(u64, usize, u32)>,
}

impl Every<'_> {
    fn cut(&mut self, cord: usize) {
        let cost: u64 =
            self.hanks.iter().map(|(stock, ..)| u64::from(self.order.cost(&self.order.stocks[*stock]))).sum();
        if self.best.is_some_and(|best| (cost, self.hanks.len()) > (best.0, best.1)) {
            return;
        }
        let Some(length) = self.order.cords.get(cord).copied() else {
            let left = |&(stock, cut, count): &(usize, u32, u32)| {
                let usable = self.order.stocks[stock].length - self.order.end;
                usable.saturating_sub(cut + count * self.order.kerf)
            };
            let longest = self.hanks.iter().map(left).max().unwrap_or(0);
            let found = (cost, self.hanks.len(), longest);
            let is_better =
                |best: (u64, usize, u32)| (found.0, found.1, u32::MAX - found.2) < (best.0, best.1, u32::MAX - best.2);
            if self.best.is_none_or(is_better) {
                self.best = Some(found);
            }
            return;
        };
        for at in 0..self.hanks.len() {
            let (stock, cut, count) = self.hanks[at];
            if cut + length + count * self.order.kerf + self.order.end <= self.order.stocks[stock].length {
                self.hanks[at] = (stock, cut + length, count + 1);
                self.cut(cord + 1);
                self.hanks[at] = (stock, cut, count);
            }
        }
        for (stock, of) in self.order.stocks.iter().enumerate() {
            if length + self.order.end <= of.length && of.limit.is_none_or(|limit| self.used[stock] < limit) {
                self.used[stock] += 1;
                self.hanks.push((stock, length, 1));
                self.cut(cord + 1);
                self.hanks.pop();
                self.used[stock] -= 1;
            }
        }
    }
}

/// Cost, hanks and longest remainder of the best plan, by every plan.
fn by_every(order: &Order) -> Option<(u64, usize, u32)> {
    let mut every = Every { order, hanks: Vec::new(), used: vec![0; order.stocks.len()], best: None };
    every.cut(0);
    every.best
}

#[test]
fn five_hundred_orders_come_out_as_every_way_says() {
    let (mut plans, mut priced, mut short) = (0, 0, 0);
    for seed in 0..500 {
        let order = small(seed);
        let expected = by_every(&order);
        let found = best(&order, 1);
        assert_eq!(found.as_ref().map(|best| counted(&order, best)), expected, "{seed}: {order:?}");
        if let Some(best) = found {
            assert_feasible(&order, &best);
            assert!(best.proved && best.remainder_proved, "{seed}");
            plans += 1;
            priced += usize::from(order.is_priced());
        } else {
            short += usize::from(Cutting::of(&order).is_ok());
        }
    }
    assert!(plans > 300 && priced > 50 && short > 10, "{plans} {priced} {short}");
}

/// The same cords once more, so many that subsets are too many: the search must find what every way finds of the half.
#[test]
fn the_search_agrees_where_every_way_can_be_tried() {
    let mut tried = 0;
    for seed in 500..800 {
        let mut order = small(seed);
        // More stocks than the subsets take: copies with nothing in them.
        while order.stocks.len() < 7 {
            let longer = order.stocks.iter().map(|stock| stock.length).max().unwrap_or(0);
            order.stocks.push(boughline::cord::cutting::Stock {
                length: longer + 10,
                price: Some(1_000_000),
                limit: Some(1),
            });
        }
        let Some((cost, hanks, left)) = by_every(&order) else { continue };
        let found = best(&order, 2_000_000).expect("a plan");
        assert_feasible(&order, &found);
        let counted = counted(&order, &found);
        if found.proved {
            assert_eq!((counted.0, counted.1), (cost, hanks), "{seed}");
        }
        assert!(u64::from(found.least_cost) <= cost, "{seed}");
        if found.remainder_proved {
            assert_eq!(counted.2, left, "{seed}");
        }
        tried += usize::from(found.proved);
    }
    assert!(tried > 200, "{tried}");
}

#[test]
fn a_cord_that_no_hank_gives_is_named() {
    let mut order = small(1);
    order.cords.push(900_000);
    let longest = order.stocks.iter().filter(|stock| stock.limit != Some(0)).map(|stock| stock.length).max().unwrap();
    let most = longest - order.end;
    assert_eq!(Cutting::of(&order), Err(Fault::TooLong { cord: order.cords.len() - 1, most }));
}
