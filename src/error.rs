//! What is wrong with what was said, and with which fields. Facts only; `words` makes the sentences.

use crate::field::Refusal;
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
}
