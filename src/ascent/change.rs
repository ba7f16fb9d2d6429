//! One thing that could be otherwise.

use crate::field::Spread;

/// One thing that could be otherwise about a climb.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Change {
    /// Pulleys wherever the rope slides round a carabiner, a ring or bark.
    Pulleys,
    /// A loop round each hand for what the hands hold.
    HandLoop,
    /// Leaning back at each pull.
    LeaningBack,
    /// A mechanical device that keeps what is gained, for the lower hitch.
    CaptureDevice,
    /// The next rig with more advantage.
    NextRig,
    /// Less kit.
    LighterKit,
    /// As much time again.
    MoreTime,
    /// A helper who pulls on the tail.
    HelperOnTail,
    /// A stronger pull.
    StrongerPull,
    /// A lower climb.
    LowerClimb,
}

impl Change {
    /// All of them.
    pub const ALL: &[Self] = &[
        Self::Pulleys,
        Self::HandLoop,
        Self::LeaningBack,
        Self::CaptureDevice,
        Self::NextRig,
        Self::LighterKit,
        Self::MoreTime,
        Self::HelperOnTail,
        Self::StrongerPull,
        Self::LowerClimb,
    ];
}

/// What a mechanical device that keeps what is gained gives back at each stroke, in metres (judged: nobody published it).
pub const DEVICE_SETBACK: Spread = Spread::new(0.005, 0.01, 0.03);
/// The tension that gets past it while it rides up (judged).
pub const DEVICE_DRAG: Spread = Spread::new(0.85, 0.95, 1.0);
/// How much less kit there is, in kilograms, by definition of the change.
pub const LESS_KIT: f64 = 2.0;
/// What a helper pulls on the tail, in kilograms-force, by definition of the change.
pub const TAIL_HELP: f64 = 10.0;
/// How many times as strong the pull is, by definition of the change.
pub const STRONGER: f64 = 1.1;
/// The share of the height that is left, by definition of the change.
pub const LOWER: f64 = 0.75;
