//! Gear: what the parts of a rig lose and bear.

mod turn;

pub use turn::{LOWER_EFFICIENCY, LOWER_TURN, TurnKind, UPPER_EFFICIENCY, UPPER_TURN, kept_by};
