//! What the question answers: facts, without words.

use super::gear::Gear;
use super::kind::Kind;
use super::rig_cords::RigCord;
use super::rope::Rope;
use crate::cord::cutting::Best;
use crate::field::Row;

/// Something to be careful about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// Measure a hank before it is cut.
    MeasureHank,
    /// Tie one before the rest is cut.
    TieOneFirst,
    /// Nobody said which hanks there are.
    UsualHanks,
}

/// What comes of the cords of one diameter and fibre.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// A plan.
    Plan(Best),
    /// A cord is longer than any hank gives.
    TooLong {
        /// Its place among the cords.
        cord: usize,
        /// The longest that can be cut, in metres.
        most: f64,
    },
    /// The hanks there are do not do: none where it is not proved.
    RunsOut {
        /// Whether it is proved.
        proved: bool,
    },
    /// More cords, or longer hanks, than are reckoned with.
    TooMuch,
}

/// The plan for the cords of one diameter and fibre.
#[derive(Debug, Clone, PartialEq)]
pub struct KindPlan {
    /// The cords, and what they can be cut out of.
    pub kind: Kind,
    /// Whether price is the first aim.
    pub is_priced: bool,
    /// What comes of it.
    pub outcome: Outcome,
    /// Whether more effort could change it.
    pub more: bool,
}

/// The answer.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The thinnest first.
    pub kinds: Vec<KindPlan>,
    /// What else the rig takes; none where none was said.
    pub gear: Option<Gear>,
    /// The cords that the rig takes: on the plan, or not for want of something.
    pub rig_cords: Vec<RigCord>,
    /// The rope that it takes; none where that is not known.
    pub rope: Option<Rope>,
    /// What every cut takes, in metres.
    pub kerf: f64,
    /// What every hank loses, in metres.
    pub end: f64,
    /// The fields whose defaults the answer rests on.
    pub assumed: Vec<&'static Row>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
    /// The steps of the search it rests on.
    pub steps: u64,
    /// Whether more could change it.
    pub more: bool,
}
