//! Can I climb this? One pull, how many of them it is to the height, and whether arms and hands last through them all.
//!
//! ```text
//!   pull needed = weight / real advantage              (reeving)
//!   gain        = hand's travel / rope per metre of rise - setback
//!   strokes     = height / gain
//! ```
//!
//! # Example
//! ```
//! use boughline::climber::{BODY_MASS, MEASURED_PULL};
//! use boughline::quantity::{Force, Mass};
//! use boughline::question::{Effort, can_i_climb};
//! use boughline::Draft;
//!
//! let draft = Draft::new()
//!     .with(&BODY_MASS, Mass::kilograms(80.0))
//!     .with(&MEASURED_PULL, Force::newtons(520.0))
//!     .set("climbHeight", "11 m")
//!     .set("rig", "tail-3");
//! let inputs = can_i_climb::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! let answer = can_i_climb::ask(&inputs, Effort::FULL);
//! assert_eq!(answer.need.likely.round(), 328.0);
//! # Ok::<(), usize>(())
//! ```

mod ask;
mod inputs;
mod reckoning;

pub use crate::ascent::{
    AT_LEAST_WITHIN, Answer, BodyCaution, By, CLIMBING_PEAK, Caution, Change, Compared, DEVICE_DRAG, DEVICE_SETBACK,
    Decided, Evidence, Gate, Going, HARNESS_CLOCK, HEAVY_CLIMBER, Help, Helps, LESS_KIT, LOWER, LegClimb, LegStanding,
    Level, MARGIN, Missing, Moment, Moments, PartFact, STRONGER, SecondPerson, Sharper, TAIL_HELP, TakenUp, TopOut,
    TurnBack, TurnFact, UNDER_IS_OUT, Verdict, WayDown,
};
pub use ask::{ask, helps};
pub use inputs::Inputs;
pub use reckoning::Reckoning;
