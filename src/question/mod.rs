//! The questions: each a file with its inputs, its answer, and one pure function from one to the other.

pub mod advantage;
pub mod can_i_climb;
pub mod coming_down;
pub mod cut_length;
pub mod cut_plan;
mod fields;
pub mod loads;
pub mod rescue;
pub mod rope_length;

pub use crate::ascent::CLIMB_HEIGHT;
pub use crate::chance::Effort;
pub use fields::{all_fields, field};

use crate::draft::Draft;
use crate::field::Row;

/// A question, by the id that links carry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Question {
    /// Can I climb this?
    CanIClimb,
    /// Which advantage?
    Advantage,
    /// What does each part carry?
    Loads,
    /// How much rope?
    RopeLength,
    /// What length of cord?
    CutLength,
    /// Out of which hanks?
    CutPlan,
    /// Can I get down again?
    ComingDown,
    /// What if I am stuck?
    Rescue,
}

impl Question {
    /// Every question.
    pub const ALL: &[Self] = &[
        Self::CanIClimb,
        Self::Advantage,
        Self::Loads,
        Self::RopeLength,
        Self::CutLength,
        Self::CutPlan,
        Self::ComingDown,
        Self::Rescue,
    ];

    /// Its id, which never changes.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::CanIClimb => "can-i-climb",
            Self::Advantage => "advantage",
            Self::Loads => "loads",
            Self::RopeLength => "rope-length",
            Self::CutLength => "cut-length",
            Self::CutPlan => "cut-plan",
            Self::ComingDown => "coming-down",
            Self::Rescue => "rescue",
        }
    }

    /// The question of an id.
    #[must_use]
    pub fn of(id: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|question| question.id() == id)
    }

    /// The fields whose defaults its answer to a draft rests on; none while the draft has no answer. A module that
    /// leaves this question out cannot tell, and takes every field that it reads.
    #[must_use]
    pub fn assumed(self, draft: &Draft) -> Option<Vec<&'static Row>> {
        match self {
            #[cfg(feature = "can-i-climb")]
            Self::CanIClimb => can_i_climb::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[cfg(feature = "advantage")]
            Self::Advantage => advantage::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[cfg(feature = "loads")]
            Self::Loads => loads::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[cfg(feature = "rope-length")]
            Self::RopeLength => rope_length::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[cfg(feature = "cord")]
            Self::CutLength => cut_length::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[cfg(feature = "cord")]
            Self::CutPlan => cut_plan::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[cfg(feature = "coming-down")]
            Self::ComingDown => coming_down::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[cfg(feature = "rescue")]
            Self::Rescue => rescue::Inputs::of(draft).ok().map(|inputs| inputs.assumed().to_vec()),
            #[allow(unreachable_patterns, reason = "not where every question is built in")]
            _ => Some(self.fields().to_vec()),
        }
    }

    /// The fields whose defaults any answer to a draft rests on, each once.
    #[must_use]
    pub fn assumed_by_any(draft: &Draft) -> Vec<&'static Row> {
        let mut rows: Vec<&'static Row> = Vec::new();
        for question in Self::ALL {
            for row in question.assumed(draft).unwrap_or_default() {
                if rows.iter().all(|known| known.id != row.id) {
                    rows.push(row);
                }
            }
        }
        rows
    }

    /// The fields it reads, in the order people are asked.
    #[must_use]
    pub fn fields(self) -> &'static [&'static Row] {
        match self {
            // The same, only that no rig need be said.
            Self::CanIClimb | Self::Advantage => fields::CAN_I_CLIMB,
            Self::Loads => fields::LOADS,
            Self::RopeLength => fields::ROPE_LENGTH,
            Self::CutLength => fields::CUT_LENGTH,
            Self::CutPlan => fields::CUT_PLAN,
            Self::ComingDown => fields::COMING_DOWN,
            Self::Rescue => fields::RESCUE,
        }
    }
}
