//! The verdict, and what decides it.

/// Where somebody stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Level {
    /// Most sampled climbs succeed, and everything a plan needs has been entered.
    WithinReach,
    /// Some do, or something is missing.
    AtLimit,
    /// Hardly any do.
    OutOfReach,
}

/// The share of sampled climbs from which on a climb is within reach (judged).
pub const AT_LEAST_WITHIN: f64 = 0.8;
/// The share of sampled climbs under which a climb is out of reach (judged).
pub const UNDER_IS_OUT: f64 = 0.2;

/// What decided.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decided {
    /// The arms' pull.
    Arms,
    /// The hands' hold.
    Hands,
    /// Both: neither gives what one pull takes.
    ArmsAndHands,
    /// A stroke that gains nothing.
    Stroke,
    /// What has not been entered yet.
    Missing,
}

/// A verdict.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Verdict {
    /// Where somebody stands.
    pub level: Level,
    /// What decided.
    pub decided: Decided,
    /// The share of sampled climbs in which one pull succeeds and gains height.
    pub chance: f64,
    /// The share of sampled climbs in which a stroke gains nothing.
    pub stuck: f64,
    /// How many times the present pull and hold would bring the next better level; none when there is none, or no
    /// strength would.
    pub stronger: Option<f64>,
}

/// The level for a chance, for a plan with or without something missing.
pub(crate) fn level(chance: f64, complete: bool) -> Level {
    if chance < UNDER_IS_OUT {
        Level::OutOfReach
    } else if chance >= AT_LEAST_WITHIN && complete {
        Level::WithinReach
    } else {
        Level::AtLimit
    }
}

/// The verdict from the strain of every sample (see `Climb::strain`), sorted; endless where a stroke gains nothing.
pub(crate) fn verdict(strains: &[f64], stuck: f64, tighter: Decided, complete: bool) -> Verdict {
    let chance = strains.iter().filter(|strain| **strain <= 1.0).count() as f64 / strains.len().max(1) as f64;
    let level = level(chance, complete);
    let next = if level == Level::OutOfReach { UNDER_IS_OUT } else { AT_LEAST_WITHIN };
    let needed = ((strains.len() as f64 * next).ceil() as usize).saturating_sub(1);
    let stronger = strains.get(needed).copied().filter(|strain| *strain > 1.0 && strain.is_finite());
    let decided = if chance >= AT_LEAST_WITHIN {
        if complete { tighter } else { Decided::Missing }
    } else if stronger.is_none() {
        // No strength makes up for a stroke that gains nothing.
        Decided::Stroke
    } else {
        tighter
    };
    Verdict { level, decided, chance, stuck, stronger }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn strains(passing: usize, of: usize, fails_at: f64) -> Vec<f64> {
        (0..of).map(|at| if at < passing { 0.5 } else { fails_at }).collect()
    }

    #[test]
    fn thresholds_are_a_fifth_and_four_fifths() {
        for (passing, complete, wanted) in [
            (19, true, Level::OutOfReach),
            (20, true, Level::AtLimit),
            (79, true, Level::AtLimit),
            (80, true, Level::WithinReach),
            (100, false, Level::AtLimit),
        ] {
            assert_eq!(verdict(&strains(passing, 100, 2.0), 0.0, Decided::Arms, complete).level, wanted, "{passing}");
        }
    }

    #[test]
    fn the_change_named_brings_the_next_level() {
        let before = strains(5, 100, 1.25);
        let named = verdict(&before, 0.0, Decided::Arms, true).stronger.unwrap();
        let after: Vec<f64> = before.iter().map(|strain| strain / named).collect();
        assert_eq!(verdict(&after, 0.0, Decided::Arms, true).level, Level::WithinReach);
        assert_eq!(verdict(&strains(5, 100, f64::INFINITY), 0.95, Decided::Stroke, true).stronger, None);
    }

    #[test]
    fn where_no_strength_would_help_the_stroke_decides() {
        let hopeless = verdict(&strains(5, 100, f64::INFINITY), 0.95, Decided::Arms, true);
        assert_eq!((hopeless.decided, hopeless.stronger), (Decided::Stroke, None));
    }

    #[test]
    fn what_is_missing_decides_only_when_strength_does_not() {
        assert_eq!(verdict(&strains(90, 100, 2.0), 0.0, Decided::Arms, false).decided, Decided::Missing);
        assert_eq!(verdict(&strains(50, 100, 2.0), 0.0, Decided::Hands, false).decided, Decided::Hands);
    }
}
