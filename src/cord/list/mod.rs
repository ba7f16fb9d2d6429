//! Lists as text: a row a line, its parts with `~` between them.
//!
//! ```text
//! 2 ~ 6 mm ~ 1.8 m ~ foot loop          how many, diameter, cut length; then fibre and name, or not
//! 6 mm ~ 50 m ~ nylon ~ 42 ~ x2         diameter or `any`, length; then fibre, price and how many there are, or not
//! 2~6mm~1.8m~foot%20loop,1~7mm~2.1m     the same for a link
//! ```
//!
//! A text without a blank is a link's: its commas part rows. In any other a comma between two digits is a decimal mark.

mod column;
mod cords;
mod hanks;
mod mistake;
mod words;

pub use column::Column;
pub use cords::{CORDS, CordList, CordRow, read_cords};
pub use hanks::{HANKS, HankList, HankRow, read_hanks};
pub use mistake::{Mistake, Wrong};
pub use words::{CORD_COLUMNS, HANK_COLUMNS, Words, rows};
