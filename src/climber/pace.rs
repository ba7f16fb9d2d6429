//! How often somebody can pull.

use super::{Tired, Tiring};
use crate::field::Spread;

/// How many times faster muscles tire that pull something along than those that hold it still.
///
/// # Source
/// Computed: 1.6 times the elbow's rate gives ten repetitions at 80 % of the greatest (Johnson 2009), 3.8 times gives 0.37
/// at a third of the time (J Physiol 592:4775); likely between them (judged).
pub const MOVING: Spread = Spread::new(1.6, 2.4, 3.8);

/// How many times the strength that one pull takes so many pulls take, with a rest between each two.
///
/// ```text
///   1 + (F / R) (1 - e^(-R t)) (1 - k^n) / (1 - k)      k = e^(-R (t + r rest)), t a pull, n pulls
/// ```
///
/// # Guarantees
/// At least one. What is tired is in proportion to the share that a pull takes, so a share lasts where it times this is at
/// most one.
///
/// # Source
/// The model of three compartments, see [`Tired`].
#[must_use]
pub fn strength_for(tiring: Tiring, pull: f64, rest: f64, pulls: f64) -> f64 {
    2.0 - Tired::after_pulls(tiring, 1.0, pull, rest, pulls).left()
}

/// The shortest rest after each pull with which so many pulls succeed, in seconds.
///
/// ```text
///   share x strength for so many pulls <= 1
/// ```
///
/// # Guarantees
/// None where no rest is long enough: where a single pull takes more than is left at its own end. More pulls, a greater
/// share and a longer pull never need less rest.
///
/// # Source
/// The model of three compartments, see [`Tired`].
///
/// # Example
/// ```
/// use boughline::climber::{MOVING, Tiring, shortest_rest};
///
/// let elbow = Tiring::ELBOW.faster(MOVING.likely);
/// let rest = shortest_rest(elbow, 0.67, 1.5, 60.0);
/// assert!(rest.is_some_and(|rest| (6.5..8.5).contains(&rest)));
/// assert_eq!(shortest_rest(elbow, 1.1, 1.5, 1.0), None);
/// ```
#[must_use]
pub fn shortest_rest(tiring: Tiring, share: f64, pull: f64, pulls: f64) -> Option<f64> {
    // The same as `strength_for`, with what one pull does reckoned once.
    let one = Tired::FRESH.pulling(tiring, 1.0, pull);
    let lasts = |rest: f64| share * (2.0 - one.times(tiring, pull, rest, pulls).left()) <= 1.0;
    if lasts(0.0) {
        return Some(0.0);
    }
    let (mut short, mut long) = (0.0, LONGEST_REST);
    if !lasts(long) {
        return None;
    }
    // To a tenth of a second: nobody rests by finer clocks.
    for _ in 0..13 {
        let middle = 0.5 * (short + long);
        if lasts(middle) {
            long = middle;
        } else {
            short = middle;
        }
    }
    Some(long)
}

/// The longest rest after a pull that counts, in seconds (judged, 300 to 900: hanging that long after each pull is no climb).
pub const LONGEST_REST: f64 = 600.0;

#[cfg(test)]
mod tests {
    use super::*;

    /// Computed from the two measurements: 60 pulls of 1.5 s go at one every 6, 9 or 14 s at 0.67 of the greatest, and
    /// every 20, 32 or 56 s at 0.88.
    #[test]
    fn sixty_pulls_go_at_the_published_pace() {
        for (share, wanted) in [(0.67, [6.0, 9.0, 14.0]), (0.88, [20.0, 32.0, 56.0])] {
            for (faster, every) in [MOVING.low, MOVING.likely, MOVING.high].into_iter().zip(wanted) {
                let rest = shortest_rest(Tiring::ELBOW.faster(faster), share, 1.5, 60.0).unwrap();
                assert!((1.5 + rest - every).abs() < 1.0, "{share} {faster}: every {} s", 1.5 + rest);
            }
        }
    }

    /// Johnson 2009: ten repetitions at 80 %, at 1.5 s on and 1.5 s off.
    #[test]
    fn ten_repetitions_go_at_four_fifths() {
        let elbow = Tiring::ELBOW.faster(MOVING.low);
        let goes = |pulls: f64| Tired::after_pulls(elbow, 0.8, 1.5, 1.5, pulls).left() >= 0.8;
        assert!(goes(10.0) && !goes(11.0));
    }

    /// J Physiol 592:4775: at a third of the time 0.37 of the greatest lasts.
    #[test]
    fn a_third_of_the_time_lasts_at_0_37() {
        for (tiring, faster) in [(Tiring::ELBOW, MOVING.high), (Tiring::HAND, 3.5)] {
            assert!((tiring.faster(faster).lasting(1.0 / 3.0) - 0.37).abs() < 0.005, "{tiring:?}");
        }
    }

    /// What is left after the last pull is just what it takes, at that many times the strength.
    #[test]
    fn strength_for_many_pulls_is_what_is_left_of_it() {
        for tiring in [Tiring::ELBOW, Tiring::HAND, Tiring::SHOULDER.faster(MOVING.high)] {
            for (pull, rest, pulls) in [(1.5, 8.0, 60.0), (1.2, 0.0, 1.0), (2.0, 30.0, 400.0)] {
                let share = 1.0 / strength_for(tiring, pull, rest, pulls);
                let left = Tired::after_pulls(tiring, share, pull, rest, pulls).left();
                assert!((left - share).abs() < 1e-12 && share < 1.0, "{tiring:?}: {left} and {share}");
            }
        }
    }

    #[test]
    fn more_to_do_never_needs_less_rest() {
        let rest = |share: f64, pull: f64, pulls: f64| {
            shortest_rest(Tiring::ELBOW.faster(MOVING.likely), share, pull, pulls).unwrap_or(f64::INFINITY)
        };
        for step in 1..30 {
            let (less, more) = (f64::from(step) / 30.0, f64::from(step + 1) / 30.0);
            assert!(rest(less, 1.5, 60.0) <= rest(more, 1.5, 60.0));
            assert!(rest(0.6, 3.0 * less, 60.0) <= rest(0.6, 3.0 * more, 60.0));
            assert!(rest(0.6, 1.5, 90.0 * less) <= rest(0.6, 1.5, 90.0 * more));
        }
    }
}
