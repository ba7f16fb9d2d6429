//! The pieces that a cord is made of.

/// What a piece of a cord does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Piece {
    /// The tail of a knot.
    Tail,
    /// A knot: a barrel of laps.
    Knot,
    /// An eye round a connector.
    Eye,
    /// What hangs free between hitch and connector.
    Leg,
    /// Round the rope.
    Coils,
    /// Half way round the rope, over what lies there.
    Crossings,
    /// What the finished cord measures, where it has no coils.
    Span,
    /// What hangs from the last turn for the hand.
    HandEnd,
}

/// Where along the cord a piece lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// On the side of the end that the tying begins with.
    First,
    /// In the middle.
    Middle,
    /// On the other side.
    Second,
}
