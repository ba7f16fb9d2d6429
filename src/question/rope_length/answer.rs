//! What the question answers: facts, without words.

use crate::field::{Row, Spread};
use crate::rope::{Anchor, Course, State};

/// Something to be careful about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// A stopper in the end, always.
    Stopper,
    /// Less was left for it than it takes.
    ShortEnd,
    /// Heights from the ground are estimates.
    EstimatedHeight,
    /// Measure the rope before anyone climbs.
    LayItOut,
    /// A base anchor nearly doubles the load on the crotch.
    BaseAnchorLoad,
    /// Nobody can lower the climber from a canopy anchor.
    NotLowerable,
    /// The tail that pulls the anchor down hangs within everybody's reach.
    AnchorTail,
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
    /// The height of the crotch.
    pub crotch: f64,
    /// How far the rig's moving hitch stands off at the most; none where it has none.
    pub section: Option<Spread>,
    /// The fields whose defaults the answer rests on.
    pub assumed: Vec<&'static Row>,
    /// The course of the rope in every state, in the order they come.
    pub courses: Vec<Course>,
    /// The state that needs most.
    pub decides: State,
    /// What that comes to: each end the greatest of the states' ends.
    pub need: Spread,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
}
