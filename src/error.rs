//! What is wrong with what was said, and with which fields. Facts only; `words` makes the sentences.

use crate::field::Refusal;
use crate::gear::Ends;
use crate::quantity::Ratio;
use crate::reeving::Fault;

/// One thing that is wrong.
#[derive(Debug, Clone, PartialEq)]
pub struct Error {
    /// The ids of the fields it concerns.
    pub fields: Vec<String>,
    /// What is wrong.
    pub reason: Reason,
}

impl Error {
    /// What is wrong with one field.
    #[must_use]
    pub fn of(field: &str, reason: Reason) -> Self {
        Self { fields: vec![field.to_owned()], reason }
    }
}

/// Why something said cannot be used.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Reason {
    /// Needed, and not said.
    Needed,
    /// No question knows a field of this id.
    UnknownField,
    /// Said, and no value of the field.
    Refused(Refusal),
    /// One's own test comes to a real advantage that this rig cannot have.
    TestOutOfRange {
        /// Weight over pull.
        measured: Ratio,
        /// What the rig gives at the least, with turns that keep next to nothing.
        least: Ratio,
        /// What the rig would give without any loss.
        ideal: Ratio,
    },
    /// One's own test on a rig that has no turn to learn about.
    TestWithoutTurns,
    /// One half of one's own test without the other.
    HalfATest,
    /// The rig cannot be worked out.
    UnworkableRig,
    /// Somebody's own rig cannot be worked out.
    ImpossibleRig {
        /// The rig, in the notation.
        said: String,
        /// What is wrong with it.
        fault: Fault,
    },
    /// The rope of somebody's own rig hangs on no crotch.
    NoCrotch,
    /// The climb ends as high as the crotch, or higher.
    ClimbAboveCrotch,
    /// The lower hitch is as high as the crotch, or higher.
    HitchAboveCrotch,
    /// The rope that somebody has goes over no crotch.
    RopeTooShort,
    /// The ends of a cord that is for something else.
    EndsOfAnother {
        /// What it is for.
        noun: &'static str,
        /// The ends that it can have.
        ends: &'static [Ends],
    },
    /// The free legs and the finished length, of which one follows from the other.
    TwoLengths,
    /// What was cut, and what is wanted.
    CutAndWanted,
    /// What it came out at, without what was cut.
    CameOutAlone,
    /// What was cut of a cord that is bought with its eyes.
    SewnIsBought,
    /// What was cut and what it came out at cannot both be right.
    OddFit {
        /// What coils and knots would take, over what they usually do.
        share: f64,
    },
    /// Nothing is left to hang.
    TooShort {
        /// What goes without, in metres.
        least: f64,
    },
    /// The working end is too short for what is in it, or longer than the cord allows. In metres.
    WorkingEnd {
        /// The shortest.
        least: f64,
        /// The longest.
        most: f64,
    },
    /// The rig has no haul cord.
    NoHaulCord,
}
