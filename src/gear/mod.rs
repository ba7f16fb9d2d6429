//! Gear: what the parts of a rig lose and bear, and how a rope gives.

mod connector;
mod cord;
mod ends;
mod fibre;
mod impact;
mod knot;
mod label;
mod minimum;
mod rated_mass;
mod rope;
mod turn;
mod warmth;

pub use connector::{CONNECTOR, Connector, PULLEY_MINIMUM};
pub use cord::{HAUL_CORD, HITCH_CORD, LEAST_LIFE_CORD, SLING_CORD, cord_minimum, loop_strength};
pub use ends::{CORD_ENDS, Ends};
pub use fibre::{CORD_FIBRE, Fibre};
pub use impact::{FULL_BODY_LIMIT, SEAT_HARNESS_LIMIT, SLACK, arrest_force, fall_factor, stretch};
pub use knot::Knot;
pub use label::{
    CONNECTOR_STRENGTH, HARNESS_STRENGTH, HAUL_CORD_STRENGTH, HITCH_CORD_STRENGTH, PULLEY_STRENGTH, ROPE_STRENGTH,
};
pub use minimum::{CLAMP_LOAD, CORD, LIFE_LINE, LIFE_PART, Minimum};
pub use rated_mass::{PAST_MOST, RATED_MASS, TEST_RATING};
pub use rope::{ROPE_DIAMETER, ROPE_KIND, RopeKind};
pub use turn::{LOWER_TURNS, TOP_TURN, TurnFields, TurnKind, UPPER_TURNS, kept_by};
pub use warmth::{PACKED, Warmth};
