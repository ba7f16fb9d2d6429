//! The tree: what friction keeps of a tension over a crotch, what a crotch carries, and what bending does to a limb.
//!
//! Everything here is for sound, clear wood and dry bark that nobody has looked at: it can rule a limb out and never in.

mod capstan;
mod crotch;
mod limb;
mod species;

pub use capstan::{BARK_FRICTION, friction, ratio};
pub use crotch::{BASE_ANCHOR_PLAN, REDIRECT_ANGLE, base_anchor, hauled_over, redirect, resultant};
pub use limb::{
    Bending, FOREARM_GIRTH, LEAST_BOLE, LIMB_ANGLE, LIMB_DIAMETER, LIMB_REACH, LIMB_WOOD, SHARE_THAT_RULES_OUT, Wood,
    bending, moment, stress, thickness,
};
pub use species::{GREEN_OVER_DRY, Green, SPECIES, Species, VARIATION, low_of_dry};
