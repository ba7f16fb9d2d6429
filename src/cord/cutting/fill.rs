//! Quick ways to cut the cords: where one comes off, no search is needed.

use super::shop::{Filled, Hank, Shop};
use super::sums::fullest;

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

/// What comes of some hanks filled as far as they go, with each kind of them left open to the last.
pub(super) fn quick(shop: &Shop, counts: &[u32], steps: &mut u64) -> Vec<Vec<Filled>> {
    let mut plans = Vec::new();
    for (last, count) in counts.iter().enumerate() {
        for roomiest_first in [false, true] {
            if *count > 0 {
                plans.extend(tight(shop, counts, last, roomiest_first, steps));
            }
        }
    }
    plans
}

/// Every hank but one filled as far as it goes, the roomiest last (or first), and the rest out of that one; none where
/// it does not do.
fn tight(shop: &Shop, counts: &[u32], last: usize, roomiest_first: bool, steps: &mut u64) -> Option<Vec<Filled>> {
    let mut order = Vec::new();
    for (at, count) in counts.iter().enumerate() {
        for _ in 0..count - u32::from(at == last).min(*count) {
            order.push(at);
        }
    }
    if !roomiest_first {
        order.reverse();
    }
    let mut left: Vec<usize> = (0..shop.weights.len()).collect();
    let mut filled = Vec::new();
    for at in order {
        let room = shop.hanks.get(at)?.room;
        *steps += 1 + u64::from(room / shop.unit) / 1024;
        let (places, _) = fullest(shop, &left, room);
        left.retain(|place| !places.contains(place));
        filled.push((at, places));
    }
    let mut weight = 0;
    for place in &left {
        weight += shop.weight(*place);
    }
    if weight > shop.hanks.get(last)?.room {
        return None;
    }
    filled.push((last, left));
    filled.retain(|(_, places)| !places.is_empty());
    Some(filled)
}
