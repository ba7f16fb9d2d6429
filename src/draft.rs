//! What has been said so far, and the reader that turns it into checked values: all of them, or every error.

use crate::error::{Error, Reason};
use crate::field::{Field, Kind, Row, Said, Spread, Value};
use crate::quantity::Quantity;
use std::collections::BTreeMap;

/// What has been said so far, by field id.
///
/// One draft serves all questions: each reads its own fields and leaves the rest.
///
/// # Example
/// ```
/// use boughline::climber::BODY_MASS;
/// use boughline::quantity::Mass;
/// use boughline::Draft;
///
/// let draft = Draft::new().with(&BODY_MASS, Mass::kilograms(80.0)).set("climbHeight", "11 m");
/// assert_eq!(draft.ids().collect::<Vec<_>>(), ["bodyMass", "climbHeight"]);
/// ```
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Draft {
    said: BTreeMap<String, Said>,
}

impl Draft {
    /// Nothing said.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// The draft with a typed value in a field.
    #[must_use]
    pub fn with<T: Value>(mut self, field: &Field<T>, value: T) -> Self {
        self.put(field.row.id, value.into_said());
        self
    }

    /// The draft with text in a field, as a person would type it.
    #[must_use]
    pub fn set(mut self, id: &str, text: &str) -> Self {
        self.put(id, Said::Text(text.to_owned()));
        self
    }

    /// Says something in a field, whatever was said there before.
    pub fn put(&mut self, id: &str, said: Said) {
        self.said.insert(id.to_owned(), said);
    }

    /// What was said in a field.
    #[must_use]
    pub fn get(&self, id: &str) -> Option<&Said> {
        self.said.get(id)
    }

    /// The ids of the fields in which something was said, in order.
    pub fn ids(&self) -> impl Iterator<Item = &str> {
        self.said.keys().map(String::as_str)
    }
}

/// Reads a draft field by field, noting every error.
#[derive(Debug)]
pub struct Reader<'a> {
    draft: &'a Draft,
    errors: Vec<Error>,
}

impl<'a> Reader<'a> {
    /// A reader of a draft in which only these fields, of all questions, may be said.
    #[must_use]
    pub fn new(draft: &'a Draft, known: &[&Row]) -> Self {
        let unknown = draft.ids().filter(|id| known.iter().all(|row| row.id != *id));
        let errors = unknown.map(|id| Error::of(id, Reason::UnknownField)).collect();
        Self { draft, errors }
    }

    /// The value of a field that may be left out; none also where it is wrong, which is noted.
    pub fn maybe<T: Value>(&mut self, field: &Field<T>) -> Option<T> {
        let said = self.draft.get(field.row.id)?;
        match field.row.reading(said) {
            Ok(reading) => T::of(reading),
            Err(reason) => {
                self.note(Error::of(field.row.id, Reason::Refused(reason)));
                None
            }
        }
    }

    /// The value of a field that must be said.
    pub fn need<T: Value>(&mut self, field: &Field<T>) -> Option<T> {
        if self.draft.get(field.row.id).is_none() {
            self.note(Error::of(field.row.id, Reason::Needed));
        }
        self.maybe(field)
    }

    /// The value of a choice, or the default of its row.
    pub fn chosen<T: Value>(&mut self, field: &Field<T>) -> Option<T> {
        if self.draft.get(field.row.id).is_some() {
            return self.maybe(field);
        }
        let Kind::Choice { likely: Some(id), .. } = field.row.kind else { return None };
        field.row.reading(&Said::Text(id.to_owned())).ok().and_then(T::of)
    }

    /// The value of a quantity without a range, or the default of its row with its range.
    pub fn spread<Q: Quantity>(&mut self, field: &Field<Q>) -> Option<Spread> {
        if self.draft.get(field.row.id).is_some() {
            return self.maybe(field).map(|value| Spread::point(value.si()));
        }
        match field.row.kind {
            Kind::Quantity(limits) => limits.likely,
            Kind::Choice { .. } => None,
        }
    }

    /// Notes an error of several fields together.
    pub fn note(&mut self, error: Error) {
        self.errors.push(error);
    }

    /// What `build` makes of the values, if nothing was wrong.
    ///
    /// # Errors
    /// Every error that was noted.
    pub fn done<T>(self, build: impl FnOnce() -> Option<T>) -> Result<T, Vec<Error>> {
        if !self.errors.is_empty() {
            return Err(self.errors);
        }
        // A value is missing only where an error was noted.
        build().ok_or_else(Vec::new)
    }
}
