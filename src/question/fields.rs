//! Every field of every question, gathered from the storeys that own them.

use super::Question;
use super::rescue::SECOND_ROPE;
use crate::ascent::{CLIMB_HEIGHT, SECOND_PERSON, TIME_ALLOWED, WAY_DOWN};
use crate::climber::{
    AGE, ARM_POWER, BODY_MASS, CADENCE, CLIMB_ARMS, GLOVES, GRIP_LEFT, GRIP_RIGHT, HAND_TRAVEL, HELPER_PULL, HOLD,
    KIT_MASS, LEGS, MEASURED_PULL, POSTURE, PULL_ARMS, PULL_HELD, PULL_TAKEN, SEAT_HEIGHT, SEX, SHOULDER_REACH,
    STACK_LENGTH, STAIRS, STATURE, TRAINING, TRIAL_HEIGHT, TRIAL_MORE, TRIAL_STROKES, TRIAL_TIME, TRUNK,
};
use crate::cord::list::{CORDS, HANKS};
use crate::cord::{CAME_OUT, CORD_CUT, CORD_USE, FINISHED_LENGTH, FREE_LEG, HITCH_COILS, HITCH_CROSSINGS, WORKING_END};
use crate::cord::{END_ALLOWANCE, KERF};
use crate::descent::{
    BRAKE, BRAKE_MEASURED, BRAKE_TURNS, FOOT_BRAKE, FOOT_TURNS, HEAT_SHARE, REST_EVERY, REST_FOR, SPEED,
};
use crate::draft::{Draft, Reader};
use crate::field::Row;
use crate::gear::{
    CONNECTOR, CONNECTOR_STRENGTH, CORD_ENDS, CORD_FIBRE, HARNESS_STRENGTH, HAUL_CORD, HAUL_CORD_STRENGTH, HITCH_CORD,
    HITCH_CORD_STRENGTH, LOWER_TURNS, PULLEY_STRENGTH, RATED_MASS, ROPE_DIAMETER, ROPE_KIND, ROPE_STRENGTH, SLACK,
    SLING_CORD, TOP_TURN, UPPER_TURNS,
};
use crate::hitch::{HITCH_DRAG, SETBACK};
use crate::reeving::{BACKUP, KNOT_SLACK, OWN_RIG, RIG, TEST_MASS, TEST_PULL};
use crate::rope::{
    ANCHOR, ANCHOR_KNOT, CROTCH_HEIGHT, FOOT_OFFSET, HITCH_HEIGHT, OVER_CROTCH, PLATFORM_HEIGHT, REDIRECT_ROPE,
    ROPE_OWNED, ROPE_SPARE, ROPE_STOCK, ROPE_TAIL, STEM_GIRTH,
};
use crate::tree::{FOREARM_GIRTH, LIMB_ANGLE, LIMB_DIAMETER, LIMB_REACH, LIMB_WOOD, REDIRECT_ANGLE, SPECIES};

/// What "Can I climb this?" reads, in the order people are asked.
pub(super) static CAN_I_CLIMB: &[&Row] = &[
    &BODY_MASS.row,
    &CLIMB_HEIGHT.row,
    &RIG.row,
    &OWN_RIG.row,
    &TIME_ALLOWED.row,
    &WAY_DOWN.row,
    &SECOND_PERSON.row,
    &TRIAL_STROKES.row,
    &TRIAL_TIME.row,
    &TRIAL_HEIGHT.row,
    &TRIAL_MORE.row,
    &MEASURED_PULL.row,
    &PULL_TAKEN.row,
    &PULL_ARMS.row,
    &PULL_HELD.row,
    &CLIMB_ARMS.row,
    &GRIP_RIGHT.row,
    &GRIP_LEFT.row,
    &AGE.row,
    &SEX.row,
    &TRAINING.row,
    &TRUNK.row,
    &LEGS.row,
    &STAIRS.row,
    &HOLD.row,
    &GLOVES.row,
    &STATURE.row,
    &SHOULDER_REACH.row,
    &HAND_TRAVEL.row,
    &POSTURE.row,
    &CADENCE.row,
    &ARM_POWER.row,
    &KIT_MASS.row,
    &RATED_MASS.row,
    &TOP_TURN.kind.row,
    &TOP_TURN.own.row,
    &UPPER_TURNS[0].kind.row,
    &LOWER_TURNS[0].kind.row,
    &UPPER_TURNS[0].own.row,
    &LOWER_TURNS[0].own.row,
    &UPPER_TURNS[1].kind.row,
    &LOWER_TURNS[1].kind.row,
    &UPPER_TURNS[1].own.row,
    &LOWER_TURNS[1].own.row,
    &UPPER_TURNS[2].kind.row,
    &LOWER_TURNS[2].kind.row,
    &UPPER_TURNS[2].own.row,
    &LOWER_TURNS[2].own.row,
    &HITCH_DRAG.row,
    &SETBACK.row,
    &STACK_LENGTH.row,
    &HELPER_PULL.row,
    &TEST_MASS.row,
    &TEST_PULL.row,
    &BACKUP.row,
    &KNOT_SLACK.row,
    &SEAT_HEIGHT.row,
    &CROTCH_HEIGHT.row,
    &PLATFORM_HEIGHT.row,
    &ROPE_KIND.row,
    &ANCHOR.row,
];

/// What "What does each part carry?" reads, in the order people are asked.
pub(super) static LOADS: &[&Row] = &[
    &BODY_MASS.row,
    &RIG.row,
    &OWN_RIG.row,
    &ANCHOR.row,
    &CROTCH_HEIGHT.row,
    &CLIMB_HEIGHT.row,
    &HITCH_HEIGHT.row,
    &SLACK.row,
    &ROPE_KIND.row,
    &ROPE_STRENGTH.row,
    &HITCH_CORD.row,
    &HITCH_CORD_STRENGTH.row,
    &HAUL_CORD.row,
    &HAUL_CORD_STRENGTH.row,
    &CORD_FIBRE.row,
    &CONNECTOR.row,
    &CONNECTOR_STRENGTH.row,
    &PULLEY_STRENGTH.row,
    &HARNESS_STRENGTH.row,
    &LIMB_WOOD.row,
    &LIMB_DIAMETER.row,
    &FOREARM_GIRTH.row,
    &SPECIES.row,
    &LIMB_REACH.row,
    &LIMB_ANGLE.row,
    &REDIRECT_ANGLE.row,
    &KIT_MASS.row,
    &TOP_TURN.kind.row,
    &TOP_TURN.own.row,
    &UPPER_TURNS[0].kind.row,
    &LOWER_TURNS[0].kind.row,
    &UPPER_TURNS[0].own.row,
    &LOWER_TURNS[0].own.row,
    &UPPER_TURNS[1].kind.row,
    &LOWER_TURNS[1].kind.row,
    &UPPER_TURNS[1].own.row,
    &LOWER_TURNS[1].own.row,
    &UPPER_TURNS[2].kind.row,
    &LOWER_TURNS[2].kind.row,
    &UPPER_TURNS[2].own.row,
    &LOWER_TURNS[2].own.row,
    &HITCH_DRAG.row,
    &SETBACK.row,
    &TEST_MASS.row,
    &TEST_PULL.row,
    &BACKUP.row,
    &KNOT_SLACK.row,
];

/// What "How much rope?" reads, in the order people are asked.
pub(super) static ROPE_LENGTH: &[&Row] = &[
    &CROTCH_HEIGHT.row,
    &ANCHOR.row,
    &RIG.row,
    &OWN_RIG.row,
    &ROPE_OWNED.row,
    &ROPE_STOCK.row,
    &HITCH_HEIGHT.row,
    &FOOT_OFFSET.row,
    &STEM_GIRTH.row,
    &OVER_CROTCH.row,
    &REDIRECT_ROPE.row,
    &ANCHOR_KNOT.row,
    &ROPE_TAIL.row,
    &ROPE_SPARE.row,
];

/// What "Out of which hanks?" reads, in the order people are asked.
pub(super) static CUT_PLAN: &[&Row] = &[
    &CORDS.row,
    &HANKS.row,
    &KERF.row,
    &END_ALLOWANCE.row,
    &CORD_FIBRE.row,
    &RIG.row,
    &OWN_RIG.row,
    &BACKUP.row,
    &CORD_USE.row,
    &ROPE_DIAMETER.row,
    &HITCH_CORD.row,
    &SLING_CORD.row,
    &HAUL_CORD.row,
    &FREE_LEG.row,
    &FINISHED_LENGTH.row,
    &CORD_CUT.row,
    &CAME_OUT.row,
    &HITCH_COILS.row,
    &HITCH_CROSSINGS.row,
    &CORD_ENDS.row,
    &WORKING_END.row,
    &CROTCH_HEIGHT.row,
    &ANCHOR.row,
    &ROPE_OWNED.row,
    &ROPE_STOCK.row,
    &HITCH_HEIGHT.row,
    &FOOT_OFFSET.row,
    &STEM_GIRTH.row,
    &OVER_CROTCH.row,
    &REDIRECT_ROPE.row,
    &ANCHOR_KNOT.row,
    &ROPE_TAIL.row,
    &ROPE_SPARE.row,
    &TOP_TURN.kind.row,
    &UPPER_TURNS[0].kind.row,
    &UPPER_TURNS[1].kind.row,
    &UPPER_TURNS[2].kind.row,
    &LOWER_TURNS[0].kind.row,
    &LOWER_TURNS[1].kind.row,
    &LOWER_TURNS[2].kind.row,
];

/// What "What length of cord?" reads, in the order people are asked.
pub(super) static CUT_LENGTH: &[&Row] = &[
    &CORD_USE.row,
    &ROPE_DIAMETER.row,
    &HITCH_CORD.row,
    &SLING_CORD.row,
    &HAUL_CORD.row,
    &RIG.row,
    &OWN_RIG.row,
    &FREE_LEG.row,
    &FINISHED_LENGTH.row,
    &CORD_CUT.row,
    &CAME_OUT.row,
    &HITCH_COILS.row,
    &HITCH_CROSSINGS.row,
    &CORD_ENDS.row,
    &WORKING_END.row,
    &CORD_FIBRE.row,
    &HITCH_CORD_STRENGTH.row,
    &HAUL_CORD_STRENGTH.row,
    &BODY_MASS.row,
    &KIT_MASS.row,
];

/// What "Can I get down again?" reads, in the order people are asked.
pub(super) static COMING_DOWN: &[&Row] = &[
    &BODY_MASS.row,
    &CLIMB_HEIGHT.row,
    &RIG.row,
    &OWN_RIG.row,
    &BRAKE.row,
    &BRAKE_TURNS.row,
    &BRAKE_MEASURED.row,
    &GRIP_RIGHT.row,
    &GRIP_LEFT.row,
    &AGE.row,
    &SEX.row,
    &STATURE.row,
    &TRUNK.row,
    &GLOVES.row,
    &CORD_USE.row,
    &HITCH_CORD.row,
    &ROPE_DIAMETER.row,
    &HITCH_COILS.row,
    &HITCH_CROSSINGS.row,
    &CORD_FIBRE.row,
    &HEAT_SHARE.row,
    &SPEED.row,
    &REST_EVERY.row,
    &REST_FOR.row,
    &KIT_MASS.row,
    &TOP_TURN.kind.row,
    &TOP_TURN.own.row,
    &UPPER_TURNS[0].kind.row,
    &LOWER_TURNS[0].kind.row,
    &UPPER_TURNS[0].own.row,
    &LOWER_TURNS[0].own.row,
    &UPPER_TURNS[1].kind.row,
    &LOWER_TURNS[1].kind.row,
    &UPPER_TURNS[1].own.row,
    &LOWER_TURNS[1].own.row,
    &UPPER_TURNS[2].kind.row,
    &LOWER_TURNS[2].kind.row,
    &UPPER_TURNS[2].own.row,
    &LOWER_TURNS[2].own.row,
    &HITCH_DRAG.row,
    &TEST_MASS.row,
    &TEST_PULL.row,
    &BACKUP.row,
    &KNOT_SLACK.row,
    &CROTCH_HEIGHT.row,
    &ANCHOR.row,
    &ROPE_OWNED.row,
    &HITCH_HEIGHT.row,
    &FOOT_OFFSET.row,
    &STEM_GIRTH.row,
    &OVER_CROTCH.row,
    &REDIRECT_ROPE.row,
    &ANCHOR_KNOT.row,
    &ROPE_TAIL.row,
    &ROPE_SPARE.row,
];

/// What "What if I am stuck?" reads, in the order people are asked.
pub(super) static RESCUE: &[&Row] = &[
    &BODY_MASS.row,
    &CLIMB_HEIGHT.row,
    &RIG.row,
    &OWN_RIG.row,
    &ANCHOR.row,
    &SECOND_PERSON.row,
    &SECOND_ROPE.row,
    &WAY_DOWN.row,
    &FOOT_BRAKE.row,
    &FOOT_TURNS.row,
    &HELPER_PULL.row,
    &CROTCH_HEIGHT.row,
    &ROPE_OWNED.row,
    &LEGS.row,
    &TRUNK.row,
    &RATED_MASS.row,
    &KIT_MASS.row,
    &TOP_TURN.kind.row,
    &TOP_TURN.own.row,
    &UPPER_TURNS[0].kind.row,
    &LOWER_TURNS[0].kind.row,
    &UPPER_TURNS[0].own.row,
    &LOWER_TURNS[0].own.row,
    &UPPER_TURNS[1].kind.row,
    &LOWER_TURNS[1].kind.row,
    &UPPER_TURNS[1].own.row,
    &LOWER_TURNS[1].own.row,
    &UPPER_TURNS[2].kind.row,
    &LOWER_TURNS[2].kind.row,
    &UPPER_TURNS[2].own.row,
    &LOWER_TURNS[2].own.row,
    &HITCH_DRAG.row,
    &TEST_MASS.row,
    &TEST_PULL.row,
    &BACKUP.row,
    &KNOT_SLACK.row,
];

/// Every field of every question, once.
#[must_use]
pub fn all_fields() -> Vec<&'static Row> {
    let mut rows: Vec<&'static Row> = Vec::new();
    for question in Question::ALL {
        for row in question.fields() {
            if rows.iter().all(|known| known.id != row.id) {
                rows.push(row);
            }
        }
    }
    rows
}

/// The field of an id, of any question.
#[must_use]
pub fn field(id: &str) -> Option<&'static Row> {
    all_fields().into_iter().find(|row| row.id == id)
}

/// A reader of a draft for a question, in which the fields of any question may be said.
pub(super) fn reader(draft: &Draft, question: Question) -> Reader<'_> {
    Reader::new(draft, question.fields(), &all_fields())
}
