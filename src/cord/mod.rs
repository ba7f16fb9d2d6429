//! Cords: what each is for, and how much of it that takes.
//!
//! ```text
//!   tail  knot  eye   leg      coils      crossings   leg   eye  knot  tail
//!   ====##(oo)##( )==========((((((((((((((XXXXXX==========( )##(oo)##====
//! ```
//!
//! One model for all: a hitch or sling is a [`Pattern`](crate::hitch::Pattern), and what it takes is added up piece by piece.
//!
//! # Example
//! ```
//! use boughline::cord::{CordUse, Make, Wanted};
//! use boughline::field::Spread;
//! use boughline::gear::Ends;
//!
//! // A prusik loop of three wraps, of 6 mm cord on 11 mm rope.
//! let prusik = Make {
//!     pattern: CordUse::Prusik.pattern(),
//!     ends: Ends::Loop,
//!     rope: 0.011,
//!     cord: 0.006,
//!     coils: 3.0,
//!     crossings: 1.0,
//!     hand_end: Spread::point(0.0),
//!     fit: None,
//!     working_end: None,
//! };
//! let cut = prusik.cut(Wanted::Legs(Spread::point(0.20)));
//! assert!(cut.is_ok_and(|cut| (cut.total.likely / 0.91 - 1.0).abs() < 0.05));
//! ```

mod coils;
mod cord_use;
mod cut;
mod cut_allowance;
pub mod cutting;
mod fit;
mod haul;
mod knot;
pub mod list;
mod made;
mod piece;
mod said;
mod slings;
mod told;
mod wanted;

pub use coils::{HITCH_COILS, HITCH_CROSSINGS};
pub use cord_use::{CORD_USE, CordUse};
pub use cut::{Cut, DRESSED, FITTED, KNOTTED, LEFT, Make, Short, Wanted};
pub use cut_allowance::{END_ALLOWANCE, KERF};
pub use fit::{CAME_OUT, CORD_CUT};
pub use haul::{HAND_END, haul_strands};
pub use knot::{barrel, eye, shortest_tail};
pub(crate) use made::thickness;
pub use piece::{Piece, Place};
pub(crate) use said::said;
pub use told::{Asked, Told};
pub(crate) use told::{told, usual_haul};
pub use wanted::{FINISHED_LENGTH, FREE_LEG, WORKING_END};
