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
        // As it was typed: nobody knows their own figures in another unit.
        (_, _, Said::Text(text)) => trimmed(text).to_owned(),
        (Reading::Si(si), Kind::Quantity(limits), _) => written(si, limits.dimension, view),
        _ => return None,
    };
    Some(worded("{}: {}", &[row.noun, &value]))
}
