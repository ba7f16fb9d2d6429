//! The hanks that cords can be cut out of.

use super::Mistake;
use super::column::tenths;
use super::words::{ANY, HANK_COLUMNS, Words, amount, checked, fibre, needed, tidy, written};
use crate::field::{Field, Form, Kind, Reading, Row, Said, Value};
use crate::gear::Fibre;
use crate::quantity::System;

/// A hank that can be had.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HankRow {
    /// How thick, in tenths of a millimetre; none where it can be had in any diameter.
    pub diameter: Option<u32>,
    /// Its length, in metres.
    pub length: f64,
    /// What it is made of; none where it can be had in any fibre.
    pub fibre: Option<Fibre>,
    /// Its price in hundredths.
    pub price: Option<u32>,
    /// How many there are.
    pub limit: Option<u32>,
}

impl HankRow {
    /// Whether a cord can be cut out of it.
    #[must_use]
    pub fn suits(&self, diameter: u32, fibre: Fibre) -> bool {
        self.diameter.is_none_or(|own| own == diameter) && self.fibre.is_none_or(|own| own == fibre)
    }
}

/// The hanks that can be had.
#[derive(Debug, Clone, PartialEq)]
pub struct HankList {
    /// Row by row.
    pub rows: Vec<HankRow>,
    words: Vec<Words>,
}

impl Value for HankList {
    fn of(reading: Reading) -> Option<Self> {
        match reading {
            Reading::Text(text) => read_hanks(&text).ok(),
            _ => None,
        }
    }

    fn into_said(self) -> Said {
        Said::Text(written(&self.words, &HANK_COLUMNS, Some(System::Si)))
    }
}

/// The hanks that can be had.
pub static HANKS: Field<HankList> = Field::new(Row {
    id: "hanks",
    noun: "hanks to be had",
    hint: "A line for each: diameter or any, length, and if you like the fibre, a price, and x and how many there are, with ~ between. A price of 0 is one you have already.",
    kind: Kind::Text(&FORM),
    why: "With none said, 5, 10, 20, 30 and 50 m: lengths one can usually buy (from memory).",
    private: false,
});

static FORM: Form = Form {
    canonical: |text| read_hanks(text).ok().map(|list| written(&list.words, &HANK_COLUMNS, None)),
    tidied: |text, system| tidy(text, &HANK_COLUMNS, system, |tidied| read_hanks(tidied).is_ok()),
    example: "6 mm ~ 50 m ~ 42",
};

/// The hanks that a text says.
///
/// # Errors
/// The first [`Mistake`], by rows.
///
/// # Example
/// ```
/// use boughline::cord::list::read_hanks;
///
/// let list = read_hanks("any ~ 20 m\n6 mm ~ 3.2 m ~ 0 ~ x1").map_err(|mistake| mistake.row)?;
/// assert_eq!((list.rows[0].diameter, list.rows[1].limit), (None, Some(1)));
/// # Ok::<(), usize>(())
/// ```
pub fn read_hanks(text: &str) -> Result<HankList, Mistake> {
    let words = checked(text, &HANK_COLUMNS)?;
    let mut rows = Vec::new();
    for said in &words {
        let row = rows.len() + 1;
        let [thick, ..] = said;
        let diameter = if thick == ANY { None } else { Some(tenths(needed(said, 0, &HANK_COLUMNS, row)?)) };
        let length = needed(said, 1, &HANK_COLUMNS, row)?;
        let price = amount(said, 3, &HANK_COLUMNS, row)?.map(|price| (price * 100.0).round() as u32);
        let limit = amount(said, 4, &HANK_COLUMNS, row)?.map(|limit| limit as u32);
        let [_, _, of, ..] = said;
        rows.push(HankRow { diameter, length, fibre: fibre(of), price, limit });
    }
    Ok(HankList { rows, words })
}
