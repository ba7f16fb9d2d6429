//! The hanks to buy, cheapest first, that pass every law they must keep together.

use super::cover::Cover;
use super::shop::Shop;

/// How many of each hank.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Combo {
    /// `cost << 8 | hanks`.
    pub(super) buy: u64,
    /// In the order of the shop's hanks.
    pub(super) counts: Vec<u32>,
}

/// The first that comes after `after`, and counts less than `below`.
///
/// # Guarantees
/// Exact for the laws given: it skips none that keeps them. `steps` grows by what was looked at.
pub(super) fn next(shop: &Shop, covers: &[Cover], after: Option<&Combo>, below: u64, steps: &mut u64) -> Option<Combo> {
    let mut needs = Vec::new();
    for cover in covers {
        needs.push(cover.need);
    }
    let mut search =
        Search { shop, after, covers, rates: rates(shop, covers), below, found: None, counts: Vec::new(), steps };
    search.choose(0, 0, &needs);
    search.found
}

/// For a law and the hanks from a place on: the cost and the most of the one that covers most for its cost, and the most
/// of any.
type Rate = (u32, u32, u32);

/// For every place among the hanks, the rates of every law.
fn rates(shop: &Shop, covers: &[Cover]) -> Vec<Vec<Rate>> {
    let mut rates = Vec::new();
    let mut from: Vec<Rate> = vec![(0, 0, 0); covers.len()];
    for (at, hank) in shop.hanks.iter().enumerate().rev() {
        for (rate, cover) in from.iter_mut().zip(covers) {
            let most = cover.most.get(at).copied().unwrap_or(0);
            let (cost, covered, _) = *rate;
            if u64::from(hank.cost) * u64::from(covered) < u64::from(cost) * u64::from(most) || covered == 0 {
                (rate.0, rate.1) = (hank.cost, most);
            }
            rate.2 = rate.2.max(most);
        }
        rates.insert(0, from.clone());
    }
    rates
}

struct Search<'a> {
    shop: &'a Shop,
    after: Option<&'a Combo>,
    covers: &'a [Cover],
    rates: Vec<Vec<Rate>>,
    below: u64,
    found: Option<Combo>,
    counts: Vec<u32>,
    steps: &'a mut u64,
}

impl Search<'_> {
    /// Chooses how many of the hank at a place and of those behind it, with so much bought and so much still needed.
    fn choose(&mut self, at: usize, buy: u64, needs: &[u32]) {
        *self.steps += 1;
        let Some(hank) = self.shop.hanks.get(at) else {
            let combo = Combo { buy, counts: self.counts.clone() };
            if self.after.is_none_or(|after| combo > *after) {
                self.below = buy;
                self.found = Some(combo);
            }
            return;
        };
        let (limit, cost) = (hank.limit, u64::from(hank.cost) << 8 | 1);
        let mut left = needs.to_vec();
        let mut buy = buy;
        for count in 0..=limit {
            if count > 0 {
                buy += cost;
                for (left, cover) in left.iter_mut().zip(self.covers) {
                    *left = left.saturating_sub(cover.most.get(at).copied().unwrap_or(0));
                }
            }
            if buy >= self.below || buy & 0xff > self.shop.weights.len() as u64 {
                break;
            }
            if self.least(at + 1, &left).is_some_and(|least| buy + least < self.below) {
                self.counts.push(count);
                self.choose(at + 1, buy, &left);
                self.counts.pop();
            }
        }
    }

    /// The least that what is still needed can count, out of the hanks from a place on; none where it cannot be had.
    fn least(&self, at: usize, needs: &[u32]) -> Option<u64> {
        let (mut cost, mut hanks) = (0, 0);
        for (law, need) in needs.iter().enumerate() {
            if *need > 0 {
                let (price, covered, most) = *self.rates.get(at)?.get(law)?;
                if covered == 0 {
                    return None;
                }
                cost = cost.max((u64::from(*need) * u64::from(price)).div_ceil(u64::from(covered)));
                hanks = hanks.max(need.div_ceil(most));
            }
        }
        Some(cost << 8 | u64::from(hanks))
    }
}
