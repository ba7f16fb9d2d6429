//! Reeving: what a rig of ropes, turns and hitches does, from one small model and never a formula for each rig.
//!
//! A [`Rig`] is [`Body`]s in order of height and [`Rope`]s as the [`Stop`]s they make. A [`Phase`] says which hitches
//! grip and what the hand does. [`kinematics`] answers how far things move, in exact fractions; [`statics`] which
//! tensions balance every body; [`single_parts`] whose failure drops the climber. A rig comes from the [`catalogue`], or
//! from the [`notation`] in which people write down their own.
//!
//! # Example
//! ```
//! use boughline::reeving::{Backup, Drive, Losses, Phase, catalogue, kinematics, statics};
//!
//! let rig = catalogue::tail_three_to_one(Backup::None)?;
//! let pull = Phase::pull(&rig);
//! let motion = kinematics(&rig, &pull)?;
//! assert_eq!(motion.rope_per_rise, Some(3.into()));
//!
//! // Half of the force is lost at the upper turn, a tenth at the lower one, nothing at the hitch.
//! let losses = Losses { turns: vec![0.9, 0.5], hitches: vec![1.0, 1.0] };
//! let forces = statics(&rig, &motion, &losses, &Drive::Pull(1.0, vec![]))?;
//! assert_eq!(forces.load.low, 1.0 + 0.5 + 0.5 * 0.9);
//! # Ok::<(), boughline::reeving::Fault>(())
//! ```

mod backup;
mod balance;
pub mod catalogue;
mod caught;
mod drive;
mod fault;
mod forces;
mod held;
mod kinematics;
mod linear;
mod load;
mod measured;
pub mod notation;
mod number;
mod past;
mod phase;
mod rig;
mod simplex;
mod state;
mod statics;
mod stop;
mod tail_help;
mod tension;

pub use backup::{BACKUP, Backup, BackupKind, KNOT_SLACK};
pub use balance::Balance;
pub use catalogue::{RIG, RigName};
pub use caught::{Caught, caught};
pub use drive::{Drive, Losses};
pub use fault::Fault;
pub use forces::{Forces, Span, tended_hitches, untended_hitches};
pub use held::{Part, drop_after, drop_in_hand, is_held, single_parts};
pub use kinematics::{Motion, kinematics};
pub use load::{load_on, pull_through};
pub use measured::{LEAST_KEPT, TEST_MASS, TEST_PULL, power_that_gives, raised};
pub use notation::{OWN_RIG, OwnRig};
pub use number::Fraction;
use number::Number;
pub use phase::{HandDoes, Phase};
pub use rig::{Body, BodyKind, MOST_MOVING, MOST_STRANDS, Rig, Rope};
pub use state::{State, WhyNot, in_state, is_made_fast_at_the_foot, made_fast_at_the_foot};
pub use statics::statics;
pub use stop::{Noun, Stop, What};
