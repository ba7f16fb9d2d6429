//! The longest single remainder: of a plan, and of any plan with some hanks.

use super::combos::Combo;
use super::cover::Cover;
use super::shop::{Filled, Shop};

/// The longest single remainder of a plan.
pub(super) fn longest_left(shop: &Shop, filled: &[Filled]) -> u32 {
    let mut longest = 0;
    for cut in shop.plan(filled).hanks {
        longest = longest.max(cut.left);
    }
    longest
}

/// The longest single remainder that some hanks can leave: of one of them, when all others are filled as far as any
/// cords fill them, which is the law of the weights.
pub(super) fn most_left(shop: &Shop, weights: &Cover, combo: &Combo) -> u32 {
    let mut waste = -i64::from(shop.all());
    for (most, count) in weights.most.iter().zip(&combo.counts) {
        waste += i64::from(most * shop.unit) * i64::from(*count);
    }
    let lightest = i64::from(shop.weights.last().copied().unwrap_or(0));
    let mut longest = 0;
    for ((hank, most), count) in shop.hanks.iter().zip(&weights.most).zip(&combo.counts) {
        if *count > 0 {
            // What it must hold at least: what the others cannot.
            let least = (i64::from(most * shop.unit) - waste).max(lightest);
            longest = longest.max(shop.left(*hank, least as u32));
        }
    }
    longest
}
