//! A field's row.

use super::{Limits, Named, Reading, Refusal, Said};
use crate::quantity::{System, Unit, canonical, canonical_si, read, tidy, trimmed};

/// What may be said in a field.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Kind {
    /// A number with a unit.
    Quantity(Limits),
    /// One of a list.
    Choice {
        /// The list.
        options: &'static [Named],
        /// The id that is taken when nothing is said.
        likely: Option<&'static str>,
    },
    /// A text in a form of its own.
    Text(&'static Form),
}

/// A form of text.
#[derive(Debug)]
pub struct Form {
    /// The text as a link carries it, which reads as the same; none where it is not in this form.
    pub canonical: fn(&str) -> Option<String>,
    /// The text as it should stand in its box; unchanged where it is not in this form.
    pub tidied: fn(&str, System) -> String,
    /// A text in this form.
    pub example: &'static str,
}

/// There is one of each form.
impl PartialEq for Form {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}

/// A field, whatever the type of what it holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Its id, which never changes.
    pub id: &'static str,
    /// What people call it.
    pub noun: &'static str,
    /// How to find the value, in a sentence or two.
    pub hint: &'static str,
    /// What may be said.
    pub kind: Kind,
    /// Why these limits and this default.
    pub why: &'static str,
    /// Whether it tells of somebody's body, so that a link can leave it out.
    pub private: bool,
}

impl Row {
    /// What `said` comes to.
    ///
    /// # Errors
    /// The [`Refusal`] why it is not a value of this field.
    pub fn reading(&self, said: &Said) -> Result<Reading, Refusal> {
        match (&self.kind, said) {
            (_, Said::Other(what)) => Err(Refusal::WrongType { said: what }),
            (_, Said::Text(text)) if trimmed(text).is_empty() => Err(Refusal::Empty),
            (Kind::Quantity(limits), Said::Text(text)) => {
                let si = read(text, limits.dimension, None)
                    .map_err(|misread| Refusal::Misread { said: text.clone(), misread })?;
                limits.within(si, Some(text))
            }
            (Kind::Quantity(limits), Said::Number(si)) => limits.within(*si, None),
            (Kind::Choice { options, .. }, Said::Text(text)) => options
                .iter()
                .position(|option| option.id == trimmed(text))
                .map(Reading::Choice)
                .ok_or_else(|| Refusal::UnknownChoice { said: text.clone(), options }),
            (Kind::Text(form), Said::Text(text)) => match (form.canonical)(text) {
                Some(_) => Ok(Reading::Text(text.clone())),
                None => Err(Refusal::Miswritten { said: text.clone() }),
            },
            (Kind::Choice { .. } | Kind::Text(_), Said::Number(_)) => Err(Refusal::WrongType { said: "a number" }),
        }
    }

    /// The unit that a bare number gets in a system.
    #[must_use]
    pub fn bare_unit(&self, system: System) -> Option<&'static Unit> {
        let Kind::Quantity(Limits { bare: Some([si, us]), .. }) = self.kind else { return None };
        Some(if system == System::Si { si } else { us })
    }

    /// What the box should hold once it is left: a bare number gets its unit, anything else is unchanged.
    #[must_use]
    pub fn tidied(&self, text: &str, system: System) -> String {
        match (self.kind, self.bare_unit(system)) {
            (Kind::Text(form), _) => (form.tidied)(text, system),
            (Kind::Quantity(limits), Some(unit)) => tidy(text, limits.dimension, unit),
            _ => text.to_owned(),
        }
    }

    /// The text that a link carries for what was said; none where it is no value of this field.
    ///
    /// # Guarantees
    /// Its [`reading`](Self::reading) is that of what was said, to the last bit.
    #[must_use]
    pub fn linked(&self, said: &Said) -> Option<String> {
        match (self.reading(said).ok()?, self.kind, said) {
            (Reading::Choice(place), Kind::Choice { options, .. }, _) => Some(options.get(place)?.id.to_owned()),
            (Reading::Si(si), Kind::Quantity(limits), said) => {
                let as_typed = match said {
                    Said::Text(text) => canonical(text, limits.dimension).ok(),
                    _ => None,
                };
                Some(as_typed.unwrap_or_else(|| canonical_si(si, limits.dimension)))
            }
            (Reading::Text(text), Kind::Text(form), _) => (form.canonical)(&text),
            _ => None,
        }
    }
}
