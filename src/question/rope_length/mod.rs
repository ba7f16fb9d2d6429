//! How much rope? The pieces it is made of in every state, and the state that decides; what to buy; and the reverse, how
//! high a rope goes.
//!
//! ```text
//!   canopy anchor, setting it:  up + over + down + knot + the tail that will hang    (3 heights and more)
//!   base anchor, going down:    up + over + down + tie + stopper                     (2 heights and more)
//!   base anchor, being lowered: the same, and as much again at the foot to let out   (3 heights and more)
//! ```
//!
//! # Example
//! ```
//! use boughline::Draft;
//! use boughline::question::rope_length;
//! use boughline::rope::State;
//!
//! let draft = Draft::new().set("crotchHeight", "12 m").set("anchor", "base");
//! let inputs = rope_length::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! let answer = rope_length::ask(&inputs);
//! assert_eq!(answer.decides, State::Down);
//! assert!((answer.need.likely - 28.2).abs() < 1e-9);
//! # Ok::<(), usize>(())
//! ```

mod answer;
mod ask;
mod inputs;

pub use answer::{Answer, Caution};
pub use ask::ask;
pub use inputs::Inputs;
