//! Gear: what the parts of a rig lose and bear.

mod turn;

pub use turn::{LOWER_TURNS, TOP_TURN, TurnFields, TurnKind, UPPER_TURNS, kept_by};
