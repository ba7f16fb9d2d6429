//! All of it together, within an effort.

use super::aims::Aims;
use super::combos::{Combo, Combos, Followed};
use super::cover::{Cover, covers};
use super::exact::{EXACT_CORDS, EXACT_STOCKS, best};
use super::fill::{Filling, Next, first_fit};
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
    combos: Combos,
    /// The hanks that were chosen last, and how far they are filled.
    chosen: Option<(Combo, Filling, bool)>,
    /// Hanks of which it is not known whether they do, in order.
    open: Vec<Combo>,
    /// How many of those were looked at in this round, and how many rounds are done.
    looked: usize,
    rounds: u32,
    /// Whether subsets said all there is to say.
    exact: bool,
    stage: Stage,
    /// The longest single remainder that any plan of the best's cost and hanks can leave.
    longest: u32,
    steps: u64,
}

/// What it is at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Stage {
    /// Choosing hanks, cheapest first, and filling them: up to those that count as much as the best, of which some may
    /// leave a longer remainder.
    Choosing,
    /// Searching those of which it is not known whether they do.
    Searching,
    /// Nothing is left to do.
    Done,
}

/// Steps of a search in the first round; every round takes eight times as many (judged).
const FIRST_ROUND: u64 = 1 << 11;
const LAST_ROUND: u32 = 1;
/// So many choices of hanks are followed up at a time (judged: less than a millisecond).
const CHOICES: u32 = 64;
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
            combos: Combos::new(),
            chosen: None,
            open: Vec::new(),
            looked: 0,
            rounds: 0,
            exact: false,
            stage: Stage::Choosing,
            longest: 0,
            steps: 0,
            shop,
        };
        let shop = &cutting.shop;
        if shop.weights.len() <= EXACT_CORDS && shop.hanks.len() <= EXACT_STOCKS {
            cutting.best = best(shop).map(|filled| (shop.worth(&filled), filled));
            cutting.longest = cutting.best.as_ref().map_or(0, |(_, filled)| longest_left(shop, filled));
            cutting.exact = true;
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
        self.chose_all() && self.open.is_empty()
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
            remainder_proved: proved && self.compared_all() && self.longest <= longest_left(&self.shop, filled),
        })
    }

    /// No plan counts less: `cost << 8 | hanks`.
    fn least(&self) -> u64 {
        let open = self.open.first().map_or(u64::MAX, |open| open.buy);
        let chosen = self.chosen.as_ref().map_or(u64::MAX, |(chosen, ..)| chosen.buy);
        open.min(chosen).min(if self.exact { u64::MAX } else { self.combos.least() })
    }

    /// Whether no hanks are left to choose that count less than the best.
    fn chose_all(&self) -> bool {
        self.exact || self.chosen.is_none() && self.combos.least() >= self.best()
    }

    /// Whether none are left that count as much, either.
    fn compared_all(&self) -> bool {
        self.exact || self.chosen.is_none() && self.combos.least() > self.best()
    }

    /// What the best plan counts.
    fn best(&self) -> u64 {
        self.best.as_ref().map_or(u64::MAX, |(aims, _)| aims.buy())
    }

    /// Keeps a plan if it is better.
    fn take(&mut self, filled: Vec<Filled>) {
        let aims = self.shop.worth(&filled);
        let before = self.best();
        if self.best.as_ref().is_none_or(|(best, _)| aims < *best) {
            self.best = Some((aims, filled));
            let best = aims.buy();
            if best < before {
                self.longest = 0;
                // Those may leave more with other cuts.
                for open in 0..self.open.len() {
                    self.compare(self.open.get(open).cloned());
                }
            }
            self.open.retain(|open| open.buy < best);
        }
    }

    /// Takes account of what hanks may leave that count as much as the best.
    fn compare(&mut self, combo: Option<Combo>) {
        if let (Some(combo), Some(weights)) = (combo.filter(|combo| combo.buy == self.best()), self.all.first()) {
            self.longest = self.longest.max(most_left(&self.shop, weights, &combo));
        }
    }

    fn choose(&mut self) {
        if let Some((combo, filling, was_filled)) = self.chosen.take() {
            return self.fill(combo, filling, was_filled);
        }
        for _ in 0..CHOICES {
            self.steps += 1 + (self.used.len() * self.shop.hanks.len()) as u64 / 64;
            match self.combos.follow(&self.shop, &self.used, self.best()) {
                Followed::On => {}
                Followed::End => {
                    self.stage = if self.open.is_empty() { Stage::Done } else { Stage::Searching };
                    return;
                }
                Followed::Whole(combo) => {
                    match self.broken(&combo) {
                        Some(law) => self.used.push(law),
                        None => self.chosen = Some((combo.clone(), Filling::of(combo.counts), false)),
                    }
                    return;
                }
            }
        }
    }

    /// A law that some hanks break.
    fn broken(&self, combo: &Combo) -> Option<Cover> {
        let is_broken = |law: &&Cover| {
            let mut most = 0;
            for (each, count) in law.most.iter().zip(&combo.counts) {
                most += each * count;
            }
            most < law.need
        };
        self.all.iter().find(is_broken).cloned()
    }

    /// Fills one hank more of those chosen; where the quick ways come to nothing, searches a little.
    fn fill(&mut self, combo: Combo, mut filling: Filling, was_filled: bool) {
        match filling.next(&self.shop, &mut self.steps) {
            Next::On => self.chosen = Some((combo, filling, was_filled)),
            Next::So(filled) => {
                self.take(filled);
                self.chosen = Some((combo, filling, true));
            }
            Next::End if was_filled || combo.buy >= self.best() => self.compare(Some(combo)),
            Next::End => match packed(&self.shop, &self.used, &combo.counts, &mut self.steps, FIRST_ROUND) {
                Packed::So(filled) => {
                    self.take(filled);
                    self.compare(Some(combo));
                }
                Packed::NotKnown => {
                    self.open.push(combo);
                    if self.open.len() >= MOST_OPEN {
                        self.stage = Stage::Searching;
                    }
                }
                Packed::Never => {}
            },
        }
    }

    fn search(&mut self) {
        let Some(combo) = self.open.get(self.looked).cloned() else {
            self.looked = 0;
            self.rounds += 1;
            self.stage = match self.open.is_empty() || self.rounds > LAST_ROUND {
                true if self.chose_all() || !self.open.is_empty() => Stage::Done,
                true => Stage::Choosing,
                false => Stage::Searching,
            };
            return;
        };
        let most = FIRST_ROUND << (3 * (self.rounds.min(LAST_ROUND) + 1));
        match packed(&self.shop, &self.used, &combo.counts, &mut self.steps, most) {
            Packed::So(filled) => {
                self.take(filled);
                // What counts as much may leave more.
                self.stage = Stage::Choosing;
            }
            Packed::Never => {
                self.open.remove(self.looked);
            }
            Packed::NotKnown => self.looked += 1,
        }
    }
}
