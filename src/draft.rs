//! What has been said so far, and the reader that turns it into checked values: all of them, or every error.

use crate::error::{Error, Reason};
use crate::field::{Field, Kind, Reading, Row, Said, Spread, Value};
use crate::quantity::{Quantity, trimmed};

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
    // In the order of the ids, so that what was said first makes no other draft.
    said: Vec<(String, Said)>,
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
        for (known, old) in &mut self.said {
            if known == id {
                *old = said;
                return;
            }
        }
        self.said.push((id.to_owned(), said));
        settle(&mut self.said, |(one, _), (other, _)| one > other);
    }

    /// What was said in a field.
    #[must_use]
    pub fn get(&self, id: &str) -> Option<&Said> {
        let (_, said) = self.said.iter().find(|(known, _)| known == id)?;
        Some(said)
    }

    /// The ids of the fields in which something was said, in order.
    pub fn ids(&self) -> impl Iterator<Item = &str> {
        self.said.iter().map(|(id, _)| id.as_str())
    }
}

/// Puts the last of a list in order among the others, which are; behind its equals.
fn settle<T>(list: &mut [T], is_after: impl Fn(&T, &T) -> bool) {
    let mut rest = list;
    while let [start @ .., last] = rest
        && let Some(before) = start.last_mut()
        && is_after(before, last)
    {
        std::mem::swap(before, last);
        rest = start;
    }
}

/// Reads a draft field by field, noting every error in the order of the question's fields.
#[derive(Debug)]
pub struct Reader<'a> {
    draft: &'a Draft,
    order: &'a [&'a Row],
    errors: Vec<Error>,
}

impl<'a> Reader<'a> {
    /// A reader for a question of the fields `order`, of a draft in which only the fields `known`, of all questions,
    /// may be said.
    #[must_use]
    pub fn new(draft: &'a Draft, order: &'a [&'a Row], known: &[&Row]) -> Self {
        let mut reader = Self { draft, order, errors: Vec::new() };
        for id in draft.ids() {
            if known.iter().all(|row| row.id != id) {
                reader.note(Error::of(id, Reason::UnknownField));
            }
        }
        reader
    }

    /// The value of a field that may be left out; none also where it is wrong, which is noted.
    pub fn maybe<T: Value>(&mut self, field: &Field<T>) -> Option<T> {
        self.reading(&field.row).and_then(T::of)
    }

    /// The value of a field that must be said.
    pub fn need<T: Value>(&mut self, field: &Field<T>) -> Option<T> {
        self.needed(&field.row).and_then(T::of)
    }

    fn needed(&mut self, row: &Row) -> Option<Reading> {
        if !self.says(row) {
            self.note(Error::of(row.id, Reason::Needed));
        }
        self.reading(row)
    }

    /// The value of a choice, or the default of its row.
    pub fn chosen<T: Value>(&mut self, field: &Field<T>) -> Option<T> {
        self.choice(&field.row).and_then(T::of)
    }

    /// The value of a quantity without a range, or the default of its row with its range.
    pub fn spread<Q: Quantity>(&mut self, field: &Field<Q>) -> Option<Spread> {
        self.spread_of(&field.row)
    }

    fn spread_of(&mut self, row: &Row) -> Option<Spread> {
        match (self.reading(row), row.kind) {
            (Some(Reading::Si(si)), _) => Some(Spread::point(si)),
            (_, Kind::Quantity(limits)) if !self.says(row) => limits.likely,
            _ => None,
        }
    }

    /// Whether anything at all was said in a field.
    #[must_use]
    pub fn says(&self, row: &Row) -> bool {
        self.draft.get(row.id).is_some()
    }

    /// What was said in a field.
    #[must_use]
    pub fn said(&self, row: &Row) -> Option<&Said> {
        self.draft.get(row.id)
    }

    /// Whether an option was chosen in a field.
    #[must_use]
    pub fn chooses<T: Value + PartialEq>(&self, field: &Field<T>, option: T) -> bool {
        let reading = self.draft.get(field.row.id).and_then(|said| field.row.reading(said).ok());
        reading.and_then(T::of) == Some(option)
    }

    /// Whether a field has its default: a choice that is the default one, said or not, or a quantity that was not said.
    #[must_use]
    pub fn rests_on_default(&self, row: &Row) -> bool {
        match (self.draft.get(row.id), row.kind) {
            (None, _) => true,
            (Some(Said::Text(text)), Kind::Choice { likely, .. }) => likely == Some(trimmed(text)),
            _ => false,
        }
    }

    /// What was said in a field, as it comes to; none also where it is wrong, which is noted.
    fn reading(&mut self, row: &Row) -> Option<Reading> {
        match row.reading(self.draft.get(row.id)?) {
            Ok(reading) => Some(reading),
            Err(refusal) => {
                self.note(Error::of(row.id, Reason::Refused(refusal)));
                None
            }
        }
    }

    fn choice(&mut self, row: &Row) -> Option<Reading> {
        match row.kind {
            Kind::Choice { options, likely: Some(id) } if !self.says(row) => {
                options.iter().position(|option| option.id == id).map(Reading::Choice)
            }
            _ => self.reading(row),
        }
    }

    /// Notes an error, of one field or of several together.
    pub fn note(&mut self, error: Error) {
        let mut errors = std::mem::take(&mut self.errors);
        errors.push(error);
        settle(&mut errors, |one, other| self.place(one) > self.place(other));
        self.errors = errors;
    }

    /// Where an error's first field stands among the question's; those of no field of it come last.
    fn place(&self, error: &Error) -> usize {
        let place = error.fields.first().and_then(|id| self.order.iter().position(|row| row.id == id));
        place.unwrap_or(self.order.len())
    }

    /// What `build` makes of the values, if nothing was wrong.
    ///
    /// # Errors
    /// Every error that was noted.
    // A function of its own copies what `build` holds once more.
    #[inline(always)]
    pub fn done<T>(self, build: impl FnOnce() -> Option<T>) -> Result<T, Vec<Error>> {
        if !self.errors.is_empty() {
            return Err(self.errors);
        }
        // A value is missing only where an error was noted.
        build().ok_or_else(Vec::new)
    }
}
