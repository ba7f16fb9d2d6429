//! How a climb goes, pull by pull.

use super::climb::Climb;
use super::cycle::Cycle;
use super::moment::{Moment, Moments};
use super::things::{TIRES, drawn};
use crate::chance::Likely;
use crate::climber::{MOVING, Pace, Pulls, Tiring, fastest_pace};
use crate::field::Spread;

/// What every pull shall leave of one's strength beyond what it takes, as a share of it (judged).
pub const MARGIN: Spread = Spread::new(0.0, 0.05, 0.10);

/// More strokes than this are not followed (judged: at eight seconds each, seven hours).
const MOST_STROKES: f64 = 3000.0;

/// How a climb goes at the likely value of everything.
///
/// # Guarantees
/// At a pace that works it goes to the top, and every pull leaves the margin. Where none does it goes with the shortest
/// rests until a pull fails.
#[derive(Debug, Clone, PartialEq)]
pub struct Going {
    /// The quickest pace with which every pull leaves the margin; none where no rest is long enough.
    pub pace: Option<Pace>,
    /// All its pulls, and what each takes.
    pub pulls: Pulls,
    /// The height gained in a stroke, in metres.
    pub gain: f64,
    /// The height to climb, in metres.
    pub height: f64,
    /// The time that is allowed, in seconds.
    pub allowed: f64,
    /// After the last pull that succeeds.
    pub end: Moment,
    /// After the last pull within the time allowed.
    pub in_time: Moment,
    /// Where it is time to go down, before the top.
    pub turn_back: Option<TurnBack>,
}

/// Where it is time to go down.
///
/// The rule is a judged one, and cautious: at the end of a pull
///
/// * when half the time allowed is gone and less than half the height is done, for nobody climbs faster tired; or
/// * when the pull has left of arms or hands less than another takes and the margin, for then a worse pull fails, and some
///   strength must be kept for the way down;
///
/// whichever comes first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnBack {
    /// The end of the pull after which to go down.
    pub at: Moment,
    /// Whether strength tells so, and not time.
    pub tired: bool,
}

impl Going {
    /// How the likely climb goes in a time that is allowed, in seconds. None where strength or strokes are not known, where
    /// a stroke gains nothing, and where it takes more strokes than anybody makes.
    pub(super) fn of(climb: &Climb, cycle: &Cycle, height: f64, allowed: f64) -> Option<Self> {
        // Those that only stretch the rope are spread over all.
        let Climb { arms_share, hands_share, all_strokes: strokes, .. } = *climb;
        let gain = height / strokes;
        if arms_share.is_nan() || hands_share.is_nan() || strokes.is_nan() || strokes > MOST_STROKES {
            return None;
        }
        let faster = drawn(&Likely, TIRES, &MOVING);
        let pulls = Pulls {
            muscles: [(Tiring::ELBOW.faster(faster), arms_share), (Tiring::HAND.faster(faster), hands_share)],
            seconds: cycle.pull,
            least_rest: cycle.reset.max(climb.stroke_work / climb.lasting.power - cycle.pull),
            count: strokes.ceil() as u32,
            margin: MARGIN.likely,
        };
        Self::with(pulls, gain, height, allowed)
    }

    /// How it goes with these pulls. None where the first one fails.
    fn with(pulls: Pulls, gain: f64, height: f64, allowed: f64) -> Option<Self> {
        let (pace, start) = (fastest_pace(&pulls), Moment::START);
        let mut going = Self { pace, pulls, gain, height, allowed, end: start, in_time: start, turn_back: None };
        for moment in going.moments() {
            if moment.pulled {
                going.passes(moment);
            }
        }
        if going.end.strokes > 0 { Some(going) } else { None }
    }

    /// The start.
    #[must_use]
    pub fn start(&self) -> Moment {
        Moment::START
    }

    /// The moments after the start.
    #[must_use]
    pub fn moments(&self) -> Moments {
        Moments::of(self.pulls, self.kept_pace(), self.gain, self.height)
    }

    /// The rest after a stroke, counted from one, in seconds.
    #[must_use]
    pub fn rest_after(&self, stroke: u32) -> f64 {
        self.kept_pace().rest_after(stroke)
    }

    /// The pace; where none works, the quickest there is.
    fn kept_pace(&self) -> Pace {
        self.pace.unwrap_or(Pace { rest: self.pulls.least_rest, longer: None })
    }

    /// Whether it comes to the top.
    #[must_use]
    pub fn is_at_top(&self) -> bool {
        self.end.strokes == self.pulls.count
    }

    /// The strokes that half the height takes.
    #[must_use]
    pub fn halfway(&self) -> u32 {
        (0.5 * self.height / self.gain).ceil() as u32
    }

    /// The end of a pull.
    fn passes(&mut self, moment: Moment) {
        self.end = moment;
        if moment.time <= self.allowed {
            self.in_time = moment;
        }
        let late = moment.time >= 0.5 * self.allowed && moment.height < 0.5 * self.height;
        let tired = !moment.leaves(&self.pulls, self.pulls.margin);
        if self.turn_back.is_none() && (late || tired) && moment.strokes < self.pulls.count {
            self.turn_back = Some(TurnBack { at: moment, tired });
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::climber::Tired;

    fn pulls(shares: [f64; 2], count: u32) -> Pulls {
        let [arms, hands] = [Tiring::ELBOW, Tiring::HAND].map(|muscles| muscles.faster(MOVING.likely));
        let muscles = [(arms, shares[0]), (hands, shares[1])];
        Pulls { muscles, seconds: 1.35, least_rest: 8.0, count, margin: MARGIN.likely }
    }

    /// Strokes of 20 cm to a height that the last one reaches halfway.
    fn going(shares: [f64; 2], count: u32, allowed: f64) -> Going {
        Going::with(pulls(shares, count), 0.2, 0.2 * (f64::from(count) - 0.5), allowed).unwrap()
    }

    /// The three compartments themselves, active, tired and rested, by Runge and Kutta's fourth order in steps of 10 ms.
    /// What a pull takes works at once, out of what is rested, and rests at once when it ends.
    #[test]
    fn it_is_what_integrating_three_compartments_comes_to() {
        for shares in [[0.67, 0.58], [0.8, 0.5], [0.5, 0.78], [0.92, 0.3]] {
            let going = going(shares, 40, 1800.0);
            for (muscles, (tiring, share)) in going.pulls.muscles.into_iter().enumerate() {
                let (mut tired, mut before) = (0.0, 0.0);
                for moment in going.moments() {
                    let slope = |tired: f64| {
                        let working = if moment.pulled { share } else { 0.0 };
                        let rested = 1.0 - working - tired;
                        assert!(rested > -1e-9, "nothing more than all works");
                        let back = if moment.pulled { tiring.recovery } else { tiring.recovery * tiring.rest };
                        tiring.fatigue * working - back * tired
                    };
                    let steps = ((moment.time - before) / 0.01).ceil();
                    let step = (moment.time - before) / steps;
                    for _ in 0..steps as usize {
                        let one = slope(tired);
                        let two = slope(tired + 0.5 * step * one);
                        let three = slope(tired + 0.5 * step * two);
                        let four = slope(tired + step * three);
                        tired += step / 6.0 * (one + 2.0 * two + 2.0 * three + four);
                    }
                    before = moment.time;
                    assert!((1.0 - tired - moment.left[muscles]).abs() < 1e-9, "{shares:?} {moment:?}");
                }
            }
        }
    }

    #[test]
    fn at_a_pace_that_works_it_goes_to_the_top_with_the_margin() {
        for shares in [[0.3, 0.3], [0.67, 0.58], [0.8, 0.5], [0.5, 0.78], [0.88, 0.6]] {
            for count in [1, 2, 30, 80] {
                let going = going(shares, count, 36_000.0);
                let pace = going.pace.unwrap();
                assert!(going.is_at_top() && going.turn_back.is_none(), "{going:?}");
                assert_eq!((going.end, going.end.height), (going.in_time, going.height));
                assert!((going.end.time - pace.time(1.35, count)).abs() < 1e-9);
                for moment in going.moments().filter(|moment| moment.pulled) {
                    assert!(moment.leaves(&going.pulls, MARGIN.likely), "{moment:?}");
                }
            }
        }
    }

    #[test]
    fn where_no_pace_works_it_ends_before_the_pull_that_fails() {
        let going = going([0.92, 0.3], 40, 1800.0);
        assert!(going.pace.is_none() && !going.is_at_top());
        let end = going.end;
        assert!(end.strokes >= 2 && (end.height - 0.2 * f64::from(end.strokes)).abs() < 1e-12);
        assert!(end.leaves(&going.pulls, 0.0));
        let turn_back = going.turn_back.unwrap();
        assert!(turn_back.tired && turn_back.at.strokes <= end.strokes);
        // One more would not leave what it takes.
        let [(arms, share), _] = going.pulls.muscles;
        let mut tired = Tired::FRESH;
        for _ in 0..end.strokes {
            tired = tired.pulling(arms, share, 1.35).resting(arms, 8.0);
        }
        assert!(tired.pulling(arms, share, 1.35).left() < share);
    }

    #[test]
    fn the_first_pull_failing_is_no_climb() {
        assert_eq!(Going::with(pulls([1.01, 0.3], 40), 0.2, 8.0, 1800.0), None);
        assert_eq!(Going::with(pulls([0.3, 1.01], 40), 0.2, 8.0, 1800.0), None);
    }

    #[test]
    fn out_of_time_it_turns_back_at_half_of_it() {
        let whole = going([0.67, 0.58], 60, 36_000.0).end.time;
        let going = going([0.67, 0.58], 60, 0.5 * whole);
        assert!(going.is_at_top() && going.in_time.time <= 0.5 * whole);
        assert!(going.in_time.height < going.height);
        let TurnBack { at, tired } = going.turn_back.unwrap();
        assert!(!tired && at.time >= 0.25 * whole && at.time - going.pulls.seconds - 8.0 < 0.25 * whole);
        assert!(at.strokes < going.halfway());
        // More time never turns anybody back sooner.
        let mut before = 0;
        for allowed in 1..60 {
            let back = Going::with(going.pulls, going.gain, going.height, whole / 60.0 * f64::from(allowed));
            let strokes = back.unwrap().turn_back.map_or(u32::MAX, |back| back.at.strokes);
            assert!(strokes >= before, "{allowed}");
            before = strokes;
        }
    }
}
