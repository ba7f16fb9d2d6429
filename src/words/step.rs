//! A step of the change-over in words.

use super::phrase::listed;
use super::record::records;
use super::template::worded;
use crate::descent::{Attached, Does, Step};
use crate::reeving::What;

records! {
    /// A stop of the climber's rope in a step.
    pub struct StepStop {
        /// `tied`, `turn`, `hitch`, `knot` or `hand`.
        pub kind: &'static str,
        /// What people call it.
        pub noun: String,
        /// Whether it is moved or opened in this step, and holds nobody.
        pub moved: bool,
    }

    /// A step, and what holds the climber while it is made.
    pub struct StepLine {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What is done, in short.
        pub noun: &'static str,
        /// How.
        pub how: &'static str,
        /// What holds the climber meanwhile, in a sentence.
        pub held: String,
        /// `none`, `one` or `two`: how many things hold, any of which may fail.
        pub attached: &'static str,
        /// Whether two things hold, or one while nothing is moved.
        pub sound: bool,
        /// The climber's rope, from the anchor down.
        pub rope: Vec<StepStop>,
    }
}

/// The step as people read it.
pub(super) fn step_line(step: &Step) -> StepLine {
    let (id, noun, how) = told(step.does);
    let attached = step.attached();
    let holds = listed(&step.holding());
    let mut held = match attached {
        Attached::None => worded("Held by {}.", &["nothing"]),
        Attached::One => worded("Held by your {} alone, and nothing is moved.", &[&holds]),
        Attached::Two => worded("Held by {}.", &[&worded("your {}", &[&holds])]),
    };
    if step.is_tied_on() {
        held.push_str(" The rope’s tie at your harness stays as it is, and holds its side alone.");
    }
    let mut rope = Vec::new();
    for (stop, moved) in step.along() {
        let kind = match stop.what {
            What::Tied => "tied",
            What::Turn(_) => "turn",
            What::Hitch(_) => "hitch",
            What::Knot(_) => "knot",
            What::Hand | What::Helper(_) | What::Free => "hand",
        };
        rope.push(StepStop { kind, noun: stop.noun.clone().into_owned(), moved });
    }
    StepLine {
        id,
        noun,
        how,
        held,
        attached: match attached {
            Attached::None => "none",
            Attached::One => "one",
            Attached::Two => "two",
        },
        sound: step.is_sound(),
        rope,
    }
}

/// Its id, what is done in short, and how.
const fn told(does: Does) -> (&'static str, &'static str, &'static str) {
    match does {
        Does::Rest => (
            "rest",
            "hang on the hitch",
            "Ease your weight onto the hitch with your hands still on the rope, watch it grip, and only then let go.",
        ),
        Does::BackUp => (
            "back-up",
            "tie a knot below it",
            "Tie a knot in the rope just below the hitch, and clip it to the harness.",
        ),
        Does::TakeOff => (
            "take-off",
            "take the upper hitch off",
            "Take the rope out of its turns, then the upper hitch with its pulleys off the rope: left above you, they are out of reach and stop the rope.",
        ),
        Does::SetBrake => (
            "set-brake",
            "set the added friction",
            "Put it on the rope between hitch and knot, and tie it off so that no hand is needed.",
        ),
        Does::WeighBrake => (
            "weigh-brake",
            "let it take your weight",
            "Ease the hitch until what you tied off carries you, and watch it before you go on.",
        ),
        Does::FreeBrake => (
            "free-brake",
            "take it in the hand",
            "Push the hitch up until it grips again. Hold the rope below the added friction, and only then undo its tie.",
        ),
        Does::MoveKnot => (
            "move-knot",
            "move the knot down",
            "Come down slowly. Before the knot comes up to your hand, stop on the hitch, tie and clip the next knot a few arm spans further down, and then undo this one.",
        ),
    }
}
