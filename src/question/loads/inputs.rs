//! What the question reads, checked.

use super::gear::Gear;
use super::limb::Limb;
use crate::ascent::{By, CLIMB_HEIGHT, Reeved, TurnFact, reeved};
use crate::climber::{BODY_MASS, KIT_MASS};
use crate::draft::Draft;
use crate::error::{Error, Reason};
use crate::field::{Row, Spread};
use crate::gear::{SLACK, TOP_TURN, TurnKind, kept_by};
use crate::hitch::SETBACK;
use crate::quantity::{Angle, Mass, Quantity};
use crate::question::Question;
use crate::question::fields::reader;
use crate::reeving::{
    Balance, KNOT_SLACK, RigName, Stop, What, is_made_fast_at_the_foot, kinematics, made_fast_at_the_foot,
};
use crate::rope::{ANCHOR, Anchor, CROTCH_HEIGHT, HITCH_HEIGHT};
use crate::tree::{LIMB_ANGLE, LIMB_DIAMETER, LIMB_REACH, REDIRECT_ANGLE};
use std::sync::Arc;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) body_mass: Mass,
    pub(super) kit_mass: Spread,
    pub(super) rig: Reeved,
    pub(super) at_the_foot: bool,
    /// What a rope that runs over the crotch turns round there.
    pub(super) top: TurnFact,
    pub(super) gear: Gear,
    pub(super) limb: Limb,
    pub(super) redirect: Option<Angle>,
    /// The crotch and the lower hitch at the start and at the top, in metres above the ground.
    pub(super) heights: Option<[f64; 3]>,
    pub(super) slack: Spread,
    pub(super) setback: Spread,
    assumed: Vec<&'static Row>,
}

impl Inputs {
    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::Loads);
        let body_mass = reader.need(&BODY_MASS);
        let kit_mass = reader.spread(&KIT_MASS);
        let rig = reeved(&mut reader);
        let is_tied = |rig: &Reeved| made_fast_at_the_foot(&rig.rig).is_some() && !rig.is_hauled();
        let needs_anchor = rig.as_ref().is_some_and(is_tied);
        let anchor = if needs_anchor { reader.need(&ANCHOR) } else { reader.maybe(&ANCHOR) };
        let at_the_foot = needs_anchor && anchor.is_some_and(Anchor::is_at_the_foot);
        let top = top(&mut reader);
        let gear = Gear::read(&mut reader);
        let limb = Limb::read(&mut reader);
        let redirect = reader.maybe(&REDIRECT_ANGLE);
        let (crotch, climb) = (reader.maybe(&CROTCH_HEIGHT), reader.maybe(&CLIMB_HEIGHT));
        let hitch = reader.spread(&HITCH_HEIGHT);
        let (slack, setback) = (reader.spread(&SLACK), reader.spread(&SETBACK));
        let heights = match (crotch, climb, &hitch) {
            (Some(crotch), Some(climb), Some(hitch)) => Some([crotch.si(), hitch.likely, hitch.likely + climb.si()]),
            _ => None,
        };
        if heights.is_some_and(|[crotch, _, top]| top >= crotch) {
            let fields = vec![CLIMB_HEIGHT.row.id.to_owned(), CROTCH_HEIGHT.row.id.to_owned()];
            reader.note(Error { fields, reason: Reason::ClimbAboveCrotch });
        }
        let mut assumed: Vec<&'static Row> = Vec::new();
        for row in [&KIT_MASS.row, &SETBACK.row, &SLACK.row, &HITCH_HEIGHT.row].iter().chain(Gear::ASSUMED) {
            if reader.rests_on_default(row) {
                assumed.push(*row);
            }
        }
        let knots = rig.as_ref().is_some_and(|rig| rig.rig.stops().any(|stop| matches!(stop.what, What::Knot(_))));
        for (counts, row) in [
            (knots && rig.as_ref().is_some_and(|rig| rig.name != RigName::Own), &KNOT_SLACK.row),
            (reader.says(&LIMB_DIAMETER.row), &LIMB_REACH.row),
            (reader.says(&LIMB_DIAMETER.row), &LIMB_ANGLE.row),
        ] {
            if counts && reader.rests_on_default(row) {
                assumed.push(row);
            }
        }
        if let Some(rig) = &rig {
            for row in rig.asked() {
                if reader.rests_on_default(row) {
                    assumed.push(row);
                }
            }
        }
        reader.done(|| {
            let (rig, top) = (rig?, top?);
            let rig = if at_the_foot { footed(&rig, top)? } else { rig };
            Some(Self {
                body_mass: body_mass?,
                kit_mass: kit_mass?,
                at_the_foot: is_made_fast_at_the_foot(&rig.rig) && !rig.is_hauled(),
                rig,
                top,
                gear: gear?,
                limb: limb?,
                redirect,
                heights,
                slack: slack?,
                setback: setback?,
                assumed,
            })
        })
    }

    /// The fields whose defaults the answer rests on.
    #[must_use]
    pub fn assumed(&self) -> &[&'static Row] {
        &self.assumed
    }
}

/// What the rope turns round in the crotch.
fn top(reader: &mut crate::draft::Reader<'_>) -> Option<TurnFact> {
    let (kind, own) = (reader.chosen(&TOP_TURN.kind)?, reader.maybe(&TOP_TURN.own));
    Some(TurnFact { kind, kept: kept_by(kind, own), by: if own.is_some() { By::Own } else { By::Kind } })
}

/// The number a crotch draws by that only a base anchor has.
pub(super) const OVER_THE_CROTCH: u32 = 5000;

/// The rig with its rope made fast at the foot of the tree.
fn footed(reeved: &Reeved, top: TurnFact) -> Option<Reeved> {
    let rig = made_fast_at_the_foot(&reeved.rig)?.ok()?;
    let motion = kinematics(&rig, &reeved.motion.phase).ok()?;
    let (mut turns, mut places) = (Vec::new(), Vec::new());
    let (mut old, mut old_places) = (reeved.turns.iter(), reeved.places.iter());
    for rope in rig.ropes() {
        for (at, stop) in rope.stops.iter().enumerate() {
            let beside =
                |other: Option<&Stop>| other.is_some_and(|other| other.what == What::Tied && other.noun == "foot tie");
            let is_new = beside(at.checked_sub(1).and_then(|at| rope.stops.get(at))) || beside(rope.stops.get(at + 1));
            if !matches!(stop.what, What::Turn(_)) {
                continue;
            }
            if is_new {
                turns.push(top);
                places.push(OVER_THE_CROTCH);
            } else {
                turns.extend(old.next());
                places.extend(old_places.next());
            }
        }
    }
    let balance = Balance::of(&rig, &motion);
    Some(Reeved { rig: Arc::new(rig), motion, balance, turns, places, ..reeved.clone() })
}

/// The kinds of the turns of a rig.
pub(super) fn kinds(turns: &[TurnFact]) -> Vec<TurnKind> {
    let mut kinds = Vec::new();
    for turn in turns {
        kinds.push(turn.kind);
    }
    kinds
}
