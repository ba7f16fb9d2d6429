//! The words of the notation, and stops made of them.

use super::super::backup::KNOT_SLACK;
use crate::field::{Kind, Limits, Row, choice};
use crate::gear::{TOP_TURN, TurnKind};
use crate::quantity::{Dimension, KILOGRAM_FORCE, POUND_FORCE};

choice! {
    /// What a rope does at a stop.
    Does {
        /// It ends here.
        Tied = "tied", "is tied", "The rope ends here, tied; only at an end.";
        /// It turns round something.
        Turn = "turn", "turns round", "A pulley, ring, carabiner or limb.";
        /// A friction hitch sits on it.
        Hitch = "hitch", "is gripped by a hitch", "A friction hitch on the rope, its cord clipped here.";
        /// A second hitch sits on it.
        Backup = "backup", "has a second hitch", "A hitch that carries nothing until the first is gone.";
        /// A stopper knot is in it.
        Knot = "knot", "has a stopper knot", "A knot that jams here once some rope has run.";
        /// The driving hand is on it.
        Hand = "hand", "is pulled by hand", "The hand that drives the rig; one of a rig.";
        /// A helper's hand is on it.
        Helper = "helper", "is pulled by a helper", "Somebody else who pulls with a given force.";
    }
}

choice! {
    /// Where a stop is, from the highest to the lowest.
    Place {
        /// The crotch.
        Tree = "tree", "tree", "The crotch: it does not move.";
        /// The highest of what moves.
        Upper = "upper", "upper hitch", "The hitch or traveller that moves, the highest of several.";
        /// The second from the top.
        Upper2 = "upper-2", "second upper hitch", "The second from the top of those that move.";
        /// The third from the top.
        Upper3 = "upper-3", "third upper hitch", "The third from the top of those that move.";
        /// The fourth from the top.
        Upper4 = "upper-4", "fourth upper hitch", "The fourth from the top of those that move.";
        /// The climber.
        Climber = "climber", "climber", "The harness of the one who is to be lifted.";
        /// The ground.
        Ground = "ground", "ground", "The foot of the tree: it does not move.";
    }
}

/// A stop, in the words it was said in.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnStop {
    /// What the rope does there.
    pub does: Does,
    /// Where.
    pub on: Place,
    /// With what; empty where nothing was said, or nothing is to be said. An amount stands as it was typed.
    pub with: String,
}

/// A rope, in the words it was said in.
#[derive(Debug, Clone, PartialEq)]
pub struct OwnRope {
    /// The line of the text it stands in, from 1.
    pub line: usize,
    /// Its stops, without loose tails.
    pub stops: Vec<OwnStop>,
}

/// What a helper pulls in somebody's own rig.
static HELP: Row = Row {
    id: "",
    noun: "",
    hint: "",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Force,
        // As for the helper of a named rig (judged).
        least: 20.0,
        most: 1500.0,
        example: 150.0,
        likely: None,
        bare: Some([KILOGRAM_FORCE, POUND_FORCE]),
    }),
    why: "",
    private: false,
};

impl Does {
    /// The row of the amount that goes with it; none where none does.
    pub(super) const fn amount(self) -> Option<&'static Row> {
        match self {
            Self::Turn => Some(&TOP_TURN.own.row),
            Self::Knot => Some(&KNOT_SLACK.row),
            Self::Helper => Some(&HELP),
            _ => None,
        }
    }
}

impl OwnStop {
    /// The row of its amount; none where it has none.
    pub(super) fn amount(&self) -> Option<&'static Row> {
        self.does.amount().filter(|_| !self.with.is_empty() && self.kind().is_none())
    }

    /// The kind of turn that is said.
    pub(super) fn kind(&self) -> Option<TurnKind> {
        let place = TurnKind::OPTIONS.iter().position(|kind| kind.id.eq_ignore_ascii_case(&self.with))?;
        TurnKind::ALL.get(place).copied()
    }
}

/// The stops as people read them: the notation.
#[must_use]
pub fn written(ropes: &[OwnRope]) -> String {
    write(ropes, [" ", ", ", "\n"])
}

/// The stops with what stands between words, stops and ropes.
pub(super) fn write(ropes: &[OwnRope], [word, stop, rope]: [&str; 3]) -> String {
    let mut text = String::new();
    let mut between = "";
    for own in ropes {
        for each in &own.stops {
            for part in [between, each.does.named().id, word, each.on.named().id] {
                text.push_str(part);
            }
            if !each.with.is_empty() {
                text.push_str(word);
                text.push_str(&each.with);
            }
            between = stop;
        }
        between = rope;
    }
    text
}
