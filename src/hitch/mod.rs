//! The friction hitches: what they drag while they slide, and the geometry of their coils, one file each.
//!
//! A hitch is data for one model: so many coils, laid single or double, so many crossings of half a coil, legs, ends.

mod autoblock;
mod bachmann;
mod blakes;
mod coil;
mod distel;
mod garda;
mod hedden;
mod klemheist;
mod knut;
mod michoacan;
mod openable;
mod own;
mod pattern;
mod prusik;
mod schwabisch;
mod sliding;
mod valdotain;

pub use autoblock::AUTOBLOCK;
pub use bachmann::BACHMANN;
pub use blakes::BLAKES;
pub use coil::{CONNECTOR_STOCK, coil, girth};
pub use distel::DISTEL;
pub use garda::GARDA;
pub use hedden::HEDDEN;
pub use klemheist::KLEMHEIST;
pub use knut::KNUT;
pub use michoacan::MICHOACAN;
pub use openable::OPENABLE;
pub use own::OWN;
pub use pattern::{Lay, Pattern};
pub use prusik::PRUSIK;
pub use schwabisch::SCHWABISCH;
pub use sliding::{HITCH_DRAG, SETBACK};
pub use valdotain::VALDOTAIN;
