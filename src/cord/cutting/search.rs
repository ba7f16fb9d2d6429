//! All of it together, within an effort.

use super::aims::Aims;
use super::combos::{Combo, next};
use super::cover::{Cover, covers};
use super::exact::{EXACT_CORDS, EXACT_STOCKS, best};
use super::fill::{first_fit, quick};
use super::order::{Fault, Order, Plan};
use super::pack::{Packed, packed};
use super::remainder::{longest_left, most_left};
use super::shop::{Filled, Shop};

/// The best plan so far, and what is known of it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Best {
    /// The plan.
    pub plan: Plan,
    /// What it counts towards the first aim: price in hundredths, or length bought in tenths of a millimetre.
    pub cost: u32,
    /// No plan costs less.
    pub least_cost: u32,
    /// No plan that costs [`least_cost`](Self::least_cost) takes fewer hanks.
    pub least_hanks: u32,
    /// Whether no plan costs less, and none that costs as much takes fewer hanks.
    pub proved: bool,
    /// Whether, besides, none of those leaves a longer single remainder.
    pub remainder_proved: bool,
}

/// A plan in the making, which can go on where it stopped.
///
/// # Guarantees
/// However many times it is told to go on, it stands where it would had it been told once; it never gets worse.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cutting {
    shop: Shop,
    /// Laws by which hanks are chosen, and all laws.
    used: Vec<Cover>,
    all: Vec<Cover>,
    best: Option<(Aims, Vec<Filled>)>,
    /// The hanks that were chosen last, and whether there are no more to choose.
    chosen: Option<Combo>,
    chose_all: bool,
    /// The hanks that were compared last.
    compared: Option<Combo>,
    /// Hanks of which it is not known whether they do, in order.
    open: Vec<Combo>,
    /// How many of those were looked at in this round, and how many rounds are done.
    looked: usize,
    rounds: u32,
    stage: Stage,
    /// The longest single remainder that any plan of the best's cost and hanks can leave.
    longest: u32,
    steps: u64,
}

/// What it is at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Stage {
    /// Choosing hanks, cheapest first.
    Choosing,
    /// Among those that cost as much as the best, looking for a longer remainder.
    Comparing,
    /// Searching those of which it is not known whether they do.
    Searching,
    /// Nothing is left to do.
    Done,
}

/// Steps of a search in the first round; every round takes eight times as many (judged).
const FIRST_ROUND: u64 = 1 << 11;
const LAST_ROUND: u32 = 2;
/// So many hanks of unknown use are kept (judged).
const MOST_OPEN: usize = 400;

impl Cutting {
    /// The order taken up, and first plans made.
    ///
    /// # Errors
    /// The [`Fault`] why there can be no plan.
    pub fn of(order: &Order) -> Result<Self, Fault> {
        let shop = Shop::of(order)?;
        let mut cutting = Self {
            used: Vec::new(),
            all: Vec::new(),
            best: None,
            chosen: None,
            chose_all: false,
            compared: None,
            open: Vec::new(),
            looked: 0,
            rounds: 0,
            stage: Stage::Choosing,
            longest: 0,
            steps: 0,
            shop,
        };
        let shop = &cutting.shop;
        if shop.weights.len() <= EXACT_CORDS && shop.hanks.len() <= EXACT_STOCKS {
            cutting.best = best(shop).map(|filled| (shop.worth(&filled), filled));
            cutting.longest = cutting.best.as_ref().map_or(0, |(_, filled)| longest_left(shop, filled));
            cutting.chose_all = true;
            cutting.stage = Stage::Done;
            return Ok(cutting);
        }
        cutting.all = covers(shop);
        // The weights, and how many cords there are; the others as they turn out to be of use.
        cutting.used.extend(cutting.all.first().cloned());
        cutting.used.extend(cutting.all.last().cloned());
        for main in 0..cutting.shop.hanks.len() {
            if let Some(filled) = first_fit(&cutting.shop, main) {
                cutting.take(filled);
            }
        }
        cutting.go_on(1);
        Ok(cutting)
    }

    /// Goes on until so many steps are done, or nothing is left to do.
    pub fn go_on(&mut self, steps: u64) {
        while self.steps < steps && self.stage != Stage::Done {
            self.steps += 1;
            match self.stage {
                Stage::Choosing => self.choose(),
                Stage::Comparing => self.compare(),
                Stage::Searching => self.search(),
                Stage::Done => {}
            }
        }
    }

    /// How many steps were done.
    #[must_use]
    pub const fn steps(&self) -> u64 {
        self.steps
    }

    /// Whether going on could change anything.
    #[must_use]
    pub fn more(&self) -> bool {
        self.stage != Stage::Done
    }

    /// Whether nothing is left to find out about price and hanks: where there is no plan, that there can be none.
    #[must_use]
    pub fn is_certain(&self) -> bool {
        self.chose_all && self.open.is_empty()
    }

    /// The best plan so far; none where none was found, or [`is_certain`](Self::is_certain) that there is none.
    #[must_use]
    pub fn so_far(&self) -> Option<Best> {
        let (aims, filled) = self.best.as_ref()?;
        let buy = aims.buy();
        let least = self.least().min(buy);
        let proved = least == buy;
        Some(Best {
            plan: self.shop.plan(filled),
            cost: (buy >> 8) as u32,
            least_cost: (least >> 8) as u32,
            least_hanks: (least & 0xff) as u32,
            proved,
            remainder_proved: proved && self.longest <= longest_left(&self.shop, filled),
        })
    }

    /// No plan counts less: `cost << 8 | hanks`.
    fn least(&self) -> u64 {
        match (self.open.first(), &self.chosen) {
            (Some(open), _) => open.buy,
            (None, _) if self.chose_all => self.best(),
            (None, chosen) => chosen.as_ref().map_or(0, |chosen| chosen.buy),
        }
    }

    /// What the best plan counts.
    fn best(&self) -> u64 {
        self.best.as_ref().map_or(u64::MAX, |(aims, _)| aims.buy())
    }

    /// Keeps a plan if it is better.
    fn take(&mut self, filled: Vec<Filled>) {
        let aims = self.shop.worth(&filled);
        if self.best.as_ref().is_none_or(|(best, _)| aims < *best) {
            self.best = Some((aims, filled));
            let best = aims.buy();
            self.open.retain(|open| open.buy < best);
        }
    }

    /// The next hanks that keep every law and count less than `below`.
    fn next(&mut self, after: Option<&Combo>, below: u64) -> Option<Combo> {
        loop {
            let combo = next(&self.shop, &self.used, after, below, &mut self.steps)?;
            let broken = self.all.iter().find(|law| {
                let mut most = 0;
                for (each, count) in law.most.iter().zip(&combo.counts) {
                    most += each * count;
                }
                most < law.need
            });
            match broken {
                Some(law) => self.used.push(law.clone()),
                None => return Some(combo),
            }
        }
    }

    fn choose(&mut self) {
        let after = self.chosen.take();
        let Some(combo) = self.next(after.as_ref(), self.best()) else {
            self.chose_all = true;
            self.stage = if self.best.is_some() { Stage::Comparing } else { Stage::Searching };
            return;
        };
        self.chosen = Some(combo.clone());
        if !self.fill(&combo) {
            match packed(&self.shop, &self.used, &combo.counts, &mut self.steps, FIRST_ROUND) {
                Packed::So(filled) => self.take(filled),
                Packed::NotKnown => {
                    self.open.push(combo);
                    if self.open.len() >= MOST_OPEN {
                        self.stage = Stage::Searching;
                    }
                }
                Packed::Never => {}
            }
        }
    }

    /// Takes what the quick ways make of some hanks, if anything.
    fn fill(&mut self, combo: &Combo) -> bool {
        let plans = quick(&self.shop, &combo.counts, &mut self.steps);
        let done = !plans.is_empty();
        for filled in plans {
            self.take(filled);
        }
        done
    }

    fn compare(&mut self) {
        let best = self.best();
        let after = self.compared.take().filter(|last| last.buy == best);
        if after.is_none() {
            self.longest = 0;
        }
        let after = after.unwrap_or(Combo { buy: best, counts: Vec::new() });
        match self.next(Some(&after), best + 1) {
            Some(combo) => {
                self.fill(&combo);
                let most = self.all.first().map_or(0, |weights| most_left(&self.shop, weights, &combo));
                self.longest = self.longest.max(most);
                self.compared = Some(combo);
            }
            None => self.stage = if self.open.is_empty() && self.chose_all { Stage::Done } else { Stage::Searching },
        }
    }

    fn search(&mut self) {
        let Some(combo) = self.open.get(self.looked).cloned() else {
            self.looked = 0;
            self.rounds += 1;
            self.stage = match self.open.is_empty() || self.rounds > LAST_ROUND {
                true if self.chose_all || !self.open.is_empty() => Stage::Done,
                true => Stage::Choosing,
                false => Stage::Searching,
            };
            return;
        };
        let most = FIRST_ROUND << (3 * (self.rounds + 1));
        match packed(&self.shop, &self.used, &combo.counts, &mut self.steps, most) {
            Packed::So(filled) => {
                self.take(filled);
                // What counts as much may leave more.
                self.stage = Stage::Comparing;
            }
            Packed::Never => {
                self.open.remove(self.looked);
            }
            Packed::NotKnown => self.looked += 1,
        }
    }
}
