//! What is wrong with a list of cords or hanks, in words that point at its row; and its rows for an editor.

use super::record::records;
use super::refusal::{refused, wanted};
use super::template::said;
use crate::cord::list::{
    CORD_COLUMNS, CORDS, Column, HANK_COLUMNS, HANKS, Mistake, Words, Wrong, read_cords, read_hanks, rows,
};
use crate::field::{Refusal, Row, Spread};
use crate::quantity::{View, joined};

records! {
    /// A part of a row.
    pub struct ListPart {
        /// Its column.
        pub id: &'static str,
        /// What is said.
        pub text: String,
    }
}

/// The rows of a text in a field, right or wrong; none for a field that holds no list.
#[must_use]
pub fn list_rows(id: &str, text: &str) -> Vec<Vec<ListPart>> {
    let columns: &[Column; 5] = match id {
        _ if id == CORDS.row.id => &CORD_COLUMNS,
        _ if id == HANKS.row.id => &HANK_COLUMNS,
        _ => return Vec::new(),
    };
    let mut lines = Vec::new();
    for words in rows(text, columns) {
        lines.push(parts(words, columns));
    }
    lines
}

fn parts(words: Words, columns: &[Column; 5]) -> Vec<ListPart> {
    let mut parts = Vec::new();
    for (text, column) in words.into_iter().zip(columns) {
        parts.push(ListPart { id: column.id, text });
    }
    parts
}

/// What is wrong with a list, in a sentence or two; none where the field holds none, or nothing is.
pub(super) fn list_mistake(id: &str, text: &str, view: View) -> Option<String> {
    let (mistake, row) = match id {
        _ if id == CORDS.row.id => (read_cords(text).err()?, &CORDS.row),
        _ if id == HANKS.row.id => (read_hanks(text).err()?, &HANKS.row),
        _ => return None,
    };
    Some(mistake_words(&mistake, row, view))
}

fn mistake_words(mistake: &Mistake, list: &'static Row, view: View) -> String {
    let Mistake { row, part, wrong } = mistake;
    let at = [&Spread::point(*row as f64)];
    let like = wanted(Some(list), view);
    let there = said("“{}” in row {0}", &at, &[part], view);
    match wrong {
        Wrong::Missing { row } => said("Row {0} does not say the {}. {}", &at, &[row.noun, &like], view),
        Wrong::NotAnAmount { row, refusal } => {
            let wrong = refused(&there, refusal, Some(row), view);
            match **refusal {
                Refusal::OutOfRange { .. } => joined(&[&wrong, " ", &like]),
                _ => wrong,
            }
        }
        Wrong::NotWhole => said("{} is no whole number. {}", &[], &[&there, &like], view),
        Wrong::NotWanted => said("{} has no place there, or is said twice. {}", &[], &[&there, &like], view),
        Wrong::TooManyCords => {
            said("With row {0} these are more than 200 cords. Cut them in two plans.", &at, &[], view)
        }
        Wrong::TooManyRows => said("Row {0} is one too many: 60 rows are the most. Leave some out.", &at, &[], view),
    }
}
