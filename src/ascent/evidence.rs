//! What the strength of the climber rests on.

/// What the strength rests on, the best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Evidence {
    /// A pull that was measured.
    Pull,
    /// A grip that was measured.
    Grip,
    /// Sex and age alone.
    Norm,
}
