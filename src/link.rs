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
use crate::quantity::{Decimal, System, View, joined, parted, plain, trimmed};
use crate::question::{Question, all_fields, field};

/// The form of the links that are written, and the only one that is read.
pub const FORM: u32 = 1;

/// The version of the figures: it changes whenever the same inputs would give another answer.
pub const FIGURES: u32 = 1;

/// What a link to the trip sheet says in the place of a question.
pub const TRIP_SHEET: &str = "trip-sheet";

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
#[non_exhaustive]
pub enum Notice {
    /// It is of a form that this program does not know.
    UnknownForm(String),
    /// It was made with other figures, so the answer may differ.
    OtherFigures(String),
    /// It asks a question that this program does not know.
    UnknownQuestion(String),
    /// It has a part that is no field.
    UnknownPart(String),
    /// It says a field, or something of its head, twice; the first stands.
    Twice(String),
    /// A second plan begins in it, as in the link of a comparison; the first is taken, and nothing of what follows.
    TwoPlans,
    /// A part has no value.
    NoValue(String),
}

/// The fragment for a draft, without `#`; none while anything said in it cannot be read, so that a link never carries
/// another plan than the one on the page.
///
/// # Guarantees
/// Choices that were not made are written out with their defaults wherever the answer rests on them, so that a later
/// default cannot change the plan.
/// Reading it back gives the same inputs to the last bit.
#[must_use]
pub fn write(question: Question, draft: &Draft, view: View) -> Option<String> {
    let mut link = head_of(question.id(), view);
    let assumed = question.assumed(draft);
    add_fields(&mut link, question.fields(), draft, assumed.as_deref().unwrap_or(question.fields()))?;
    // What other questions read travels with it.
    for id in draft.ids() {
        if question.fields().iter().all(|row| row.id != id) {
            add(&mut link, id, &field(id)?.linked(draft.get(id)?)?);
        }
    }
    Some(link)
}

/// The same for the trip sheet, with the defaults that any answer rests on.
#[must_use]
pub fn write_sheet(draft: &Draft, view: View) -> Option<String> {
    sheet_of(draft, view, &Question::assumed_by_any(draft))
}

/// The same where these defaults are known already.
pub(crate) fn sheet_of(draft: &Draft, view: View, assumed: &[&Row]) -> Option<String> {
    let mut link = head_of(TRIP_SHEET, view);
    add_fields(&mut link, &all_fields(), draft, assumed)?;
    for id in draft.ids() {
        // What is no field goes into no link.
        field(id)?;
    }
    Some(link)
}

/// What is said of these fields, and the choices among `assumed` that were not made; none where it cannot be read.
fn add_fields(link: &mut String, fields: &[&Row], draft: &Draft, assumed: &[&Row]) -> Option<()> {
    for row in fields {
        match (draft.get(row.id), row.kind) {
            (Some(said), _) => add(link, row.id, &row.linked(said)?),
            (None, Kind::Choice { likely: Some(likely), .. }) if assumed.iter().any(|known| known.id == row.id) => {
                add(link, row.id, likely);
            }
            _ => {}
        }
    }
    Some(())
}

/// What a link begins with.
fn head_of(subject: &str, view: View) -> String {
    let system = if view.system == System::Si { "si" } else { "us" };
    let mut link = joined(&["v=", &version(FORM), "&q=", subject, "&f=", &version(FIGURES), "&u=", system]);
    if view.decimal == Decimal::Comma {
        link.push_str("&d=comma");
    }
    link
}

fn version(number: u32) -> String {
    plain(f64::from(number), 0, View::default())
}

fn add(link: &mut String, id: &str, text: &str) {
    for part in ["&", id, "=", text] {
        link.push_str(part);
    }
}

/// What a link says: a fragment with or without `#`, or a whole address, with its `&` as they are or written as in HTML;
/// one of the pocket edition too, where the name of the page stands before the plan.
///
/// # Guarantees
/// Total. Values are not checked here but where every other value is.
#[must_use]
pub fn read(text: &str) -> Link {
    let mut link = Link::default();
    let text = trimmed(text);
    let (whole, fragment) = parted(text, '#');
    let mut rest = Some(behind_page(fragment.unwrap_or(whole)));
    let mut heads: Vec<&str> = Vec::new();
    while let Some(unread) = rest {
        let (part, after) = parted(unread, '&');
        rest = after;
        let part = undamaged(part);
        let notice = match parted(part, '=') {
            _ if part.is_empty() => None,
            ("v", Some(_)) if heads.contains(&"v") => {
                rest = None;
                Some(Notice::TwoPlans)
            }
            (_, None | Some("")) => Some(Notice::NoValue(part.to_owned())),
            (key, _) if heads.contains(&key) || link.draft.get(key).is_some() => Some(Notice::Twice(key.to_owned())),
            (key, Some(value)) if field(key).is_some() => {
                link.draft.put(key, Said::Text(value.to_owned()));
                None
            }
            (key, Some(value)) => {
                let notice = head(&mut link, key, value);
                // A form that is not known begins a plan all the same.
                if notice.is_none() || key == "v" {
                    heads.push(key);
                }
                notice
            }
        };
        if let Some(notice) = notice {
            link.notices.push(notice);
        }
    }
    link
}

/// The part of a link whose `&` went through HTML, once or more, and came out as `&amp;`.
fn undamaged(part: &str) -> &str {
    let mut rest = part;
    while let Some(after) = rest.strip_prefix("amp;") {
        rest = after;
    }
    rest
}

/// The plan behind the name of a page: `v=1` of `rope-length/v=1`.
fn behind_page(fragment: &str) -> &str {
    match parted(fragment, '/') {
        (page, Some(plan)) if plan.starts_with("v=") && page.bytes().all(|byte| matches!(byte, b'a'..=b'z' | b'-')) => {
            plan
        }
        _ => fragment,
    }
}

/// Takes a part of the head of a link, or notices why not.
fn head(link: &mut Link, key: &str, value: &str) -> Option<Notice> {
    match (key, value) {
        ("v", _) if value == version(FORM) => {}
        ("v", _) => return Some(Notice::UnknownForm(value.to_owned())),
        ("f", _) if value == version(FIGURES) => {}
        ("f", _) => return Some(Notice::OtherFigures(value.to_owned())),
        ("q", TRIP_SHEET) => {}
        ("q", _) => {
            link.question = Question::of(value);
            return link.question.is_none().then(|| Notice::UnknownQuestion(value.to_owned()));
        }
        ("u", "si") => link.view.system = System::Si,
        ("u", "us") => link.view.system = System::Us,
        ("d", "comma") => link.view.decimal = Decimal::Comma,
        _ => return Some(Notice::UnknownPart(joined(&[key, "=", value]))),
    }
    None
}
