//! What a rope turns round, and the share of its tension that is kept.

use crate::field::{Field, Kind, Limits, Named, Row, Spread, choice};
use crate::quantity::{Dimension, Ratio};
use crate::source::{CAPSTAN, DELANEY, JUDGED, PRATTLEY, SETNICKA, Source};

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
        /// The bark of a crotch.
        Bark = "bark", "bark", "The rope slides over the crotch itself.";
    }
}

impl TurnKind {
    /// The tension behind half a turn over the tension before it, while hauling.
    ///
    /// # Source
    /// Likely figures and ranges are judged, from published ones that disagree: pulleys 0.80 to 0.91 and a carabiner
    /// 0.59 (Delaney p. 90), 0.83 and 0.53 (Prattley 2016), 0.93, 0.75 and 0.66 (Setnicka 1977). The ring is
    /// e^(-mu pi) for mu 0.15 to 0.24 (Delaney p. 88), bark for 0.20 to 0.60 (from memory, smooth to rough), most
    /// likely 0.36 as on sawn timber (Delaney p. 88).
    #[must_use]
    pub const fn kept(self) -> Spread {
        match self {
            Self::BearingPulley => Spread::new(0.83, 0.90, 0.95),
            Self::BushPulley => Spread::new(0.70, 0.75, 0.83),
            Self::Ring => Spread::new(0.47, 0.52, 0.62),
            Self::Carabiner => Spread::new(0.40, 0.55, 0.66),
            Self::Bark => Spread::new(0.15, 0.32, 0.53),
        }
    }

    /// Where [`kept`](Self::kept) comes from.
    #[must_use]
    pub const fn sources(self) -> &'static [Source] {
        match self {
            Self::Ring | Self::Bark => &[CAPSTAN, JUDGED],
            _ => &[DELANEY, PRATTLEY, SETNICKA, JUDGED],
        }
    }
}

/// The share kept by a turn: one's own figure, or that of its kind.
#[must_use]
pub fn kept_by(kind: TurnKind, own: Option<Ratio>) -> Spread {
    own.map_or(kind.kept(), |own| Spread::point(own.value()))
}

/// What is asked of a turn.
#[derive(Debug)]
pub struct TurnFields {
    /// What the rope turns round.
    pub kind: Field<TurnKind>,
    /// One's own figure for what it keeps.
    pub own: Field<Ratio>,
}

/// What a turn on a hitch or harness can be: anything but bark.
const HARDWARE: &[Named] = TurnKind::OPTIONS.split_at(TurnKind::Bark as usize).0;

const fn asked(ids: [&'static str; 2], nouns: [&'static str; 2], hint: &'static str, kind: Kind) -> TurnFields {
    let why = "The rig is usually described with pulleys; choose what you have.";
    TurnFields {
        kind: Field::new(Row { id: ids[0], noun: nouns[0], hint, kind, why, private: false }),
        own: Field::new(Row {
            id: ids[1],
            noun: nouns[1],
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
        }),
    }
}

const fn first(ids: [&'static str; 2], nouns: [&'static str; 2], hint: &'static str) -> TurnFields {
    asked(ids, nouns, hint, Kind::Choice { options: HARDWARE, likely: Some("bearing-pulley") })
}

/// A turn that is like the one nearest the hand unless something else is said.
const fn further(ids: [&'static str; 2], nouns: [&'static str; 2]) -> TurnFields {
    asked(ids, nouns, "Left open, like the one nearest the hand.", Kind::Choice { options: HARDWARE, likely: None })
}

/// The turns at an upper hitch, or at the hitch that moves in a helper's rig, from the hand.
pub static UPPER_TURNS: [TurnFields; 3] = [
    first(
        ["upperTurn", "upperEfficiency"],
        ["upper turn", "upper turn, measured"],
        "What the rope turns round at the upper hitch (a helper’s: the one that moves), nearest the hand.",
    ),
    further(["upperTurn2", "upperEfficiency2"], ["second upper turn", "second upper turn, measured"]),
    further(["upperTurn3", "upperEfficiency3"], ["third upper turn", "third upper turn, measured"]),
];

/// The turns at the harness, or at a helper's fixed point, from the hand.
pub static LOWER_TURNS: [TurnFields; 3] = [
    first(
        ["lowerTurn", "lowerEfficiency"],
        ["lower turn", "lower turn, measured"],
        "What the rope turns round at the harness (a helper’s: the fixed one), nearest the hand.",
    ),
    further(["lowerTurn2", "lowerEfficiency2"], ["second lower turn", "second lower turn, measured"]),
    further(["lowerTurn3", "lowerEfficiency3"], ["third lower turn", "third lower turn, measured"]),
];

/// The turn at the top of a rope that runs over it.
pub static TOP_TURN: TurnFields = asked(
    ["topTurn", "topEfficiency"],
    ["turn at the top", "turn at the top, measured"],
    "What the rope runs over in the crotch.",
    Kind::Choice { options: TurnKind::OPTIONS, likely: Some("bark") },
);
