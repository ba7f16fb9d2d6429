//! What a plan says, field by field.

use crate::draft::Draft;
use crate::field::{Kind, Reading, Row, Said};
use crate::quantity::{View, trimmed, written};
use crate::question::all_fields;
use crate::words::template::worded;

/// Everything that was entered, a line a field.
pub(super) fn entered(draft: &Draft, view: View) -> Vec<String> {
    let mut lines = Vec::new();
    for row in all_fields() {
        lines.extend(entered_in(row, draft, view));
    }
    lines
}

/// What was entered in a field, with its noun; none where nothing was, or nothing that can be read.
pub(super) fn entered_in(row: &Row, draft: &Draft, view: View) -> Option<String> {
    let said = draft.get(row.id)?;
    let value = match (row.reading(said).ok()?, row.kind, said) {
        (Reading::Choice(place), Kind::Choice { options, .. }, _) => options.get(place)?.noun.to_owned(),
        // As it was typed: nobody knows their own figures in another unit. A link has no blanks.
        (_, Kind::Quantity(_), Said::Text(text)) => spaced(trimmed(text)),
        (_, _, Said::Text(text)) => trimmed(text).to_owned(),
        (Reading::Si(si), Kind::Quantity(limits), _) => written(si, limits.dimension, view),
        _ => return None,
    };
    Some(worded("{}: {}", &[row.noun, &value]))
}

/// The text with a blank between number and unit: `6ft3in` as `6 ft 3 in`.
fn spaced(text: &str) -> String {
    let mut apart = String::new();
    let mut before = ' ';
    for character in text.chars() {
        let (number, letter) = (before.is_ascii_digit(), before.is_ascii_alphabetic());
        if (number && character.is_ascii_alphabetic()) || (letter && character.is_ascii_digit()) {
            apart.push(' ');
        }
        apart.push(character);
        before = character;
    }
    apart
}

#[cfg(test)]
mod tests {
    use super::spaced;

    #[test]
    fn number_and_unit_stand_apart_however_they_were_written() {
        for (text, apart) in
            [("12m", "12 m"), ("6ft3.5in", "6 ft 3.5 in"), ("12 m", "12 m"), ("1,5 m", "1,5 m"), ("36 °C", "36 °C")]
        {
            assert_eq!(spaced(text), apart);
        }
    }
}
