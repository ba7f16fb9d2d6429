//! What any hanks must cover together, whatever is cut out of which.

use super::shop::Shop;
use super::sums::fullest;

/// A law that every plan keeps: give every cord a value; what its hanks can hold at most must come to all values.
///
/// # Guarantees
/// Sound for any values that are not negative, for the most that a hank can hold is found exactly from the cords
/// themselves. The weights, one for each cord, and `floor((k + 1) weight / (room + 1))` for every room are taken: the
/// last says, for instance, that no hank holds more than two cords of over a third of it (dual feasible functions).
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Cover {
    /// Of every cord.
    pub(super) values: Vec<u32>,
    /// What all cords come to.
    pub(super) need: u32,
    /// What each hank holds at most.
    pub(super) most: Vec<u32>,
}

/// Into so many parts a room is divided at the most, and all rooms together (judged: more found nothing).
const PARTS: u32 = 24;
const ALL_PARTS: usize = 200;

/// The laws, the strictest kinds first.
pub(super) fn covers(shop: &Shop) -> Vec<Cover> {
    let mut places = Vec::new();
    let (mut values, mut need) = (Vec::new(), 0);
    for (place, weight) in shop.weights.iter().enumerate() {
        places.push(place);
        values.push(weight / shop.unit);
        need += weight / shop.unit;
    }
    let mut most: Vec<u32> = Vec::new();
    let mut rooms: Vec<u32> = Vec::new();
    for hank in &shop.hanks {
        // Hanks of one room stand side by side.
        most.push(match (most.last(), rooms.last()) {
            (Some(most), Some(room)) if *room == hank.room => *most,
            _ => fullest(shop, &places, hank.room, u32::MAX).1 / shop.unit,
        });
        if rooms.last() != Some(&hank.room) {
            rooms.push(hank.room);
        }
    }
    let mut covers = vec![Cover { values, need, most }];
    let mut before: Vec<u32> = Vec::new();
    let most_parts = PARTS.min((ALL_PARTS / rooms.len().max(1)) as u32);
    for room in rooms {
        for parts in 2..=most_parts {
            let mut values = Vec::new();
            for weight in &shop.weights {
                values.push((u64::from(parts) * u64::from(*weight) / u64::from(room + 1)) as u32);
            }
            if values != before && values.first() > Some(&0) {
                covers.push(cover(shop, values.clone(), parts));
            }
            before = values;
        }
    }
    covers.push(cover(shop, vec![1; shop.weights.len()], 0));
    covers
}

/// The law of some values.
fn cover(shop: &Shop, values: Vec<u32>, parts: u32) -> Cover {
    let roomiest = shop.hanks.first().map_or(0, |hank| hank.room);
    let lightest = shop.weights.last().copied().unwrap_or(1).max(1);
    // No more than all, than as many parts as rooms, or than cords.
    let all: u32 = values.iter().sum();
    let smallest = shop.hanks.last().map_or(1, |hank| hank.room).max(1);
    let bound = if parts > 0 { parts * (roomiest / smallest + 1) } else { roomiest / lightest };
    let bound = all.min(bound.max(values.first().copied().unwrap_or(0)));
    // The least that cords of a value weigh.
    let mut least = vec![u32::MAX; bound as usize + 1];
    if let Some(none) = least.first_mut() {
        *none = 0;
    }
    for (value, weight) in values.iter().zip(&shop.weights) {
        if *value == 0 {
            continue;
        }
        for sum in (*value..=bound).rev() {
            let before = least.get((sum - value) as usize).copied().unwrap_or(u32::MAX);
            if let Some(least) = least.get_mut(sum as usize) {
                *least = before.saturating_add(*weight).min(*least);
            }
        }
    }
    let mut most = Vec::new();
    for hank in &shop.hanks {
        most.push(least.iter().rposition(|weight| *weight <= hank.room).unwrap_or(0) as u32);
    }
    Cover { values, need: all, most }
}
