//! What is said of the climber, the climb and the rig, checked.

use super::CLIMB_HEIGHT;
use super::Evidence;
use super::hardware::reeved;
use super::reeved::Reeved;
use super::setting::{Setting, USUAL_ANCHOR};
use crate::climber::{
    AGE, Arms, BODY_MASS, CADENCE, CLIMB_ARMS, GLOVES, GRIP_LEFT, GRIP_RIGHT, Gloves, Grip, HAND_TRAVEL, HELPER_PULL,
    HOLD, Hold, KIT_MASS, MEASURED_PULL, Measured, Norm, POSTURE, PULL_ARMS, PULL_HELD, PULL_TAKEN, Posture,
    SEAT_HEIGHT, SEX, STACK_LENGTH, STATURE, TRAINING, TRUNK, Training, Trunk,
};
use crate::draft::Reader;
use crate::field::{Row, Spread};
use crate::gear::ROPE_KIND;
use crate::hitch::SETBACK;
use crate::quantity::{Count, Force, Length, Mass};
use crate::reeving::{BACKUP, Fraction, RigName};
use crate::rope::{CROTCH_HEIGHT, is_anchored};

/// Who climbs, how high, and on what.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Plan {
    pub(crate) body_mass: Mass,
    pub(crate) kit_mass: Spread,
    pub(crate) height: Length,
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
}

impl Plan {
    /// How many hands pull at a time.
    pub(crate) fn hands(&self) -> Arms {
        let one_to_one = !self.rig.is_hauled() && self.rope_per_rise() <= 1.0;
        match self.rig.name {
            RigName::HandOverHand => Arms::One,
            RigName::Own if one_to_one => Arms::One,
            _ => self.arms,
        }
    }

    /// The rope that the hand takes for each metre of rise.
    pub(crate) fn rope_per_rise(&self) -> f64 {
        self.rig.motion.rope_per_rise.map_or(1.0, Fraction::in_f64)
    }

    /// The best evidence of strength. From an injury at the neck nothing is predicted.
    pub(crate) fn evidence(&self) -> Option<Evidence> {
        if self.measured.is_some() {
            Some(Evidence::Pull)
        } else if self.trunk == Trunk::Cervical {
            None
        } else if self.grip.is_some() {
            Some(Evidence::Grip)
        } else {
            self.norm.map(|_| Evidence::Norm)
        }
    }

    /// The plan that was said; none where something is wrong, which is noted.
    pub(crate) fn read(reader: &mut Reader<'_>) -> Option<Self> {
        let rig = reeved(reader);
        Self::on(reader, rig)
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
        let (setback, stack) = (reader.spread(&SETBACK), reader.spread(&STACK_LENGTH));
        let helper = reader.spread(&HELPER_PULL);
        let setting = Setting::read(reader);
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
            measured,
            norm: age.zip(sex).map(|(age, sex)| Norm { sex, age, stature, body_mass }),
            half_a_norm,
            training: training?,
            trunk: trunk?,
            gloves: gloves?,
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
        })
    }
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
