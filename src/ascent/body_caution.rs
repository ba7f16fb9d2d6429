//! Something to be careful about that is this body's, whatever the rig.

/// Something to be careful about that is this body's.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum BodyCaution {
    /// The trunk does not hold the climber, as after a spinal injury.
    SpinalInjury,
    /// Tight straps send blood pressure up after a high spinal injury.
    Dysreflexia,
    /// Legs that do not move: the harness clock.
    HarnessClock,
    /// Skin that does not feel the webbing.
    NumbSkin,
    /// Bones that break easily.
    ThinBones,
    /// Shoulders that are used too much already.
    ShoulderOveruse,
    /// Arms were taken to go all the way up, and nobody said so.
    OverheadReach,
    /// The length of the pull is that of people whose trunk holds them.
    TrunkReach,
    /// One hand does everything.
    OneHand,
}
