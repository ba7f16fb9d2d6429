//! A draft to and from the fragment of an address: readable, editable, the same inputs for ever.
//!
//! ```text
//! v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=11m&rig=tail-3
//! ```
//!
//! `v` is the form of the link, `q` the question, `f` the version of the figures, `u` the system of units and `d` the
//! decimal mark, then the fields. Only letters, digits and `. - & =` are written.

use crate::draft::Draft;
use crate::field::{Kind, Row, Said};
use crate::quantity::{Decimal, System, View};
use crate::question::{Question, field};

/// The form of the links that are written, and the only one that is read.
pub const FORM: u32 = 1;

/// The version of the figures: it changes whenever the same inputs would give another answer.
pub const FIGURES: u32 = 1;

/// What a link says.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Link {
    /// The question, if it names one.
    pub question: Option<Question>,
    /// The fields.
    pub draft: Draft,
    /// How figures are to be written.
    pub view: View,
    /// What could not be used.
    pub notices: Vec<Notice>,
}

/// Something in a link that could not be used, or that the reader should know.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Notice {
    /// It is of a form that this program does not know.
    UnknownForm(String),
    /// It was made with other figures, so the answer may differ.
    OtherFigures(String),
    /// It asks a question that this program does not know.
    UnknownQuestion(String),
    /// It has a part that is no field.
    UnknownPart(String),
    /// It says a field twice; the first stands.
    Twice(String),
    /// A part has no value.
    NoValue(String),
}

/// The fragment for a draft, without `#`.
///
/// # Guarantees
/// Choices that were not made are written out with their defaults, so that a later default cannot change the plan.
/// Reading it back gives the same inputs to the last bit. What cannot be read is left out.
#[must_use]
pub fn write(question: Question, draft: &Draft, view: View) -> String {
    let system = if view.system == System::Si { "si" } else { "us" };
    let mut parts =
        vec![format!("v={FORM}"), format!("q={}", question.id()), format!("f={FIGURES}"), format!("u={system}")];
    if view.decimal == Decimal::Comma {
        parts.push("d=comma".to_owned());
    }
    let own = question.fields().iter().filter_map(|row| Some((row.id, value(row, draft)?)));
    parts.extend(own.map(|(id, text)| format!("{id}={text}")));
    // What other questions read travels with it.
    let others = draft.ids().filter(|id| question.fields().iter().all(|row| row.id != *id));
    let others = others.filter_map(|id| Some((id, field(id)?.linked(draft.get(id)?)?)));
    parts.extend(others.map(|(id, text)| format!("{id}={text}")));
    parts.join("&")
}

fn value(row: &Row, draft: &Draft) -> Option<String> {
    match (draft.get(row.id), row.kind) {
        (Some(said), _) => row.linked(said),
        (None, Kind::Choice { likely, .. }) => likely.map(str::to_owned),
        (None, Kind::Quantity(_)) => None,
    }
}

/// What a link says: a fragment with or without `#`, or a whole address.
///
/// # Guarantees
/// Total. Values are not checked here but where every other value is.
#[must_use]
pub fn read(text: &str) -> Link {
    let mut link = Link::default();
    let fragment = text.trim();
    let fragment = fragment.split_once('#').map_or(fragment, |(_, fragment)| fragment);
    for part in fragment.split('&').filter(|part| !part.is_empty()) {
        let Some((key, value)) = part.split_once('=').filter(|(_, value)| !value.is_empty()) else {
            link.notices.push(Notice::NoValue(part.to_owned()));
            continue;
        };
        match key {
            "v" if value != FORM.to_string() => link.notices.push(Notice::UnknownForm(value.to_owned())),
            "f" if value != FIGURES.to_string() => link.notices.push(Notice::OtherFigures(value.to_owned())),
            "v" | "f" => {}
            "q" => match Question::of(value) {
                Some(question) => link.question = Some(question),
                None => link.notices.push(Notice::UnknownQuestion(value.to_owned())),
            },
            "u" if value == "si" => link.view.system = System::Si,
            "u" if value == "us" => link.view.system = System::Us,
            "d" if value == "comma" => link.view.decimal = Decimal::Comma,
            id if field(id).is_none() => link.notices.push(Notice::UnknownPart(part.to_owned())),
            id if link.draft.get(id).is_some() => link.notices.push(Notice::Twice(id.to_owned())),
            id => link.draft.put(id, Said::Text(value.to_owned())),
        }
    }
    link
}
