//! SI to what people read.

use super::figures::NO_FIGURE;
use super::pieces::joined;
use super::table::family;
use super::{Dimension, View};

/// The SI value as people read it in this view, with no more digits than a climb earns.
///
/// # Guarantees
///
/// [`read`](super::read) reads it, to within the figures printed. A minus stands for all of it; nothing is ever "−0".
/// A value that is not finite, or has more digits than an `f64` tells apart, is "—", which nobody can read for a number.
///
/// # Example
///
/// ```
/// use boughline::quantity::{Dimension, System, View, written};
///
/// let us = View { system: System::Us, ..View::default() };
/// assert_eq!(written(1.905, Dimension::Length, us), "6 ft 3 in");
/// assert_eq!(written(1234.0, Dimension::Force, View::default()), "1.23 kN");
/// assert_eq!(written(560.0, Dimension::Duration, View::default()), "9 min");
/// ```
#[must_use]
pub fn written(si: f64, dimension: Dimension, view: View) -> String {
    let size = if si.is_finite() { (family(dimension).written)(si.abs(), view) } else { String::new() };
    if size.is_empty() || size.starts_with(NO_FIGURE) {
        return NO_FIGURE.to_owned();
    }
    let rounds_to_nothing = size.bytes().all(|byte| !matches!(byte, b'1'..=b'9'));
    if si < 0.0 && !rounds_to_nothing { joined(&["−", &size]) } else { size }
}
