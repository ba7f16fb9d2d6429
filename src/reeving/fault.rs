//! Why a rig cannot be worked out.

/// What is wrong with a rig, and where; the numbers are places in [`Rig::bodies`](super::Rig::bodies),
/// [`Rig::ropes`](super::Rig::ropes) and along a rope.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Fault {
    /// A rig has one climber, and at most one tree and one ground.
    NotOneClimber,
    /// The tree comes before all other bodies, the ground after them.
    OutOfOrder {
        /// The body.
        body: usize,
    },
    /// A rig has one driving hand; who else pulls is a helper.
    SecondHand {
        /// The rope.
        rope: usize,
    },
    /// A force or a slack that is not finite, or a share kept that is not more than nought and at most one, or not one
    /// share for each turn and hitch.
    OutOfRange,
    /// More moving bodies, strands or resting turns than the model takes.
    TooLarge,
    /// A rope must start and end tied or free, and be neither on the way.
    NoSuchEnd {
        /// The rope.
        rope: usize,
    },
    /// A stop is on a body that is not there, or on none, or a loose tail is on one.
    NoSuchBody {
        /// The rope.
        rope: usize,
        /// The stop.
        stop: usize,
    },
    /// The phase has a hand pull, and no rope passes one.
    NoHand,
    /// On one side of a hand the rope must end loose, with nothing between that holds it, and on the other be held.
    HandPullsNothing {
        /// The rope.
        rope: usize,
    },
    /// This body can move whatever the hand does.
    LooseBody {
        /// The body.
        body: usize,
    },
    /// This rope would have to change its length.
    StuckRope {
        /// The rope.
        rope: usize,
    },
    /// The climber does not go where the hand would have them go.
    NotMoved,
    /// How much this strand carries cannot be told from the others.
    SharedStrand {
        /// The rope.
        rope: usize,
        /// The strand.
        strand: usize,
    },
    /// No tensions balance this body.
    Unbalanced {
        /// The body.
        body: usize,
    },
    /// This strand would have to push.
    SlackStrand {
        /// The rope.
        rope: usize,
        /// The strand.
        strand: usize,
    },
}
