//! A text taken apart into ropes, stops and words.

use super::stop::{Does, OwnRope, OwnStop, Place};
use super::{Mistake, Wrong};
use crate::field::Named;
use crate::quantity::{behind, is_blank, leading, trimmed};

/// What ends a stop.
#[derive(Clone, Copy, PartialEq)]
enum End {
    Stop,
    Rope,
    Text,
}

/// The text up to what ends a stop, what that is, and the rest.
fn cut(text: &str) -> (&str, End, &str) {
    let mut characters = text.chars();
    let (mut at, mut after_digit) = (0, false);
    while let Some(character) = characters.next() {
        let rest = characters.as_str();
        let end = match character {
            '\n' => Some((End::Rope, rest)),
            // No stop begins with a digit: a comma between two is the decimal mark of an amount.
            ',' if !after_digit || behind(rest, is_digit).is_none() => Some((End::Stop, rest)),
            '-' => behind(rest, is_hyphen)
                .map(|rest| behind(rest, is_hyphen).map_or((End::Stop, rest), |rest| (End::Rope, rest))),
            _ => None,
        };
        if let Some((end, rest)) = end {
            return (text.get(..at).unwrap_or_default(), end, rest);
        }
        at += character.len_utf8();
        after_digit = is_digit(character);
    }
    (text, End::Text, "")
}

fn is_digit(character: char) -> bool {
    character.is_ascii_digit()
}

fn is_hyphen(character: char) -> bool {
    character == '-'
}

fn is_point(character: char) -> bool {
    character == '.'
}

/// Whether it is part of a word: anything but a point and a blank.
fn is_of_word(character: char) -> bool {
    !is_point(character) && !is_blank(character)
}

/// The first word, and what follows it behind a point or blanks.
fn word(text: &str) -> (&str, &str) {
    let (word, rest) = leading(trimmed(text), is_of_word);
    (word, behind(rest, is_point).unwrap_or(rest))
}

/// The place of a word in a list.
fn place(options: &[Named], word: &str) -> Option<usize> {
    options.iter().position(|option| option.id.eq_ignore_ascii_case(word))
}

/// The ropes in the words of the notation; what goes with each stop is not looked at yet.
pub(super) fn said(text: &str) -> Result<Vec<OwnRope>, Mistake> {
    let mut ropes = Vec::new();
    let (mut rest, mut line) = (text, 1);
    loop {
        let mut stops = Vec::new();
        let mut end = End::Stop;
        while end == End::Stop {
            let (piece, ends, behind) = cut(rest);
            (rest, end) = (behind, ends);
            if stops.is_empty() && end != End::Stop && trimmed(piece).is_empty() {
                break;
            }
            stops.push(stop(piece).map_err(|(word, wrong)| Mistake {
                line,
                stop: stops.len() + 1,
                word: word.to_owned(),
                wrong,
            })?);
        }
        if !stops.is_empty() {
            ropes.push(OwnRope { line, stops });
        }
        if end == End::Text {
            return Ok(ropes);
        }
        line += 1;
    }
}

/// One stop.
fn stop(text: &str) -> Result<OwnStop, (&str, Wrong)> {
    let (does, rest) = word(text);
    if does.is_empty() {
        return Err((trimmed(text), if trimmed(text).is_empty() { Wrong::NoStop } else { Wrong::NotDone }));
    }
    let done = place(Does::OPTIONS, does).and_then(|place| Does::ALL.get(place)).ok_or((does, Wrong::NotDone))?;
    let (on, with) = word(rest);
    if on.is_empty() {
        return Err((does, Wrong::NoPlace));
    }
    let place = place(Place::OPTIONS, on).and_then(|place| Place::ALL.get(place)).ok_or((on, Wrong::NotAPlace))?;
    Ok(OwnStop { does: *done, on: *place, with: trimmed(with).to_owned() })
}
