//! Gear: what the parts of a rig lose and bear, and how a rope gives.

mod connector;
mod cord;
mod fibre;
mod impact;
mod knot;
mod minimum;
mod rope;
mod turn;

pub use connector::{Connector, PULLEY_MINIMUM};
pub use cord::{LEAST_LIFE_CORD, cord_minimum, loop_strength};
pub use fibre::Fibre;
pub use impact::{FULL_BODY_LIMIT, SEAT_HARNESS_LIMIT, arrest_force, fall_factor, stretch};
pub use knot::Knot;
pub use minimum::{CLAMP_LOAD, CORD, LIFE_LINE, LIFE_PART, Minimum};
pub use rope::RopeKind;
pub use turn::{LOWER_TURNS, TOP_TURN, TurnFields, TurnKind, UPPER_TURNS, kept_by};
