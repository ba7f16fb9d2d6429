//! The verdict.

use super::Chapter;
use super::formula::formula;
use super::unit::{KG, KGF, M, M_PER_S, MIN, RATIO, S, one, usual};
use crate::ascent::{
    AT_LEAST_WITHIN, DEVICE_DRAG, DEVICE_SETBACK, HARD, HARNESS_CLOCK, HEAVY_CLIMBER, LESS_KIT, LOWER, STRONGER,
    TAIL_HELP, TIME_ALLOWED, UNDER_IS_OUT, hanging,
};
use crate::descent::SENSIBLE_SPEED;
use crate::gear::{PAST_MOST, TEST_RATING};
use crate::quantity::KILOGRAM_FORCE;
use crate::source::{
    AFAG401, COMMON_PRACTICE, DYSREFLEXIA, GEOMETRY, HARNESS_TEST, JOHNSON, JUDGED, RAUCH, SPINAL_MEMORY, TURNER,
    WHEELCHAIR_SHOULDERS, WHEELED_MOBILITY,
};

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "verdict",
        "The verdict: thresholds and caps",
        "Never a bare yes. The share of sampled climbs that come to the height within the time allowed decides; caps hold it down whatever the strength.",
        vec![
            formula("levels", "Where somebody stands")
                .words("Each sampled climb must gain height, give one pull, last through all pulls with the rest that the time leaves (arms and hands apart), and keep up the power. Where the count of pulls is not known it is the share in which one pull succeeds.")
                .figure("", "from this share of the climbs on: within reach on paper", one(AT_LEAST_WITHIN), RATIO, &[JUDGED])
                .figure("", "below this share: out of reach as rigged", one(UNDER_IS_OUT), RATIO, &[JUDGED])
                .figure("", "from this share of the arms on a pull is called hard", one(HARD), RATIO, &[JOHNSON])
                .figure("", "time allowed, where nothing is said", usual(&TIME_ALLOWED.row), MIN, &[JUDGED])
                .from(&[JUDGED])
                .used("The first sentence of Can I climb this?"),
            formula("hanging-time", "Time in the harness")
                .words("From leaving the seat to being back on it: the climb, and coming down at a sensible speed.")
                .symbols(S, "t = T + H / v")
                .term("t", "time in the harness", S)
                .term("T", "time of the climb", S)
                .term("H", "height", M)
                .figure("v", "sensible speed going down, at most", one(SENSIBLE_SPEED), M_PER_S, &[JUDGED])
                .figure("", "for legs that do not move: beyond this never better than at your limit", one(HARNESS_CLOCK), MIN, &[JUDGED, RAUCH])
                .from(&[GEOMETRY])
                .used("The harness clock, which caps the verdict where legs do not move.")
                .example(&[("T", 540.0), ("H", 11.0)], |x| hanging(x.of("T"), x.of("H"))),
            formula("ratings", "Ratings for the climber with all they carry")
                .words("Out of reach where the likely mass is over what the labels say; at your limit where it may be, or where no label was read and it may be past most ratings.")
                .figure("", "harnesses are tested with", one(TEST_RATING), KG, &[HARNESS_TEST])
                .figure("", "past most ratings", one(PAST_MOST), KG, &[HARNESS_TEST, JUDGED])
                .from(&[HARNESS_TEST])
                .used("Cautions and caps."),
            formula("stronger", "How much stronger one would have to be")
                .words("What the climb takes of arms and hands over what there is, of the sample that stands at the threshold of the next better level. No such figure where no strength would do: a stroke that gains nothing, or no time.")
                .from(&[JUDGED])
                .used("The second sentence."),
            formula("changes", "What would help most")
                .words("Each change is reckoned on the same thousand climbs with one thing otherwise, so that what differs is due to that thing.")
                .figure("", "less kit", one(LESS_KIT), KG, &[])
                .figure("", "a helper on the tail pulls", one(KILOGRAM_FORCE.si(TAIL_HELP)), KGF, &[])
                .figure("", "a stronger pull, times", one(STRONGER), RATIO, &[])
                .figure("", "a lower climb, share of the height", one(LOWER), RATIO, &[])
                .figure("", "a mechanical device that keeps what is gained: setback", DEVICE_SETBACK, M, &[JUDGED])
                .figure("", "the same: kept past it while it rides up", DEVICE_DRAG, RATIO, &[JUDGED])
                .from(&[JUDGED])
                .used("What would help most?"),
            formula("heavy-climber", "Mass of the climber who found legs hard")
                .words("With a rope for the legs and no mechanical advantage.")
                .figure("", "all-up", one(HEAVY_CLIMBER), KG, &[COMMON_PRACTICE])
                .from(&[COMMON_PRACTICE])
                .used("The climb by the legs."),
        ],
    )
    .note(
        "what caps the verdict at your limit",
        "No way down entered; no second person; a rope that cannot be let out where being lowered is the way down; nothing that holds once a hand lets go; labels not read beyond most ratings; the harness clock.",
        &[JUDGED, AFAG401],
    )
    .note(
        "what puts it out of reach",
        "More mass than the labels allow, and a crotch that does not let the seat come as high as it is to.",
        &[JUDGED],
    )
    .note(
        "legs",
        "Nobody has published what legs drive up a rope, so a climb by the legs is never within reach: at most worth a try at knee height, for somebody who climbs a flight of stairs without the handrail and without losing breath. One climber of about 172 kg found it hard.",
        &[COMMON_PRACTICE],
    )
    .note(
        "hanging still",
        "Without movement people faint, some within minutes and without warning; fit men in sit harnesses were near it in 30 % of tests within the hour, the earliest at 13.4 min. No time is called safe.",
        &[TURNER, RAUCH, AFAG401],
    )
    .note(
        "after a spinal injury",
        "Tight straps can send blood pressure up at once, at or above T6; skin that does not feel must be looked after; bones below the injury grow thin.",
        &[DYSREFLEXIA, SPINAL_MEMORY],
    )
    .note(
        "shoulders and reach",
        "Of wheelchair users 30 to 60 % have overused shoulders, and 20 to 25 % of those who lift an empty can overhead cannot with 2.27 kg: so the reach overhead is asked for.",
        &[WHEELCHAIR_SHOULDERS, WHEELED_MOBILITY],
    )
}
