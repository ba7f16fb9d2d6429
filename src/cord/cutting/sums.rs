//! Which weights any of some cords add up to.

use super::shop::Shop;

/// Some cords that fill a room as far as any of them can: their places, and the weight they come to. Where several do,
/// those with the heaviest: the light ones are easier to place later.
///
/// # Guarantees
/// Exact: a bit for every sum that can be reached, and for each the cord that first reached it.
pub(super) fn fullest(shop: &Shop, places: &[usize], room: u32) -> (Vec<usize>, u32) {
    let unit = shop.unit;
    let mut all = 0;
    for place in places {
        all += shop.weight(*place);
    }
    let cells = room.min(all) / unit;
    let mut reached = vec![0_u64; (cells / 64 + 1) as usize];
    if let Some(first) = reached.first_mut() {
        *first = 1;
    }
    let mut by = vec![0_u8; cells as usize + 1];
    for (at, place) in places.iter().enumerate() {
        let step = (shop.weight(*place) / unit) as usize;
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
        cell -= ((shop.weight(*place) / unit) as usize).min(cell);
    }
    taken.sort_unstable();
    (taken, weight)
}
