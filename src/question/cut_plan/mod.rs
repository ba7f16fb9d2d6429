//! Out of which hanks are the cords cut, and what is there to buy? One plan for each diameter and fibre: they never mix.
//!
//! # Example
//! ```
//! use boughline::Draft;
//! use boughline::question::{Effort, cut_plan};
//!
//! let draft = Draft::new().set("cords", "2 ~ 6 mm ~ 1.8 m\n1 ~ 7 mm ~ 2.1 m").set("hanks", "any ~ 5 m");
//! let inputs = cut_plan::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! let answer = cut_plan::ask(&inputs, Effort::FULL);
//! assert_eq!(answer.kinds.len(), 2);
//! assert!(!answer.more);
//! # Ok::<(), usize>(())
//! ```

mod answer;
mod gear;
mod inputs;
mod kind;
mod reckoning;
mod rig_cords;
mod rope;

pub use answer::{Answer, Caution, KindPlan, Outcome};
pub use gear::Gear;
pub use inputs::{Inputs, USUAL_HANKS};
pub use kind::{Kind, Wanted};
pub use reckoning::{Reckoning, ask};
pub use rig_cords::RigCord;
pub use rope::Rope;
