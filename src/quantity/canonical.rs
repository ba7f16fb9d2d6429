//! Quantities as they stand in links: letters, digits, point and minus.

use super::figures::shortest;
use super::misread::Misread;
use super::pieces::{joined, parted};
use super::reading::{LONGEST, reading};
use super::table::family;
use super::{Dimension, Unit};

/// The text in the form of a link: `6ft3.5in`. No spaces, point decimals, fractions as the shortest decimals, canonical
/// symbols, with `-per-` for a stroke; per cent becomes the plain ratio.
///
/// # Guarantees
///
/// It says the same bits as the text, in letters, digits, points and hyphens.
///
/// # Errors
///
/// As for [`read`](super::read) without a default unit; [`Misread::TooLong`] also where only the canonical text is.
///
/// # Example
///
/// ```
/// use boughline::quantity::{Dimension, canonical};
///
/// assert_eq!(canonical("6' 3½\"", Dimension::Length).as_deref(), Ok("6ft3.5in"));
/// assert_eq!(canonical("90 %", Dimension::Ratio).as_deref(), Ok("0.9"));
/// ```
pub fn canonical(text: &str, dimension: Dimension) -> Result<String, Misread> {
    let reading = reading(text, dimension, None)?;
    let si = reading.si();
    let mut text = String::new();
    if family(dimension).si.is_none() {
        text = signed(si);
    } else {
        if si < 0.0 {
            text.push('-');
        }
        for &(number, unit) in &reading.parts {
            let number = shortest(number);
            if number.is_empty() {
                return Err(Misread::TooLong);
            }
            text += &number;
            text += &unit.map_or_else(String::new, symbol);
        }
    }
    if text.is_empty() || text.len() > LONGEST { Err(Misread::TooLong) } else { Ok(text) }
}

/// The SI value in the form of a link: `11m`, `0.9`.
///
/// # Guarantees
///
/// From 1e-5 to 1e15, and for zero, it reads back to the same bits (minus nothing as nothing). A value that is not
/// finite, or is beyond and has too many digits, has no text: it is empty, which the reader refuses.
///
/// # Example
///
/// ```
/// use boughline::quantity::{Dimension, canonical_si};
///
/// assert_eq!(canonical_si(11.0, Dimension::Length), "11m");
/// assert_eq!(canonical_si(1.234, Dimension::Length), "1.2340m");
/// ```
#[must_use]
pub fn canonical_si(si: f64, dimension: Dimension) -> String {
    if !si.is_finite() {
        return String::new();
    }
    let number = signed(si);
    if number.is_empty() { number } else { number + &family(dimension).si.map_or_else(String::new, symbol) }
}

/// The symbol, without the stroke that a link has no letter for: `m-per-s`.
fn symbol(unit: &Unit) -> String {
    match parted(unit.symbol, '/') {
        (above, Some(below)) => joined(&[above, "-per-", below]),
        (symbol, None) => symbol.to_owned(),
    }
}

fn signed(number: f64) -> String {
    let size = shortest(number.abs());
    if number < 0.0 && !size.is_empty() { joined(&["-", &size]) } else { size }
}
