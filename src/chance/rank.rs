//! Samples in order, as far as their order matters.

use crate::field::Spread;

/// What samples come to around a likely value: the likely value, and the samples' 5th and 95th percentiles.
///
/// # Guarantees
/// In order: an end that the likely value lies beyond is moved to it.
#[must_use]
pub fn spread_of(likely: f64, mut samples: Vec<f64>) -> Spread {
    let [low, high] = [5, 95].map(|percent| rank(samples.len(), percent));
    let least = ranked(&mut samples, low).unwrap_or(likely);
    // None before that one is greater.
    let rest = samples.get_mut(low..).unwrap_or_default();
    let most = ranked(rest, high - low).unwrap_or(likely);
    Spread { low: least.min(likely), likely, high: most.max(likely) }
}

/// The percentile of samples in any order, by nearest rank; none of them is NaN.
#[must_use]
pub fn percentile(samples: &mut [f64], percent: usize) -> Option<f64> {
    ranked(samples, rank(samples.len(), percent))
}

/// The place of a percentile among so many samples in order, by nearest rank.
fn rank(count: usize, percent: usize) -> usize {
    (count * percent).div_ceil(100).max(1) - 1
}

/// The sample that order puts in a place, counted from the smallest; none of them is NaN. Std's ways to it are as large in
/// the shipped module as a model of a rig.
pub(crate) fn ranked(samples: &mut [f64], place: usize) -> Option<f64> {
    settle(samples, place);
    samples.get(place).copied()
}

/// Moves samples until the one in a place is the one that order puts there, with none greater before it and none smaller
/// after it.
///
/// # Source
/// C. A. R. Hoare, "Algorithm 65: Find", 1961 (from memory).
fn settle(samples: &mut [f64], place: usize) {
    let (mut from, mut to) = (0, samples.len());
    while to - from > 1 {
        let Some(&middle) = samples.get(from + (to - from) / 2) else { return };
        // Before `low` none is greater than the middle one, from `high` on none is smaller.
        let (mut low, mut high) = (from, to);
        while low < high {
            let (Some(&one), Some(&other)) = (samples.get(low), samples.get(high - 1)) else { return };
            if one < middle {
                low += 1;
            } else if other > middle {
                high -= 1;
            } else {
                for (place, sample) in [(low, other), (high - 1, one)] {
                    if let Some(place) = samples.get_mut(place) {
                        *place = sample;
                    }
                }
                (low, high) = (low + 1, high - 1);
            }
        }
        if place < high {
            to = high;
        } else if place >= low {
            from = low;
        } else {
            return;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Draws, Pick};
    use super::*;

    /// Samples that differ, that are few and come often, and that rise, fall or stay.
    fn all() -> Vec<Vec<f64>> {
        let mut all = Vec::new();
        for count in [0, 1, 2, 3, 10, 1000] {
            let drawn = |sample: u32| Draws::sample(sample).deviations(0);
            let ways: [&dyn Fn(u32) -> f64; 5] =
                [&drawn, &|sample| drawn(sample).round(), &f64::from, &|sample| -f64::from(sample), &|_| 0.7];
            for way in ways {
                let mut samples: Vec<f64> = (0..count).map(way).collect();
                samples.extend([f64::INFINITY, 0.0, 0.0]);
                all.push(samples);
            }
        }
        all
    }

    fn by_std(samples: &[f64]) -> Vec<f64> {
        let mut sorted = samples.to_vec();
        sorted.sort_by(f64::total_cmp);
        sorted
    }

    #[test]
    fn what_is_settled_is_where_std_sorts_it() {
        for samples in all() {
            let sorted = by_std(&samples);
            for place in 0..samples.len() {
                let mut settled = samples.clone();
                settle(&mut settled, place);
                assert_eq!(settled[place], sorted[place]);
                assert!(settled[..place].iter().all(|sample| *sample <= settled[place]));
                assert!(settled[place..].iter().all(|sample| *sample >= settled[place]));
            }
        }
    }

    #[test]
    fn percentiles_are_nearest_ranks() {
        let mut samples: Vec<f64> = (1..=100).rev().map(f64::from).collect();
        assert_eq!(percentile(&mut samples, 5), Some(5.0));
        assert_eq!(percentile(&mut samples, 95), Some(95.0));
        assert_eq!(percentile(&mut [], 5), None);
        assert_eq!(spread_of(50.0, samples), Spread::new(5.0, 50.0, 95.0));
        assert_eq!(spread_of(7.0, Vec::new()), Spread::point(7.0));
    }
}
