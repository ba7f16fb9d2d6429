//! The cords that are wanted.

use super::column::tenths;
use super::words::{CORD_COLUMNS, Words, checked, fibre, needed, tidy, written};
use super::{Mistake, Wrong};
use crate::cord::cutting::MOST_CORDS;
use crate::field::{Field, Form, Kind, Reading, Row, Said, Value};
use crate::gear::Fibre;
use crate::quantity::System;

/// Cords of one length.
#[derive(Debug, Clone, PartialEq)]
pub struct CordRow {
    /// How many.
    pub count: u32,
    /// How thick, in tenths of a millimetre.
    pub diameter: u32,
    /// The length each is cut to, in metres.
    pub length: f64,
    /// What it is made of, where that is said.
    pub fibre: Option<Fibre>,
    /// What it is for; empty where nothing is said.
    pub name: String,
}

/// The cords that are wanted.
#[derive(Debug, Clone, PartialEq)]
pub struct CordList {
    /// Row by row.
    pub rows: Vec<CordRow>,
    words: Vec<Words>,
}

impl Value for CordList {
    fn of(reading: Reading) -> Option<Self> {
        match reading {
            Reading::Text(text) => read_cords(&text).ok(),
            _ => None,
        }
    }

    fn into_said(self) -> Said {
        Said::Text(written(&self.words, &CORD_COLUMNS, Some(System::Si)))
    }
}

/// The cords that are wanted.
pub static CORDS: Field<CordList> = Field::new(Row {
    id: "cords",
    noun: "cords to cut",
    hint: "A line for each: how many, diameter, cut length, and if you like the fibre and a name, with ~ between.",
    kind: Kind::Text(&FORM),
    why: "At most 200 cords, more than anybody cuts for a tree (judged).",
    private: false,
});

static FORM: Form = Form {
    canonical: |text| read_cords(text).ok().map(|list| written(&list.words, &CORD_COLUMNS, None)),
    tidied: |text, system| tidy(text, &CORD_COLUMNS, system, |tidied| read_cords(tidied).is_ok()),
    example: "2 ~ 6 mm ~ 1.8 m ~ foot loop",
};

/// The cords that a text says.
///
/// # Errors
/// The first [`Mistake`], by rows.
///
/// # Example
/// ```
/// use boughline::cord::list::read_cords;
///
/// let list = read_cords("2~6mm~1.8m~foot%20loop,1~7mm~2.1m").map_err(|mistake| mistake.row)?;
/// assert_eq!((list.rows.len(), list.rows[0].name.as_str()), (2, "foot loop"));
/// assert_eq!(read_cords("2 ~ 6 mm").unwrap_err().row, 1);
/// # Ok::<(), usize>(())
/// ```
pub fn read_cords(text: &str) -> Result<CordList, Mistake> {
    let words = checked(text, &CORD_COLUMNS)?;
    let (mut rows, mut all) = (Vec::new(), 0);
    for said in &words {
        let row = rows.len() + 1;
        let count = needed(said, 0, &CORD_COLUMNS, row)? as u32;
        let diameter = tenths(needed(said, 1, &CORD_COLUMNS, row)?);
        let length = needed(said, 2, &CORD_COLUMNS, row)?;
        all += count as usize;
        if all > MOST_CORDS {
            return Err(Mistake { row, part: String::new(), wrong: Wrong::TooManyCords });
        }
        let [.., of, name] = said;
        rows.push(CordRow { count, diameter, length, fibre: fibre(of), name: name.clone() });
    }
    Ok(CordList { rows, words })
}
