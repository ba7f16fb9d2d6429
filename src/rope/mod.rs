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
//! let hitch = Spread::point(1.5);
//! let sizes = Sizes {
//!     crotch: 10.0, hitch, aside: 0.0, over: none, redirect: 0.0, knot: none, end: none, spare: none,
//! };
//! let courses = courses(&rig, Some(Anchor::Canopy), &sizes);
//! let set = courses.iter().find(|course| course.state == State::Set);
//! assert_eq!(set.map(|course| course.total.likely), Some(30.0));
//! # Ok::<(), boughline::reeving::Fault>(())
//! ```

mod allowance;
mod anchor;
mod begun;
mod buy;
mod course;
mod height;
mod line;
mod owned;
mod piece;
mod reverse;
mod site;
mod sizes;
mod state;
mod stock;
mod way;

pub use allowance::{ANCHOR_KNOT, BASE_TIE, DEVICE_WRAPS, OVER_CROTCH, ROPE_SPARE, ROPE_TAIL, STOPPER_AND_TAIL};
pub use anchor::{ANCHOR, Anchor, comes_to_tree, is_anchored};
pub use begun::{begun, need_begun};
pub use buy::{Stock, stock};
pub use course::{Course, courses, need, section};
pub use height::{CROTCH_HEIGHT, HITCH_HEIGHT, PLATFORM_HEIGHT};
pub use line::{LINE_TIE, preset_line, retrieval_cord};
pub use owned::{Owned, ends_above, heights, owned};
pub use piece::Piece;
pub use reverse::highest;
pub use site::{FOOT_OFFSET, REDIRECT_ROPE, STEM_GIRTH};
pub use sizes::Sizes;
pub(crate) use sizes::{assumed_sizes, made_fast_by};
pub use state::State;
pub use stock::{ADDING_UP, Ladder, ROPE_OWNED, ROPE_STOCK, STOCK_LENGTH, read as read_ladder};
