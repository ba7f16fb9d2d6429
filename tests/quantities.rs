//! What people write for a quantity, and what is written for them.
//!
//! Expected values are exact decimal products of the definitions, worked by hand, compared to the last bit.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::approx_constant, reason = "an angle's bits are written out, like every other quantity's")]

#[path = "quantities/properties.rs"]
mod properties;
#[path = "quantities/reading.rs"]
mod reading;
#[path = "quantities/refusing.rs"]
mod refusing;
#[path = "quantities/sizes.rs"]
mod sizes;
#[path = "corpus/typed.rs"]
mod typed;
#[path = "quantities/writing.rs"]
mod writing;

use boughline::quantity::{Decimal, System, Unit, View};

const fn view(system: System, decimal: Decimal) -> View {
    View { system, decimal }
}

const SI: View = view(System::Si, Decimal::Point);
const SI_COMMA: View = view(System::Si, Decimal::Comma);
const US: View = view(System::Us, Decimal::Point);
const US_COMMA: View = view(System::Us, Decimal::Comma);
const VIEWS: [View; 4] = [SI, SI_COMMA, US, US_COMMA];

/// Every way of writing a unit.
fn spellings(unit: &'static Unit) -> impl Iterator<Item = &'static str> {
    std::iter::once(unit.symbol).chain(unit.names.iter().copied())
}
