//! Cautions as sentences.

use super::CautionLine;
use super::phrase::metres;
use crate::quantity::{Dimension, System, View, written};
use crate::question::can_i_climb::Caution;

/// The caution as people read it.
pub(super) fn caution_line(caution: Caution, view: View) -> CautionLine {
    let kilograms = |mass: f64| written(mass, Dimension::Mass, view);
    let (id, grave, text) = match caution {
        Caution::Arithmetic => (
            "arithmetic",
            true,
            "This is arithmetic, not training. A qualified climber checks the rig and the tree; makers' instructions and labels, local codes and licensed practice win over any number here.".to_owned(),
        ),
        Caution::OnePullOnly => (
            "one-pull-only",
            true,
            "This reckons one pull, not many. Strength that is there once may not be there forty times; whether yours lasts to the top is not reckoned here.".to_owned(),
        ),
        Caution::HardPull => (
            "hard-pull",
            true,
            "One pull takes more than 80 % of what your arms give. Most people can do that about ten times and then need a long rest.".to_owned(),
        ),
        Caution::SingleHitch => (
            "single-hitch",
            true,
            "The lower hitch alone holds you. Set it, dress it and test it low down each time, and back it up.".to_owned(),
        ),
        Caution::DropToKnot { by } => (
            "drop-to-knot",
            true,
            format!(
                "If the lower hitch fails you drop about {} before the knot catches, and the jerk is several times your weight. Near the ground you may land first. Tie the knot again often.",
                metres(by.in_metres(), view)
            ),
        ),
        Caution::UntendedHitch => (
            "untended-hitch",
            true,
            "Nothing pulls the hitch up as you rise: a hand or a tether must do it at every pull, or slack grows under it and you fall on it.".to_owned(),
        ),
        Caution::SlidingTurn => (
            "sliding-turn",
            false,
            "A ring or carabiner eats nearly half of the pull at that turn, and wears the rope. A pulley there is the cheapest help.".to_owned(),
        ),
        Caution::OverTestMass => (
            "over-test-mass",
            true,
            format!(
                "All-up you are over {}, the mass harnesses are tested with. Check the label of every part.",
                kilograms(100.0)
            ),
        ),
        Caution::PastRatings => (
            "past-ratings",
            true,
            format!(
                "All-up you are over {}, past most ratings. Every part must carry a label that says it may hold you.",
                kilograms(140.0)
            ),
        ),
        Caution::HangingStill => (
            "hanging-still",
            true,
            "Hanging still in a harness makes people faint, some within minutes and without warning, sooner if their legs do not move. Somebody who can get you down at once must be there; from the moment you stop moving they start.".to_owned(),
        ),
        Caution::Surroundings => (
            "surroundings",
            false,
            format!(
                "Keep rope, tools and body at least {} from any power line, and stay down in wind or lightning.",
                if view.system == System::Si { "3 m" } else { "10 ft" }
            ),
        ),
        Caution::KneeHeight => (
            "knee-height",
            false,
            "Whatever it says here, try it at knee height first: ten strokes with a trained second person beside you, helmet on, and a way to be lowered.".to_owned(),
        ),
    };
    CautionLine { id, grave, text }
}
