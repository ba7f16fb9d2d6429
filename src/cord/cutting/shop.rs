//! An order as the search sees it: weights, room and costs, the largest first.

use super::aims::Aims;
use super::order::{Cut, Fault, MOST_CORDS, Order, Plan, Stock};

/// A hank that can be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Hank {
    /// What the weights of its cords may come to.
    pub(super) room: u32,
    pub(super) cost: u32,
    /// How many of it can be of use.
    pub(super) limit: u32,
    /// Its place in the order.
    pub(super) stock: usize,
}

/// An order as the search sees it. A cord weighs its length and a kerf; a hank has room for one kerf more than it is
/// long, for behind the last cord no cut is needed where it comes out even.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Shop {
    /// The heaviest first.
    pub(super) weights: Vec<u32>,
    /// The order's cords, in the order of the weights.
    cords: Vec<usize>,
    /// The roomiest first; each has room for a cord.
    pub(super) hanks: Vec<Hank>,
    kerf: u32,
    /// What every weight is a multiple of.
    pub(super) unit: u32,
}

/// The most of a length or price, so that 200 of them stay within 32 bits: 1 km, and 100,000.00.
const MOST: u32 = 10_000_000;

impl Shop {
    pub(super) fn of(order: &Order) -> Result<Self, Fault> {
        let mut pairs: Vec<(u32, usize)> = Vec::new();
        let mut too_much = order.cords.len() > MOST_CORDS || order.kerf > MOST || order.end > MOST;
        let mut unit = 0;
        for (at, length) in order.cords.iter().enumerate() {
            too_much |= *length > MOST;
            let weight = length.saturating_add(order.kerf).max(1);
            unit = gcd(unit, weight);
            pairs.push((weight, at));
        }
        for stock in &order.stocks {
            too_much |= stock.length > MOST || stock.price.unwrap_or(0) > MOST;
        }
        if too_much {
            return Err(Fault::TooMuch);
        }
        pairs.sort_by(|one, other| other.0.cmp(&one.0).then(one.1.cmp(&other.1)));
        let (mut weights, mut cords) = (Vec::new(), Vec::new());
        for (weight, cord) in pairs {
            weights.push(weight);
            cords.push(cord);
        }
        let hanks = hanks(order, weights.last().copied().unwrap_or(0), weights.len());
        let mut most = 0;
        for stock in &order.stocks {
            if stock.limit != Some(0) {
                most = most.max(room(order, stock));
            }
        }
        match weights.first() {
            Some(heaviest) if *heaviest > most => {
                Err(Fault::TooLong { cord: cords.first().copied().unwrap_or(0), most: most.saturating_sub(order.kerf) })
            }
            _ => Ok(Self { weights, cords, hanks, kerf: order.kerf, unit: unit.max(1) }),
        }
    }

    /// What is left of a hank whose cords weigh so much.
    pub(super) const fn left(&self, hank: Hank, weight: u32) -> u32 {
        hank.room.saturating_sub(self.kerf).saturating_sub(weight)
    }

    /// What a hank with cords of a weight counts.
    pub(super) const fn aims(&self, hank: Hank, weight: u32) -> Aims {
        Aims::of_hank(hank.cost, self.left(hank, weight))
    }

    /// The plan of some hanks, each with its cords by their places among the weights.
    pub(super) fn plan(&self, filled: &[Filled]) -> Plan {
        let mut hanks = Vec::new();
        for (at, places) in filled {
            let Some(hank) = self.hanks.get(*at) else { continue };
            let (mut cords, mut weight) = (Vec::new(), 0);
            for place in places {
                cords.extend(self.cords.get(*place));
                weight += self.weight(*place);
            }
            hanks.push(Cut { stock: hank.stock, cords, left: self.left(*hank, weight) });
        }
        Plan { hanks }
    }

    /// What some hanks with their cords count.
    pub(super) fn worth(&self, filled: &[Filled]) -> Aims {
        let mut aims = Aims::NONE;
        for (at, places) in filled {
            let mut weight = 0;
            for place in places {
                weight += self.weight(*place);
            }
            aims = self.hanks.get(*at).map_or(Aims::WORST, |hank| aims.and(self.aims(*hank, weight)));
        }
        aims
    }

    pub(super) fn weight(&self, place: usize) -> u32 {
        self.weights.get(place).copied().unwrap_or(0)
    }

    /// What all cords weigh.
    pub(super) fn all(&self) -> u32 {
        self.weights.iter().sum()
    }
}

/// A hank, and the places among the weights of what is cut out of it.
pub(super) type Filled = (usize, Vec<usize>);

/// The hanks that have room for the lightest cord, in an order that does not depend on how they were given.
fn hanks(order: &Order, lightest: u32, count: usize) -> Vec<Hank> {
    let mut hanks: Vec<Hank> = Vec::new();
    for (at, stock) in order.stocks.iter().enumerate() {
        let room = room(order, stock);
        let limit = stock.limit.map_or(count, |limit| count.min(limit as usize)) as u32;
        if room >= lightest && limit > 0 {
            hanks.push(Hank { room, cost: order.cost(stock), limit, stock: at });
        }
    }
    let key = |hank: &Hank| (u32::MAX - hank.room, hank.cost, u32::MAX - hank.limit, hank.stock);
    hanks.sort_by_key(key);
    // One that is no roomier and no cheaper than one of which there are enough is of no use.
    let mut enough = u32::MAX;
    hanks.retain(|hank| {
        let is_of_use = hank.cost < enough;
        if is_of_use && hank.limit as usize == count {
            enough = hank.cost;
        }
        is_of_use
    });
    hanks
}

/// What the weights of a hank's cords may come to.
fn room(order: &Order, stock: &Stock) -> u32 {
    if stock.length > order.end { stock.length - order.end + order.kerf } else { 0 }
}

fn gcd(mut one: u32, mut other: u32) -> u32 {
    while other > 0 {
        (one, other) = (other, one % other);
    }
    one
}
