//! The moments for which a rope must do.

/// A moment for which a rope must do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// The rope is being set, from the ground.
    Set,
    /// The climber hangs just clear of the ground.
    Start,
    /// The climber is as near to the crotch as the rig comes.
    Top,
    /// The climber is back on the ground, off the rig, on what hangs from the crotch.
    Down,
    /// Somebody at the foot has let the climber down from the top, in the rig.
    Lowered,
    /// The rope is being pulled out of the tree.
    Retrieve,
}

impl State {
    /// Every state, in the order they come.
    pub const ALL: [Self; 6] = [Self::Set, Self::Start, Self::Top, Self::Down, Self::Lowered, Self::Retrieve];

    /// Whether the climber hangs in the rig; otherwise whatever the rope held is on the ground.
    pub(super) const fn is_aloft(self) -> bool {
        matches!(self, Self::Start | Self::Top | Self::Lowered)
    }

    /// Whether the loop of a canopy anchor is on the ground, being tied or undone.
    pub(super) const fn loop_is_down(self) -> bool {
        matches!(self, Self::Set | Self::Retrieve)
    }
}
