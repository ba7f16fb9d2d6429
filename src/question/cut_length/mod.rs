//! What length of cord? What to cut for a hitch or a sling, where it all goes, and what a length that was cut leaves.
//!
//! ```text
//!   wanted legs or finished length  ──>  what to cut
//!   what was cut                    ──>  the legs it leaves
//!   what was cut and came out at    ──>  one's own way of tying, which what to cut then rests on
//! ```
//!
//! # Example
//! ```
//! use boughline::Draft;
//! use boughline::question::cut_length;
//!
//! let draft = Draft::new().set("cordUse", "hand-loop").set("slingCord", "6 mm").set("finishedLength", "30 cm");
//! let inputs = cut_length::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! assert_eq!((cut_length::ask(&inputs).cut.total.likely * 100.0).round(), 100.0);
//! # Ok::<(), usize>(())
//! ```

mod answer;
mod ask;
mod inputs;
mod rig;

pub use crate::cord::Asked;
pub use answer::{Answer, Caution};
pub use ask::{LEAST_DIFFERENCE, LEAST_LINE, RATIO, ask};
pub use inputs::Inputs;
