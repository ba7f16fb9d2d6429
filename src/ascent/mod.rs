//! An ascent: who climbs, how high, on what; one climb with one value for everything that varies, and many of them.
//!
//! What several questions reckon with stands here, below them.

mod answer;
mod ask;
mod caution;
mod cautions;
mod climb;
mod climbs;
mod ends;
mod evidence;
mod forces;
mod hardware;
mod height;
mod lasting;
mod own_rig;
mod own_test;
mod part;
mod plan;
mod reeved;
mod setting;
mod strength;
mod stretch;
mod stroke;
mod things;
mod top_out;
mod verdict;

pub use answer::{Answer, Missing};
pub(crate) use ask::answer;
pub use caution::Caution;
pub use climb::CLIMBING_PEAK;
pub(crate) use climb::{Climb, Planned, all_up, jerk};
pub(crate) use climbs::Climbs;
pub use climbs::Gate;
pub use evidence::Evidence;
pub(crate) use forces::losses;
pub(crate) use hardware::{every_rig, reeved};
pub use height::CLIMB_HEIGHT;
pub use part::PartFact;
pub(crate) use part::parts;
pub(crate) use plan::{Plan, assumed};
pub(crate) use reeved::Reeved;
pub use reeved::{By, TurnFact};
pub use stretch::TakenUp;
pub(crate) use things::UNKNOWN;
pub use top_out::TopOut;
pub use verdict::{AT_LEAST_WITHIN, Decided, Level, UNDER_IS_OUT, Verdict};
