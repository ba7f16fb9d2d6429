//! The verdict.

use super::outcome::Outcomes;
use super::{AT_LEAST_WITHIN, Decided, Level, UNDER_IS_OUT};

/// A verdict.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Verdict {
    /// Where somebody stands.
    pub level: Level,
    /// What decided.
    pub decided: Decided,
    /// The share of sampled climbs in which one pull succeeds and gains height.
    pub chance: f64,
    /// The share of sampled climbs that come to the height within the time allowed; none where the count of pulls is not
    /// known.
    pub reaches: Option<f64>,
    /// The share of sampled climbs in which a stroke gains nothing.
    pub stuck: f64,
    /// How many times the present pull and hold would bring the next better level; none when there is none, or no
    /// strength would.
    pub stronger: Option<f64>,
}

impl Verdict {
    /// The chance that counts: of the height where that is known, else of one pull.
    #[must_use]
    pub fn counts(self) -> f64 {
        self.reaches.unwrap_or(self.chance)
    }
}

/// What a verdict is capped by, whatever the strength.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) struct Caps {
    /// Whether something that a plan needs has not been entered.
    pub(super) lacks: bool,
    /// Whether the crotch does not let the seat come as high as it is to.
    pub(super) too_low: bool,
    /// Whether the climber is heavier than the labels allow.
    pub(super) overloaded: bool,
    /// Whether the climber may be heavier than the labels allow, or is heavier than most do and none has been read.
    pub(super) unrated: bool,
    /// Whether somebody whose legs do not move hangs longer than they should, or nobody knows how long.
    pub(super) hangs_long: bool,
    /// Whether nothing holds the climber once a hand lets go.
    pub(super) nothing_holds: bool,
}

/// The verdict on reckoned climbs.
pub(super) fn verdict(outcomes: &Outcomes, grip_is_entered: bool, caps: Caps) -> Verdict {
    let chance = outcomes.share(&|end| end.one <= 1.0);
    let reached = outcomes.share(&|end| end.whole <= 1.0);
    let stuck = outcomes.share(&|end| end.by == Decided::Stroke);
    let capped = caps != Caps::default();
    let level = match Level::of(reached) {
        _ if caps.overloaded || caps.too_low => Level::OutOfReach,
        Level::WithinReach if capped => Level::AtLimit,
        level => level,
    };
    let next = if reached < UNDER_IS_OUT { UNDER_IS_OUT } else { AT_LEAST_WITHIN };
    let strain = outcomes.strain_of(next);
    let by = outcomes.decided(grip_is_entered);
    let decided = if caps.overloaded {
        Decided::RatedMass
    } else if caps.too_low {
        Decided::TopOut
    } else if reached >= AT_LEAST_WITHIN && capped {
        if caps.lacks {
            Decided::Missing
        } else if caps.nothing_holds {
            Decided::NothingHolds
        } else if caps.hangs_long {
            Decided::HarnessClock
        } else {
            Decided::RatedMass
        }
    } else if strain.is_infinite() && !matches!(by, Decided::Time | Decided::TopOut) {
        // No strength makes up for a stroke that gains nothing, or for time.
        let slow = outcomes.share(&|end| end.by == Decided::Time);
        if slow > stuck { Decided::Time } else { Decided::Stroke }
    } else {
        by
    };
    Verdict {
        level,
        decided,
        chance,
        reaches: if outcomes.counted { Some(reached) } else { None },
        stuck,
        stronger: Some(strain).filter(|strain| *strain > 1.0 && strain.is_finite()),
    }
}

#[cfg(test)]
mod tests {
    use super::super::outcome::Outcome;
    use super::*;

    const LACKS: Caps = Caps {
        lacks: true,
        too_low: false,
        overloaded: false,
        unrated: false,
        hangs_long: false,
        nothing_holds: false,
    };

    /// So many of a hundred climbs succeed; the others fail at so many times the strength, by something.
    fn outcomes(passing: usize, fails_at: f64, by: Decided) -> Outcomes {
        let end = |at| {
            let whole = if at < passing { 0.5 } else { fails_at };
            let one = if by.is_of_many_pulls() { 0.4 } else { whole };
            Outcome { one, whole, by: if at < passing { Decided::Arms } else { by } }
        };
        Outcomes { ends: (0..100).map(end).collect(), likely: [0.9, 0.5], counted: true }
    }

    #[test]
    fn thresholds_are_a_fifth_and_four_fifths() {
        for (passing, caps, wanted) in [
            (19, Caps::default(), Level::OutOfReach),
            (20, Caps::default(), Level::AtLimit),
            (79, Caps::default(), Level::AtLimit),
            (80, Caps::default(), Level::WithinReach),
            (100, LACKS, Level::AtLimit),
        ] {
            assert_eq!(verdict(&outcomes(passing, 2.0, Decided::Arms), false, caps).level, wanted, "{passing}");
        }
    }

    #[test]
    fn the_change_named_brings_the_next_level() {
        let before = outcomes(5, 1.25, Decided::LastingHands);
        let named = verdict(&before, false, Caps::default()).stronger.unwrap();
        let mut after = outcomes(5, 1.25, Decided::LastingHands);
        for end in &mut after.ends {
            end.whole /= named;
        }
        assert_eq!(verdict(&after, false, Caps::default()).level, Level::WithinReach);
        assert_eq!(verdict(&outcomes(5, f64::INFINITY, Decided::Stroke), false, Caps::default()).stronger, None);
    }

    #[test]
    fn where_no_strength_would_help_stroke_or_time_decides() {
        for by in [Decided::Stroke, Decided::Time] {
            let hopeless = verdict(&outcomes(5, f64::INFINITY, by), false, Caps::default());
            assert_eq!((hopeless.decided, hopeless.stronger), (by, None));
        }
    }

    #[test]
    fn what_most_fail_by_decides_and_what_is_missing_only_when_strength_does_not() {
        let decided = |passing, by, caps| verdict(&outcomes(passing, 2.0, by), false, caps).decided;
        assert_eq!(decided(90, Decided::Arms, LACKS), Decided::Missing);
        assert_eq!(decided(50, Decided::Arms, LACKS), Decided::Arms);
        for by in [Decided::LastingArms, Decided::LastingHands, Decided::Power] {
            assert_eq!(decided(50, by, LACKS), by);
            assert_eq!(decided(10, by, Caps::default()), by);
        }
    }

    #[test]
    fn no_strength_makes_up_for_ratings_or_for_the_clock() {
        let strong = outcomes(100, 1.0, Decided::Arms);
        for (caps, level, decided) in [
            (Caps { overloaded: true, ..LACKS }, Level::OutOfReach, Decided::RatedMass),
            (Caps { too_low: true, ..LACKS }, Level::OutOfReach, Decided::TopOut),
            (Caps { nothing_holds: true, ..Caps::default() }, Level::AtLimit, Decided::NothingHolds),
            (Caps { unrated: true, ..Caps::default() }, Level::AtLimit, Decided::RatedMass),
            (Caps { hangs_long: true, ..Caps::default() }, Level::AtLimit, Decided::HarnessClock),
        ] {
            let verdict = verdict(&strong, true, caps);
            assert_eq!((verdict.level, verdict.decided), (level, decided));
        }
    }

    #[test]
    fn the_chance_of_one_pull_is_never_less_than_that_of_the_height() {
        let verdict = verdict(&outcomes(30, 2.0, Decided::LastingArms), false, Caps::default());
        assert_eq!((verdict.chance.to_bits(), verdict.reaches), (1.0_f64.to_bits(), Some(0.3)));
    }
}
