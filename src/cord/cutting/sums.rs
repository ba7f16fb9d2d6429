//! Which weights any of some cords add up to.

use super::shop::Shop;

/// Into so many units a room is divided where it need not be exact: 50 m by 0.2 mm (judged: a millisecond's work).
pub(super) const FINEST: u32 = 1 << 18;

/// The steps that finding the fullest takes.
pub(super) fn fullest_steps(shop: &Shop, places: &[usize], room: u32) -> u64 {
    let cells = room.min(shop.all()) / shop.unit;
    1 + u64::from(cells.min(FINEST)) * (places.len() as u64 + 64) / (64 * 1024)
}

/// How many units may be filled: no more than there is room for, nor than all come to.
fn cells(shop: &Shop, places: &[usize], room: u32, unit: u32) -> u32 {
    let mut all = 0;
    for place in places {
        all += shop.weight(*place).div_ceil(unit);
    }
    all.min(room / unit)
}

/// Some cords that fill a room as far as any of them can: their places, and the weight they come to. Where several do,
/// those with the heaviest: the light ones are easier to place later.
///
/// # Guarantees
/// Exact where the room has no more than `finest` units: a bit for every sum that can be reached, and for each the cord
/// that first reached it. Else every weight is rounded up to a coarser unit: they fit, but others might fill it further.
pub(super) fn fullest(shop: &Shop, places: &[usize], room: u32, finest: u32) -> (Vec<usize>, u32) {
    let unit = shop.unit * (room / shop.unit / finest + 1);
    let cells = cells(shop, places, room, unit);
    let mut reached = vec![0_u64; (cells / 64 + 1) as usize];
    if let Some(first) = reached.first_mut() {
        *first = 1;
    }
    let mut by = vec![0_u8; cells as usize + 1];
    for (at, place) in places.iter().enumerate() {
        let step = shop.weight(*place).div_ceil(unit) as usize;
        let (words, bits) = (step / 64, step % 64);
        // From the top down, so that no cord is taken twice.
        for word in (words..reached.len()).rev() {
            let low = reached.get(word - words).copied().unwrap_or(0);
            let carry = if bits > 0 && word > words { reached.get(word - words - 1).copied().unwrap_or(0) } else { 0 };
            let moved = if bits > 0 { low << bits | carry >> (64 - bits) } else { low };
            let Some(here) = reached.get_mut(word) else { continue };
            let mut new = moved & !*here;
            *here |= new;
            while new > 0 {
                let cell = word * 64 + new.trailing_zeros() as usize;
                if let Some(by) = by.get_mut(cell) {
                    *by = at as u8;
                }
                new &= new - 1;
            }
        }
    }
    let mut cell = cells as usize;
    while cell > 0 && reached.get(cell / 64).is_some_and(|word| word >> (cell % 64) & 1 == 0) {
        cell -= 1;
    }
    let weight = cell as u32 * unit;
    let mut taken = Vec::new();
    while cell > 0 {
        let Some(place) = by.get(cell).and_then(|at| places.get(usize::from(*at))) else { break };
        taken.push(*place);
        cell -= (shop.weight(*place).div_ceil(unit) as usize).min(cell);
    }
    taken.sort_unstable();
    (taken, weight)
}
