//! What the question answers: facts, without words.

use super::{LimbFact, Piece, Slip, Standing, Strength};
use crate::field::{Row, Spread};
use crate::gear::Minimum;
use crate::reeving::{Rig, RigName, WhyNot};
use std::sync::Arc;

/// What the rig is doing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Doing {
    /// The climber pulls.
    Climbing,
    /// Every hand is off.
    Resting,
    /// The hand has just let go, and the hitch has taken hold.
    HandOff,
    /// The climber has fallen into slack.
    Slipping,
    /// The hitch that held the climber is gone, and its backup has caught them.
    Caught,
    /// Somebody on the ground gives rope.
    Lowered,
    /// Somebody on the ground takes rope.
    Hauled,
}

impl Doing {
    /// All of them, in the order they are told.
    pub const ALL: &[Self] =
        &[Self::Climbing, Self::Resting, Self::HandOff, Self::Slipping, Self::Caught, Self::Lowered, Self::Hauled];

    /// Whether the climber drops, and something stops them.
    #[must_use]
    pub const fn is_drop(self) -> bool {
        matches!(self, Self::HandOff | Self::Slipping | Self::Caught)
    }
}

/// Why a state is not reckoned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Why {
    /// The rig cannot be in it.
    Cannot(WhyNot),
    /// Nothing backs up the hitch that holds the climber.
    NothingBacksUp,
    /// How much rope is out is not known: the heights were not said.
    NoHeights,
    /// The rig has no solution in it.
    Unsolved,
}

/// What a piece carries.
#[derive(Debug, Clone, PartialEq)]
pub struct Load {
    /// The piece.
    pub piece: Piece,
    /// What it carries while nothing jerks, in newtons.
    pub load: Spread,
    /// What it carries at the peak, in newtons.
    pub peak: Spread,
    /// What it bears, where that is known.
    pub strength: Option<Strength>,
    /// What it bears as it is rigged over the peak.
    pub ratio: Option<Spread>,
    /// The least that is asked of it.
    pub minimum: Option<Minimum>,
    /// How it stands.
    pub standing: Standing,
    /// Whether its failure alone drops the climber.
    pub single: bool,
}

/// What every piece carries in a state.
#[derive(Debug, Clone, PartialEq)]
pub struct Carried {
    /// The rig as it is then.
    pub rig: Arc<Rig>,
    /// Which hitches grip.
    pub grips: Vec<bool>,
    /// Whether a hand is on the rope.
    pub hands: bool,
    /// The tension of every strand of every rope at the peak, in newtons.
    pub tensions: Vec<Vec<Spread>>,
    /// The pieces.
    pub loads: Vec<Load>,
    /// How far the climber dropped first, in metres, where something stopped them.
    pub dropped: Option<Spread>,
    /// Whether only a hand holds the climber.
    pub by_hand: bool,
}

/// A state, and what every piece carries in it.
#[derive(Debug, Clone, PartialEq)]
pub struct InState {
    /// The state.
    pub doing: Doing,
    /// What is carried, or why that is not reckoned.
    pub carried: Result<Carried, Why>,
}

/// Something to be careful about.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// Nothing holds the climber once the hands, or the helper, let go.
    NothingHolds,
    /// A part may be loaded past what it bears.
    Short,
    /// The cord of a hitch is thinner than one that lives hang on.
    ThinCord,
    /// The rope bears less than a tree worker's.
    WeakLine,
    /// A catch may pull more than a seat harness may.
    HardCatch,
    /// A catch may pull more than any harness may.
    PastHarness,
    /// A catch may come after the ground.
    LowCatch,
    /// A hitch is no fuse.
    NoFuse,
    /// The rope is made fast at the foot of the tree.
    BaseAnchor,
    /// A second limb carries the rope.
    Redirected,
    /// The model sees no wear.
    Unseen,
    /// Hanging still makes people faint.
    HangingStill,
}

/// The answer. Forces in newtons, lengths in metres.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// Which rig.
    pub rig_name: RigName,
    /// Whether the rope is made fast at the foot of the tree.
    pub at_the_foot: bool,
    /// The weight of the climber and all they carry.
    pub weight: Spread,
    /// The crotch, and the lower hitch at the start and at the top, in metres above the ground; none where they were not
    /// said.
    pub heights: Option<[f64; 3]>,
    /// Whether a helper on the ground hauls.
    pub hauled: bool,
    /// Whether something holds the climber once every hand is off, at once or after a drop.
    pub held: bool,
    /// The states.
    pub states: Vec<InState>,
    /// What a slip comes to, where the heights are known and something holds.
    pub slip: Option<Slip>,
    /// What bending says of the limb, where enough was said of it.
    pub limb: Option<LimbFact>,
    /// Whether the forearm was said, and is thicker than the limb.
    pub thinner_than_forearm: Option<bool>,
    /// Whether the limb is thinner than the least bole.
    pub thinner_than_bole: Option<bool>,
    /// The fields whose defaults the answer rests on.
    pub assumed: Vec<&'static Row>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
    /// How many samples it rests on.
    pub samples: u32,
    /// Whether more could change it.
    pub more: bool,
}
