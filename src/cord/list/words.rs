//! A list taken apart into the words of its rows, and put together.

use super::column::{COUNT, CUT, Column, DIAMETER, LENGTH, LIMIT, PRICE};
use super::{Mistake, Wrong};
use crate::field::{Kind, Reading, Row, Said};
use crate::gear::Fibre;
use crate::quantity::{Dimension, System, behind, is_blank, parted, trimmed};

/// What a row of cords says, in the order it is written: the first three always.
pub static CORD_COLUMNS: [Column; 5] = [
    Column { id: "count", row: Some(&COUNT) },
    Column { id: "diameter", row: Some(&DIAMETER) },
    Column { id: "length", row: Some(&CUT) },
    Column { id: "fibre", row: None },
    Column { id: "name", row: None },
];

/// What a row of hanks says, in the order it is written: the first two always.
pub static HANK_COLUMNS: [Column; 5] = [
    Column { id: "diameter", row: Some(&DIAMETER) },
    Column { id: "length", row: Some(&LENGTH) },
    Column { id: "fibre", row: None },
    Column { id: "price", row: Some(&PRICE) },
    Column { id: "limit", row: Some(&LIMIT) },
];

/// The word for a hank that can be had in every diameter.
pub(super) const ANY: &str = "any";

/// The most rows of a list (judged).
const MOST_ROWS: usize = 60;

/// The words of a row; those that are not said are empty.
pub type Words = [String; 5];

/// The words of every row, right or wrong.
#[must_use]
pub fn rows(text: &str, columns: &[Column; 5]) -> Vec<Words> {
    let mut rows = Vec::new();
    for line in lines(text) {
        rows.push(words(line, columns).0);
    }
    rows
}

/// The words of every row, and the first mistake among them.
pub(super) fn checked(text: &str, columns: &[Column; 5]) -> Result<Vec<Words>, Mistake> {
    let mut rows = Vec::new();
    for line in lines(text) {
        let (words, extra) = words(line, columns);
        let row = rows.len() + 1;
        if let Some(part) = extra {
            return Err(Mistake { row, part, wrong: Wrong::NotWanted });
        }
        if row > MOST_ROWS {
            return Err(Mistake { row, part: String::new(), wrong: Wrong::TooManyRows });
        }
        rows.push(words);
    }
    // Of commas alone a link would have nothing to carry: the first row is then told what it lacks.
    if rows.is_empty() {
        rows.push(Words::default());
    }
    Ok(rows)
}

/// The lines of a text, or what stands for them in a link.
fn lines(text: &str) -> Vec<&str> {
    let linked = !trimmed(text).chars().any(is_blank);
    let mut lines = Vec::new();
    let (mut from, mut at, mut after_digit) = (0, 0, false);
    let mut letters = text.chars();
    while let Some(letter) = letters.next() {
        let ends = match letter {
            '\n' | ';' => true,
            ',' => linked || !after_digit || behind(letters.as_str(), is_digit).is_none(),
            _ => false,
        };
        if ends {
            lines.push(text.get(from..at).unwrap_or_default());
            from = at + letter.len_utf8();
        }
        at += letter.len_utf8();
        after_digit = is_digit(letter);
    }
    lines.push(text.get(from..).unwrap_or_default());
    lines.retain(|line| !trimmed(line).is_empty());
    lines
}

fn is_digit(letter: char) -> bool {
    letter.is_ascii_digit()
}

/// The words of one line, and the part that has no place in it.
fn words(line: &str, columns: &[Column; 5]) -> (Words, Option<String>) {
    let mut words = Words::default();
    let mut extra = None;
    let hanks = columns.iter().any(|column| column.id == "limit");
    let always = if hanks { 2 } else { 3 };
    let (mut rest, mut at) = (Some(line), 0);
    while let Some(unread) = rest {
        let (part, after) = parted(unread, '~');
        rest = after;
        let mut part = trimmed(part).to_owned();
        if !hanks && at >= always {
            part = trimmed(&decoded(&part)).to_owned();
        }
        let column = if at < always {
            if part.eq_ignore_ascii_case(ANY) {
                ANY.clone_into(&mut part);
            }
            at
        } else if let Some(fibre) = fibre(&part) {
            fibre.named().id.clone_into(&mut part);
            if hanks { 2 } else { 3 }
        } else if !hanks {
            4
        } else if let Some(limit) = behind(&part, is_times) {
            part = trimmed(limit).to_owned();
            4
        } else {
            3
        };
        at += 1;
        match words.get_mut(column) {
            _ if part.is_empty() => {}
            Some(word) if word.is_empty() => *word = part,
            _ => extra = extra.or(Some(part)),
        }
    }
    (words, extra)
}

fn is_times(letter: char) -> bool {
    matches!(letter, 'x' | 'X' | '×')
}

/// A fibre by its id or what people call it.
pub(super) fn fibre(word: &str) -> Option<Fibre> {
    let is_word = |known: &str| known.eq_ignore_ascii_case(word);
    let place = Fibre::OPTIONS.iter().position(|option| is_word(option.id) || is_word(option.noun))?;
    Fibre::ALL.get(place).copied()
}

/// The rows as text: for a link, or as people read it.
pub(super) fn written(rows: &[Words], columns: &[Column; 5], view: Option<System>) -> String {
    let mut text = String::new();
    let mut before = "";
    let always = if columns.iter().any(|column| column.id == "limit") { 2 } else { 3 };
    for words in rows {
        text.push_str(before);
        before = if view.is_some() { "\n" } else { "," };
        for (at, (word, column)) in words.iter().zip(columns).enumerate() {
            if word.is_empty() && at >= always {
                continue;
            }
            if at > 0 {
                text.push_str(if view.is_some() { " ~ " } else { "~" });
            }
            if column.id == "limit" {
                text.push('x');
            }
            let said = Said::Text(word.clone());
            match (column.row, view) {
                (Some(row), Some(system)) => text.push_str(&row.tidied(word, system)),
                (Some(row), None) => text.push_str(&row.linked(&said).unwrap_or_else(|| encoded(word))),
                (None, Some(_)) => text.push_str(word),
                (None, None) => text.push_str(&encoded(word)),
            }
        }
    }
    text
}

/// The text as people read it, bare numbers with their units; unchanged where even then it cannot be read.
pub(super) fn tidy(text: &str, columns: &[Column; 5], system: System, reads: fn(&str) -> bool) -> String {
    let tidied = checked(text, columns).map(|rows| written(&rows, columns, Some(system))).ok();
    tidied.filter(|tidied| reads(tidied)).unwrap_or_else(|| text.to_owned())
}

/// An amount of a row, in SI; none where it may be left out and is.
pub(super) fn amount(words: &Words, at: usize, columns: &[Column; 5], row: usize) -> Result<Option<f64>, Mistake> {
    let (Some(word), Some(Column { row: Some(of), .. })) = (words.get(at), columns.get(at)) else { return Ok(None) };
    let wrong = match of.reading(&Said::Text(word.clone())) {
        Ok(Reading::Si(si)) if is_count(of) && si.fract() != 0.0 => Wrong::NotWhole,
        Ok(Reading::Si(si)) => return Ok(Some(si)),
        _ if word.is_empty() => return Ok(None),
        Err(refusal) => Wrong::NotAnAmount { row: of, refusal: Box::new(refusal) },
        Ok(_) => Wrong::NotWanted,
    };
    Err(Mistake { row, part: word.clone(), wrong })
}

fn is_count(row: &Row) -> bool {
    matches!(row.kind, Kind::Quantity(limits) if limits.dimension == Dimension::Count)
}

/// An amount that every row says.
pub(super) fn needed(words: &Words, at: usize, columns: &[Column; 5], row: usize) -> Result<f64, Mistake> {
    let missing = Wrong::Missing { row: columns.get(at).and_then(|column| column.row).unwrap_or(&COUNT) };
    amount(words, at, columns, row)?.ok_or(Mistake { row, part: String::new(), wrong: missing })
}

/// The text with `%20` and the like read for what they stand for, and a blank for what parts rows and their parts.
fn decoded(text: &str) -> String {
    let mut bytes = Vec::new();
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        let mut ahead = rest.clone();
        let pair = [ahead.next().and_then(digit), ahead.next().and_then(digit)];
        match (byte, pair) {
            (b'%', [Some(high), Some(low)]) => {
                bytes.push(high << 4 | low);
                rest = ahead;
            }
            _ => bytes.push(byte),
        }
    }
    let text = String::from_utf8(bytes).unwrap_or_else(|_| text.to_owned());
    let is_apart = |letter: char| matches!(letter, '~' | ',' | ';' | '%') || letter.is_control();
    text.replace(is_apart, " ")
}

fn digit(byte: u8) -> Option<u8> {
    char::from(byte).to_digit(16).map(|digit| digit as u8)
}

/// The text in letters, digits, points and hyphens, with `%20` and the like for all else.
fn encoded(text: &str) -> String {
    let mut linked = String::new();
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'.' | b'-') {
            linked.push(char::from(byte));
        } else {
            linked.push('%');
            for digit in [byte >> 4, byte & 15] {
                linked.push(char::from_digit(u32::from(digit), 16).unwrap_or('0').to_ascii_uppercase());
            }
        }
    }
    linked
}
