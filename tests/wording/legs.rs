//! What is said of a climb by the legs.

use super::{SI, US, told};
use boughline::words::report;

const HOW: &str = "The way of it: a rope tied above, a friction hitch at the harness, a second one with loops for the feet, and no mechanical advantage. You stand up in the loops, the harness hitch goes up, you sit and draw the feet up. No figures of what legs drive up a rope were published, so none are reckoned: all this is common practice, no source.";

#[rustfmt::skip]
const ROWS: &[(&str, &str, &str)] = &[
    ("legs=full&stairs=yes", "worth-a-trial",
        "Worth a try at knee height, and at your limit at best: you climb a flight of stairs without the handrail and without getting out of breath. Have a trained second person beside you."),
    ("legs=full", "find-out",
        "Not known yet, and at your limit at best. Find out whether you climb a flight of stairs without the handrail and without getting out of breath."),
    ("legs=some&stairs=yes", "find-out",
        "Not known yet, and at your limit at best. Find out, somebody beside you, whether your legs lift your whole weight ten times from sitting to standing, the arms only steadying."),
    ("legs=some", "find-out",
        "Not known yet, and at your limit at best. Find out whether you climb a flight of stairs without the handrail and without getting out of breath. Find out, somebody beside you, whether your legs lift your whole weight ten times from sitting to standing, the arms only steadying."),
    ("legs=full&stairs=no", "not-likely",
        "Not likely to be your way up for now: what climbers ask first is a flight of stairs, without the handrail and without getting out of breath. What your arms can do is not touched by it."),
];

#[test]
fn legs_are_offered_in_words_that_promise_nothing() {
    for (more, id, text) in ROWS {
        let legs = told(more, SI).legs.expect(more);
        assert_eq!((legs.id, legs.text.as_str(), legs.how), (*id, *text, HOW), "{more}");
        assert!(!legs.text.to_lowercase().contains("within reach"));
    }
    for more in ["hold=bare-rope", "legs=none", "legs=none&stairs=yes", "stairs=yes"] {
        assert_eq!(told(more, SI).legs, None, "{more}");
    }
}

#[test]
fn the_heavy_are_told_of_one_who_found_it_hard() {
    let plan = "bodyMass=164kg&climbHeight=11m&rig=tail-3&kitMass=8kg&legs=full&stairs=yes";
    for (view, ending) in [
        (SI, " All-up you may be over 140 kg: one climber of about 172 kg found it hard."),
        (US, " All-up you may be over 309 lb: one climber of about 379 lb found it hard."),
    ] {
        let legs = report(&super::answer(plan), view).legs.expect("offered");
        assert!(legs.text.ends_with(ending), "{}", legs.text);
    }
}
