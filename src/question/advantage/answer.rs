//! What the question answers: facts, without words.

use super::Kit;
use crate::ascent::{Answer as Ascent, Level};
use crate::climber::Arms;
use crate::field::{Row, Spread};
use crate::reeving::RigName;

/// What somebody can do with a rig, the best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// Four sampled climbs in five come to the height in time, whatever else the plan lacks; where the count of pulls is
    /// not known, one pull succeeds in four of five.
    Works,
    /// Some do.
    AtLimit,
    /// The strength is not known.
    Unknown,
    /// Hardly any do.
    Out,
}

/// One rig beside the others.
#[derive(Debug, Clone, PartialEq)]
pub struct Beside {
    /// What the climb comes to on it.
    pub ascent: Ascent,
    /// What it takes beyond rope, harness and hitch.
    pub kit: Kit,
}

impl Beside {
    /// What somebody can do with it.
    #[must_use]
    pub fn standing(&self) -> Standing {
        match self.ascent.verdict.map(|verdict| Level::of(verdict.counts())) {
            None => Standing::Unknown,
            Some(Level::WithinReach) => Standing::Works,
            Some(Level::AtLimit) => Standing::AtLimit,
            Some(Level::OutOfReach) => Standing::Out,
        }
    }

    /// Whether it stands before another: what works first, then what needs nobody on the ground, then the least kit.
    pub(super) fn is_before(&self, other: &Self) -> bool {
        let key = |beside: &Self| {
            let Self { kit, ascent, .. } = beside;
            // To a thousandth: only an own rig's advantage is no whole number.
            let ideal = (ascent.ideal * 1000.0) as u64;
            (beside.standing(), ascent.hauled, kit.key(), ideal)
        };
        key(self) < key(other)
    }
}

/// What a pull is held against: the tighter of what the arms give and what the hands hold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strength {
    /// How much, in newtons.
    pub force: Spread,
    /// Whether the hands are the tighter.
    pub is_hands: bool,
    /// How many pull at a time.
    pub pulls_with: Arms,
}

/// What each rig asks of a pull, for every weight.
#[derive(Debug, Clone, PartialEq)]
pub struct Pulls {
    /// From the lightest to the heaviest climber with kit, in kilograms.
    pub masses: Vec<f64>,
    /// For each rig that the climber hauls alone: its place in [`Answer::rigs`], and the likely pull at each mass.
    pub lines: Vec<(usize, Vec<f64>)>,
}

/// The answer. Forces in newtons, lengths in metres, times in seconds.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The rigs, in the order of what this person can do with least kit.
    pub rigs: Vec<Beside>,
    /// The least rig that works without a helper, as a place in [`rigs`](Self::rigs).
    pub least: Option<usize>,
    /// The least of them that takes no more than half of what arms and hands give.
    pub easy: Option<usize>,
    /// The rig that was said, if one was.
    pub said: Option<RigName>,
    /// The fields whose defaults the answer rests on.
    pub assumed: Vec<&'static Row>,
    /// The weight of the climber and all they carry.
    pub mass: Spread,
    /// What the pull is held against on the rigs that the most hands pull.
    pub strength: Option<Strength>,
    /// What each rig asks of a pull.
    pub pulls: Pulls,
    /// How many samples it rests on.
    pub samples: u32,
    /// Whether more could change it.
    pub more: bool,
}
