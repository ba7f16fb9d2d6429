//! What a body must be careful about, as sentences.

use super::known_caution::Known;
use crate::question::can_i_climb::BodyCaution;
use crate::source::{
    ANSUR, COMMON_PRACTICE, DYSREFLEXIA, JUDGED, RAUCH, SPINAL_MEMORY, WHEELCHAIR_SHOULDERS, WHEELED_MOBILITY,
};

/// The caution, its sources and its sentence.
pub(super) const fn body_caution(caution: BodyCaution) -> &'static Known {
    match caution {
        BodyCaution::SpinalInjury => &Known {
            id: "spinal-injury",
            grave: true,
            sources: &[COMMON_PRACTICE],
            template: "After a spinal injury ask a doctor who knows yours before you hang in a harness. Somebody beside you must know what can go wrong.",
        },
        BodyCaution::Dysreflexia => &Known {
            id: "dysreflexia",
            grave: true,
            sources: &[DYSREFLEXIA],
            template: "If your injury is at or above the sixth thoracic vertebra (T6), tight straps can send your blood pressure up at once (autonomic dysreflexia). Sit up, loosen every strap, get help.",
        },
        BodyCaution::HarnessClock => &Known {
            id: "harness-clock",
            grave: true,
            sources: &[RAUCH, JUDGED],
            template: "Legs that do not move send no blood back. Your time in the harness counts from leaving the seat until you are back in it: be careful from the first minute. Fit men hung still in sit harnesses, and 30 % of tests ended near fainting within the hour, suddenly, the earliest after {1} min; raised legs added about 10 min. Thighs level on a seat board, legs raised, a stop on a platform, a shorter climb or a faster rig help; no time is known to do no harm.",
        },
        BodyCaution::NumbSkin => &Known {
            id: "numb-skin",
            grave: false,
            sources: &[SPINAL_MEMORY],
            template: "If some of your skin does not feel, straps hurt it unnoticed: take the pressure off often, and look at that skin after every try.",
        },
        BodyCaution::ThinBones => &Known {
            id: "thin-bones",
            grave: false,
            sources: &[SPINAL_MEMORY],
            template: "After a spinal injury bones below it grow thin: a foot that catches, or a knock against the stem, can break one unfelt. Keep legs from dangling, and look them over after every try.",
        },
        BodyCaution::ShoulderOveruse => &Known {
            id: "shoulder-overuse",
            grave: false,
            sources: &[WHEELCHAIR_SHOULDERS],
            template: "If you push a wheelchair, you need your shoulders every day: of wheelchair users 30 to 60 % have overused ones. Stop when it hurts, and leave days of rest between tries.",
        },
        BodyCaution::OverheadReach => &Known {
            id: "overhead-reach",
            grave: false,
            sources: &[WHEELED_MOBILITY],
            template: "Of wheelchair users who can lift an empty can overhead, 20 to 25 % cannot with {} in it. Try how far your arms go up with something in the hand, and enter it: the length of your pull is reckoned as if they went all the way.",
        },
        BodyCaution::TrunkReach => &Known {
            id: "trunk-reach",
            grave: true,
            sources: &[ANSUR],
            template: "The length of your pull is that of soldiers, whose trunk holds them. Measure the rope you pull in a stroke, sitting as you would climb.",
        },
        BodyCaution::OneHand => &Known {
            id: "one-hand",
            grave: true,
            sources: &[JUDGED],
            template: "One hand does everything: while it pulls, none is left to push a hitch up or to steady you. The rope itself or a tether must push up the hitch that holds you. Try every step low down, above all the change to going down.",
        },
    }
}
