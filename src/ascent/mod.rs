//! An ascent: who climbs, how high, on what; one climb with one value for everything that varies, and many of them.
//!
//! What several questions reckon with stands here, below them.

mod answer;
mod ask;
mod caution;
mod cautions;
mod climb;
mod climbs;
mod cycle;
mod decided;
mod evidence;
mod forces;
mod gate;
mod hardware;
mod harness_clock;
mod height;
mod lasting;
mod level;
mod outcome;
mod own_rig;
mod own_test;
mod part;
mod plan;
mod reeved;
mod strength;
mod stroke;
mod things;
mod time_allowed;
mod tried;
mod verdict;
mod way_down;

pub use answer::{Answer, Missing};
pub(crate) use ask::answer;
pub use caution::Caution;
pub(crate) use climb::{Climb, Planned};
pub(crate) use climbs::Climbs;
pub use decided::Decided;
pub use evidence::Evidence;
pub use forces::CLIMBING_PEAK;
pub(crate) use forces::{all_up, jerk, losses};
pub use gate::Gate;
pub(crate) use hardware::{every_rig, reeved};
pub use harness_clock::HARNESS_CLOCK;
pub use height::CLIMB_HEIGHT;
pub use level::{AT_LEAST_WITHIN, Level, UNDER_IS_OUT};
pub use part::PartFact;
pub(crate) use part::parts;
pub(crate) use plan::{Plan, assumed};
pub(crate) use reeved::Reeved;
pub use reeved::{By, TurnFact};
pub(crate) use things::UNKNOWN;
pub use time_allowed::TIME_ALLOWED;
pub use verdict::Verdict;
pub use way_down::{SECOND_PERSON, SecondPerson, WAY_DOWN, WayDown};
