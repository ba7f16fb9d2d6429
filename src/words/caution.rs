//! Cautions as sentences, each with the sources it rests on.

use super::CautionLine;
use super::body_caution::body_caution;
use super::figure::add_ids;
use super::known_caution::Known;
use super::template::said;
use super::top_out::{BELOW_EDGE, CROTCH_NEAR, CROTCH_TOO_LOW, EDGE_NEAR};
use crate::field::Spread;
use crate::gear::{PAST_MOST, TEST_RATING};
use crate::quantity::{Length, System, View};
use crate::question::can_i_climb::{BodyCaution, Caution};
use crate::source::{
    AFAG401, CAPSTAN, COMMON_PRACTICE, DELANEY, GEOMETRY, HARNESS_TEST, JOHNSON, JUDGED, NHANES, PRATTLEY, RAKSHIT,
    RAUCH, SETNICKA, TURNER, YOUNG,
};

/// The caution as people read it.
pub(super) fn caution_line(caution: Caution, view: View) -> CautionLine {
    let known = known(caution);
    let mut sources = Vec::new();
    add_ids(&mut sources, known.sources);
    CautionLine { id: known.id, grave: known.grave, text: text(caution, known.template, view), sources }
}

/// Its sentence.
fn text(caution: Caution, template: &str, view: View) -> String {
    let length = |length: Length| said("{M}", &[&Spread::point(length.in_metres())], &[], view);
    match caution {
        Caution::DropToKnot { by, up_to } | Caution::CrotchTooLow { by, up_to } | Caution::BelowEdge { by, up_to } => {
            let (by, most) = (length(by), length(up_to));
            let [before, most, after] = if by == most { ["", "", ""] } else { [", and up to ", &most, ","] };
            said(template, &[], &[&by, before, most, after], view)
        }
        Caution::Body(BodyCaution::HarnessClock) => said(template, &[&const { Spread::point(13.4) }], &[], view),
        Caution::Body(BodyCaution::OverheadReach) => {
            // 2.27 kg are 5 lb, to the figures that were published.
            let (mass, slot) = if view.system == System::Us { (5.0, "{0} lb") } else { (2.27, "{2} kg") };
            said(template, &[], &[&said(slot, &[&Spread::point(mass)], &[], view)], view)
        }
        Caution::CrotchNear { up_to } | Caution::EdgeNear { up_to } => said(template, &[], &[&length(up_to)], view),
        Caution::FastCadence { most } => said(template, &[&Spread::point(most)], &[], view),
        Caution::OverTestMass => said(template, &[&const { Spread::point(TEST_RATING) }], &[], view),
        Caution::PastRatings => said(template, &[&const { Spread::point(PAST_MOST) }], &[], view),
        Caution::Surroundings => said(template, &[], &[if view.system == System::Us { "10 ft" } else { "3 m" }], view),
        _ => said(template, &[], &[], view),
    }
}

const fn known(caution: Caution) -> &'static Known {
    match caution {
        Caution::Arithmetic => &Known {
            id: "arithmetic",
            grave: true,
            sources: &[],
            template: "This is arithmetic, not training. A qualified climber checks the rig and the tree; makers' instructions and labels, local codes and licensed practice win over any number here.",
        },
        Caution::OnePullOnly => &Known {
            id: "one-pull-only",
            grave: true,
            sources: &[JOHNSON],
            template: "The verdict is about one pull, not many. Strength that is there once may not be there again.",
        },
        Caution::RestsReckoned => &Known {
            id: "rests-reckoned",
            grave: true,
            sources: &[RAKSHIT, JOHNSON],
            template: "How arms and hands tire is reckoned from muscles that were tested, not from yours, which may need longer rests or give out. Turn back while you still have the strength to change over.",
        },
        Caution::PullOverWeight => &Known {
            id: "pull-over-weight",
            grave: true,
            sources: &[GEOMETRY],
            template: "The pull you entered is more than you weigh. Check how it was measured.",
        },
        Caution::Predicted => &Known {
            id: "predicted",
            grave: false,
            sources: &[JUDGED],
            template: "Your pull was not measured but guessed, good to about 30 % for one person. A luggage scale tells more in a minute.",
        },
        Caution::Body(caution) => body_caution(caution),
        Caution::PastSurvey => &Known {
            id: "past-survey",
            grave: false,
            sources: &[NHANES],
            template: "The survey of grip counts everybody over 80 alike, so past that age the guess is too kind. Measure.",
        },
        Caution::GripAndPull => &Known {
            id: "grip-and-pull",
            grave: true,
            sources: &[YOUNG, JUDGED],
            template: "Your grip says your hands could not have held the pull you entered. Measure both again.",
        },
        Caution::FastCadence { .. } => &Known {
            id: "fast-cadence",
            grave: false,
            sources: &[JUDGED],
            template: "You count more strokes a minute than there is time for: pulling and moving the hitch leave about {0}.",
        },
        Caution::HardPull => &Known {
            id: "hard-pull",
            grave: true,
            sources: &[JOHNSON],
            template: "One pull takes more than 80 % of what your arms give. At 80 % most people manage about ten pulls; nearer to 100 % fewer, and past it not one.",
        },
        Caution::SingleHitch => &Known {
            id: "single-hitch",
            grave: true,
            sources: &[GEOMETRY],
            template: "One hitch alone holds you. Set it, dress it and test it low down each time, and back it up.",
        },
        Caution::StackedHitches => &Known {
            id: "stacked-hitches",
            grave: true,
            sources: &[COMMON_PRACTICE],
            template: "Two hitches on one rope, grabbed together, both let go. Keep hands off them while you hang.",
        },
        Caution::DropToKnot { .. } => &Known {
            id: "drop-to-knot",
            grave: true,
            sources: &[GEOMETRY, JUDGED],
            template: "If the hitch that holds you fails you drop about {}{}{}{} before the knot catches, and the jerk is several times your weight. Near the ground you may land first. Tie the knot again often.",
        },
        Caution::UntendedHitch => &Known {
            id: "untended-hitch",
            grave: true,
            sources: &[GEOMETRY],
            template: "Nothing pulls the hitch up as you rise: a hand or a tether must do it at every pull, or slack grows under it and you fall on it.",
        },
        Caution::SlidingTurn => &Known {
            id: "sliding-turn",
            grave: false,
            sources: &[DELANEY, CAPSTAN, PRATTLEY, SETNICKA],
            template: "A ring or carabiner eats nearly half of the pull at that turn, and wears the rope. A pulley there, rated for you, is the cheapest help.",
        },
        Caution::OverBark => &Known {
            id: "over-bark",
            grave: false,
            sources: &[CAPSTAN, JUDGED],
            template: "Bark eats half of the pull or more, wears the rope and hurts the tree. A ring or a pulley at the top is the usual way.",
        },
        Caution::NothingHolds => &Known {
            id: "nothing-holds",
            grave: true,
            sources: &[GEOMETRY],
            template: "Nothing in this rig holds you once the helper lets go. Before you leave the ground, something at the foot that grips the rope by itself must be in it.",
        },
        Caution::NothingGrips => &Known {
            id: "nothing-grips",
            grave: true,
            sources: &[GEOMETRY],
            template: "Nothing in this rig holds you once your hands let go. Before you leave the ground, a hitch that grips the rope by itself must be in it.",
        },
        Caution::HaulHard => &Known {
            id: "haul-hard",
            grave: true,
            sources: &[JUDGED],
            template: "With this much advantage one helper can break gear, or crush you under a limb. They must see or hear you, and stop at any resistance.",
        },
        Caution::CrotchTooLow { .. } => &CROTCH_TOO_LOW,
        Caution::CrotchNear { .. } => &CROTCH_NEAR,
        Caution::BelowEdge { .. } => &BELOW_EDGE,
        Caution::EdgeNear { .. } => &EDGE_NEAR,
        Caution::OverTestMass => &Known {
            id: "over-test-mass",
            grave: true,
            sources: &[HARNESS_TEST],
            template: "All-up you may be over {K}, the mass harnesses are tested with. Check the label of every part.",
        },
        Caution::PastRatings => &Known {
            id: "past-ratings",
            grave: true,
            sources: &[HARNESS_TEST],
            template: "All-up you may be over {K}, past most ratings. Every part must carry a label that says it may hold you.",
        },
        Caution::HangingStill => &Known {
            id: "hanging-still",
            grave: true,
            sources: &[TURNER, RAUCH, AFAG401],
            template: "Hanging still in a harness makes people faint, some within minutes and without warning, sooner if their legs do not move. Somebody who can get you down at once must be there, and starts to get you down the moment you stop moving.",
        },
        Caution::Surroundings => &Known {
            id: "surroundings",
            grave: false,
            sources: &[COMMON_PRACTICE],
            template: "Keep rope, tools and body at least {} from any power line, and stay down in wind or lightning.",
        },
        Caution::KneeHeight => &Known {
            id: "knee-height",
            grave: false,
            sources: &[COMMON_PRACTICE],
            template: "Whatever it says here, try it at knee height first: ten strokes with a trained second person beside you, helmet on, a phone that has reception, and a way to be lowered.",
        },
    }
}
