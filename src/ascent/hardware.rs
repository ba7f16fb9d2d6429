//! What is said of the parts of a rig, and the rigs that are made of them.

use super::own_rig::{needed, own_rig};
use super::own_test::{OwnTest, of_the_test};
use super::reeved::{By, Reeved, TurnFact, drags, draw, fields, give, places};
use crate::climber::TRIAL_STROKES;
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::Spread;
use crate::gear::{TurnFields, kept_by};
use crate::hitch::HITCH_DRAG;
use crate::quantity::{Length, Quantity};
use crate::reeving::{
    BACKUP, BackupKind, Balance, KNOT_SLACK, OWN_RIG, OwnRig, Phase, RIG, RigName, TEST_MASS, TEST_PULL, kinematics,
};
use std::sync::Arc;

/// What is said of the parts of a rig, whichever the rig.
pub(crate) struct Hardware {
    backup: Option<BackupKind>,
    slack: Option<Spread>,
    /// The turns in the crotch, at the hitches that move, and at harness or foot, each from the hand.
    said: [Vec<Option<TurnFact>>; 3],
    drag: Option<Spread>,
    own: Option<OwnRig>,
}

impl Hardware {
    pub(crate) fn read(reader: &mut Reader<'_>) -> Self {
        let backup = reader.chosen(&BACKUP);
        let slack = reader.spread(&KNOT_SLACK);
        let [top, upper, lower] = fields();
        let said = [said_of(reader, top), said_of(reader, upper), said_of(reader, lower)];
        Self { backup, slack, said, drag: reader.spread(&HITCH_DRAG), own: reader.maybe(&OWN_RIG) }
    }

    /// Whether nothing of it is wrong.
    fn is_whole(&self) -> bool {
        self.backup.is_some()
            && self.slack.is_some()
            && self.drag.is_some()
            && self.said.iter().all(|turns| turns.iter().all(Option::is_some))
    }

    /// A rig with these parts; none where one of them is wrong, or the rig cannot be worked out.
    pub(crate) fn rig(&self, name: RigName) -> Option<Reeved> {
        if name == RigName::Own {
            return own_rig(self.own.as_ref()?, self.drag?).ok();
        }
        let slack = self.slack?;
        let rig = name.rig(self.backup?.with_slack(Length::from_si(slack.likely))).ok()?;
        let motion = kinematics(&rig, &Phase::pull(&rig)).ok()?;
        let balance = Balance::of(&rig, &motion);
        let (mut turns, mut draws) = (Vec::new(), Vec::new());
        for (body, place) in places(&rig) {
            turns.push((*self.said.get(body)?.get(place)?)?);
            draws.push(draw(body, place));
        }
        Some(Reeved {
            name,
            drags: drags(&rig, &motion, &balance),
            give: give(&rig, &balance),
            rig: Arc::new(rig),
            motion,
            balance,
            help: Vec::new(),
            turns,
            places: draws,
            slack,
            drag: self.drag?,
        })
    }
}

/// What is climbed on while no rig is chosen: the plainest that shares the weight out and needs no second rope (judged).
pub const USUAL_RIG: RigName = RigName::TailThree;

/// The rig that must be said.
pub(crate) fn reeved(reader: &mut Reader<'_>) -> Option<Reeved> {
    let name = reader.need(&RIG);
    of_name(reader, name).0
}

/// The rig that was said or else the usual one, and the next with more advantage made of the same parts, where there is
/// one. What was tried on a rig, or written down of one, asks which.
pub(crate) fn reeved_and_next(reader: &mut Reader<'_>) -> (Option<Reeved>, Option<Reeved>) {
    let of_one = is_tried(reader) || reader.says(&OWN_RIG.row);
    let name = if of_one || reader.says(&RIG.row) { reader.need(&RIG) } else { Some(USUAL_RIG) };
    of_name(reader, name)
}

/// Whether something was tried that tells only of the rig it was tried on.
fn is_tried(reader: &Reader<'_>) -> bool {
    [&TEST_MASS.row, &TEST_PULL.row, &TRIAL_STROKES.row].iter().any(|row| reader.says(row))
}

fn of_name(reader: &mut Reader<'_>, name: Option<RigName>) -> (Option<Reeved>, Option<Reeved>) {
    let hardware = Hardware::read(reader);
    let Some((rig, test)) = said(reader, &hardware, name) else { return (None, None) };
    let next = name.and_then(RigName::next).and_then(|next| hardware.rig(next));
    let next = match test {
        Some(test) => next.map(|next| test.told_of(next)),
        None => next,
    };
    (Some(rig), next)
}

/// Every rig of the catalogue with the parts that were said, and one's own where it is written down; and which was
/// said, if any. One's own test was made on that one, and tells of turns of those kinds on all.
pub(crate) fn every_rig(reader: &mut Reader<'_>) -> (Option<RigName>, Vec<Reeved>) {
    let name = if is_tried(reader) { reader.need(&RIG) } else { reader.maybe(&RIG) };
    let hardware = Hardware::read(reader);
    let chosen = if name.is_some() { said(reader, &hardware, name) } else { None };
    // One's own is in the list as soon as it is written down, chosen or not; what keeps it out is told.
    if hardware.own.is_some() && name != Some(RigName::Own) {
        needed(reader, hardware.own.as_ref(), hardware.drag);
    }
    let test = chosen.and_then(|(_, test)| test);
    let mut rigs = Vec::new();
    for rig in RigName::ALL.iter().filter_map(|each| hardware.rig(*each)) {
        rigs.push(match &test {
            Some(test) => test.told_of(rig),
            None => rig,
        });
    }
    (name, rigs)
}

/// The rig of a name with these parts, and one's own test of it if there is one.
fn said(reader: &mut Reader<'_>, hardware: &Hardware, name: Option<RigName>) -> Option<(Reeved, Option<OwnTest>)> {
    let test = (reader.maybe(&TEST_MASS), reader.maybe(&TEST_PULL));
    if reader.says(&TEST_MASS.row) != reader.says(&TEST_PULL.row) {
        reader.note(of_the_test(Reason::HalfATest));
    }
    let name = name?;
    if name == RigName::Own {
        needed(reader, hardware.own.as_ref(), hardware.drag);
    }
    let reeved = hardware.rig(name);
    if reeved.is_none() && hardware.is_whole() && name != RigName::Own {
        reader.note(Error::of(RIG.row.id, Reason::UnworkableRig));
    }
    let (Some(mass), Some(force)) = test else { return reeved.map(|reeved| (reeved, None)) };
    let reeved = reeved?;
    let test = OwnTest::read(reader, &reeved, mass, force)?;
    Some((test.told_of(reeved), Some(test)))
}

/// The turns of one body, from the hand, as far as something is said of them or taken for granted.
fn said_of(reader: &mut Reader<'_>, fields: &'static [TurnFields]) -> Vec<Option<TurnFact>> {
    let mut turns: Vec<Option<TurnFact>> = Vec::new();
    for turn in fields {
        let nearest = turns.first().copied().flatten();
        let own = reader.maybe(&turn.own);
        let kind = reader.chosen(&turn.kind);
        turns.push(match kind.or(nearest.map(|nearest| nearest.kind)) {
            Some(_) if kind.is_none() && own.is_none() => nearest,
            Some(kind) => {
                Some(TurnFact { kind, kept: kept_by(kind, own), by: if own.is_some() { By::Own } else { By::Kind } })
            }
            None => None,
        });
    }
    turns
}
