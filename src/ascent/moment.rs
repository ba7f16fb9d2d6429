//! A moment of a climb, and those that follow it.

use crate::climber::{Pace, Pulls, Spell, Tired};

/// A moment of a climb: the end of a pull, or of a rest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// Since the first pull began, in seconds.
    pub time: f64,
    /// How many strokes are done.
    pub strokes: u32,
    /// How much height is gained, in metres.
    pub height: f64,
    /// The share of strength that is left of arms and hands.
    pub left: [f64; 2],
    /// Whether a pull ended here, and no rest.
    pub pulled: bool,
}

impl Moment {
    /// Nothing is done, and nothing is tired.
    pub(super) const START: Self = Self { time: 0.0, strokes: 0, height: 0.0, left: [1.0; 2], pulled: false };

    /// Whether this leaves of arms and hands what a pull takes and a margin.
    pub(super) fn leaves(&self, pulls: &Pulls, margin: f64) -> bool {
        let mut leaves = true;
        for (left, (_, share)) in self.left.into_iter().zip(pulls.muscles) {
            leaves &= left >= share + margin;
        }
        leaves
    }
}

/// The moments of a climb after its start, until the last pull is done or the next one fails.
pub struct Moments {
    pulls: Pulls,
    pace: Pace,
    gain: f64,
    height: f64,
    now: Moment,
    tired: [Tired; 2],
}

impl Moments {
    /// The climb to a height, which the last pull reaches.
    pub(super) fn of(pulls: Pulls, pace: Pace, gain: f64, height: f64) -> Self {
        Self { pulls, pace, gain, height, now: Moment::START, tired: [Tired::FRESH; 2] }
    }
}

impl Iterator for Moments {
    type Item = Moment;

    fn next(&mut self) -> Option<Moment> {
        let Self { pulls, now, .. } = self;
        if now.strokes == pulls.count {
            return None;
        }
        let resting = now.pulled;
        let rest = self.pace.rest_after(now.strokes);
        for ((tired, left), (tiring, share)) in self.tired.iter_mut().zip(&mut now.left).zip(pulls.muscles) {
            let spell =
                if resting { Spell::resting(tiring, rest) } else { Spell::pulling(tiring, share, pulls.seconds) };
            *tired = spell.after(*tired);
            *left = tired.left();
        }
        now.pulled = !resting;
        if resting {
            now.time += rest;
        } else {
            if !now.leaves(pulls, 0.0) {
                return None;
            }
            now.time += pulls.seconds;
            now.strokes += 1;
            let risen = f64::from(now.strokes) * self.gain;
            now.height = if risen < self.height { risen } else { self.height };
        }
        Some(*now)
    }
}
