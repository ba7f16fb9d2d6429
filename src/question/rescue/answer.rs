//! What the answer holds.

use super::before::Before;
use crate::descent::{FootBrake, Haul, Stage};
use crate::field::{Row, Spread};

/// A way to the ground for somebody who is stuck.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum How {
    /// They come down by themselves.
    Oneself,
    /// Somebody at the foot lets them down.
    LetDown,
    /// Somebody at the foot lifts them off a plain tie by a haul, and lets them down.
    LiftedOff,
    /// Somebody climbs to them on a second rope.
    SecondRope,
}

/// Why a way is none on this plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Why {
    /// The rope is tied in the crotch, or comes back to the climber.
    NothingOnTheGround,
    /// The rope is tied at the foot, and the tie does not pay out.
    PlainTie,
    /// The foot pays out already.
    PaysOut,
    /// The rope that somebody has is too short to let anybody down from the top.
    ShortRope,
    /// No rig here lets those who are there haul so much.
    TooHeavy,
    /// Nobody is there who could.
    Nobody,
    /// The climber only hangs there while somebody hauls.
    Hauled,
    /// No hitch of theirs is on the climbing rope.
    NoHitch,
}

/// A way, its stages, and how long they take together.
#[derive(Debug, Clone, PartialEq)]
pub struct Way {
    /// How.
    pub how: How,
    /// Its stages in order, or why it is none.
    pub stages: Result<Vec<Stage>, Why>,
    /// How long they take together, in seconds.
    pub total: Option<Spread>,
}

/// What takes the weight off a hitch that has jammed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unload {
    /// The upper hitch slides up once more, and one more pull.
    OneMorePull,
    /// A foot loop on the rope above, to stand up in.
    FootLoop,
    /// A spare cord and hitch above, and the same advantage once more.
    SpareCord,
    /// A helper pulls the tail from the ground.
    HelperOnTheTail,
}

/// Somebody on the ground hauls, and what that takes of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hauling {
    /// The rig.
    pub haul: Haul,
    /// The pull, in newtons.
    pub pull: Spread,
    /// The rope that is pulled from the ground to the top, in metres.
    pub rope: f64,
    /// How many helpers that takes, of a likely pull each.
    pub people: Spread,
}

/// The answer. All in SI.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The climber's weight with all they carry.
    pub weight: Spread,
    /// How high they may be stuck.
    pub height: f64,
    /// By when they have to be on the ground once they hang still.
    pub rescue_clock: f64,
    /// From leaving the seat to being back, where legs do not move.
    pub harness_clock: Option<f64>,
    /// Every way, in the order they are tried.
    pub ways: Vec<Way>,
    /// The quickest that does not count on the climber, as a place among the ways.
    pub best: Option<usize>,
    /// What somebody at the foot holds while they let them down; none where nobody can.
    pub lowering: Option<Spread>,
    /// What the rope runs round at the foot.
    pub foot_brake: FootBrake,
    /// The tension above it over what the hand holds.
    pub foot_ratio: Spread,
    /// The rope that letting down from the top takes at the least: three times the height of the crotch.
    pub lowering_rope: Option<f64>,
    /// Whether the rope of this plan comes to the ground over the crotch, so that it can be hauled.
    pub comes_down: bool,
    /// What each helper's rig takes over this crotch.
    pub hauls: Vec<Hauling>,
    /// What one helper pulls.
    pub helper: Spread,
    /// What takes the weight off a jammed hitch.
    pub unload: Vec<Unload>,
    /// What to see to before going.
    pub before: Vec<Before>,
    /// The fields whose defaults it rests on.
    pub assumed: Vec<&'static Row>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
}

/// Something to be careful about.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// The climb is higher than the crotch.
    ClimbAboveCrotch,
    /// Hanging still hurts within minutes.
    HangingStill,
    /// Nothing here gets them down in time without themselves.
    NoRescue,
    /// The time is short of what the ends of its range may take.
    Tight,
    /// Two people at all tree climbing.
    TwoPeople,
    /// An advantage that can break gear and crush people.
    HaulHard,
    /// Nobody hauls with more than half of their own weight.
    HalfOwnWeight,
    /// Times are judged: rehearse.
    Rehearse,
    /// Legs that do not move.
    HarnessClock,
    /// After a rescue: lie down or sit, and call.
    AfterRescue,
}
