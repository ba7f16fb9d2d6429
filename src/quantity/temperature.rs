//! Temperatures: only written, never read.

use super::{System, View, plain};

/// A temperature as people read it, from degrees Celsius.
///
/// # Source
/// By definition: a degree Fahrenheit is five ninths of one Celsius, and 32 where ice melts.
///
/// # Example
/// ```
/// use boughline::quantity::{System, View, temperature};
///
/// assert_eq!(temperature(220.0, View { system: System::Us, ..View::default() }), "428 °F");
/// ```
#[must_use]
pub fn temperature(celsius: f64, view: View) -> String {
    match view.system {
        System::Si => plain(celsius, 0, view) + " °C",
        System::Us => plain(celsius * 9.0 / 5.0 + 32.0, 0, view) + " °F",
    }
}
