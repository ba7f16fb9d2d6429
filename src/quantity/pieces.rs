//! A text taken apart by kinds of characters, and put together, in plain loops: std's patterns and formatting are a page
//! of code each.

/// The pieces in one text.
pub(crate) fn joined(pieces: &[&str]) -> String {
    let mut text = String::new();
    for piece in pieces {
        text.push_str(piece);
    }
    text
}

/// The characters of a kind that `text` starts with, and the rest.
pub(crate) fn leading(text: &str, is_of_kind: fn(char) -> bool) -> (&str, &str) {
    let mut characters = text.chars();
    let mut rest = text;
    while characters.next().is_some_and(is_of_kind) {
        rest = characters.as_str();
    }
    text.split_at_checked(text.len() - rest.len()).unwrap_or((text, rest))
}

/// What comes behind the first character of `text`, if that is of a kind.
pub(crate) fn behind(text: &str, is_of_kind: fn(char) -> bool) -> Option<&str> {
    let mut characters = text.chars();
    characters.next().filter(|first| is_of_kind(*first)).map(|_| characters.as_str())
}

/// What stands before the first of a mark, and what behind it, if it is there.
pub(crate) fn parted(text: &str, mark: char) -> (&str, Option<&str>) {
    let mut characters = text.chars();
    let mut before = 0;
    while let Some(character) = characters.next() {
        if character == mark {
            return (text.get(..before).unwrap_or(text), Some(characters.as_str()));
        }
        before += character.len_utf8();
    }
    (text, None)
}

/// What stands before the characters of a kind that `text` ends with, and those.
pub(crate) fn ending(text: &str, is_of_kind: fn(char) -> bool) -> (&str, &str) {
    let mut characters = text.chars();
    let mut before = text;
    while characters.next_back().is_some_and(is_of_kind) {
        before = characters.as_str();
    }
    text.split_at_checked(before.len()).unwrap_or((text, ""))
}

/// The text without the space around it.
pub(crate) fn trimmed(text: &str) -> &str {
    ending(leading(text, is_blank).1, is_blank).0
}

/// Whether it is white space to Unicode: std's table of it is larger than the few there are.
pub(crate) fn is_blank(character: char) -> bool {
    matches!(character, '\t'..='\r' | ' ' | '\u{85}' | '\u{a0}' | '\u{1680}' | '\u{2000}'..='\u{200a}')
        || matches!(character, '\u{2028}' | '\u{2029}' | '\u{202f}' | '\u{205f}' | '\u{3000}')
}

pub(super) fn is_separator(character: char) -> bool {
    matches!(character, '.' | ',')
}

pub(super) fn is_stroke(character: char) -> bool {
    character == '/'
}

pub(super) fn is_nought(character: char) -> bool {
    character == '0'
}

pub(super) fn is_digit(character: char) -> bool {
    character.is_ascii_digit()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn blank_is_what_std_takes_for_white_space() {
        assert!(('\0'..=char::MAX).all(|character| is_blank(character) == character.is_whitespace()));
        assert_eq!((trimmed(" \u{2009}11 m\n"), trimmed(" "), trimmed("")), ("11 m", "", ""));
    }
}
