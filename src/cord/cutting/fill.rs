//! Quick ways to cut the cords: where one comes off, no search is needed.

use super::shop::{Filled, Hank, Shop};
use super::sums::{FINEST, fullest, fullest_steps};

/// Every cord, the longest first, out of the first hank opened that has room, or else out of a new one of `main`, or of
/// the cheapest that has room; then every hank is changed for the cheapest that does.
pub(super) fn first_fit(shop: &Shop, main: usize) -> Option<Vec<Filled>> {
    let mut stock: Vec<u32> = Vec::new();
    for hank in &shop.hanks {
        stock.push(hank.limit);
    }
    let mut filled: Vec<Filled> = Vec::new();
    let mut rooms: Vec<u32> = Vec::new();
    for (place, weight) in shop.weights.iter().enumerate() {
        let open = rooms.iter().position(|room| room >= weight);
        let at = match open {
            Some(at) => at,
            None => {
                let mut of = None;
                if shop.hanks.get(main).is_some_and(|hank| hank.room >= *weight) && taken(&mut stock, main) {
                    of = Some(main);
                }
                let of = match of {
                    Some(of) => of,
                    None => {
                        let of = cheapest(shop, &stock, *weight)?;
                        taken(&mut stock, of);
                        of
                    }
                };
                filled.push((of, Vec::new()));
                rooms.push(shop.hanks.get(of)?.room);
                rooms.len() - 1
            }
        };
        filled.get_mut(at)?.1.push(place);
        let room = rooms.get_mut(at)?;
        *room -= weight;
    }
    for ((of, places), _) in filled.iter_mut().zip(&rooms) {
        if let Some(back) = stock.get_mut(*of) {
            *back += 1;
        }
        let mut weight = 0;
        for place in places {
            weight += shop.weight(*place);
        }
        *of = cheapest(shop, &stock, weight)?;
        taken(&mut stock, *of);
    }
    Some(filled)
}

/// Takes one, if there is one.
fn taken(stock: &mut [u32], at: usize) -> bool {
    match stock.get_mut(at) {
        Some(count) if *count > 0 => {
            *count -= 1;
            true
        }
        _ => false,
    }
}

/// The cheapest hank with room for a weight, the roomiest of them.
fn cheapest(shop: &Shop, stock: &[u32], weight: u32) -> Option<usize> {
    let mut best: Option<(usize, &Hank)> = None;
    for (at, (hank, count)) in shop.hanks.iter().zip(stock).enumerate() {
        if *count > 0 && hank.room >= weight && best.is_none_or(|(_, best)| hank.cost < best.cost) {
            best = Some((at, hank));
        }
    }
    best.map(|(at, _)| at)
}

/// Some hanks being filled, one at a time: every one but one as far as it goes, the roomiest last or first, and the rest
/// out of that one; in turn with each kind of them left to the end.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Filling {
    counts: Vec<u32>,
    /// Twice the kind that is left to the end, and one where the roomiest goes first.
    turn: usize,
    /// What is still to be filled, from the back.
    order: Vec<usize>,
    left: Vec<usize>,
    filled: Vec<Filled>,
    under_way: bool,
}

/// What one hank more came to.
pub(super) enum Next {
    /// Every cord is cut.
    So(Vec<Filled>),
    /// There is more to fill.
    On,
    /// Every turn is done.
    End,
}

impl Filling {
    pub(super) const fn of(counts: Vec<u32>) -> Self {
        Self { counts, turn: 0, order: Vec::new(), left: Vec::new(), filled: Vec::new(), under_way: false }
    }

    /// Fills one hank.
    pub(super) fn next(&mut self, shop: &Shop, steps: &mut u64) -> Next {
        let last = self.turn / 2;
        let Some(count) = self.counts.get(last) else { return Next::End };
        if *count == 0 {
            self.turn += 2;
            return Next::On;
        }
        if !self.under_way {
            self.begin(shop, last);
        }
        if let Some((at, hank)) = self.order.pop().and_then(|at| Some((at, shop.hanks.get(at)?))) {
            *steps += fullest_steps(shop, &self.left, hank.room);
            let (places, _) = fullest(shop, &self.left, hank.room, FINEST);
            self.left.retain(|place| !places.contains(place));
            self.filled.push((at, places));
            return Next::On;
        }
        self.turn += 1;
        self.under_way = false;
        let mut weight = 0;
        for place in &self.left {
            weight += shop.weight(*place);
        }
        if shop.hanks.get(last).is_none_or(|hank| weight > hank.room) {
            return Next::On;
        }
        let mut filled = std::mem::take(&mut self.filled);
        filled.push((last, std::mem::take(&mut self.left)));
        filled.retain(|(_, places)| !places.is_empty());
        Next::So(filled)
    }

    fn begin(&mut self, shop: &Shop, last: usize) {
        self.under_way = true;
        self.left = (0..shop.weights.len()).collect();
        self.filled.clear();
        self.order.clear();
        for (at, count) in self.counts.iter().enumerate() {
            for _ in 0..count - u32::from(at == last).min(*count) {
                self.order.push(at);
            }
        }
        if self.turn % 2 == 1 {
            self.order.reverse();
        }
    }
}
