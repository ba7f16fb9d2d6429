//! Powers.

use super::figures::whole_from_ten;
use super::newtype::{counted_in, newtype};
use super::unit::{Family, Unit};
use super::{Dimension, View};

newtype! {
    /// A power: work by the second.
    ///
    /// # Units
    ///
    /// Watts inside.
    Power
}

/// The watt.
pub const WATT: &Unit =
    &Unit::row("W", &["watt", "watts"], Dimension::Power, (1.0, 1.0), "by definition: the SI unit of power");

pub(super) const FAMILY: Family = Family { units: &[WATT], si: Some(WATT), written };

counted_in! {
    Power:
    WATT, watts, in_watts;
}

/// In watts in either system: what a body gives is read in watts from rowing machines and bicycles everywhere.
fn written(si: f64, view: View) -> String {
    whole_from_ten(si, view) + " W"
}
