//! The pieces that a rope is made of.

/// A piece of the rope.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Piece {
    /// Up to the crotch.
    Up,
    /// Over the crotch, or round it.
    Over,
    /// Down from the crotch.
    Down,
    /// What redirects on the way take.
    Redirect,
    /// Aside from under the crotch, to where people stand.
    Aside,
    /// Back and forth in the rig.
    InRig,
    /// The knot or tie that makes it fast.
    Knot,
    /// The tail that will pull a canopy anchor down.
    Tail,
    /// What a helper at the foot can let out.
    Reserve,
    /// The stopper in the end, and the tail below it.
    End,
    /// What lies on the ground.
    Spare,
}

impl Piece {
    /// Every piece, in the order in which they are added up.
    pub const ALL: [Self; 11] = [
        Self::Up,
        Self::Over,
        Self::Down,
        Self::Redirect,
        Self::Aside,
        Self::InRig,
        Self::Knot,
        Self::Tail,
        Self::Reserve,
        Self::End,
        Self::Spare,
    ];
}
