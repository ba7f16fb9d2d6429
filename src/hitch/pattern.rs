//! How a hitch is laid on the rope: everything that its cord depends on, as data.

use super::coil::{coil, girth};
use crate::gear::Ends;
use crate::source::Source;

/// How the strands of a coil lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lay {
    /// One strand goes round and round.
    Single,
    /// Two strands go round away from each other, one up and one down.
    Mirrored,
    /// Two strands go round side by side.
    Double,
}

impl Lay {
    /// The strands that each coil, as climbers count, is made of.
    #[must_use]
    pub const fn strands(self) -> u32 {
        match self {
            Self::Single => 1,
            Self::Mirrored | Self::Double => 2,
        }
    }

    /// How far a strand gets along the rope in one coil, in diameters of the cord: coils lie close.
    #[must_use]
    pub const fn pitch(self) -> f64 {
        match self {
            Self::Single | Self::Mirrored => 1.0,
            Self::Double => 2.0,
        }
    }
}

/// How a cord is laid: a hitch round a rope, or without coils anything else that is made of cord. Lengths in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pattern {
    /// The coils that are usual, as climbers count them; none where there is no usual number.
    pub coils: Option<u32>,
    /// How the strands of a coil lie.
    pub lay: Lay,
    /// What is bound in beside the rope: the thickness of a carabiner's back.
    pub beside: f64,
    /// How often it crosses the rope.
    pub crossings: u32,
    /// The strands that cross each time.
    pub crossing: u32,
    /// The strands that hang from it to its connector.
    pub legs: u32,
    /// The ends it can have, the usual ones first.
    pub ends: &'static [Ends],
    /// The ends that get an eye, where ends get eyes; another gets a stopper.
    pub eyes: u32,
    /// What usually hangs free, all legs together; of what has no coils the usual finished length.
    pub usual: f64,
    /// Where this comes from.
    pub sources: &'static [Source],
}

impl Pattern {
    /// How much cord lies on the rope: in so many coils, and in so many crossings of half a round. In metres.
    ///
    /// # Source
    /// Geometry.
    #[must_use]
    pub fn on_the_rope(&self, rope: f64, cord: f64, coils: f64, crossings: f64) -> [f64; 2] {
        let round = girth(rope, self.beside, cord);
        let strands = f64::from(self.lay.strands());
        let coiled = coils * strands * coil(round, self.lay.pitch() * cord);
        [coiled, crossings * f64::from(self.crossing) * (round / 2.0)]
    }
}
