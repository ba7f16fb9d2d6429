//! The questions: each a file with its inputs, its answer, and one pure function from one to the other.

pub mod can_i_climb;

use crate::draft::Draft;
use crate::field::Row;

/// A question, by the id that links carry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Question {
    /// Can I climb this?
    CanIClimb,
}

impl Question {
    /// Every question.
    pub const ALL: &[Self] = &[Self::CanIClimb];

    /// Its id, which never changes.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::CanIClimb => "can-i-climb",
        }
    }

    /// The question of an id.
    #[must_use]
    pub fn of(id: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|question| question.id() == id)
    }

    /// The fields it reads, in the order people are asked.
    #[must_use]
    pub fn fields(self) -> &'static [&'static Row] {
        match self {
            Self::CanIClimb => can_i_climb::FIELDS,
        }
    }
}

/// The field of an id, of any question.
#[must_use]
pub fn field(id: &str) -> Option<&'static Row> {
    Question::ALL.iter().flat_map(|question| question.fields()).copied().find(|row| row.id == id)
}

/// Every field of every question, once.
#[must_use]
pub fn all_fields() -> Vec<&'static Row> {
    let mut rows: Vec<&'static Row> = Vec::new();
    for row in Question::ALL.iter().flat_map(|question| question.fields()).copied() {
        if rows.iter().all(|known| known.id != row.id) {
            rows.push(row);
        }
    }
    rows
}

/// How much work an answer may take, in samples: counted, never timed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Effort(u32);

impl Effort {
    /// Enough to follow somebody typing.
    pub const QUICK: Self = Self(200);
    /// What links, tests and printed sheets use, and the most that is ever used.
    pub const FULL: Self = Self(4_000);

    /// This many samples, brought between the least that shows a spread and [`FULL`](Self::FULL).
    #[must_use]
    pub fn samples(samples: u32) -> Self {
        Self(samples.clamp(50, Self::FULL.0))
    }

    /// How many samples.
    #[must_use]
    pub const fn count(self) -> u32 {
        self.0
    }
}

/// A reader of a draft, in which the fields of any question may be said.
pub(crate) fn reader(draft: &Draft) -> crate::draft::Reader<'_> {
    crate::draft::Reader::new(draft, &all_fields())
}
