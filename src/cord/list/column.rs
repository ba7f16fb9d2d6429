//! What a part of a row says.

use crate::field::{Kind, Limits, Row};
use crate::gear::HITCH_CORD;
use crate::quantity::{Dimension, FOOT, METRE, MILLIMETRE, Unit};

/// A column of a list.
#[derive(Debug, Clone, Copy)]
pub struct Column {
    /// Its id.
    pub id: &'static str,
    /// What it says, where that is an amount.
    pub row: Option<&'static Row>,
}

const fn amount(
    noun: &'static str,
    dimension: Dimension,
    [least, most]: [f64; 2],
    example: f64,
    bare: Option<[&'static Unit; 2]>,
) -> Row {
    let limits = Limits { dimension, least, most, example, likely: None, bare };
    Row { id: "", noun, hint: "", kind: Kind::Quantity(limits), why: "", private: false }
}

/// How many cords of a row.
pub(super) static COUNT: Row = amount("how many", Dimension::Count, [1.0, 200.0], 2.0, None);
/// How thick; as a hitch's cord is.
pub(super) static DIAMETER: Row = Row { noun: "diameter", ..HITCH_CORD.row };
/// The cut length of a cord: no shorter than a knot, no longer than the longest hank (judged).
pub(super) static CUT: Row =
    amount("cut length", Dimension::Length, [MILLIMETRE.si(50.0), 500.0], 1.8, Some([METRE, FOOT]));
/// The length of a hank: none longer is sold to people (judged).
pub(super) static LENGTH: Row =
    amount("length of the hank", Dimension::Length, [MILLIMETRE.si(100.0), 500.0], 50.0, Some([METRE, FOOT]));
/// A price, in whatever it is paid in.
pub(super) static PRICE: Row = amount("price", Dimension::Ratio, [0.0, 100_000.0], 42.0, None);
/// How many of a hank there are.
pub(super) static LIMIT: Row = amount("how many there are", Dimension::Count, [0.0, 200.0], 2.0, None);

/// How thick a thing is, in tenths of a millimetre: finer no cord is told apart (judged).
pub(super) fn tenths(si: f64) -> u32 {
    (MILLIMETRE.count(si) * 10.0).round() as u32
}
