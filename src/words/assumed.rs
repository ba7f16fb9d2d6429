//! The defaults that an answer rests on.

use super::template::say;
use crate::field::{Kind, Row};
use crate::quantity::{View, written};

/// The defaults the answer rests on, in a sentence; nothing where all was said.
pub(super) fn assumed(rows: &[&Row], view: View) -> String {
    let mut text = String::new();
    for row in rows {
        let value = match row.kind {
            Kind::Choice { options, likely } => {
                options.iter().find(|option| Some(option.id) == likely).map(|option| option.noun.to_owned())
            }
            Kind::Text(_) => None,
            Kind::Quantity(limits) => limits.likely.map(|likely| written(likely.likely, limits.dimension, view)),
        };
        if let Some(value) = value {
            let before = if text.is_empty() { "Reckoned with, unless you say otherwise: " } else { "; " };
            say(&mut text, "{}{}, {}", &[], &[before, row.noun, &value], view);
        }
    }
    if text.is_empty() { text } else { text + "." }
}
