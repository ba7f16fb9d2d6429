//! One number, as people write it: `11`, `11.5`, `11,5`, `1 200`, `3/8`, `3 1/2`, `3½`.

use super::decimal;
use super::figures::shortest;
use super::misread::Misread;
use super::pieces::{behind, is_digit, is_nought, is_separator, is_stroke, leading};

/// The single-character fractions, by definition (their Unicode names).
const VULGAR: [(char, f64, f64); 18] = [
    ('½', 1.0, 2.0),
    ('⅓', 1.0, 3.0),
    ('⅔', 2.0, 3.0),
    ('¼', 1.0, 4.0),
    ('¾', 3.0, 4.0),
    ('⅕', 1.0, 5.0),
    ('⅖', 2.0, 5.0),
    ('⅗', 3.0, 5.0),
    ('⅘', 4.0, 5.0),
    ('⅙', 1.0, 6.0),
    ('⅚', 5.0, 6.0),
    ('⅐', 1.0, 7.0),
    ('⅛', 1.0, 8.0),
    ('⅜', 3.0, 8.0),
    ('⅝', 5.0, 8.0),
    ('⅞', 7.0, 8.0),
    ('⅑', 1.0, 9.0),
    ('⅒', 1.0, 10.0),
];

/// Whether it is a space that people put between thousands or before a unit: plain, no-break, figure, thin, narrow.
pub(super) fn is_space(character: char) -> bool {
    matches!(character, ' ' | '\u{a0}' | '\u{2007}' | '\u{2009}' | '\u{202f}')
}

/// Whether a number starts with it.
pub(super) fn starts_number(character: char) -> bool {
    character.is_ascii_digit() || vulgar(character).is_some()
}

/// The number that `text` starts with, and what comes after it. No sign, no space before it.
pub(super) fn number(text: &str) -> Result<(f64, &str), Misread> {
    if let Some(split) = leading_vulgar(text) {
        return Ok(split);
    }
    let (whole, after) = leading_whole(text)?;
    if let Some(rest) = behind(after, is_separator) {
        return with_decimals(text, &whole, rest);
    }
    if let Some(rest) = behind(after, is_stroke) {
        let (below, rest) = leading(rest, is_digit);
        return Ok((fraction(&whole, below)?, alone(rest)?));
    }
    let value = counted(&whole)?;
    let (_, spaced) = leading(after, is_space);
    if let Some((part, rest)) = leading_vulgar(spaced) {
        return Ok((value + part, rest));
    }
    let (above, rest) = leading(spaced, is_digit);
    if let Some(rest) = behind(rest, is_stroke).filter(|_| !above.is_empty()) {
        let (below, rest) = leading(rest, is_digit);
        let part = fraction(above, below)?;
        if part >= 1.0 {
            return Err(Misread::NotANumber);
        }
        return Ok((value + part, alone(rest)?));
    }
    Ok((value, after))
}

/// The whole number that `text` starts with, its spaces between thousands taken out.
fn leading_whole(text: &str) -> Result<(String, &str), Misread> {
    let (first, mut after) = leading(text, is_digit);
    if first.is_empty() {
        return Err(Misread::NotANumber);
    }
    let mut whole = first.to_owned();
    if first.len() <= 3 && behind(first, is_nought).is_none() {
        while let Some((thousand, rest)) = leading_thousand(after) {
            // `3 125/1000` is 3125 thousandths to one reader and 3⅛ to another.
            if behind(rest, is_stroke).is_some() {
                return Err(Misread::NotANumber);
            }
            whole.push_str(thousand);
            after = rest;
        }
    }
    Ok((whole, after))
}

/// One space and exactly three digits.
fn leading_thousand(text: &str) -> Option<(&str, &str)> {
    let (digits, rest) = leading(behind(text, is_space)?, is_digit);
    (digits.len() == 3).then_some((digits, rest))
}

/// The rest of a decimal number whose whole part and separator have been read.
fn with_decimals<'a>(text: &'a str, whole: &str, rest: &'a str) -> Result<(f64, &'a str), Misread> {
    let (decimals, rest) = leading(rest, is_digit);
    if behind(rest, is_separator).is_some() {
        return Err(Misread::TwoSeparators);
    }
    if decimals.is_empty() {
        return Err(Misread::NotANumber);
    }
    let value = decimal::value(whole, decimals).ok_or(Misread::TooLong)?;
    if decimals.len() == 3 && whole.bytes().any(|digit| digit != b'0') {
        return Err(Misread::Ambiguous {
            said: text.get(..text.len() - rest.len()).unwrap_or(text).to_owned(),
            whole: leading(&(whole.to_owned() + decimals), is_nought).1.to_owned(),
            decimal: shortest(value),
        });
    }
    Ok((value, alone(rest)?))
}

/// `rest`, unless it would make the number before it another one.
fn alone(rest: &str) -> Result<&str, Misread> {
    let spoils = |character| is_stroke(character) || is_separator(character) || vulgar(character).is_some();
    if behind(rest, spoils).is_some() { Err(Misread::NotANumber) } else { Ok(rest) }
}

fn fraction(above: &str, below: &str) -> Result<f64, Misread> {
    let below = counted(below)?;
    if below == 0.0 {
        return Err(Misread::NotFinite);
    }
    Ok(counted(above)? / below)
}

/// A whole number; none without a digit.
fn counted(digits: &str) -> Result<f64, Misread> {
    if digits.is_empty() {
        return Err(Misread::NotANumber);
    }
    decimal::value(digits, "").ok_or(Misread::TooLong)
}

fn vulgar(character: char) -> Option<f64> {
    VULGAR.iter().find(|row| row.0 == character).map(|row| row.1 / row.2)
}

fn leading_vulgar(text: &str) -> Option<(f64, &str)> {
    let mut characters = text.chars();
    let value = vulgar(characters.next()?)?;
    Some((value, characters.as_str()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_single_character_is_the_fraction_of_its_unicode_name() {
        // Numerator and denominator as the names say, in the order of Unicode: one quarter, one half, three quarters, …
        let names = "¼1/4 ½1/2 ¾3/4 ⅐1/7 ⅑1/9 ⅒1/10 ⅓1/3 ⅔2/3 ⅕1/5 ⅖2/5 ⅗3/5 ⅘4/5 ⅙1/6 ⅚5/6 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8";
        for name in names.split(' ') {
            let (value, slashed) = leading_vulgar(name).unwrap();
            assert_eq!(number(slashed), Ok((value, "")), "{name}");
        }
        assert_eq!(names.split(' ').count(), VULGAR.len());
    }

    #[test]
    fn a_number_leaves_what_follows_it() {
        assert_eq!(number("11 m"), Ok((11.0, " m")));
        assert_eq!(number("3 1/2\""), Ok((3.5, "\"")));
        assert_eq!(number("1 200 400 mm"), Ok((1_200_400.0, " mm")));
        assert_eq!(number("12 34"), Ok((12.0, " 34")));
    }
}
