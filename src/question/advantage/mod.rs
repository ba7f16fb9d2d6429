//! Which advantage? Every rig side by side for one person, and the least rig for every weight and pull.
//!
//! # Example
//! ```
//! use boughline::Draft;
//! use boughline::question::{Effort, advantage};
//!
//! let draft = Draft::new()
//!     .set("bodyMass", "80 kg")
//!     .set("climbHeight", "11 m")
//!     .set("stature", "1.75 m")
//!     .set("measuredPull", "700 N");
//! let inputs = advantage::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! let answer = advantage::ask(&inputs, Effort::FULL);
//! let least = answer.least.and_then(|at| answer.rigs.get(at)).map(|beside| beside.ascent.rig_name.named().id);
//! assert_eq!(least, Some("tail-3"));
//! # Ok::<(), usize>(())
//! ```

mod answer;
mod ask;
mod inputs;
mod kit;
mod map;

pub use answer::{Answer, Beside, Pulls, Standing, Strength};
pub use ask::ask;
pub use inputs::Inputs;
pub use kit::Kit;
pub use map::{MOST_CELLS, Map, map};
