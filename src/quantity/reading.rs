//! A text understood: from letters and figures to numbers of units.

use super::misread::Misread;
use super::number::{is_space, number, starts_number};
use super::pieces::{behind, ending, leading, trimmed};
use super::table::{family, unit_written};
use super::{Dimension, Unit};

/// Whether it is a mark that is part of a number, or of none.
fn is_mark(character: char) -> bool {
    matches!(character, '.' | ',' | '/' | '+' | '-' | '−')
}

fn is_minus(character: char) -> bool {
    matches!(character, '-' | '−')
}

/// The longest text that is read, in characters: judged, twice the longest sensible one.
pub(super) const LONGEST: usize = 60;

/// A text understood: its parts as numbers of units, in falling order.
pub(super) struct Reading {
    pub(super) negative: bool,
    pub(super) parts: Parts,
}

/// Numbers and their units. Only a bare ratio has none.
type Parts = Vec<(f64, Option<&'static Unit>)>;

impl Reading {
    /// Its SI value. Parts are added up in the smallest unit, so that `6 ft 3 in` and `75 in` are the same bits.
    pub(super) fn si(&self) -> f64 {
        let mut total = 0.0;
        let mut last = None;
        for &(number, unit) in &self.parts {
            total = match (last, unit.and_then(Unit::bigger)) {
                (Some(_), Some((_, count))) => total * count + number,
                _ => number,
            };
            last = unit;
        }
        let si = last.map_or(total, |unit| unit.si(total));
        // Minus nothing is nothing.
        if self.negative && si != 0.0 { -si } else { si }
    }
}

/// The text understood.
pub(super) fn reading(text: &str, dimension: Dimension, default: Option<&'static Unit>) -> Result<Reading, Misread> {
    let text = trimmed(text);
    if text.is_empty() {
        return Err(Misread::Empty);
    }
    if text.chars().count() > LONGEST {
        return Err(Misread::TooLong);
    }
    let unsigned = behind(text, is_minus);
    let mut rest = unsigned.unwrap_or(text);
    if is_infinite_or_nan(rest) {
        return Err(Misread::NotFinite);
    }
    let mut parts = Vec::new();
    while !rest.is_empty() {
        let (number, after) = number(rest)?;
        let (unit, after) = leading_unit(after)?;
        parts.push((number, unit));
        rest = after;
    }
    if parts.is_empty() {
        return Err(Misread::NotANumber);
    }
    let parts = with_units(parts, dimension, default)?;
    in_falling_order(&parts)?;
    let reading = Reading { negative: unsigned.is_some(), parts };
    if reading.si().is_finite() { Ok(reading) } else { Err(Misread::NotFinite) }
}

/// The unit that follows a number, and the next number with all after it. A number with nothing after it has none.
fn leading_unit(text: &str) -> Result<(Option<&'static Unit>, &str), Misread> {
    let (between, rest) = leading(text, |character| !starts_number(character));
    let said = ending(leading(between, is_space).1, is_space).0;
    if said.is_empty() && rest.is_empty() {
        return Ok((None, rest));
    }
    let (before_marks, marks) = ending(between, is_mark);
    if !rest.is_empty() && matches!(before_marks, "e" | "E") {
        return Err(Misread::Exponent);
    }
    // Two numbers side by side are none, nor is one with a mark that belongs to it: `6 3`, `3 / 8`, `6 ft -3 in`.
    let only_marks = leading(said, is_mark).1.is_empty();
    if only_marks || (!rest.is_empty() && !marks.is_empty()) {
        return Err(Misread::NotANumber);
    }
    match unit_written(said) {
        Some(unit) => Ok((Some(unit), rest)),
        None => Err(Misread::UnknownUnit { said: said.to_owned() }),
    }
}

/// The parts with the default unit where none was written, all of the one dimension.
fn with_units(mut parts: Parts, dimension: Dimension, default: Option<&'static Unit>) -> Result<Parts, Misread> {
    let alone = parts.len() == 1;
    let bare_is_itself = family(dimension).si.is_none();
    for (_, unit) in &mut parts {
        if alone && !bare_is_itself {
            *unit = unit.or(default);
        }
        match *unit {
            Some(said) if said.dimension != dimension => {
                return Err(Misread::WrongDimension { said, wanted: dimension });
            }
            None if !bare_is_itself => return Err(Misread::NoUnit { dimension }),
            None if !alone => return Err(Misread::NotANumber),
            _ => {}
        }
    }
    Ok(parts)
}

/// Nothing, if each part is less than one of the part before it and may be written after it.
fn in_falling_order(parts: &[(f64, Option<&'static Unit>)]) -> Result<(), Misread> {
    let mut before: Option<(f64, &'static Unit)> = None;
    for &(number, unit) in parts {
        let Some(second) = unit else { continue };
        let Some((ahead, first)) = before.replace((number, second)) else { continue };
        if first == second || is_part_of(first, second) {
            return Err(Misread::Unordered);
        }
        let count = match second.bigger() {
            Some((bigger, count)) if bigger == first => count,
            _ => return Err(Misread::Unpaired { first, second }),
        };
        if ahead.fract() != 0.0 {
            return Err(Misread::BrokenWhole { unit: first });
        }
        if number >= count {
            return Err(Misread::Overflow { part: second, whole: first });
        }
    }
    Ok(())
}

/// Whether `unit` is written somewhere after `whole`: seconds after hours.
fn is_part_of(unit: &Unit, whole: &Unit) -> bool {
    unit.bigger().is_some_and(|(bigger, _)| bigger == whole || is_part_of(bigger, whole))
}

fn is_infinite_or_nan(text: &str) -> bool {
    let word = leading(text, |character| !is_space(character)).0;
    ["inf", "infinity", "nan"].iter().any(|name| word.eq_ignore_ascii_case(name))
        || behind(word, |character| character == '∞').is_some()
}
