//! Cords: what each is for, and how much of it that takes.

mod coils;
mod cord_use;
pub mod cutting;
mod fit;
mod wanted;

pub use coils::{HITCH_COILS, HITCH_CROSSINGS};
pub use cord_use::{CORD_USE, CordUse};
pub use fit::{CAME_OUT, CORD_CUT};
pub use wanted::{FINISHED_LENGTH, FREE_LEG, WORKING_END};
