//! Cautions as sentences, each with the sources it rests on.

use super::CautionLine;
use super::figure::add_ids;
use super::template::said;
use crate::field::Spread;
use crate::quantity::{Length, System, View};
use crate::question::can_i_climb::Caution;
use crate::source::{
    AFAG401, COMMON_PRACTICE, DELANEY, GEOMETRY, HARNESS_TEST, JOHNSON, JUDGED, PRATTLEY, RAUCH, SETNICKA, Source,
    TURNER,
};

/// The caution as people read it.
pub(super) fn caution_line(caution: Caution, view: View) -> CautionLine {
    let (id, grave, sources) = known(caution);
    let mut ids = Vec::new();
    add_ids(&mut ids, sources);
    CautionLine { id, grave, text: text(caution, view), sources: ids }
}

/// Its id, whether it can kill, and the sources it rests on.
const fn known(caution: Caution) -> (&'static str, bool, &'static [Source]) {
    match caution {
        Caution::Arithmetic => ("arithmetic", true, &[]),
        Caution::OnePullOnly => ("one-pull-only", true, &[JOHNSON]),
        Caution::PullOverWeight => ("pull-over-weight", true, &[GEOMETRY]),
        Caution::Predicted => ("predicted", false, &[JUDGED]),
        Caution::HardPull => ("hard-pull", true, &[JOHNSON]),
        Caution::SingleHitch => ("single-hitch", true, &[GEOMETRY]),
        Caution::StackedHitches => ("stacked-hitches", true, &[COMMON_PRACTICE]),
        Caution::DropToKnot { .. } => ("drop-to-knot", true, &[GEOMETRY, JUDGED]),
        Caution::UntendedHitch => ("untended-hitch", true, &[GEOMETRY]),
        Caution::SlidingTurn => ("sliding-turn", false, &[DELANEY, PRATTLEY, SETNICKA]),
        Caution::OverBark => ("over-bark", false, &[DELANEY, JUDGED]),
        Caution::NothingHolds => ("nothing-holds", true, &[GEOMETRY]),
        Caution::HaulHard => ("haul-hard", true, &[JUDGED]),
        Caution::OverTestMass => ("over-test-mass", true, &[HARNESS_TEST]),
        Caution::PastRatings => ("past-ratings", true, &[HARNESS_TEST]),
        Caution::HangingStill => ("hanging-still", true, &[TURNER, RAUCH, AFAG401]),
        Caution::Surroundings => ("surroundings", false, &[COMMON_PRACTICE]),
        Caution::KneeHeight => ("knee-height", false, &[COMMON_PRACTICE]),
    }
}

/// Its sentence.
fn text(caution: Caution, view: View) -> String {
    let template = match caution {
        Caution::DropToKnot { by, up_to } => {
            let length = |length: Length| said("{M}", &[&Spread::point(length.in_metres())], &[], view);
            let (by, most) = (length(by), length(up_to));
            let [before, most, after] = if by == most { ["", "", ""] } else { [", and up to ", &most, ","] };
            return said(
                "If the lower hitch fails you drop about {}{}{}{} before the knot catches, and the jerk is several times your weight. Near the ground you may land first. Tie the knot again often.",
                &[],
                &[&by, before, most, after],
                view,
            );
        }
        Caution::OverTestMass => {
            let template =
                "All-up you are over {K}, the mass harnesses are tested with. Check the label of every part.";
            return said(template, &[&Spread::point(100.0)], &[], view);
        }
        Caution::PastRatings => {
            let template =
                "All-up you are over {K}, past most ratings. Every part must carry a label that says it may hold you.";
            return said(template, &[&Spread::point(140.0)], &[], view);
        }
        Caution::Surroundings if view.system == System::Us => {
            "Keep rope, tools and body at least 10 ft from any power line, and stay down in wind or lightning."
        }
        Caution::Surroundings => {
            "Keep rope, tools and body at least 3 m from any power line, and stay down in wind or lightning."
        }
        Caution::Arithmetic => {
            "This is arithmetic, not training. A qualified climber checks the rig and the tree; makers' instructions and labels, local codes and licensed practice win over any number here."
        }
        Caution::OnePullOnly => {
            "This reckons one pull, not many. Strength that is there once may not be there again; whether yours lasts to the top is not reckoned here."
        }
        Caution::HardPull => {
            "One pull takes more than 80 % of what your arms give. At 80 % most people manage about ten pulls; nearer to 100 % fewer, and past it not one."
        }
        Caution::PullOverWeight => "The pull you entered is more than you weigh. Check how it was measured.",
        Caution::Predicted => {
            "Your pull was not measured but guessed, good to about 30 % for one person. A luggage scale tells more in a minute."
        }
        Caution::StackedHitches => {
            "Two hitches on one rope, grabbed together, both let go. Keep hands off them while you hang."
        }
        Caution::SingleHitch => {
            "The lower hitch alone holds you. Set it, dress it and test it low down each time, and back it up."
        }
        Caution::UntendedHitch => {
            "Nothing pulls the hitch up as you rise: a hand or a tether must do it at every pull, or slack grows under it and you fall on it."
        }
        Caution::SlidingTurn => {
            "A ring or carabiner eats nearly half of the pull at that turn, and wears the rope. A pulley there is the cheapest help."
        }
        Caution::OverBark => {
            "Bark eats half of the pull or more, wears the rope and hurts the tree. A ring or a pulley at the top is the usual way."
        }
        Caution::NothingHolds => {
            "Nothing in this rig holds you once the helper lets go. Before you leave the ground, something at the foot that grips the rope by itself must be in it."
        }
        Caution::HaulHard => {
            "With this much advantage one helper can break gear, or crush you under a limb. They must see or hear you, and stop at any resistance."
        }
        Caution::HangingStill => {
            "Hanging still in a harness makes people faint, some within minutes and without warning, sooner if their legs do not move. Somebody who can get you down at once must be there; from the moment you stop moving they start."
        }
        Caution::KneeHeight => {
            "Whatever it says here, try it at knee height first: ten strokes with a trained second person beside you, helmet on, and a way to be lowered."
        }
    };
    template.to_owned()
}
