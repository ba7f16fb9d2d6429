//! What decides a verdict.

/// What decided.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decided {
    /// The arms' pull.
    Arms,
    /// The hands' hold.
    Hands,
    /// Both: neither gives what one pull takes.
    ArmsAndHands,
    /// A stroke that gains nothing.
    Stroke,
    /// The arms tire before the height.
    LastingArms,
    /// The hands tire before the height.
    LastingHands,
    /// The arms do not keep up the power that the time asks for.
    Power,
    /// The strokes take longer than the time allowed.
    Time,
    /// The crotch does not let the seat come as high as it is to.
    TopOut,
    /// Nothing holds the climber once a hand lets go.
    NothingHolds,
    /// Longer in a harness than somebody whose legs do not move should hang.
    HarnessClock,
    /// The climber and all they carry weigh more than the labels allow, or than most do.
    RatedMass,
    /// What has not been entered yet.
    Missing,
}

impl Decided {
    /// Whether it is what many pulls take, and one does not.
    #[must_use]
    pub const fn is_of_many_pulls(self) -> bool {
        matches!(self, Self::LastingArms | Self::LastingHands | Self::Power | Self::Time)
    }
}
