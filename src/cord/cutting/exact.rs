//! The best plan of a few cords, by their subsets.

use super::aims::Aims;
use super::shop::{Filled, Shop};

/// Up to so many cords the best plan is found by subsets: 3^12 is half a million steps.
pub const EXACT_CORDS: usize = 12;
/// Of so many kinds of hanks, each of which may be limited.
pub(super) const EXACT_STOCKS: usize = 6;

/// The best in all three aims; none where the hanks there are do not do.
///
/// # Guarantees
/// Exact: hanks of which there are enough are handed out first, to every subset with its first cord in the hank that
/// is looked at; then each single hank of those that are limited may take any subset away. [`Aims`] says why the best of
/// the rest is all that need be kept.
pub(super) fn best(shop: &Shop) -> Option<Vec<Filled>> {
    let count = shop.weights.len();
    let all = (1_usize << count) - 1;
    let mut weights = vec![0; all + 1];
    for set in 1..=all {
        let rest = set & (set - 1);
        let weight = weights.get(rest).copied().unwrap_or(0) + shop.weight(set.trailing_zeros() as usize);
        put(&mut weights, set, weight);
    }
    let mut best = vec![Aims::WORST; all + 1];
    put(&mut best, 0, Aims::NONE);
    // For every set, what is cut out of one hank and out of which.
    let mut free = vec![(0, 0); all + 1];
    let single = singles(shop, &weights, count);
    for set in 1..=all {
        let first = set & set.wrapping_neg();
        let others = set ^ first;
        let (mut least, mut of, mut part) = (Aims::WORST, (0, 0), others);
        loop {
            let taken = part | first;
            let (aims, hank) = got(&single, taken, (Aims::WORST, 0));
            let rest = got(&best, set ^ taken, Aims::WORST);
            if aims < Aims::WORST && rest < Aims::WORST && rest.and(aims) < least {
                (least, of) = (rest.and(aims), (taken, hank));
            }
            if part == 0 {
                break;
            }
            part = (part - 1) & others;
        }
        put(&mut best, set, least);
        put(&mut free, set, of);
    }
    let mut layers: Vec<(usize, Vec<u16>)> = Vec::new();
    for (at, hank) in shop.hanks.iter().enumerate() {
        for _ in 0..if (hank.limit as usize) < count { hank.limit } else { 0 } {
            let mut took = vec![0; all + 1];
            // From the largest down, so that what is left was not given this very hank.
            for set in (1..=all).rev() {
                let (mut least, mut of, mut part) = (got(&best, set, Aims::WORST), 0, set);
                while part > 0 {
                    let weight = got(&weights, part, u32::MAX);
                    let rest = got(&best, set ^ part, Aims::WORST);
                    if weight <= hank.room && rest < Aims::WORST {
                        let aims = rest.and(shop.aims(*hank, weight));
                        if aims < least {
                            (least, of) = (aims, part as u16);
                        }
                    }
                    part = (part - 1) & set;
                }
                put(&mut best, set, least);
                put(&mut took, set, of);
            }
            layers.push((at, took));
        }
    }
    if got(&best, all, Aims::WORST) == Aims::WORST {
        return None;
    }
    let mut filled = Vec::new();
    let mut set = all;
    for (at, took) in layers.iter().rev() {
        let part = usize::from(got(took, set, 0));
        if part > 0 {
            filled.push((*at, places(part)));
            set ^= part;
        }
    }
    while set > 0 {
        let (part, at) = got(&free, set, (set, 0));
        filled.push((at, places(part)));
        set ^= part;
    }
    Some(filled)
}

/// For every set, the best single hank of those of which there are enough.
fn singles(shop: &Shop, weights: &[u32], count: usize) -> Vec<(Aims, usize)> {
    let mut single = vec![(Aims::WORST, 0); weights.len()];
    for (one, weight) in single.iter_mut().zip(weights) {
        for (at, hank) in shop.hanks.iter().enumerate() {
            if hank.limit as usize >= count && *weight <= hank.room && shop.aims(*hank, *weight) < one.0 {
                *one = (shop.aims(*hank, *weight), at);
            }
        }
    }
    single
}

fn got<T: Copy>(list: &[T], at: usize, other: T) -> T {
    list.get(at).copied().unwrap_or(other)
}

fn put<T>(list: &mut [T], at: usize, value: T) {
    if let Some(place) = list.get_mut(at) {
        *place = value;
    }
}

/// The places of a set.
fn places(mut set: usize) -> Vec<usize> {
    let mut places = Vec::new();
    while set > 0 {
        places.push(set.trailing_zeros() as usize);
        set &= set - 1;
    }
    places
}
