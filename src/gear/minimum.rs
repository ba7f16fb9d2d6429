//! Published minimum strengths that parts are held against.

use crate::quantity::{Force, KILONEWTON, POUND_FORCE};
use crate::source::{ANSI_Z133, CALIFORNIA, EN_564, EN_567, Source};

/// A published minimum.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Minimum {
    /// What it must bear at least.
    pub force: Force,
    /// Who says so.
    pub source: Source,
}

const fn pounds(force: f64, source: Source) -> Minimum {
    Minimum { force: Force::newtons(POUND_FORCE.si(force)), source }
}

/// A line that bears a tree worker, and every other part that does: 5,000 lbf.
pub const LIFE_PART: Minimum = pounds(5_000.0, CALIFORNIA);

/// A climbing line: 5,400 lbf.
pub const LIFE_LINE: Minimum = pounds(5_400.0, ANSI_Z133);

/// What a rope clamp bears without damage: 4 kN. What a hitch bears on the same rope is another matter.
pub const CLAMP_LOAD: Minimum = Minimum { force: Force::newtons(KILONEWTON.si(4.0)), source: EN_567 };

/// A square millimetre of accessory cord's diameter squared: 0.2 kN. See [`cord_minimum`](super::cord_minimum).
pub const CORD: Minimum = Minimum { force: Force::newtons(KILONEWTON.si(0.2)), source: EN_564 };
