//! What the strength of the climber rests on.

/// What the strength rests on, the best first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Evidence {
    /// Strokes made at knee height, on the very rig.
    Trial,
    /// A pull that was measured.
    Pull,
    /// A grip that was measured.
    Grip,
    /// Sex and age alone.
    Norm,
}
