//! What if I am stuck? The clocks, who can get the climber down and how long that takes, and what to see to before going.
//!
//! # Example
//! ```
//! use boughline::Draft;
//! use boughline::question::rescue;
//!
//! let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "10 m").set("rig", "tail-3");
//! let draft = draft.set("anchor", "canopy").set("secondPerson", "rescuer").set("secondRope", "none");
//! let inputs = rescue::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! let answer = rescue::ask(&inputs);
//! // From a canopy anchor nobody is let down: somebody has to put up a second rope.
//! assert!(answer.ways.iter().all(|way| way.total.is_none_or(|total| total.likely > 420.0) || way.how == rescue::How::Oneself));
//! # Ok::<(), usize>(())
//! ```

mod answer;
mod ask;
mod before;
mod inputs;
mod ways;

pub use answer::{Answer, Caution, Hauling, How, Unload, Way, Why};
pub use ask::ask;
pub use before::Before;
pub use inputs::{Inputs, SECOND_ROPE, SecondRope};
