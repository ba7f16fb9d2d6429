//! What the question reads, checked.

use super::TurnFact;
use crate::climber::{
    Arms, BODY_MASS, CLIMB_ARMS, GRIP_LEFT, GRIP_RIGHT, Grip, HAND_TRAVEL, HOLD, Hold, KIT_MASS, MEASURED_PULL,
    Measured, POSTURE, PULL_ARMS, PULL_HELD, PULL_TAKEN, Posture, STACK_LENGTH, STATURE,
};
use crate::draft::{Draft, Reader};
use crate::error::{Error, Reason};
use crate::field::{Row, Spread};
use crate::gear::{LOWER_EFFICIENCY, LOWER_TURN, UPPER_EFFICIENCY, UPPER_TURN, kept_by};
use crate::hitch::{HITCH_DRAG, SETBACK};
use crate::quantity::{Force, Length, Mass, Quantity, Ratio};
use crate::question::Question;
use crate::question::fields::{CLIMB_HEIGHT, reader};
use crate::reeving::{
    BACKUP, BodyKind, Fraction, KNOT_SLACK, Losses, Motion, Phase, RIG, Rig, RigName, TEST_MASS, TEST_PULL, What,
    kinematics, losses_that_give,
};
use std::sync::Arc;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) body_mass: Mass,
    pub(super) kit_mass: Spread,
    pub(super) height: Length,
    pub(super) measured: Option<Measured>,
    pub(super) grip: Option<Grip>,
    /// With how many arms the climber climbs.
    pub(super) arms: Arms,
    /// The fields whose defaults the answer rests on.
    pub(super) assumed: Vec<&'static Row>,
    pub(super) hold: Hold,
    pub(super) stature: Option<Length>,
    pub(super) hand_travel: Option<Length>,
    pub(super) posture: Posture,
    pub(super) setback: Spread,
    pub(super) stack: Spread,
    pub(super) rig: Reeved,
}

/// A rig that has been worked out as far as it does not depend on figures that vary.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Reeved {
    pub(super) name: RigName,
    pub(super) rig: Arc<Rig>,
    pub(super) pull: Phase,
    pub(super) motion: Motion,
    pub(super) turns: Vec<TurnFact>,
    /// The rope that runs before a knot in the tail catches.
    pub(super) slack: Spread,
    pub(super) drag: Spread,
    /// The losses that one's own test comes to, in place of the others.
    pub(super) tested: Option<Losses>,
}

impl Inputs {
    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::CanIClimb);
        let body_mass = reader.need(&BODY_MASS);
        let height = reader.need(&CLIMB_HEIGHT);
        let rig = reeved(&mut reader);
        let kit_mass = reader.spread(&KIT_MASS);
        let pull = reader.maybe(&MEASURED_PULL);
        let (taken, arms, held) = (reader.chosen(&PULL_TAKEN), reader.chosen(&PULL_ARMS), reader.chosen(&PULL_HELD));
        let climb_arms = reader.maybe(&CLIMB_ARMS);
        let newtons = |force: Force| force.in_newtons();
        let left = reader.maybe(&GRIP_LEFT).map(newtons);
        let right = reader.maybe(&GRIP_RIGHT).map(newtons);
        let (hold, posture) = (reader.chosen(&HOLD), reader.chosen(&POSTURE));
        let (stature, hand_travel) = (reader.maybe(&STATURE), reader.maybe(&HAND_TRAVEL));
        let (setback, stack) = (reader.spread(&SETBACK), reader.spread(&STACK_LENGTH));
        let assumed = assumed(&reader);
        reader.done(|| {
            let measured = match pull {
                Some(pull) => Some(Measured { pull, taken: taken?, arms: arms?, held: held? }),
                None => None,
            };
            // Nobody is credited with an arm that was not measured.
            let arms_used = climb_arms.or(measured.map(|measured| measured.arms)).unwrap_or(Arms::Two);
            Some(Self {
                body_mass: body_mass?,
                kit_mass: kit_mass?,
                height: height?,
                measured,
                grip: if arms_used == Arms::One { Grip::of_one_hand(left, right) } else { Grip::of(left, right) },
                arms: arms_used,
                assumed,
                hold: hold?,
                stature,
                hand_travel,
                posture: posture?,
                setback: setback?,
                stack: stack?,
                rig: rig?,
            })
        })
    }
}

/// The fields that have their defaults, of those that matter to this rig and this evidence.
fn assumed(reader: &Reader<'_>) -> Vec<&'static Row> {
    let mut assumed: Vec<&'static Row> = vec![&KIT_MASS.row, &HOLD.row, &POSTURE.row, &SETBACK.row];
    if reader.says(&MEASURED_PULL.row) {
        assumed.extend([&PULL_TAKEN.row, &PULL_ARMS.row, &PULL_HELD.row]);
    }
    if !reader.chooses(&RIG, RigName::HandOverHand) {
        assumed.extend([&UPPER_TURN.row, &LOWER_TURN.row, &HITCH_DRAG.row, &STACK_LENGTH.row]);
    }
    assumed.push(&BACKUP.row);
    assumed.retain(|row| reader.rests_on_default(row));
    assumed
}

fn reeved(reader: &mut Reader<'_>) -> Option<Reeved> {
    let name = reader.need(&RIG);
    let backup = reader.chosen(&BACKUP);
    let slack = reader.spread(&KNOT_SLACK);
    let upper = (reader.chosen(&UPPER_TURN), reader.maybe(&UPPER_EFFICIENCY));
    let lower = (reader.chosen(&LOWER_TURN), reader.maybe(&LOWER_EFFICIENCY));
    let drag = reader.spread(&HITCH_DRAG);
    let test = (reader.maybe(&TEST_MASS), reader.maybe(&TEST_PULL));
    if reader.says(&TEST_MASS.row) != reader.says(&TEST_PULL.row) {
        reader.note(of_the_test(Reason::HalfATest));
    }
    let (name, slack) = (name?, slack?);
    let made = name.rig(backup?.with_slack(Length::from_si(slack.likely)));
    let rig = noted(reader, made)?;
    let pull = Phase::pull(&rig);
    let motion = noted(reader, kinematics(&rig, &pull))?;
    let mut turns = Vec::new();
    for stop in rig.stops().filter(|stop| matches!(stop.what, What::Turn(_))) {
        let (kind, own) = if rig.kind_at(stop) == Some(BodyKind::Climber) { lower } else { upper };
        let kind = kind?;
        turns.push(TurnFact { kind, kept: kept_by(kind, own), own: own.is_some() });
    }
    let tested = match test {
        (Some(mass), Some(force)) => Some(tested(reader, (&rig, &motion), &turns, mass, force)?),
        _ => None,
    };
    Some(Reeved { name, rig: Arc::new(rig), pull, motion, turns, slack, drag: drag?, tested })
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
    let kept: Vec<f64> = turns.iter().map(|turn| turn.kept.likely).collect();
    let found = noted(reader, losses_that_give(rig, motion, &kept, measured))?;
    if found.is_none() {
        let ideal = motion.rope_per_rise.map_or(1.0, Fraction::in_f64);
        let reason = if turns.is_empty() {
            Reason::TestWithoutTurns
        } else {
            Reason::TestOutOfRange { measured: Ratio::new(measured), ideal: Ratio::new(ideal) }
        };
        reader.note(of_the_test(reason));
    }
    found
}

/// The value, or a note that the rig cannot be worked out.
fn noted<T, E>(reader: &mut Reader<'_>, result: Result<T, E>) -> Option<T> {
    if result.is_err() {
        reader.note(Error::of(RIG.row.id, Reason::UnworkableRig));
    }
    result.ok()
}
