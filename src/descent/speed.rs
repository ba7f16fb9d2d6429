//! How fast anybody comes down.

/// How fast anybody should come down on a hitch, in metres a second: at most, with stops to feel it (judged).
pub const SENSIBLE_SPEED: f64 = 0.5;

/// The most that a descender may be made for, in metres a second: a limit for devices, and no speed for a hitch.
///
/// # Source
/// EN 341:1997, class A, in the Alberta Occupational Health and Safety Code guide.
pub const DEVICE_SPEED: f64 = 2.0;
