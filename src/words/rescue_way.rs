//! A way to the ground for somebody who is stuck, in words.

use super::Figure;
use super::figure::figure;
use super::record::records;
use super::template::said;
use crate::descent::Stage;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::rescue::{How, Way, Why};
use crate::source::JUDGED;

records! {
    /// A stage of a way, and when it is over.
    pub struct StageLine {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What is done.
        pub how: &'static str,
        /// How long it takes, as people read it.
        pub time: String,
        /// When it begins and is over, likely, in seconds from when the climber hangs still.
        pub from: f64,
        /// The same for its end.
        pub to: f64,
    }

    /// A way to the ground.
    pub struct WayLine {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// Whether it is a way on this plan.
        pub possible: bool,
        /// Whether it is the quickest that does not count on the climber.
        pub best: bool,
        /// What it is, or why it is none.
        pub text: &'static str,
        /// How long it takes; none where it is none.
        pub total: Option<Figure>,
        /// Its stages.
        pub stages: Vec<StageLine>,
    }
}

/// The way as people read it.
pub(super) fn way_line(way: &Way, height: f64, best: bool, view: View) -> WayLine {
    let (id, noun, what) = named(way.how);
    let (mut stages, mut from) = (Vec::new(), 0.0);
    for stage in way.stages.as_ref().map_or(&[][..], |stages| stages) {
        let time = stage.time(height);
        let (id, how) = told(*stage);
        let to = from + time.likely;
        let ends = [Spread::point(time.low), Spread::point(time.high)];
        let time = said("{S}, from {S} to {S}", &[&time, &ends[0], &ends[1]], &[], view);
        stages.push(StageLine { id, how, time, from, to });
        from = to;
    }
    let total = way.total.as_ref().map(|total| {
        let mut figure = figure("wayTime", "time it takes", total, "{S}", view, &[JUDGED]);
        figure.workings.push("Its stages, one after the other, each at its end of the range.".to_owned());
        figure
    });
    WayLine {
        id,
        noun,
        possible: way.stages.is_ok(),
        best,
        text: way.stages.as_ref().map_or_else(|why| why_not(*why), |_| what),
        total,
        stages,
    }
}

const fn named(how: How) -> (&'static str, &'static str, &'static str) {
    match how {
        How::Oneself => (
            "oneself",
            "you come down by yourself",
            "Only while you can use your hands and your head. It counts for nothing once you hang still.",
        ),
        How::LetDown => (
            "let-down",
            "somebody at the foot lets you down",
            "The hitch stays on the rope; the rope runs out at the foot.",
        ),
        How::LiftedOff => (
            "lifted-off",
            "a haul at the foot lifts you off the tie, then lets you down",
            "The tie carries your weight, so a haul beside it has to take it first.",
        ),
        How::SecondRope => (
            "second-rope",
            "somebody climbs to you on a second rope",
            "They take you over onto their own rope and come down with you. It takes training, and rope and gear for two.",
        ),
    }
}

const fn why_not(why: Why) -> &'static str {
    match why {
        Why::NothingOnTheGround => {
            "Not on this rope: it is tied in the crotch or comes back to you, and nothing of it can be given out on the ground."
        }
        Why::PlainTie => "Not from a plain tie: it carries your weight and does not pay out.",
        Why::PaysOut => "Not needed: the anchor at the foot pays out already.",
        Why::ShortRope => {
            "Not with the rope you have: letting you down from the top takes at least three times the height of the crotch."
        }
        Why::TooHeavy => "Not with the pull you said: no rig here lifts your weight over this crotch with it.",
        Why::Nobody => "Nobody is there who is trained and equipped to.",
        Why::Hauled => "Not on this rig: you hang where others haul.",
        Why::NoHitch => "Not on this rig: no hitch of yours is on the climbing rope.",
    }
}

const fn told(stage: Stage) -> (&'static str, &'static str) {
    match stage {
        Stage::Notice => ("notice", "See that the climber hangs still, call out, call for help"),
        Stage::Unlock => ("unlock", "Hold the rope below the friction at the foot and undo its lock"),
        Stage::RigHaul => ("rig-haul", "Rig a haul with friction beside the tie, take the weight on it, undo the tie"),
        Stage::Lower => ("lower", "Let the climber down slowly, a hand at the rope all the time"),
        Stage::ChangeOver => ("change-over", "Change over to coming down"),
        Stage::ComeDown => ("come-down", "Come down, with stops"),
        Stage::SetRope => ("set-rope", "Put a second rope over a sound crotch and load it from the ground, two people"),
        Stage::GearUp => ("gear-up", "Put on harness, hitches and helmet, check each other"),
        Stage::Climb => ("climb", "Climb to them"),
        Stage::TakeOver => ("take-over", "Clip them to your own rope, take their weight, free their hitch"),
    }
}
