//! Whether the cords can be cut out of given hanks at all.

use super::cover::Cover;
use super::shop::{Filled, Shop};

/// What a search within so many steps found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Packed {
    /// This is how.
    So(Vec<Filled>),
    /// They cannot.
    Never,
    /// The steps ran out.
    NotKnown,
}

/// Looks for a way to cut all cords out of the hanks counted.
///
/// # Guarantees
/// Exact. The longest cord that is left must come out of some hank: of each kind one is filled with it in every way that
/// leaves no room for another cord (one that has room for a cord of another hank may as well have it), as long as what
/// is wasted can be spared and what is left keeps every law.
pub(super) fn packed(shop: &Shop, covers: &[Cover], counts: &[u32], steps: &mut u64, most: u64) -> Packed {
    let mut kinds: Vec<(u32, u32)> = Vec::new();
    let mut firsts = Vec::new();
    for (place, weight) in shop.weights.iter().enumerate() {
        match kinds.last_mut() {
            Some((known, count)) if known == weight => *count += 1,
            _ => {
                kinds.push((*weight, 1));
                firsts.push(place);
            }
        }
    }
    let mut room = 0_i64;
    for (hank, count) in shop.hanks.iter().zip(counts) {
        room += i64::from(hank.room) * i64::from(*count);
    }
    let hanks = counts.to_vec();
    let mut search = Search { shop, covers, kinds, firsts, hanks, filled: Vec::new(), steps, last: 0, found: None };
    search.last = *search.steps + most;
    if search.hank(room - i64::from(shop.all())) {
        return Packed::NotKnown;
    }
    match search.found {
        Some(filled) => Packed::So(numbered(shop, &filled)),
        None => Packed::Never,
    }
}

/// The weights in hanks, by the places of cords.
fn numbered(shop: &Shop, filled: &[(usize, Vec<u32>)]) -> Vec<Filled> {
    let mut used = vec![false; shop.weights.len()];
    let mut all = Vec::new();
    for (at, weights) in filled {
        let mut places = Vec::new();
        for weight in weights {
            let free = shop.weights.iter().zip(&used).position(|(known, used)| known == weight && !used);
            if let Some(place) = free {
                if let Some(used) = used.get_mut(place) {
                    *used = true;
                }
                places.push(place);
            }
        }
        all.push((*at, places));
    }
    all
}

struct Search<'a> {
    shop: &'a Shop,
    covers: &'a [Cover],
    /// Each weight, the heaviest first, and how many of it are left.
    kinds: Vec<(u32, u32)>,
    /// The place of the first cord of each.
    firsts: Vec<usize>,
    /// How many of each hank are left.
    hanks: Vec<u32>,
    filled: Vec<(usize, Vec<u32>)>,
    steps: &'a mut u64,
    last: u64,
    found: Option<Vec<(usize, Vec<u32>)>>,
}

impl Search<'_> {
    /// Fills a hank with the heaviest cord left and what goes beside it, with so much to waste; true once it is to stop
    /// without knowing.
    fn hank(&mut self, spare: i64) -> bool {
        let Some(heaviest) = self.kinds.iter().position(|(_, count)| *count > 0) else {
            self.found = Some(self.filled.clone());
            return false;
        };
        if !self.is_covered() {
            return false;
        }
        let weight = self.kinds.get(heaviest).map_or(0, |(weight, _)| *weight);
        let mut before = None;
        for at in (0..self.hanks.len()).rev() {
            let Some(hank) = self.shop.hanks.get(at) else { continue };
            let room = hank.room;
            // Hanks of one room are alike here.
            if room < weight || self.hanks.get(at) == Some(&0) || before == Some(room) {
                continue;
            }
            before = Some(room);
            self.count(at, heaviest, -1);
            self.filled.push((at, vec![weight]));
            let stop = self.beside(heaviest, room - weight, spare);
            if stop || self.found.is_some() {
                return stop;
            }
            self.filled.pop();
            self.kind(heaviest, 1);
            if let Some(hanks) = self.hanks.get_mut(at) {
                *hanks += 1;
            }
        }
        false
    }

    /// Whether the hanks left keep every law for the cords left.
    fn is_covered(&self) -> bool {
        for cover in self.covers {
            let (mut most, mut need) = (0, 0);
            for (each, count) in cover.most.iter().zip(&self.hanks) {
                most += each * count;
            }
            for ((_, count), first) in self.kinds.iter().zip(&self.firsts) {
                need += count * cover.values.get(*first).copied().unwrap_or(0);
            }
            if need > most {
                return false;
            }
        }
        true
    }

    fn count(&mut self, at: usize, kind: usize, by: i32) {
        if let Some(hanks) = self.hanks.get_mut(at) {
            *hanks = hanks.saturating_add_signed(by);
        }
        self.kind(kind, by);
    }

    fn kind(&mut self, kind: usize, by: i32) {
        if let Some((_, count)) = self.kinds.get_mut(kind) {
            *count = count.saturating_add_signed(by);
        }
    }

    /// Goes on filling the last hank with cords of a kind or lighter.
    fn beside(&mut self, from: usize, room: u32, spare: i64) -> bool {
        *self.steps += 1;
        if *self.steps > self.last {
            return true;
        }
        let mut rest = 0;
        for (weight, count) in self.kinds.iter().skip(from) {
            rest += u64::from(*weight) * u64::from(*count);
        }
        // Even with all that is lighter too much would be wasted.
        if i64::from(room) - spare > rest as i64 {
            return false;
        }
        let next = self.kinds.iter().enumerate().skip(from).find(|(_, (weight, count))| *count > 0 && *weight <= room);
        let Some((kind, (weight, _))) = next.map(|(at, kind)| (at, *kind)) else {
            for (weight, count) in self.kinds.iter().take(from) {
                if *count > 0 && *weight <= room {
                    return false;
                }
            }
            return self.hank(spare - i64::from(room));
        };
        self.kind(kind, -1);
        if let Some((_, weights)) = self.filled.last_mut() {
            weights.push(weight);
        }
        let stop = self.beside(kind, room - weight, spare);
        if stop || self.found.is_some() {
            return stop;
        }
        if let Some((_, weights)) = self.filled.last_mut() {
            weights.pop();
        }
        self.kind(kind, 1);
        self.beside(kind + 1, room, spare)
    }
}
