//! The defaults that an answer rests on.

use super::template::say;
use crate::field::{Kind, Row};
use crate::quantity::{View, written};

/// The defaults the answer rests on, in a sentence; nothing where all was said.
pub(super) fn assumed(rows: &[&Row], view: View) -> String {
    assumed_too(&[], rows, view)
}

/// The same with what is usual of something that was said, each by its noun.
pub(super) fn assumed_too(usual: &[(&str, String)], rows: &[&Row], view: View) -> String {
    let mut text = String::new();
    let mut add = |noun: &str, value: &str| {
        let before = if text.is_empty() { "Reckoned with, unless you say otherwise: " } else { "; " };
        say(&mut text, "{}{}, {}", &[], &[before, noun, value], view);
    };
    for (noun, value) in usual {
        add(noun, value);
    }
    for row in rows {
        let value = match row.kind {
            Kind::Choice { options, likely } => {
                options.iter().find(|option| Some(option.id) == likely).map(|option| option.noun.to_owned())
            }
            Kind::Text(_) => None,
            Kind::Quantity(limits) => limits.likely.map(|likely| written(likely.likely, limits.dimension, view)),
        };
        if let Some(value) = value {
            add(row.noun, &value);
        }
    }
    if text.is_empty() { text } else { text + "." }
}
