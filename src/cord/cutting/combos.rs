//! The hanks to buy, cheapest first, that pass every law they must keep together.

use super::cover::Cover;
use super::shop::Shop;
use std::collections::BTreeSet;

/// How many of each hank.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Combo {
    /// `cost << 8 | hanks`.
    pub(super) buy: u64,
    /// In the order of the shop's hanks.
    pub(super) counts: Vec<u32>,
}

/// Hanks chosen in part: the least they can count in the end, how many hanks are still to be decided on, how many of each
/// that was looked at.
type Part = (u64, usize, Vec<u8>);

/// For a law and the hanks from a place on: the cost and the most of the one that covers most for its cost, and the most
/// of any.
type Rate = (u32, u32, u32);

/// All choices of hanks, of which the one that can come cheapest is always followed up first.
///
/// # Guarantees
/// Whole choices come out in the order of what they count, and none is skipped that keeps the laws. No choice to come
/// counts less than [`least`](Self::least), which never falls.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Combos {
    open: BTreeSet<Part>,
    rates: Vec<Vec<Rate>>,
    laws: usize,
}

/// What following up one part came to.
pub(super) enum Followed {
    /// These hanks are chosen.
    Whole(Combo),
    /// There is more to follow up.
    On,
    /// Nothing is left that counts no more than was asked, or too much is left to remember.
    End,
}

/// So many parts are remembered: some 10 MB (judged).
const MOST_PARTS: usize = 1 << 16;

impl Combos {
    pub(super) fn new() -> Self {
        let mut open = BTreeSet::new();
        open.insert((0, usize::MAX, vec![0]));
        Self { open, rates: Vec::new(), laws: 0 }
    }

    /// No choice to come counts less.
    pub(super) fn least(&self) -> u64 {
        self.open.first().map_or(u64::MAX, |part| part.0)
    }

    /// Follows up the part that can come cheapest, if it can count no more than `most`.
    pub(super) fn follow(&mut self, shop: &Shop, laws: &[Cover], most: u64) -> Followed {
        if self.laws != laws.len() {
            (self.rates, self.laws) = (rates(shop, laws), laws.len());
        }
        if self.least() > most || self.open.len() > MOST_PARTS {
            return Followed::End;
        }
        let Some((least, _, counts)) = self.open.pop_first() else { return Followed::End };
        // Laws may have been added since it was put by.
        let Some(now) = self.part(shop, laws, least, counts) else { return Followed::On };
        if now.0 > least {
            self.open.insert(now);
            return Followed::On;
        }
        let (least, undecided, counts) = now;
        if undecided == 0 {
            let mut whole = Vec::new();
            for count in counts.iter().take(shop.hanks.len()) {
                whole.push(u32::from(*count));
            }
            return Followed::Whole(Combo { buy: least, counts: whole });
        }
        // Either one more of the last hank, or none: then on to the next.
        let limit = counts.len().checked_sub(1).and_then(|at| shop.hanks.get(at)).map_or(0, |hank| hank.limit);
        let mut more = counts.clone();
        if let Some(last) = more.last_mut().filter(|last| u32::from(**last) < limit) {
            *last += 1;
            self.put(shop, laws, least, more);
        }
        let mut next = counts;
        next.push(0);
        self.put(shop, laws, least, next);
        Followed::On
    }

    fn put(&mut self, shop: &Shop, laws: &[Cover], least: u64, counts: Vec<u8>) {
        if let Some(part) = self.part(shop, laws, least, counts) {
            self.open.insert(part);
        }
    }

    /// The part of some counts, of which the last may still grow; none where nothing can come of it.
    fn part(&self, shop: &Shop, laws: &[Cover], before: u64, counts: Vec<u8>) -> Option<Part> {
        let mut buy = 0;
        for (hank, count) in shop.hanks.iter().zip(&counts) {
            buy += (u64::from(hank.cost) << 8 | 1) * u64::from(*count);
            // Also so that the number of hanks stays within its bits.
            if buy & 0xff > shop.weights.len() as u64 || u32::from(*count) > hank.limit {
                return None;
            }
        }
        let at = counts.len().saturating_sub(1);
        let (mut cost, mut hanks) = (0, 0);
        for (law, cover) in laws.iter().enumerate() {
            let mut need = cover.need;
            for (most, count) in cover.most.iter().zip(&counts) {
                need = need.saturating_sub(most * u32::from(*count));
            }
            if need > 0 {
                let (price, covered, most) = *self.rates.get(at)?.get(law)?;
                if covered == 0 {
                    return None;
                }
                cost = cost.max((u64::from(need) * u64::from(price)).div_ceil(u64::from(covered)));
                hanks = hanks.max(need.div_ceil(most));
            }
        }
        let least = (buy + (cost << 8 | u64::from(hanks))).max(before);
        Some((least, shop.hanks.len().saturating_sub(at), counts))
    }
}

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
