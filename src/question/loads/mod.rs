//! What does each part carry? The load on every part in every state the rig can be in, held against what it bears.
//!
//! # Example
//! ```
//! use boughline::Draft;
//! use boughline::question::{Effort, loads};
//!
//! let draft = Draft::new().set("bodyMass", "80 kg").set("kitMass", "0 kg").set("rig", "moving-rope").set("anchor", "canopy");
//! let inputs = loads::Inputs::of(&draft).map_err(|errors| errors.len())?;
//! let answer = loads::ask(&inputs, Effort::FULL);
//! let resting = answer.states.iter().find(|state| state.doing == loads::Doing::Resting);
//! assert!(resting.is_some_and(|state| state.carried.is_ok()));
//! # Ok::<(), usize>(())
//! ```

mod answer;
mod ask;
mod carried;
mod gear;
mod inputs;
mod limb;
mod piece;
mod posed;
mod slip;

pub use answer::{Answer, Carried, Caution, Doing, InState, Load, Why};
pub use ask::ask;
pub use gear::{Standing, Strength};
pub use inputs::Inputs;
pub use limb::LimbFact;
pub use piece::{Piece, PieceKind};
pub use slip::Slip;
