//! What people write, to SI.

use super::misread::Misread;
use super::pieces::{joined, trimmed};
use super::reading::reading;
use super::{Dimension, Unit};

/// The SI value that a text says.
///
/// Either decimal mark, spaces between thousands, fractions, and two or three units in falling order are read; anything
/// that could mean two things is refused. A bare number takes the `default` unit, except that a bare ratio or count is itself.
/// A leading minus is read, so that a range check can speak of it; it stands for the whole of `-6 ft 3 in`.
///
/// # Errors
///
/// One [`Misread`]: of the letters and figures first, then of the units, then of how the parts go together.
///
/// # Example
///
/// ```
/// use boughline::quantity::{Dimension, METRE, Misread, read};
///
/// assert_eq!(read("6' 3½\"", Dimension::Length, None), Ok(75.5 * 0.0254));
/// assert_eq!(read("11,5", Dimension::Length, Some(METRE)), Ok(11.5));
/// assert_eq!(read("90 %", Dimension::Ratio, None), Ok(0.9));
/// assert_eq!(read("", Dimension::Length, Some(METRE)), Err(Misread::Empty));
/// ```
pub fn read(text: &str, dimension: Dimension, default: Option<&'static Unit>) -> Result<f64, Misread> {
    Ok(reading(text, dimension, default)?.si())
}

/// The text as it should stand in its field once left: a bare number that can be read gets its unit, so that switching
/// units never changes what it means. Anything else is returned as it is, without the space around it.
///
/// # Example
///
/// ```
/// use boughline::quantity::{Dimension, FOOT, tidy};
///
/// assert_eq!(tidy(" 36 ", Dimension::Length, FOOT), "36 ft");
/// assert_eq!(tidy("11 m", Dimension::Length, FOOT), "11 m");
/// assert_eq!(tidy("1,200", Dimension::Length, FOOT), "1,200");
/// ```
#[must_use]
pub fn tidy(text: &str, dimension: Dimension, default: &'static Unit) -> String {
    let text = trimmed(text);
    let bare = read(text, dimension, None) == Err(Misread::NoUnit { dimension });
    let with_unit = joined(&[text, " ", default.symbol]);
    // Read both ways, because a number may lack its unit beside another's (`6'3`), and a long one have no room for it.
    let means_it = |text: &str| read(text, dimension, Some(default)).is_ok();
    if bare && means_it(text) && means_it(&with_unit) { with_unit } else { text.to_owned() }
}
