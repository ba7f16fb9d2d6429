//! What a rope turns round, and the share of its tension that is kept.

use crate::field::{Field, Kind, Limits, Row, Spread, choice};
use crate::quantity::{Dimension, Ratio};
use crate::source::{DELANEY, JUDGED, PRATTLEY, SETNICKA, Source};

choice! {
    /// What a rope turns round.
    TurnKind {
        /// A pulley on bearings.
        BearingPulley = "bearing-pulley", "pulley with bearings", "A sheave that spins on ball or roller bearings.";
        /// A pulley on a plain bush.
        BushPulley = "bush-pulley", "pulley with a plain bush", "A sheave that turns on a plain sleeve.";
        /// A smooth ring.
        Ring = "ring", "ring", "A smooth metal ring that the rope slides round.";
        /// A carabiner.
        Carabiner = "carabiner", "carabiner", "The rope slides round the bar of a connector.";
    }
}

impl TurnKind {
    /// The tension behind half a turn over the tension before it, while hauling.
    ///
    /// # Source
    /// Likely figures and ranges are judged, from published ones that disagree: pulleys 0.80 to 0.91 and a carabiner
    /// 0.59 (Delaney p. 90), 0.83 and 0.53 (Prattley 2016), 0.93, 0.75 and 0.66 (Setnicka 1977). The ring is
    /// e^(-mu pi) for mu 0.15 to 0.24 (Delaney p. 88).
    #[must_use]
    pub const fn kept(self) -> Spread {
        match self {
            Self::BearingPulley => Spread::new(0.83, 0.90, 0.95),
            Self::BushPulley => Spread::new(0.70, 0.75, 0.83),
            Self::Ring => Spread::new(0.47, 0.52, 0.62),
            Self::Carabiner => Spread::new(0.40, 0.55, 0.66),
        }
    }

    /// Where [`kept`](Self::kept) comes from.
    #[must_use]
    pub const fn sources(self) -> &'static [Source] {
        match self {
            Self::Ring => &[DELANEY, JUDGED],
            _ => &[DELANEY, PRATTLEY, SETNICKA, JUDGED],
        }
    }
}

/// The share kept by a turn: one's own figure, or that of its kind.
#[must_use]
pub fn kept_by(kind: TurnKind, own: Option<Ratio>) -> Spread {
    own.map_or(kind.kept(), |own| Spread::point(own.value()))
}

const fn turn(id: &'static str, noun: &'static str, hint: &'static str) -> Row {
    Row {
        id,
        noun,
        hint,
        kind: Kind::Choice { options: TurnKind::OPTIONS, likely: Some("bearing-pulley") },
        why: "The rig is usually described with pulleys; choose what you have.",
        private: false,
    }
}

const fn efficiency(id: &'static str, noun: &'static str) -> Row {
    Row {
        id,
        noun,
        hint: "Only if you have measured it: the tension behind the turn over the tension before it, as 0.85 or 85 %.",
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Ratio,
            least: 0.05,
            most: 1.0,
            example: 0.85,
            likely: None,
            bare: None,
        }),
        why: "No turn gains force, so at most 1; below 0.05 a turn is jammed (judged).",
        private: false,
    }
}

/// What the rope turns round at the upper hitch.
pub static UPPER_TURN: Field<TurnKind> =
    Field::new(turn("upperTurn", "upper turn", "What the rope turns round at the upper hitch, nearest your hand."));

/// What the rope turns round at the harness.
pub static LOWER_TURN: Field<TurnKind> =
    Field::new(turn("lowerTurn", "lower turn", "What the rope turns round at the harness, below the lower hitch."));

/// One's own figure for the upper turn.
pub static UPPER_EFFICIENCY: Field<Ratio> = Field::new(efficiency("upperEfficiency", "upper turn, measured"));

/// One's own figure for the lower turn.
pub static LOWER_EFFICIENCY: Field<Ratio> = Field::new(efficiency("lowerEfficiency", "lower turn, measured"));
