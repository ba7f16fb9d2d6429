//! What is said of the climber, the climb and the rig, checked.

use super::harness_clock::within_the_clock;
use super::reeved::Reeved;
use super::setting::{Setting, USUAL_ANCHOR};
use super::{CLIMB_HEIGHT, Evidence, SECOND_PERSON, SecondPerson, TIME_ALLOWED, WAY_DOWN, WayDown};
use crate::climber::{
    AGE, ARM_POWER, Arms, BODY_MASS, CADENCE, CLIMB_ARMS, GLOVES, GRIP_LEFT, GRIP_RIGHT, Gloves, Grip, HAND_TRAVEL,
    HELPER_PULL, HOLD, Hold, KIT_MASS, LEGS, Legs, MEASURED_PULL, Measured, Norm, POSTURE, PULL_ARMS, PULL_HELD,
    PULL_TAKEN, Posture, SEAT_HEIGHT, SEX, SHOULDER_REACH, STACK_LENGTH, STAIRS, STATURE, ShoulderReach, Stairs,
    TRAINING, TRIAL_HEIGHT, TRIAL_MORE, TRIAL_STROKES, TRIAL_TIME, TRUNK, Training, Trial, Trunk, hangs_still,
};
use crate::draft::Reader;
use crate::field::{Row, Spread};
use crate::gear::{RATED_MASS, ROPE_KIND};
use crate::hitch::SETBACK;
use crate::quantity::{Count, Duration, Force, Length, Mass, Power, Quantity};
use crate::reeving::{BACKUP, RigName};
use crate::rope::{CROTCH_HEIGHT, is_anchored};
use std::sync::Arc;

/// Who climbs, how high, and on what.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Plan {
    pub(crate) body_mass: Mass,
    pub(crate) kit_mass: Spread,
    pub(crate) height: Length,
    /// How many times as strong the arms are as all that was said tells.
    pub(crate) arms_times: f64,
    /// How long the climb may take, in seconds.
    pub(crate) time_allowed: f64,
    pub(crate) way_down: Option<WayDown>,
    pub(crate) second_person: Option<SecondPerson>,
    /// The greatest mass that the labels allow.
    pub(crate) rated: Option<Mass>,
    /// The greatest power of the arms, measured, in watts.
    pub(crate) arm_power: Option<f64>,
    /// What was done at knee height.
    pub(crate) trial: Option<Trial>,
    /// Whether only some of it was said.
    pub(crate) part_of_a_trial: bool,
    /// The plan that was tried; none where it is this one.
    pub(crate) trial_of: Option<Arc<Self>>,
    pub(crate) measured: Option<Measured>,
    /// The grip that was entered.
    pub(crate) grip: Option<Grip>,
    /// What is known of the grip from sex and age.
    pub(crate) norm: Option<Norm>,
    /// The half of sex and age that was not said beside the other.
    pub(crate) half_a_norm: Option<&'static Row>,
    pub(crate) training: Training,
    pub(crate) trunk: Trunk,
    pub(crate) gloves: Gloves,
    /// What the legs do, where that is said.
    pub(crate) legs: Option<Legs>,
    pub(crate) stairs: Option<Stairs>,
    /// How far up the arms go, where that is said; reckoned with as all the way where it is not.
    pub(crate) shoulder_reach: Option<ShoulderReach>,
    /// Strokes a minute.
    pub(crate) cadence: Option<f64>,
    /// With how many arms the climber climbs.
    pub(crate) arms: Arms,
    /// The fields whose defaults the answer rests on.
    pub(crate) assumed: Vec<&'static Row>,
    pub(crate) hold: Hold,
    pub(crate) stature: Option<Length>,
    pub(crate) hand_travel: Option<Length>,
    pub(crate) posture: Posture,
    pub(crate) setback: Spread,
    pub(crate) stack: Spread,
    /// What a helper pulls, where one hauls.
    pub(crate) helper: Spread,
    pub(crate) setting: Setting,
    pub(crate) rig: Reeved,
    /// Whether nobody chose that rig.
    pub(crate) rig_is_usual: bool,
}

impl Plan {
    /// How many hands pull at a time.
    pub(crate) fn hands(&self) -> Arms {
        self.hands_on(&self.rig)
    }

    /// How many hands pull at a time on a rig.
    pub(super) fn hands_on(&self, rig: &Reeved) -> Arms {
        let one_to_one = !rig.is_hauled() && rig.rope_per_rise() <= 1.0;
        match rig.name {
            RigName::HandOverHand => Arms::One,
            RigName::Own if one_to_one => Arms::One,
            _ => self.arms,
        }
    }

    /// Whether the climber's legs do not move: whoever has a trunk that does not hold and says nothing of the legs may have
    /// such.
    pub(super) fn hangs_still(&self) -> bool {
        hangs_still(self.legs, Some(self.trunk))
    }

    /// The time to turn back by: what was allowed, less by the harness clock where legs do not move.
    pub(super) fn time_to_plan_on(&self) -> f64 {
        if self.hangs_still() { within_the_clock(self.time_allowed, self.height.si()) } else { self.time_allowed }
    }

    /// Whether a pull was measured, in one way or another.
    pub(super) fn is_measured(&self) -> bool {
        self.trial.is_some() || self.measured.is_some()
    }

    /// The best evidence of strength. From an injury at the neck nothing is predicted.
    pub(crate) fn evidence(&self) -> Option<Evidence> {
        if self.trial.is_some() {
            Some(Evidence::Trial)
        } else if self.measured.is_some() {
            Some(Evidence::Pull)
        } else if self.trunk == Trunk::Cervical {
            None
        } else if self.grip.is_some() {
            Some(Evidence::Grip)
        } else {
            self.norm.map(|_| Evidence::Norm)
        }
    }

    /// The plan that was said, on a rig.
    pub(crate) fn on(reader: &mut Reader<'_>, rig: Option<Reeved>) -> Option<Self> {
        let body_mass = reader.need(&BODY_MASS);
        let height = reader.need(&CLIMB_HEIGHT);
        let kit_mass = reader.spread(&KIT_MASS);
        let pull = reader.maybe(&MEASURED_PULL);
        let (taken, arms, held) = (reader.chosen(&PULL_TAKEN), reader.chosen(&PULL_ARMS), reader.chosen(&PULL_HELD));
        let climb_arms = reader.maybe(&CLIMB_ARMS);
        let newtons = |force: Force| force.in_newtons();
        let left = reader.maybe(&GRIP_LEFT).map(newtons);
        let right = reader.maybe(&GRIP_RIGHT).map(newtons);
        let (age, sex) = (reader.maybe(&AGE), reader.maybe(&SEX));
        let half_a_norm = match (reader.says(&AGE.row), reader.says(&SEX.row)) {
            (true, false) => Some(&SEX.row),
            (false, true) => Some(&AGE.row),
            _ => None,
        };
        let (training, trunk, gloves) = (reader.chosen(&TRAINING), reader.chosen(&TRUNK), reader.chosen(&GLOVES));
        let cadence = reader.maybe(&CADENCE).map(Count::number);
        let (hold, posture) = (reader.chosen(&HOLD), reader.chosen(&POSTURE));
        let (stature, hand_travel) = (reader.maybe(&STATURE), reader.maybe(&HAND_TRAVEL));
        let (legs, stairs) = (reader.maybe(&LEGS), reader.maybe(&STAIRS));
        let shoulder_reach = reader.maybe(&SHOULDER_REACH);
        let (setback, stack) = (reader.spread(&SETBACK), reader.spread(&STACK_LENGTH));
        let helper = reader.spread(&HELPER_PULL);
        let setting = Setting::read(reader);
        let time_allowed = reader.spread(&TIME_ALLOWED);
        let (way_down, second_person) = (reader.maybe(&WAY_DOWN), reader.maybe(&SECOND_PERSON));
        let rated = reader.maybe(&RATED_MASS);
        let arm_power = reader.maybe(&ARM_POWER).map(Power::in_watts);
        let trial = trial(reader);
        let rows = [&TRIAL_STROKES.row, &TRIAL_TIME.row, &TRIAL_HEIGHT.row, &TRIAL_MORE.row];
        let part_of_a_trial = trial.is_none() && rows.iter().any(|row| reader.says(row));
        let assumed = assumed(reader, rig.as_ref());
        let measured = match pull {
            Some(pull) => Some(Measured { pull, taken: taken?, arms: arms?, held: Some(held?) }),
            None => None,
        };
        let body_mass = body_mass?;
        // Nobody is credited with an arm that a measured pull did without.
        let arms_used = climb_arms.or(measured.map(|measured| measured.arms)).unwrap_or(Arms::Two);
        Some(Self {
            body_mass,
            kit_mass: kit_mass?,
            height: height?,
            arms_times: 1.0,
            time_allowed: time_allowed?.likely,
            way_down,
            second_person,
            rated,
            arm_power,
            trial,
            part_of_a_trial,
            trial_of: None,
            measured,
            norm: age.zip(sex).map(|(age, sex)| Norm { sex, age, stature, body_mass }),
            half_a_norm,
            training: training?,
            trunk: trunk?,
            gloves: gloves?,
            legs,
            stairs,
            shoulder_reach,
            cadence,
            grip: if arms_used == Arms::One { Grip::of_one_hand(left, right) } else { Grip::of(left, right) },
            arms: arms_used,
            assumed,
            hold: hold?,
            stature,
            hand_travel,
            posture: posture?,
            setback: setback?,
            stack: stack?,
            helper: helper?,
            setting: setting?,
            rig: rig?,
            rig_is_usual: false,
        })
    }
}

/// What was done at knee height, once all of it is said.
fn trial(reader: &mut Reader<'_>) -> Option<Trial> {
    let strokes = reader.maybe(&TRIAL_STROKES).map(Count::number);
    let seconds = reader.maybe(&TRIAL_TIME).map(Duration::in_seconds);
    let height = reader.maybe(&TRIAL_HEIGHT).map(Quantity::si);
    let more = reader.spread(&TRIAL_MORE);
    Some(Trial { strokes: strokes?, more: more?.likely, seconds: seconds?, height: height? })
}

/// The fields that have their defaults, of those that matter to this rig and this evidence.
pub(crate) fn assumed(reader: &Reader<'_>, rig: Option<&Reeved>) -> Vec<&'static Row> {
    const HANDS: &[&Row] = &[&TRUNK.row, &HOLD.row, &GLOVES.row, &SETBACK.row];
    const PULL: &[&Row] = &[&PULL_TAKEN.row, &PULL_ARMS.row, &PULL_HELD.row];
    let mut assumed = Vec::new();
    let mut matter = |rows: &[&'static Row]| {
        for row in rows {
            if reader.rests_on_default(row) {
                assumed.push(*row);
            }
        }
    };
    matter(&[&KIT_MASS.row]);
    if rig.is_some_and(Reeved::is_hauled) {
        matter(&[&HELPER_PULL.row]);
    } else {
        matter(HANDS);
        // What somebody's own rig has, they have written down.
        if rig.is_none_or(|rig| rig.name != RigName::Own) {
            matter(&[&BACKUP.row]);
        }
        if !reader.says(&HAND_TRAVEL.row) {
            matter(&[&POSTURE.row]);
        }
        matter(&[&TIME_ALLOWED.row]);
        if reader.says(&TRIAL_STROKES.row) && reader.says(&TRIAL_TIME.row) && reader.says(&TRIAL_HEIGHT.row) {
            matter(&[&TRIAL_MORE.row]);
        }
        let measured = reader.says(&MEASURED_PULL.row);
        let grip = reader.says(&GRIP_LEFT.row) || reader.says(&GRIP_RIGHT.row);
        let predicts = grip || reader.says(&AGE.row) && reader.says(&SEX.row);
        if measured {
            matter(PULL);
        }
        if predicts && !reader.chooses(&TRUNK, Trunk::Cervical) {
            matter(&[&TRAINING.row]);
        }
    }
    matter(&[&ROPE_KIND.row]);
    if reader.says(&CROTCH_HEIGHT.row) {
        matter(&[&SEAT_HEIGHT.row]);
    }
    if let Some(rig) = rig {
        matter(&rig.asked());
        if is_anchored(&rig.rig) && !reader.says(&USUAL_ANCHOR) {
            matter(&[&USUAL_ANCHOR]);
        }
    }
    assumed
}
