//! Cords: what each is for, and how much of it that takes.

mod coils;
mod cord_use;
mod cut_allowance;
pub mod cutting;
mod fit;
pub mod list;
mod wanted;

pub use coils::{HITCH_COILS, HITCH_CROSSINGS};
pub use cord_use::{CORD_USE, CordUse};
pub use cut_allowance::{END_ALLOWANCE, KERF};
pub use fit::{CAME_OUT, CORD_CUT};
pub use wanted::{FINISHED_LENGTH, FREE_LEG, WORKING_END};
