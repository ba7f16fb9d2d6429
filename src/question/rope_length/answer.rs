//! What the question answers: facts, without words.

use crate::field::{Row, Spread};
use crate::rope::{Anchor, Course, Owned, State, Stock};

/// Something to be careful about. Lengths in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// A stopper in the end, always.
    Stopper,
    /// Less was left for it than it takes.
    ShortEnd,
    /// The end of the rope that somebody has hangs above the ground on the way down.
    RopeEndsAbove {
        /// How high.
        by: Spread,
    },
    /// The rope that somebody has is too short for a state.
    RopeTooShort {
        /// The state that takes most.
        state: State,
        /// By how much.
        by: Spread,
    },
    /// Heights from the ground are estimates.
    EstimatedHeight,
    /// Measure the rope before anyone climbs.
    LayItOut,
    /// A base anchor nearly doubles the load on the crotch.
    BaseAnchorLoad,
    /// Nobody can let the climber down from a plain tie.
    PlainTie,
    /// Being let down takes a device, and a helper who has rehearsed it.
    LoweringHelper,
    /// Nobody can lower the climber from a canopy anchor.
    NotLowerable,
    /// The tail that pulls the anchor down hangs within everybody's reach.
    AnchorTail,
    /// A releasable anchor must be locked.
    LockRelease,
    /// A quick link holds only screwed shut.
    LinkShut,
    /// The cord that brings an anchor down snags.
    CordSnags,
    /// A rope that starts aside swings its climber to the stem.
    Swing,
    /// The rig has a haul cord, which is not reckoned.
    CordApart,
    /// An anchor was chosen, and the rope of this rig has none.
    NoAnchor,
}

/// The answer. Lengths in metres.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// Where the rope is made fast; none where it only runs over the crotch.
    pub anchor: Option<Anchor>,
    /// The height of the crotch; where none was said, the highest that is sure for the rope that somebody has.
    pub crotch: f64,
    /// Whether that was said.
    pub planned: bool,
    /// How far the rig's moving hitch stands off at the most; none where it has none.
    pub section: Option<Spread>,
    /// The fields whose defaults the answer rests on.
    pub assumed: Vec<&'static Row>,
    /// The course of the rope in every state that there is, in the order they come.
    pub courses: Vec<Course>,
    /// The state that needs most.
    pub decides: State,
    /// What that comes to: each end the greatest of the states' ends.
    pub need: Spread,
    /// What one can buy, where metres and where feet are sold; the same twice where the lengths were said.
    pub stock: [Stock; 2],
    /// The rope that somebody has.
    pub owned: Option<Owned>,
    /// The line that stays in the tree between visits.
    pub preset_line: Spread,
    /// The cord that brings the anchor down, where it needs one.
    pub retrieval_cord: Option<Spread>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
}
