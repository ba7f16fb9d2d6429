//! Something to be careful about on an ascent.

use super::BodyCaution;
use crate::quantity::Length;

/// Something to be careful about.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// What this body must be careful about.
    Body(BodyCaution),
    /// One pull is reckoned, not many.
    OnePullOnly,
    /// Rests are those of muscles that were tested.
    RestsReckoned,
    /// The pull that was entered is more than the climber weighs.
    PullOverWeight,
    /// The pull was not measured.
    Predicted,
    /// Older than the survey of grip tells apart.
    PastSurvey,
    /// The pull went through hands that the grip says could not hold it.
    GripAndPull,
    /// More strokes a minute than there is time for.
    FastCadence {
        /// As many as there is time for.
        most: f64,
    },
    /// A nearly full pull cannot be repeated.
    HardPull,
    /// The lower hitch alone holds the climber.
    SingleHitch,
    /// Two hitches grabbed together both let go.
    StackedHitches,
    /// A knot catches only after a drop.
    DropToKnot {
        /// How far, most likely.
        by: Length,
        /// How far where the knot is tied with the most slack that is taken.
        up_to: Length,
    },
    /// Nothing but a hand moves the hitch up.
    UntendedHitch,
    /// A slider where a pulley should be.
    SlidingTurn,
    /// The rope runs over bark.
    OverBark,
    /// Nothing holds the climber once the helper lets go.
    NothingHolds,
    /// Nothing holds the climber once their own hands let go.
    NothingGrips,
    /// An advantage that can break gear and crush people.
    HaulHard,
    /// The hitches close up under the crotch before the height is climbed, most likely.
    CrotchTooLow {
        /// How much of it is left, most likely.
        by: Length,
        /// How much at the most.
        up_to: Length,
    },
    /// The same may come about.
    CrotchNear {
        /// How much of it is left at the most.
        up_to: Length,
    },
    /// The seat does not come above the edge of the platform, most likely.
    BelowEdge {
        /// How far below it stays, most likely.
        by: Length,
        /// How far at the most.
        up_to: Length,
    },
    /// The seat may not come above it.
    EdgeNear {
        /// How far below it stays at the most.
        up_to: Length,
    },
    /// More than harnesses are tested with.
    OverTestMass,
    /// Past most ratings.
    PastRatings,
    /// Hanging still makes people faint.
    HangingStill,
    /// Power lines, weather.
    Surroundings,
    /// Try it at knee height.
    KneeHeight,
}

impl Caution {
    /// Whether it is true of one rig, and not of the climber whatever the rig.
    #[must_use]
    pub const fn is_of_rig(self) -> bool {
        matches!(
            self,
            Self::FastCadence { .. }
                | Self::HardPull
                | Self::SingleHitch
                | Self::StackedHitches
                | Self::DropToKnot { .. }
                | Self::UntendedHitch
                | Self::SlidingTurn
                | Self::OverBark
                | Self::NothingHolds
                | Self::NothingGrips
                | Self::HaulHard
                | Self::CrotchTooLow { .. }
                | Self::CrotchNear { .. }
                | Self::BelowEdge { .. }
                | Self::EdgeNear { .. }
        )
    }
}
