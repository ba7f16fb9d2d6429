//! The pace at which so many pulls are done soonest.

use super::pace::LONGEST_REST;
use super::spell::Spell;
use super::{Tired, Tiring};

/// When somebody rests between pulls.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pace {
    /// The rest after each pull, in seconds.
    pub rest: f64,
    /// The longer rests in its place now and then; none where all rests are equal.
    pub longer: Option<LongerRest>,
}

/// A longer rest after every so many pulls.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LongerRest {
    /// After how many pulls, again and again.
    pub every: u32,
    /// How long, in seconds.
    pub seconds: f64,
}

impl Pace {
    /// The rest after a pull, counted from one.
    #[must_use]
    pub fn rest_after(&self, pull: u32) -> f64 {
        match self.longer {
            Some(longer) if pull.is_multiple_of(longer.every) => longer.seconds,
            _ => self.rest,
        }
    }

    /// From the beginning of the first of so many pulls to the end of the last, in seconds; `each` is what a pull takes.
    #[must_use]
    pub fn time(&self, each: f64, pulls: u32) -> f64 {
        let rests = pulls.saturating_sub(1);
        let more = self.longer.map_or(0.0, |longer| f64::from(rests / longer.every) * (longer.seconds - self.rest));
        f64::from(pulls) * each + f64::from(rests) * self.rest + more
    }
}

/// Pulls that somebody wants to do one after another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pulls {
    /// The muscles that tire, and the share of their strength that one pull takes.
    pub muscles: [(Tiring, f64); 2],
    /// What one pull takes, in seconds.
    pub seconds: f64,
    /// The shortest rest after one, in seconds.
    pub least_rest: f64,
    /// How many.
    pub count: u32,
    /// The share of the strength that must be left at the end of each pull beyond what it takes.
    pub margin: f64,
}

/// After how many pulls a longer rest may come; after each one all rests are equal (judged: what is easily counted).
pub const EVERY: [u32; 5] = [1, 5, 10, 20, 40];

/// The pace at which they are done soonest, of equal rests and of longer ones after every 5, 10, 20 or 40 pulls.
///
/// # Guarantees
/// Every pull ends with what it takes left, and the margin. Never slower than equal rests, and seldom quicker: the more is
/// tired the more of it a rest brings back, so that most often the quickest is to rest as much after each pull. None where
/// no rest is long enough.
///
/// # Source
/// The model of three compartments, see [`Tired`].
///
/// # Example
/// ```
/// use boughline::climber::{MOVING, Pulls, Tiring, fastest_pace};
///
/// let [arms, hands] = [Tiring::ELBOW, Tiring::HAND].map(|muscles| muscles.faster(MOVING.likely));
/// let pulls =
///     Pulls { muscles: [(arms, 0.67), (hands, 0.58)], seconds: 1.5, least_rest: 8.0, count: 60, margin: 0.05 };
/// let pace = fastest_pace(&pulls).expect("a rest is long enough");
/// assert!((500.0..700.0).contains(&pace.time(1.5, 60)));
/// assert_eq!(fastest_pace(&Pulls { margin: 0.4, ..pulls }), None);
/// ```
#[must_use]
pub fn fastest_pace(pulls: &Pulls) -> Option<Pace> {
    let mut fastest = None;
    let mut soonest = f64::INFINITY;
    for every in EVERY {
        let Some(seconds) = pulls.rest_every(every, soonest) else { continue };
        let pace = if every > 1 && seconds > pulls.least_rest {
            Pace { rest: pulls.least_rest, longer: Some(LongerRest { every, seconds }) }
        } else {
            Pace { rest: seconds, longer: None }
        };
        let time = pace.time(pulls.seconds, pulls.count);
        if time < soonest {
            (fastest, soonest) = (Some(pace), time);
        }
    }
    fastest
}

impl Pulls {
    /// The shortest rest after every so many pulls, with the least after the others; none where they take longer than a
    /// time that is known to do.
    fn rest_every(&self, every: u32, known: f64) -> Option<f64> {
        let quickest = Pace { rest: self.least_rest, longer: None }.time(self.seconds, self.count);
        let rests = f64::from(self.count.saturating_sub(1) / every);
        let mut short = self.least_rest;
        let mut long = (short + (known - quickest) / rests).min(LONGEST_REST);
        if self.last(every, short) {
            return Some(short);
        }
        if !self.last(every, long) {
            return None;
        }
        // To a thousandth of a second, so that no rest a twentieth shorter does.
        for _ in 0..20 {
            let middle = 0.5 * (short + long);
            if self.last(every, middle) {
                long = middle;
            } else {
                short = middle;
            }
        }
        Some(long)
    }

    /// Whether every pull ends with enough left, with such a rest after every so many.
    fn last(&self, every: u32, rest: f64) -> bool {
        let long_rests = self.count.saturating_sub(1) / every;
        let after_them = self.count - long_rests * every;
        for (tiring, share) in self.muscles {
            let pull = Spell::pulling(tiring, share, self.seconds);
            let quick = pull.then(Spell::resting(tiring, self.least_rest));
            let run = |pulls: u32| quick.times(f64::from(pulls.saturating_sub(1))).then(pull);
            let round = run(every).then(Spell::resting(tiring, rest));
            let rounds = |count: u32| round.times(f64::from(count));
            let enough = |spell: Spell| spell.after(Tired::FRESH).left() >= share + self.margin;
            // Nobody is more tired than at the end of the last pull of all, or of the last before a longer rest: a
            // run begins no less tired than the one before, and tires from pull to pull.
            if !enough(rounds(long_rests).then(run(after_them))) {
                return false;
            }
            if long_rests > 0 && !enough(rounds(long_rests - 1).then(run(every))) {
                return false;
            }
        }
        true
    }
}

#[cfg(test)]
mod tests {
    use super::super::{MOVING, shortest_rest};
    use super::*;

    fn pulls(shares: [f64; 2], least_rest: f64, count: u32, margin: f64) -> Pulls {
        let [arms, hands] = [Tiring::ELBOW, Tiring::HAND].map(|muscles| muscles.faster(MOVING.likely));
        let [of_arms, of_hands] = shares;
        Pulls { muscles: [(arms, of_arms), (hands, of_hands)], seconds: 1.35, least_rest, count, margin }
    }

    fn all() -> Vec<Pulls> {
        let mut all = Vec::new();
        for shares in [[0.2, 0.3], [0.45, 0.5], [0.67, 0.58], [0.75, 0.6], [0.7, 0.75], [0.88, 0.4], [0.93, 0.9]] {
            for least_rest in [0.0, 4.0, 8.0, 15.0] {
                for count in [1, 2, 7, 11, 18, 25, 40, 41, 60, 123, 400] {
                    for margin in [0.0, 0.05, 0.1] {
                        all.push(pulls(shares, least_rest, count, margin));
                    }
                }
            }
        }
        all
    }

    /// The least that any pull leaves of either muscles beyond what it takes and the margin, pull by pull.
    fn spare(pulls: &Pulls, pace: &Pace) -> f64 {
        let mut least = f64::INFINITY;
        for (tiring, share) in pulls.muscles {
            let mut tired = Tired::FRESH;
            for pull in 1..=pulls.count {
                tired = tired.pulling(tiring, share, pulls.seconds);
                least = least.min(tired.left() - share - pulls.margin);
                tired = tired.resting(tiring, pace.rest_after(pull));
            }
        }
        least
    }

    #[test]
    fn every_pull_ends_with_enough_left() {
        let mut longer = 0;
        for pulls in all() {
            let Some(pace) = fastest_pace(&pulls) else { continue };
            assert!(spare(&pulls, &pace) >= -1e-12, "{pulls:?}: {pace:?}");
            assert!(pace.rest >= pulls.least_rest);
            longer += u32::from(pace.longer.is_some());
        }
        assert!(longer > 10, "{longer}");
    }

    #[test]
    fn a_rest_a_twentieth_shorter_fails() {
        let mut shorter = 0;
        for pulls in all() {
            let Some(mut pace) = fastest_pace(&pulls) else { continue };
            match &mut pace.longer {
                Some(longer) => longer.seconds *= 0.95,
                None if pace.rest > pulls.least_rest => pace.rest *= 0.95,
                None => continue,
            }
            assert!(spare(&pulls, &pace) < 0.0, "{pulls:?}: {pace:?}");
            shorter += 1;
        }
        assert!(shorter > 100, "{shorter}");
    }

    #[test]
    fn it_is_never_slower_than_equal_rests() {
        let mut faster = 0;
        for pulls in all().into_iter().filter(|pulls| pulls.margin == 0.0) {
            let mut rest = Some(pulls.least_rest);
            for (tiring, share) in pulls.muscles {
                let needs = shortest_rest(tiring, share, pulls.seconds, f64::from(pulls.count));
                rest = rest.zip(needs).map(|(rest, needs)| rest.max(needs));
            }
            let (pace, Some(rest)) = (fastest_pace(&pulls), rest) else { continue };
            let equal = Pace { rest, longer: None }.time(pulls.seconds, pulls.count);
            let time = pace.unwrap().time(pulls.seconds, pulls.count);
            assert!(time <= equal + 1e-6, "{pulls:?}: {time} and {equal}");
            faster += u32::from(time < 0.99 * equal);
        }
        assert!(faster > 3, "{faster}");
    }

    /// Computed from the two measurements, as for the arms alone: equal rests without a margin.
    #[test]
    fn equal_rests_are_the_published_pace() {
        for (share, wanted) in [(0.67, [6.0, 9.0, 14.0]), (0.88, [20.0, 32.0, 56.0])] {
            for (faster, every) in [MOVING.low, MOVING.likely, MOVING.high].into_iter().zip(wanted) {
                let arms = (Tiring::ELBOW.faster(faster), share);
                let pulls = Pulls { muscles: [arms, arms], seconds: 1.5, least_rest: 0.0, count: 60, margin: 0.0 };
                let rest = pulls.rest_every(1, f64::INFINITY).unwrap();
                assert!((1.5 + rest - every).abs() < 1.0, "{share} {faster}: every {} s", 1.5 + rest);
            }
        }
    }

    #[test]
    fn the_time_is_that_of_pulls_and_rests() {
        for pace in
            [Pace { rest: 8.0, longer: None }, Pace { rest: 4.0, longer: Some(LongerRest { every: 5, seconds: 60.0 }) }]
        {
            for pulls in 1..30 {
                let mut time = 0.0;
                for pull in 1..=pulls {
                    time += 1.35 + if pull < pulls { pace.rest_after(pull) } else { 0.0 };
                }
                assert!((pace.time(1.35, pulls) - time).abs() < 1e-9, "{pace:?} {pulls}");
            }
        }
    }

    #[test]
    fn a_pull_that_leaves_too_little_has_no_pace() {
        assert_eq!(fastest_pace(&pulls([0.97, 0.2], 8.0, 1, 0.05)), None);
        assert_eq!(fastest_pace(&pulls([0.2, 1.1], 8.0, 60, 0.0)), None);
    }
}
