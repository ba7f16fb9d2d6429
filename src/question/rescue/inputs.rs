//! What the question reads, checked.

use crate::ascent::{CLIMB_HEIGHT, Reeved, SECOND_PERSON, SecondPerson, WAY_DOWN, WayDown, reeved};
use crate::climber::{BODY_MASS, HELPER_PULL, KIT_MASS, LEGS, Legs, TRUNK, Trunk, hangs_still};
use crate::descent::{FOOT_BRAKE, FOOT_TURNS, FootBrake};
use crate::draft::{Draft, Reader};
use crate::error::Error;
use crate::field::{Field, Kind, Row, Spread, choice};
use crate::gear::{PAST_MOST, RATED_MASS, TOP_TURN, kept_by};
use crate::quantity::{Mass, Quantity};
use crate::question::Question;
use crate::question::fields::reader;
use crate::rope::{ANCHOR, Anchor, CROTCH_HEIGHT, ROPE_OWNED, is_anchored};

choice! {
    /// A second rope to reach the climber on.
    SecondRope {
        /// None.
        None = "none", "none", "Somebody would have to put one up first, which takes long.";
        /// One in the tree.
        InTheTree = "in-the-tree", "in the tree, ready to climb", "A rope that the rescuer can clip to at once.";
    }
}

/// A second rope to reach the climber on.
pub static SECOND_ROPE: Field<SecondRope> = Field::new(Row {
    id: "secondRope",
    noun: "second rope",
    hint: "A rope of its own for the rescuer, set before you climb.",
    kind: Kind::Choice { options: SecondRope::OPTIONS, likely: Some("none") },
    why: "What is not there cannot be climbed.",
    private: false,
});

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) body_mass: Mass,
    pub(super) kit_mass: Spread,
    pub(super) height: f64,
    pub(super) crotch: Option<f64>,
    /// The rope that somebody has.
    pub(super) rope: Option<f64>,
    pub(super) rig: Reeved,
    /// Where the rope is made fast; none where it only runs over the crotch.
    pub(super) anchor: Option<Anchor>,
    pub(super) top: Spread,
    pub(super) foot_brake: FootBrake,
    pub(super) foot_turns: f64,
    pub(super) helper: Spread,
    pub(super) second_person: Option<SecondPerson>,
    pub(super) second_rope: Option<SecondRope>,
    pub(super) way_down: Option<WayDown>,
    legs: Option<Legs>,
    trunk: Option<Trunk>,
    rated: Option<Mass>,
    assumed: Vec<&'static Row>,
}

impl Inputs {
    /// The fields whose defaults the answer rests on.
    #[must_use]
    pub fn assumed(&self) -> &[&'static Row] {
        &self.assumed
    }

    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::Rescue);
        let body_mass = reader.need(&BODY_MASS);
        let height = reader.need(&CLIMB_HEIGHT).map(Quantity::si);
        let crotch = reader.maybe(&CROTCH_HEIGHT).map(Quantity::si);
        let rope = reader.maybe(&ROPE_OWNED).map(Quantity::si);
        let kit_mass = reader.spread(&KIT_MASS);
        let rig = reeved(&mut reader);
        let anchored = rig.as_ref().is_some_and(|rig| is_anchored(&rig.rig));
        let anchor = if anchored { reader.need(&ANCHOR) } else { reader.maybe(&ANCHOR) };
        let (kind, own) = (reader.chosen(&TOP_TURN.kind), reader.maybe(&TOP_TURN.own));
        let (foot_brake, foot_turns) = (reader.chosen(&FOOT_BRAKE), reader.spread(&FOOT_TURNS));
        let helper = reader.spread(&HELPER_PULL);
        let (second_person, way_down) = (reader.maybe(&SECOND_PERSON), reader.maybe(&WAY_DOWN));
        let second_rope = reader.chosen(&SECOND_ROPE);
        let (legs, trunk) = (reader.maybe(&LEGS), reader.maybe(&TRUNK));
        let rated = reader.maybe(&RATED_MASS);
        let assumed = assumed(&reader, foot_brake.filter(|_| pays_out(rig.as_ref(), anchor)));
        reader.done(|| {
            Some(Self {
                body_mass: body_mass?,
                kit_mass: kit_mass?,
                height: height?,
                crotch,
                rope,
                anchor: anchor.filter(|_| anchored),
                rig: rig?,
                top: kept_by(kind?, own),
                foot_brake: foot_brake?,
                foot_turns: foot_turns?.likely,
                helper: helper?,
                second_person,
                second_rope,
                way_down,
                legs,
                trunk,
                rated,
                assumed,
            })
        })
    }

    /// The rope that letting down from the top takes at the least, in metres: three times the height of the crotch.
    pub(super) fn lowering_rope(&self) -> Option<f64> {
        self.crotch.map(|crotch| 3.0 * crotch)
    }

    /// Whether the rope that somebody has is known to be too short for that.
    pub(super) fn is_too_short(&self) -> bool {
        self.rope.zip(self.lowering_rope()).is_some_and(|(rope, least)| rope < least)
    }

    /// Whether somebody on the ground can give rope.
    pub(super) fn pays_out(&self) -> bool {
        pays_out(Some(&self.rig), self.anchor)
    }

    /// Whether a second rope hangs in the tree.
    pub(super) fn has_second_rope(&self) -> bool {
        self.second_rope == Some(SecondRope::InTheTree)
    }

    /// Whether the climber's legs do not move, as is taken of one whose trunk does not hold unless they say that they carry.
    pub(super) fn hangs_still(&self) -> bool {
        hangs_still(self.legs, self.trunk)
    }

    /// Whether the climber with all they carry may weigh more than labels are known to carry.
    pub(super) fn is_past_ratings(&self) -> bool {
        let mass = self.body_mass.in_kilograms() + self.kit_mass.high;
        self.rated.map_or(mass > PAST_MOST, |rated| mass > rated.in_kilograms())
    }
}

fn pays_out(rig: Option<&Reeved>, anchor: Option<Anchor>) -> bool {
    anchor.is_some_and(Anchor::is_lowerable) || rig.is_some_and(Reeved::is_hauled)
}

/// The fields that have their defaults.
fn assumed(reader: &Reader<'_>, foot: Option<FootBrake>) -> Vec<&'static Row> {
    let mut assumed = Vec::new();
    for (counts, row) in [
        (true, &KIT_MASS.row),
        (true, &TOP_TURN.kind.row),
        (foot.is_some(), &FOOT_BRAKE.row),
        (matches!(foot, Some(FootBrake::Turns | FootBrake::Stem)), &FOOT_TURNS.row),
        (true, &HELPER_PULL.row),
        (true, &SECOND_ROPE.row),
    ] {
        if counts && reader.rests_on_default(row) {
            assumed.push(row);
        }
    }
    assumed
}
