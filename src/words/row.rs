//! A field's row as a form shows it.

use super::record::records;
use super::refusal::{example, range};
use super::template::said;
use crate::field::{Kind, Named, Row};
use crate::quantity::{View, written};
use crate::question::Question;

records! {
    /// An option of a choice.
    pub struct ChoiceLine {
        /// Its id.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// What it means.
        pub hint: &'static str,
    }

    /// A field as a form shows it.
    pub struct RowLine {
        /// Its id.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// How to find the value.
        pub hint: &'static str,
        /// `quantity`, `choice` or `text`.
        pub kind: &'static str,
        /// The symbol of the unit that a bare number gets.
        pub unit: Option<&'static str>,
        /// What is taken when nothing is said: the id of an option, or a figure with its range.
        pub likely: Option<String>,
        /// The limits.
        pub range: Option<String>,
        /// Why these limits and this default.
        pub why: &'static str,
        /// The options.
        pub options: Option<Vec<ChoiceLine>>,
        /// Whether it tells of somebody's body.
        pub private: bool,
        /// The ids of the questions that read it.
        pub questions: Vec<&'static str>,
        /// A value as somebody would write it.
        pub example: Option<String>,
    }
}

impl From<&Named> for ChoiceLine {
    fn from(named: &Named) -> Self {
        Self { id: named.id, noun: named.noun, hint: named.hint }
    }
}

/// The field as a form shows it.
#[must_use]
pub fn row_line(row: &'static Row, view: View) -> RowLine {
    let (kind, likely, limits, options, shown) = match row.kind {
        Kind::Quantity(limits) => {
            let likely = limits.likely.map(|likely| {
                let [low, likely, high] =
                    [likely.low, likely.likely, likely.high].map(|si| written(si, limits.dimension, view));
                if low == high { likely } else { said("{}, from {} to {}", &[], &[&likely, &low, &high], view) }
            });
            ("quantity", likely, Some(range(limits, view)), None, Some(example(row, limits, view)))
        }
        Kind::Text(form) => ("text", None, None, None, Some(form.example.to_owned())),
        Kind::Choice { options, likely } => {
            let lines = options.iter().map(ChoiceLine::from).collect();
            ("choice", likely.map(str::to_owned), None, Some(lines), None)
        }
    };
    let mut questions = Vec::new();
    for question in Question::ALL {
        if question.fields().iter().any(|read| read.id == row.id) {
            questions.push(question.id());
        }
    }
    RowLine {
        id: row.id,
        noun: row.noun,
        hint: row.hint,
        kind,
        unit: row.bare_unit(view.system).map(|unit| unit.symbol),
        likely,
        range: limits,
        why: row.why,
        options,
        private: row.private,
        questions,
        example: shown,
    }
}
