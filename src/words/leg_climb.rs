//! The climb by the legs, in words.

use super::LegLine;
use super::template::say;
use crate::field::Spread;
use crate::gear::PAST_MOST;
use crate::quantity::View;
use crate::question::can_i_climb::{HEAVY_CLIMBER, LegClimb, LegStanding};
use crate::source::{COMMON_PRACTICE, JUDGED};

const HOW: &str = "The way of it: a rope tied above, a friction hitch at the harness, a second one with loops for the feet, and no mechanical advantage. You stand up in the loops, the harness hitch goes up, you sit and draw the feet up. No figures of what legs drive up a rope were published, so none are reckoned: all this is common practice, no source.";

/// What is said of a climb by the legs.
pub(super) fn leg_line(climb: LegClimb, view: View) -> LegLine {
    let (id, first) = match climb.standing {
        LegStanding::WorthATrial => (
            "worth-a-trial",
            "Worth a try at knee height, and at your limit at best: you climb a flight of stairs without the handrail and without getting out of breath. Have a trained second person beside you.",
        ),
        LegStanding::FindOut { .. } => ("find-out", "Not known yet, and at your limit at best."),
        LegStanding::NotLikely => (
            "not-likely",
            "Not likely to be your way up for now: what climbers ask first is a flight of stairs, without the handrail and without getting out of breath. What your arms can do is not touched by it.",
        ),
    };
    let mut text = first.to_owned();
    if let LegStanding::FindOut { stairs, lift } = climb.standing {
        let find =
            " Find out whether you climb a flight of stairs without the handrail and without getting out of breath.";
        if stairs {
            text.push_str(find);
        }
        let find = " Find out, somebody beside you, whether your legs lift your whole weight ten times from sitting to standing, the arms only steadying.";
        if lift {
            text.push_str(find);
        }
    }
    if climb.is_heavy {
        let template = " All-up you may be over {K}: one climber of about {K} found it hard.";
        say(
            &mut text,
            template,
            &[&const { Spread::point(PAST_MOST) }, &const { Spread::point(HEAVY_CLIMBER) }],
            &[],
            view,
        );
    }
    LegLine { id, text, how: HOW, sources: vec![COMMON_PRACTICE.id, JUDGED.id] }
}
