//! What is said of the parts of a rig, and the rigs that are made of them.

use super::own_rig::{needed, own_rig};
use super::reeved::{Reeved, TurnFact, draw, fields, places, slides};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::Spread;
use crate::float;
use crate::gear::{TurnFields, kept_by};
use crate::hitch::HITCH_DRAG;
use crate::quantity::{Force, Length, Mass, Quantity, Ratio};
use crate::reeving::{
    BACKUP, BackupKind, Fraction, KNOT_SLACK, Losses, Motion, OWN_RIG, OwnRig, Phase, RIG, Rig, RigName, TEST_MASS,
    TEST_PULL, kinematics, losses_that_give,
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
        let (mut turns, mut draws) = (Vec::new(), Vec::new());
        for (body, place) in places(&rig) {
            turns.push((*self.said.get(body)?.get(place)?)?);
            draws.push(draw(body, place));
        }
        Some(Reeved {
            name,
            slides: slides(&rig, &motion),
            rig: Arc::new(rig),
            motion,
            help: Vec::new(),
            turns,
            places: draws,
            slack,
            drag: self.drag?,
            tested: None,
        })
    }
}

/// The rig that must be said.
pub(crate) fn reeved(reader: &mut Reader<'_>) -> Option<Reeved> {
    let name = reader.need(&RIG);
    let hardware = Hardware::read(reader);
    said(reader, &hardware, name)
}

/// Every rig of the catalogue with the parts that were said, and one's own where it is written down; and which was
/// said, if any. One's own test was made on that one, and its power counts for the turns of all.
pub(crate) fn every_rig(reader: &mut Reader<'_>) -> (Option<RigName>, Vec<Reeved>) {
    let tested = reader.says(&TEST_MASS.row) || reader.says(&TEST_PULL.row);
    let name = if tested { reader.need(&RIG) } else { reader.maybe(&RIG) };
    let hardware = Hardware::read(reader);
    let chosen = if name.is_some() { said(reader, &hardware, name) } else { None };
    // One's own is in the list as soon as it is written down, chosen or not; what keeps it out is told.
    if hardware.own.is_some() && name != Some(RigName::Own) {
        needed(reader, hardware.own.as_ref(), hardware.drag);
    }
    let power = chosen.as_ref().and_then(power);
    let mut rigs = Vec::new();
    for each in RigName::ALL {
        match (&chosen, hardware.rig(*each)) {
            (Some(chosen), _) if chosen.name == *each => rigs.push(chosen.clone()),
            (_, Some(mut rig)) => {
                rig.tested = power.map(|power| scaled(&rig, power));
                rigs.push(rig);
            }
            _ => {}
        }
    }
    (name, rigs)
}

/// The power that one's own test raises every turn's share to.
fn power(tested: &Reeved) -> Option<f64> {
    for (turn, kept) in tested.turns.iter().zip(&tested.tested.as_ref()?.turns) {
        let usual = turn.kept.likely;
        if usual < 1.0 && *kept < 1.0 {
            return Some(float::ln(*kept) / float::ln(usual));
        }
    }
    None
}

/// The losses of a rig whose turns are as one's own test found those of another; its drag is in them.
fn scaled(rig: &Reeved, power: f64) -> Losses {
    let mut losses = Losses::none(&rig.rig);
    for (kept, turn) in losses.turns.iter_mut().zip(&rig.turns) {
        *kept = float::exp(power * float::ln(turn.kept.likely));
    }
    losses
}

/// The rig of a name with these parts, and its losses by one's own test.
fn said(reader: &mut Reader<'_>, hardware: &Hardware, name: Option<RigName>) -> Option<Reeved> {
    let test = (reader.maybe(&TEST_MASS), reader.maybe(&TEST_PULL));
    if reader.says(&TEST_MASS.row) != reader.says(&TEST_PULL.row) {
        reader.note(of_the_test(Reason::HalfATest));
    }
    let name = name?;
    if name == RigName::Own {
        needed(reader, hardware.own.as_ref(), hardware.drag);
    }
    let mut reeved = hardware.rig(name);
    if reeved.is_none() && hardware.is_whole() && name != RigName::Own {
        unworkable(reader);
    }
    if let (Some(reeved), (Some(mass), Some(force))) = (&mut reeved, test) {
        reeved.tested = Some(tested(reader, (&reeved.rig, &reeved.motion), &reeved.turns, mass, force)?);
    }
    reeved
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
            Some(kind) => Some(TurnFact { kind, kept: kept_by(kind, own), own: own.is_some() }),
            None => None,
        });
    }
    turns
}

/// What is wrong with both halves of one's own test together.
fn of_the_test(reason: Reason) -> Error {
    Error { fields: vec![TEST_MASS.row.id.to_owned(), TEST_PULL.row.id.to_owned()], reason }
}

fn tested(
    reader: &mut Reader<'_>,
    (rig, motion): (&Rig, &Motion),
    turns: &[TurnFact],
    mass: Mass,
    force: Force,
) -> Option<Losses> {
    let measured = mass.weight().in_newtons() / force.in_newtons();
    let mut kept = Vec::new();
    for turn in turns {
        kept.push(turn.kept.likely);
    }
    let found = noted(reader, losses_that_give(rig, motion, &kept, measured))?;
    if found.is_none() {
        // A hand on the climber lifts with its own strand, whatever the turns eat.
        let least = if rig.is_hauled() { 0.0 } else { 1.0 };
        let ideal = motion.rope_per_rise.map_or(1.0, Fraction::in_f64);
        let reason = if turns.is_empty() {
            Reason::TestWithoutTurns
        } else {
            Reason::TestOutOfRange {
                measured: Ratio::new(measured),
                least: Ratio::new(least),
                ideal: Ratio::new(ideal),
            }
        };
        reader.note(of_the_test(reason));
    }
    found
}

/// The value, or a note that the rig cannot be worked out.
fn noted<T, E>(reader: &mut Reader<'_>, result: Result<T, E>) -> Option<T> {
    if result.is_err() {
        unworkable(reader);
    }
    result.ok()
}

fn unworkable(reader: &mut Reader<'_>) {
    reader.note(Error::of(RIG.row.id, Reason::UnworkableRig));
}
