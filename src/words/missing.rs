//! What has not been entered yet.

use super::ErrorLine;
use crate::ascent::{SECOND_PERSON, WAY_DOWN};
use crate::climber::{
    AGE, GRIP_LEFT, GRIP_RIGHT, HAND_TRAVEL, HOLD, MEASURED_PULL, PULL_HELD, SEX, STATURE, TRIAL_HEIGHT, TRIAL_STROKES,
    TRIAL_TIME,
};
use crate::field::Row;
use crate::question::can_i_climb::{Answer, Missing};
use crate::reeving;
use crate::rope::{ANCHOR, CROTCH_HEIGHT};

/// What has not been entered yet, in sentences.
pub(super) fn missing_lines(answer: &Answer) -> Vec<ErrorLine> {
    // First the one that is the quickest to come by: a form leads there.
    const STRENGTH: &[&Row] =
        &[&MEASURED_PULL.row, &TRIAL_STROKES.row, &GRIP_RIGHT.row, &GRIP_LEFT.row, &AGE.row, &SEX.row];
    const PULL: &[&Row] = &[&MEASURED_PULL.row, &TRIAL_STROKES.row];
    const HOLDS: &[&Row] = &[&GRIP_RIGHT.row, &GRIP_LEFT.row, &PULL_HELD.row, &HOLD.row];
    const STROKE: &[&Row] = &[&STATURE.row, &HAND_TRAVEL.row];
    const TRIAL: &[&Row] = &[&TRIAL_STROKES.row, &TRIAL_TIME.row, &TRIAL_HEIGHT.row];
    const RIG: &[&Row] = &[&reeving::RIG.row];
    const CROTCH: &[&Row] = &[&CROTCH_HEIGHT.row];
    const LOWERING: &[&Row] = &[&WAY_DOWN.row, &ANCHOR.row];
    const DOWN: &[&Row] = &[&WAY_DOWN.row];
    const PERSON: &[&Row] = &[&SECOND_PERSON.row];
    let mut lines = Vec::new();
    for missing in &answer.missing {
        let (rows, message) = match missing {
            Missing::Strength => (
                STRENGTH,
                "How strong you are: best ten strokes at knee height, else a pull you have measured, else your grip, else age and sex. Without it there is no verdict, only the pull that is needed.",
            ),
            Missing::Hold => (
                HOLDS,
                "What your hands hold: after an injury at the neck only what was measured counts, and a loop round the hand proves only itself. Measure your grip, or your pull with what you will hold.",
            ),
            Missing::Pull => (PULL, "How strong you are: after an injury at the neck only a measured pull counts."),
            Missing::OtherHalf(row) => (
                std::slice::from_ref(row),
                "Age and sex tell something only together. A measured pull or a grip tells more.",
            ),
            Missing::RestOfTrial => {
                (TRIAL, "Your trial at knee height counts once its strokes, its time and its height are all there.")
            }
            Missing::Stroke => (
                STROKE,
                "How long your pull is: enter your stature, or the rope you pull in a stroke. Without it there is no count of strokes.",
            ),
            Missing::Rig => (
                RIG,
                "Which rig you will climb on: until you choose one this is reckoned on a 3:1 on the rope’s own tail.",
            ),
            Missing::Crotch => (
                CROTCH,
                "How high the crotch is: without it nobody can tell whether your seat comes above the edge of the platform.",
            ),
            Missing::WayDown => {
                (DOWN, "How you come down again, tried low down first. Without a way down nothing is within reach.")
            }
            Missing::Lowering => (
                LOWERING,
                "To be lowered, the rope must be made fast at the foot of the tree, in a device that lets it out; yours is tied. Make it fast so, or come down otherwise.",
            ),
            Missing::SecondPerson => {
                (PERSON, "A second person on the ground, able and equipped to get you down at once.")
            }
        };
        let mut fields = Vec::new();
        for row in rows {
            fields.push(row.id.to_owned());
        }
        lines.push(ErrorLine { fields, message: message.to_owned() });
    }
    lines
}
