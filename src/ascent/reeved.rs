//! The rig, as far as it does not depend on figures that vary.

use crate::climber::STACK_LENGTH;
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::{Row, Spread};
use crate::gear::{LOWER_TURNS, TOP_TURN, TurnFields, TurnKind, UPPER_TURNS, kept_by};
use crate::hitch::HITCH_DRAG;
use crate::quantity::{Force, Length, Mass, Quantity, Ratio};
use crate::reeving::{
    BACKUP, BackupKind, BodyKind, Fraction, KNOT_SLACK, Losses, Motion, Phase, RIG, Rig, RigName, Stop, TEST_MASS,
    TEST_PULL, What, kinematics, losses_that_give,
};
use std::sync::Arc;

/// A turn of the rig.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnFact {
    /// What the rope turns round.
    pub kind: TurnKind,
    /// The share of the tension that is kept.
    pub kept: Spread,
    /// Whether that share is the climber's own figure, not that of the kind.
    pub own: bool,
}

/// A rig that has been worked out as far as it does not depend on figures that vary.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Reeved {
    pub(crate) name: RigName,
    pub(crate) rig: Arc<Rig>,
    pub(crate) motion: Motion,
    /// In the order of the ropes.
    pub(crate) turns: Vec<TurnFact>,
    /// Which turn each is, whatever the rig: the second upper one from the hand draws the same on a 5:1 and a 7:1.
    pub(crate) places: Vec<u32>,
    /// The rope that runs before a knot in the tail catches.
    pub(crate) slack: Spread,
    pub(crate) drag: Spread,
    /// The losses that one's own test comes to, in place of the others.
    pub(crate) tested: Option<Losses>,
}

impl Reeved {
    /// Whether a helper on the ground pulls.
    pub(crate) fn is_hauled(&self) -> bool {
        is_hauled(&self.rig)
    }

    /// How many turns the upper hitch carries, where there is one that the climber pushes up.
    pub(crate) fn upper_turns(&self) -> Option<usize> {
        let carriage = self.rig.body(BodyKind::Carriage).filter(|_| !self.is_hauled())?;
        let on_it = |stop: &&Stop| stop.body == Some(carriage) && matches!(stop.what, What::Turn(_));
        Some(self.rig.stops().filter(on_it).count())
    }

    /// Whether load passes the lower hitch while it slides, and no test of one's own has that in it. On a haul cord's rig
    /// none does.
    pub(crate) fn drags(&self) -> bool {
        self.upper_turns().is_some() && self.rig.ropes().len() == 1 && self.tested.is_none()
    }

    /// The fields that say what its turns and hitches are.
    pub(crate) fn asked(&self) -> Vec<&'static Row> {
        let mut asked: Vec<&'static Row> = Vec::new();
        let mut unmet = fields();
        for stop in self.rig.stops() {
            if matches!(stop.what, What::Turn(_))
                && let Some(turns) = unmet.get_mut(body_of(self.rig.kind_at(stop)))
                && let Some(nearest) = turns.first()
            {
                asked.push(&nearest.kind.row);
                *turns = &[];
            }
        }
        if self.upper_turns().is_some() {
            asked.push(&STACK_LENGTH.row);
        }
        if self.drags() {
            asked.push(&HITCH_DRAG.row);
        }
        asked
    }
}

fn is_hauled(rig: &Rig) -> bool {
    rig.stops().any(|stop| stop.what == What::Hand && rig.kind_at(stop) == Some(BodyKind::Ground))
}

/// What is said of the parts of a rig, whichever the rig.
pub(crate) struct Hardware {
    backup: Option<BackupKind>,
    slack: Option<Spread>,
    /// The turns in the crotch, at the hitches that move, and at harness or foot, each from the hand.
    said: [Vec<Option<TurnFact>>; 3],
    drag: Option<Spread>,
}

impl Hardware {
    pub(crate) fn read(reader: &mut Reader<'_>) -> Self {
        let backup = reader.chosen(&BACKUP);
        let slack = reader.spread(&KNOT_SLACK);
        let [top, upper, lower] = fields();
        let said = [said_of(reader, top), said_of(reader, upper), said_of(reader, lower)];
        Self { backup, slack, said, drag: reader.spread(&HITCH_DRAG) }
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
        let slack = self.slack?;
        let rig = name.rig(self.backup?.with_slack(Length::from_si(slack.likely))).ok()?;
        let motion = kinematics(&rig, &Phase::pull(&rig)).ok()?;
        let (turns, places) = turns(&rig, &self.said)?;
        Some(Reeved { name, rig: Arc::new(rig), motion, turns, places, slack, drag: self.drag?, tested: None })
    }
}

pub(crate) fn reeved(reader: &mut Reader<'_>) -> Option<Reeved> {
    let name = reader.need(&RIG);
    let hardware = Hardware::read(reader);
    let test = (reader.maybe(&TEST_MASS), reader.maybe(&TEST_PULL));
    if reader.says(&TEST_MASS.row) != reader.says(&TEST_PULL.row) {
        reader.note(of_the_test(Reason::HalfATest));
    }
    let mut reeved = hardware.rig(name?);
    if reeved.is_none() && hardware.is_whole() {
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

/// The fields of the turns in the crotch, at the hitches that move, and at harness or foot, each from the hand.
fn fields() -> [&'static [TurnFields]; 3] {
    [std::slice::from_ref(&TOP_TURN), &UPPER_TURNS, &LOWER_TURNS]
}

/// Whose place in [`fields`] a body has.
fn body_of(kind: Option<BodyKind>) -> usize {
    match kind {
        Some(BodyKind::Tree) => 0,
        Some(BodyKind::Carriage) => 1,
        _ => 2,
    }
}

/// What every turn of the rig is, and which one it is, in the order of the ropes.
fn turns(rig: &Rig, said: &[Vec<Option<TurnFact>>; 3]) -> Option<(Vec<TurnFact>, Vec<u32>)> {
    let (mut turns, mut places) = (Vec::new(), Vec::new());
    let mut met = Vec::new();
    for stop in rig.stops() {
        if matches!(stop.what, What::Turn(_)) {
            met.push(body_of(rig.kind_at(stop)));
        }
    }
    let mut bodies = met.as_slice();
    while let Some((body, rest)) = bodies.split_first() {
        // The hand is at the end of its rope, so they are counted backwards.
        let mut place = 0;
        for later in rest {
            place += usize::from(later == body);
        }
        turns.push((*said.get(*body)?.get(place)?)?);
        places.push((10 * body + place) as u32);
        bodies = rest;
    }
    Some((turns, places))
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
        let least = if is_hauled(rig) { 0.0 } else { 1.0 };
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
