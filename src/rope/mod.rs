//! How much rope: the pieces that it is made of, moment by moment, and what they come to.
//!
//! ```text
//!          over
//!         .----.
//!      up |    | down          set:   up + over + down + knot, and on the ground the tail that will hang
//!         |    |               start: the same way to the lower hitch, and what the rig itself takes
//!         |    # upper hitch   down:  the same way to the ground, with a stopper in the end
//!         |    # lower hitch
//!   ------o----|---- ground    the rope must do for all of them
//! ```
//!
//! The way is read off the rig's own stops, with its bodies at their heights of that moment; the anchor adds what lies
//! before the crotch. There is no formula for an anchor or a rig.
//!
//! # Example
//! ```
//! use boughline::field::Spread;
//! use boughline::reeving::{Backup, RigName};
//! use boughline::rope::{Anchor, Sizes, State, courses};
//!
//! let rig = RigName::HandOverHand.rig(Backup::None)?;
//! let none = Spread::point(0.0);
//! let sizes = Sizes { crotch: 10.0, hitch: Spread::point(1.5), over: none, knot: none, end: none, spare: none };
//! let courses = courses(&rig, Some(Anchor::Canopy), &sizes);
//! let set = courses.iter().find(|course| course.state == State::Set);
//! assert_eq!(set.map(|course| course.total.likely), Some(30.0));
//! # Ok::<(), boughline::reeving::Fault>(())
//! ```

mod allowance;
mod anchor;
mod course;
mod height;
mod piece;
mod state;

pub use allowance::{ANCHOR_KNOT, BASE_TIE, OVER_CROTCH, ROPE_SPARE, ROPE_TAIL, STOPPER_AND_TAIL};
pub use anchor::{ANCHOR, Anchor, comes_to_tree, is_anchored};
pub use course::{Course, Sizes, courses, section};
pub use height::{CROTCH_HEIGHT, HITCH_HEIGHT, PLATFORM_HEIGHT};
pub use piece::Piece;
pub use state::State;
