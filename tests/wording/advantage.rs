//! What "Which advantage?" says, word for word.

use super::{SI, US};
use boughline::link::read;
use boughline::quantity::View;
use boughline::question::{Effort, advantage};
use boughline::words::{AdvantageReport, FeasibilityMap, advantage_report, map_report};

const PERSON: &str = "bodyMass=80kg&climbHeight=11m&stature=1.75m";

fn told(more: &str, view: View) -> AdvantageReport {
    let inputs = advantage::Inputs::of(&read(&format!("{PERSON}{more}")).draft).expect("in order");
    advantage_report(&advantage::ask(&inputs, Effort::FULL), view)
}

fn mapped(more: &str, view: View) -> FeasibilityMap {
    let inputs = advantage::Inputs::of(&read(&format!("{PERSON}{more}")).draft).expect("in order");
    map_report(&advantage::map(&inputs, 3, 3), view)
}

#[rustfmt::skip]
const SENTENCES: &[(&str, &str, &str)] = &[
    ("&measuredPull=520N",
        "With none of the rigs you haul yourself do you come to the height in time in four of five reckoned climbs. The lightest pull that one of them takes is about 167 N (17 kgf): self-haul on the rope's tail, 7:1.",
        "A stroke that gains more, more time, or a helper, is what it would take. Nor do the helper’s rigs succeed with the helper’s pull that is reckoned with."),
    ("&measuredPull=700N",
        "The least kit with which you come to the height in time in four of five reckoned climbs: self-haul on the rope's tail, 3:1. It takes about 328 N (33 kgf), 67 % of what your arms give, in about 76 strokes and 12 min with rests. None that succeeds on paper takes less than half of your strength.",
        "The nearest with no more kit than that, self-haul on a haul cord, 2:1, would take about 454 N (46 kgf) a pull. It is not yet a plan without a way down and somebody on the ground: try it at knee height first."),
    ("&measuredPull=1200N&hold=hand-loop&wayDown=descend&secondPerson=rescuer",
        "The least kit with which you come to the height in time in four of five reckoned climbs: moving rope, 2:1. It takes about 654 N (67 kgf), 78 % of what your arms give, in about 30 strokes and 6 min with rests. Easier to repeat: self-haul on the rope's tail, 3:1, at about 328 N (33 kgf) a pull.",
        "The nearest with no more kit than that, hand over hand, 1:1, would take about 863 N (88 kgf) a pull. Try it at knee height first."),
    ("&measuredPull=150N",
        "With none of the rigs you haul yourself do you come to the height in time in four of five reckoned climbs. The lightest pull that one of them takes is about 167 N (17 kgf): self-haul on the rope's tail, 7:1.",
        "A stroke that gains more, more time, or a helper, is what it would take. Nor do the helper’s rigs succeed with the helper’s pull that is reckoned with."),
    ("&measuredPull=150N&timeAllowed=4h",
        "With none of the rigs you haul yourself do you come to the height in time in four of five reckoned climbs. The lightest pull that one of them takes is about 167 N (17 kgf): self-haul on the rope's tail, 7:1.",
        "Arms and hands 1.8 times as strong, or so much less to lift, would bring it to one of five reckoned climbs. Nor do the helper’s rigs succeed with the helper’s pull that is reckoned with."),
    ("&measuredPull=150N&helperPull=450N&topTurn=bearing-pulley",
        "With none of the rigs you haul yourself do you come to the height in time in four of five reckoned climbs. The lightest pull that one of them takes is about 167 N (17 kgf): self-haul on the rope's tail, 7:1.",
        "A stroke that gains more, more time, or a helper, is what it would take. With somebody on the ground who hauls, this succeeds on paper: a helper hauls over the crotch, 3:1."),
    ("",
        "How strong you are is not known, so no rig can be named. The lightest pull that one of them takes is about 167 N (17 kgf): self-haul on the rope's tail, 7:1.",
        "Measure your pull and enter it; or enter your grip, or age and sex. The pull each rig takes stands below."),
    ("&trunk=cervical",
        "How strong you are is not known, so no rig can be named. The lightest pull that one of them takes is about 167 N (17 kgf): self-haul on the rope's tail, 7:1.",
        "Measure your pull and enter it. The pull each rig takes stands below."),
];

#[test]
fn the_two_sentences_name_the_least_rig_and_what_is_next() {
    for (more, first, second) in SENTENCES {
        let told = told(more, SI);
        assert_eq!((told.first.as_str(), told.second.as_str()), (*first, *second), "{more}");
    }
}

#[test]
fn gear_is_told_in_words() {
    let gear = |id: &str, view| told("", view).rigs.into_iter().find(|rig| rig.id == id).expect("there").gear;
    assert_eq!(gear("hand-over-hand", SI), Vec::<String>::new());
    assert_eq!(gear("tail-3", SI), ["2 pulleys with bearings", "1 more hitch and its cord"]);
    assert_eq!(
        gear("haul-cord-2", SI),
        ["1 pulley with bearings", "1 more hitch and its cord", "about 2.82 m of haul cord"]
    );
    assert_eq!(gear("haul-cord-2", US).last().map(String::as_str), Some("about 9 ft 3 in of haul cord"));
    assert_eq!(gear("ground-9", SI), ["4 pulleys with bearings", "2 more hitches and their cords"]);
}

#[test]
fn the_map_says_where_somebody_stands() {
    let you = |more, view| mapped(more, view).you.map(|place| place.text);
    assert_eq!(
        you("&measuredPull=520N", SI).as_deref(),
        Some("You, at 88 kg with kit and 520 N of pull: self-haul on a haul cord, 3:1.")
    );
    assert_eq!(
        you("&measuredPull=150N", US).as_deref(),
        Some("You, at 194 lb with kit and 34 lbf of pull: none of these rigs, at likely values.")
    );
    assert_eq!(you("", SI), None);
}

#[test]
fn nothing_here_sounds_like_leave_to_climb() {
    for (more, ..) in SENTENCES {
        let told = told(more, SI);
        for text in [&told.first, &told.second, &told.chart.text, &mapped(more, SI).text] {
            assert!(!text.to_lowercase().contains("safe"), "{text}");
        }
        assert!(told.cautions.iter().any(|caution| caution.id == "knee-height"), "{more}");
        assert!(told.cautions.iter().any(|caution| caution.id == "arithmetic"), "{more}");
    }
}
