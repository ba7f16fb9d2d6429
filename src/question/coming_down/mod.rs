//! Can I get down again? What the hand holds, what gets hot, and each step of the change-over with what holds meanwhile.
//!
//! # Example
//! ```
//! use boughline::Draft;
//! use boughline::question::{Effort, coming_down};
//!
//! let draft = Draft::new().set("bodyMass", "80 kg").set("kitMass", "0 kg").set("climbHeight", "20 m").set("rig", "tail-3");
//! let inputs = coming_down::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! let answer = coming_down::ask(&inputs, Effort::FULL);
//! // A Munter, planned on 5, leaves the hand a fifth.
//! assert!(answer.hold.is_some_and(|hold| (hold.likely - 80.0 * 9.80665 / 5.0).abs() < 1e-9));
//! # Ok::<(), usize>(())
//! ```

mod answer;
mod ask;
mod inputs;

pub use answer::{Answer, Caution, Cord, Hot, Slowest};
pub use ask::{ROPE_A_METRE, ask};
pub use inputs::Inputs;
