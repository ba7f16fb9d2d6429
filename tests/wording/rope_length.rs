//! What is told about a rope: headline, what decides, cautions, items, errors.

use super::{SI, US, variant, variants};
use boughline::error::Reason;
use boughline::link;
use boughline::quantity::{Decimal, View};
use boughline::question::rope_length::{Answer, Caution, Inputs, ask};
use boughline::words::{RopeReport, error_lines, message, rope_report};
use std::collections::BTreeSet;

/// A crotch at 11 m, unless the plan says otherwise.
fn answer(more: &str) -> Answer {
    let link = link::read(&format!("crotchHeight=11m&{more}"));
    assert_eq!(link.notices, [], "{more}");
    ask(&Inputs::of(&link.draft).unwrap_or_else(|errors| panic!("{more}: {:?}", error_lines(&errors, SI))))
}

fn told(more: &str, view: View) -> RopeReport {
    rope_report(&answer(more), view)
}

const SET: &str = "Setting it decides: the end goes up, over and down to be tied, and beside it lies the tail that will hang from the knot to the ground.";
const SET_LOOP: &str = "Setting it decides: the end goes up, over and down to be tied, and the loop is then drawn up.";
const DOWN: &str = "Going down decides: with the stopper in its end the rope must reach the ground.";
const START: &str = "Starting decides: the rig itself takes rope, back and forth, on top of the way over the crotch.";
const LOWERED: &str =
    "Being let down decides: beside the way up, over and down, as much again lies at the foot to let out.";
const HAULED: &str =
    "Being let down decides: with you on the ground the rope still goes through all that a helper hauls with.";

#[rustfmt::skip]
const HEADLINES: &[(&str, &str, &str, &str)] = &[
    ("anchor=canopy", "About 36 m of rope; 39 if everything takes the most it may.", "About 118 ft of rope; 127 if everything takes the most it may.", SET),
    ("anchor=canopy-cord", "About 25 m of rope; 28 if everything takes the most it may.", "About 82 ft of rope; 91 if everything takes the most it may.", SET_LOOP),
    ("anchor=base", "About 27 m of rope; 31 if everything takes the most it may.", "About 87 ft of rope; 100 if everything takes the most it may.", DOWN),
    ("anchor=base&rig=tail-3", "About 27 m of rope; 32 if everything takes the most it may.", "About 89 ft of rope; 106 if everything takes the most it may.", START),
    ("anchor=base-lowerable", "About 37 m of rope; 40 if everything takes the most it may.", "About 120 ft of rope; 130 if everything takes the most it may.", LOWERED),
    ("rig=ground-3", "About 29 m of rope; 36 if everything takes the most it may.", "About 95 ft of rope; 117 if everything takes the most it may.", HAULED),
    ("anchor=canopy&overCrotch=30cm&anchorKnot=1m&ropeTail=40cm&ropeSpare=1m", "About 36 m of rope.", "About 118 ft of rope.", SET),
    ("anchor=canopy&overCrotch=0m&anchorKnot=0m&ropeTail=0m&ropeSpare=0m", "About 33 m of rope.", "About 109 ft of rope.", SET),
];

#[test]
fn every_state_that_can_decide_has_its_two_sentences() {
    let mut met = BTreeSet::new();
    for (more, si, us, second) in HEADLINES {
        for (view, first) in [(SI, si), (US, us)] {
            let told = told(more, view);
            assert_eq!((told.first.as_str(), told.second.as_str()), (*first, *second), "{more}");
        }
        met.insert(*second);
    }
    assert_eq!(met.len(), 6);
}

#[test]
fn the_defaults_are_named() {
    assert_eq!(
        told("anchor=canopy", SI).assumed,
        "Reckoned with, unless you say otherwise: rig, hand over hand, 1:1; lower hitch above the ground, 1.5 m; rope over the crotch, 30 cm; rope in the anchor's knot, 1 m; stopper and tail below it, 40 cm; rope to spare, 1 m."
    );
    let at_the_foot = told("anchor=base&rig=tail-3&hitchHeight=5ft&overCrotch=1ft&ropeTail=1ft&ropeSpare=3ft", US);
    assert_eq!(at_the_foot.assumed, "Reckoned with, unless you say otherwise: rope in the tie at the foot, 8 ft 2 in.");
    let all = "anchor=base&rig=tail-3&hitchHeight=5ft&overCrotch=1ft&anchorKnot=2m&ropeTail=1ft&ropeSpare=3ft";
    assert_eq!(told(all, SI).assumed, "");
}

const ALIKE: &str = "";

#[rustfmt::skip]
const CAUTIONS: &[(&str, &str, bool, &str, &str)] = &[
    ("anchor=canopy", "arithmetic", true, "This is arithmetic, not training. A qualified climber checks the rig and the tree; makers' instructions and labels, local codes and licensed practice win over any number here.", ALIKE),
    ("anchor=canopy", "stopper", true, "Tie a stopper in the end before anyone is on the rope, so that the end cannot run through the hitch. It takes about 23 cm of rope, and a tail of at least 10 cm.", "Tie a stopper in the end before anyone is on the rope, so that the end cannot run through the hitch. It takes about 9 in of rope, and a tail of at least 4 in."),
    ("anchor=base&ropeTail=32cm", "short-end", true, "What is left for the stopper is less than it takes with its tail, about 33 cm.", "What is left for the stopper is less than it takes with its tail, about 13 in."),
    ("anchor=base", "estimated-height", true, "A height judged from the ground is an estimate. Measure it with the throw line that hangs over the crotch.", ALIKE),
    ("anchor=base", "lay-it-out", true, "Lay the rope out and measure it before anyone climbs; no label and no sum stands in for that.", ALIKE),
    ("anchor=base", "base-anchor-load", true, "A base anchor nearly doubles the load on the crotch: plan on twice what hangs from it, and more in jerks.", ALIKE),
    ("anchor=base", "plain-tie", true, "Nobody can be let down from a plain tie: that takes a device that pays out, and about 3 times the height of rope.", ALIKE),
    ("anchor=base-lowerable", "lowering-helper", true, "You are let down only by a device that pays out under load, by a helper at the foot who has rehearsed it with you low down, and only as far as the rope goes that lies ready there.", ALIKE),
    ("anchor=canopy-hitch", "lock-release", true, "Lock the hitch that a cord undoes, and keep its cord out of reach of climber, branches and bystanders, while anyone is on the rope: one pull on it drops them.", ALIKE),
    ("anchor=canopy-link", "cord-snags", true, "A retrieval cord snags on branches and feet: see that it runs free, and keep it out of reach of climber and bystanders while anyone is on the rope.", ALIKE),
    ("anchor=canopy-link", "link-shut", true, "Screw the quick link shut with the rope at its long ends, and look at it again before each climb.", ALIKE),
    ("anchor=base&footOffset=3m", "swing", true, "A rope that starts away from under its crotch swings you into the stem as you leave the ground. Start below it, or have somebody ease you across.", ALIKE),
    ("anchor=base&ropeOwned=20m", "rope-ends-above", true, "On the way down the rope you have ends about 5.2 m above the ground, stopper and all. Take a longer rope, or a lower crotch.", "On the way down the rope you have ends about 17 ft 1 in above the ground, stopper and all. Take a longer rope, or a lower crotch."),
    ("anchor=base&ropeOwned=26m", "rope-ends-above", true, "On the way down the rope you have may end as much as 2.4 m above the ground, stopper and all. Take a longer rope, or a lower crotch.", "On the way down the rope you have may end as much as 7 ft 11 in above the ground, stopper and all. Take a longer rope, or a lower crotch."),
    ("anchor=canopy&ropeOwned=12m", "rope-too-short", true, "The rope you have is about 23.7 m too short for setting the rope.", "The rope you have is about 77 ft 10 in too short for setting the rope."),
    ("anchor=canopy&ropeOwned=30m", "rope-too-short", true, "The rope you have is about 5.7 m too short for setting the rope.", "The rope you have is about 18 ft 9 in too short for setting the rope."),
    ("anchor=canopy&ropeOwned=36m", "rope-too-short", true, "The rope you have may be as much as 2.4 m too short for setting the rope.", "The rope you have may be as much as 7 ft 11 in too short for setting the rope."),
    ("anchor=canopy", "not-lowerable", true, "From the ground nobody can let you down on this rope. Plan how somebody gets you down if you cannot move.", ALIKE),
    ("anchor=canopy", "anchor-tail", true, "The tail that pulls the anchor down must be locked, and out of the way of climber, branches and bystanders, while anyone is on the rope.", ALIKE),
];

/// Of rigs that may be in the catalogue or not, so these are told of answers made up for the purpose.
const OF_OTHER_RIGS: &[(Caution, &str, &str)] = &[
    (Caution::CordApart, "cord-apart", "The haul cord is a rope of its own and is not reckoned here."),
    (
        Caution::NoAnchor,
        "no-anchor",
        "The rope of this rig only runs over the crotch: the anchor that was chosen counts for nothing here.",
    ),
];

#[test]
fn every_caution_about_a_rope_has_its_sentence() {
    let mut met = BTreeSet::new();
    for (more, id, grave, si, us) in CAUTIONS {
        for (view, wanted) in [(SI, si), (US, if *us == ALIKE { si } else { us })] {
            let lines = told(more, view).cautions;
            let found = lines.iter().find(|line| line.id == *id).unwrap_or_else(|| panic!("{id} is wanted: {lines:?}"));
            assert_eq!((found.text.as_str(), found.grave), (*wanted, *grave));
        }
        met.extend(answer(more).cautions.iter().map(variant));
    }
    for (caution, id, wanted) in OF_OTHER_RIGS {
        let mut answer = answer("anchor=base");
        answer.cautions = vec![*caution];
        let lines = rope_report(&answer, SI).cautions;
        let found: Vec<_> = lines.iter().map(|line| (line.id, line.grave, line.text.as_str())).collect();
        assert_eq!(found, [(*id, false, *wanted)]);
        met.insert(variant(caution));
    }
    assert_eq!(met, variants(include_str!("../../src/question/rope_length/answer.rs"), "Caution"));
}

#[test]
fn a_caution_about_a_rope_is_there_only_where_it_holds() {
    let ids = |more: &str| told(more, SI).cautions.iter().map(|line| line.id).collect::<Vec<_>>();
    let always = ["arithmetic", "stopper", "estimated-height", "lay-it-out"];
    let base = |last| [&always[..], &["base-anchor-load", last]].concat();
    assert_eq!(ids("anchor=base"), base("plain-tie"));
    assert_eq!(ids("anchor=base-lowerable"), base("lowering-helper"));
    for (anchor, last) in [
        ("canopy-cord", &["cord-snags"][..]),
        ("canopy-link", &["cord-snags", "link-shut"]),
        ("canopy-hitch", &["lock-release"]),
    ] {
        assert_eq!(ids(&format!("anchor={anchor}")), [&always[..], &["not-lowerable"], last].concat());
    }
    assert_eq!(ids("anchor=base&footOffset=0m&ropeOwned=31m"), base("plain-tie"));
    assert_eq!(ids("anchor=canopy"), [&always[..], &["not-lowerable", "anchor-tail"]].concat());
    assert!(!ids("anchor=base&ropeTail=33cm").contains(&"short-end"));
}

/// A piece: what it is called, and how it comes about.
type Item = (&'static str, &'static str, &'static str);

const UP: Item = ("up", "up to the crotch", "From where it starts to the crotch.");
const OVER: Item = ("overCrotch", "over the crotch", "Judged, for want of your own figure.");
const DOWNWARDS: Item = ("down", "down from the crotch", "From the crotch to where it ends or is held.");
const KNOT: Item = ("anchorKnot", "in the knot at the crotch", "Judged, for want of your own figure.");
const TIE: Item = ("anchorKnot", "in the tie at the foot", "Judged, for want of your own figure.");
const TAIL: Item = ("tail", "tail that pulls it down", "From the knot at the crotch to the ground.");
const END: Item = ("ropeTail", "stopper and tail below it", "Your own figure.");
const SPARE: Item = ("ropeSpare", "to spare", "Judged, for want of your own figure.");
const IN_RIG: Item = (
    "inRig",
    "back and forth in the rig",
    "Every strand beside the one that goes down, with the moving hitch as far off as it comes: 1.11 m (93 cm to 1.28 m).",
);

type State = (&'static str, &'static str, &'static [Item]);

const HITCH: Item = ("anchorKnot", "in the hitch at the crotch", "Judged, for want of your own figure.");
const DEVICE: Item = ("anchorKnot", "in the device at the foot", "Judged, for want of your own figure.");
const RESERVE: Item = ("reserve", "to let you down with", "From the crotch to the ground again.");
const REDIRECT: Item = ("redirectRope", "for redirects", "Your own figure.");
const ASIDE: Item = (
    "footOffset",
    "out to where you stand",
    "For each part that comes down there: straight down and then along the ground, or at the least aslant.",
);

#[rustfmt::skip]
const CANOPY: &[State] = &[
    ("set", "setting the rope", &[UP, OVER, DOWNWARDS, KNOT, TAIL, END, SPARE]),
    ("start", "starting the climb", &[OVER, DOWNWARDS, IN_RIG, KNOT, TAIL, END, SPARE]),
    ("top", "topping out", &[OVER, DOWNWARDS, IN_RIG, KNOT, TAIL, END, SPARE]),
    ("down", "going down", &[OVER, DOWNWARDS, KNOT, TAIL, END, SPARE]),
    ("retrieve", "bringing the rope down", &[UP, OVER, DOWNWARDS, KNOT, TAIL]),
];

#[rustfmt::skip]
const RELEASED: &[State] = &[
    ("set", "setting the rope", &[UP, OVER, DOWNWARDS, HITCH, END, SPARE]),
    ("start", "starting the climb", &[OVER, DOWNWARDS, IN_RIG, HITCH, END, SPARE]),
    ("top", "topping out", &[OVER, DOWNWARDS, IN_RIG, HITCH, END, SPARE]),
    ("down", "going down", &[OVER, DOWNWARDS, HITCH, END, SPARE]),
    ("retrieve", "bringing the rope down", &[OVER, DOWNWARDS]),
];

#[rustfmt::skip]
const BASE: &[State] = &[
    ("set", "setting the rope", &[UP, OVER, DOWNWARDS, TIE, END, SPARE]),
    ("start", "starting the climb", &[UP, OVER, DOWNWARDS, IN_RIG, TIE, END, SPARE]),
    ("top", "topping out", &[UP, OVER, DOWNWARDS, IN_RIG, TIE, END, SPARE]),
    ("down", "going down", &[UP, OVER, DOWNWARDS, TIE, END, SPARE]),
    ("retrieve", "bringing the rope down", &[UP, OVER, DOWNWARDS]),
];

#[rustfmt::skip]
const LOWERABLE: &[State] = &[
    ("set", "setting the rope", &[UP, OVER, DOWNWARDS, REDIRECT, ASIDE, DEVICE, END, SPARE]),
    ("start", "starting the climb", &[UP, OVER, DOWNWARDS, REDIRECT, ASIDE, IN_RIG, DEVICE, END, SPARE]),
    ("top", "topping out", &[UP, OVER, DOWNWARDS, REDIRECT, ASIDE, IN_RIG, DEVICE, END, SPARE]),
    ("down", "going down", &[UP, OVER, DOWNWARDS, REDIRECT, ASIDE, DEVICE, END, SPARE]),
    ("lowered", "being let down", &[UP, OVER, DOWNWARDS, REDIRECT, ASIDE, IN_RIG, DEVICE, RESERVE, END, SPARE]),
    ("retrieve", "bringing the rope down", &[UP, OVER, DOWNWARDS, REDIRECT, ASIDE]),
];

#[test]
fn every_state_has_its_pieces_in_words() {
    for (anchor, wanted) in [
        ("canopy", CANOPY),
        ("canopy-hitch", RELEASED),
        ("base", BASE),
        ("base-lowerable&footOffset=2m&redirectRope=1m", LOWERABLE),
    ] {
        let told = told(&format!("anchor={anchor}&rig=tail-3&ropeTail=50cm"), SI);
        assert_eq!(told.states.len(), wanted.len());
        for (state, (id, noun, items)) in told.states.iter().zip(wanted) {
            assert_eq!((state.id, state.noun), (*id, *noun));
            let found: Vec<_> = state.items.iter().map(|item| (item.id, item.noun, item.workings.concat())).collect();
            let wanted: Vec<_> = items.iter().map(|(id, noun, working)| (*id, *noun, (*working).to_owned())).collect();
            assert_eq!(found, wanted, "{anchor} {id}");
        }
    }
}

/// A plan, what to buy for it, and how high the rope goes that somebody has.
type Told = (&'static str, &'static str, &'static str);

#[rustfmt::skip]
const BOUGHT: &[Told] = &[
    ("crotchHeight=11m&anchor=canopy", "The shortest to buy is 40 m; about 4.3 m of it is left over, 1.6 m at the least.", ""),
    ("crotchHeight=12m&anchor=base-lowerable&ropeStock=45m--39.5m", "The shortest to buy is 45 m; about 5.8 m of it is left over, 2.6 m at the least. 39.5 m would reach only where everything comes out as likely: do not count on it.", ""),
    ("crotchHeight=30m&anchor=canopy", "None of the lengths to buy reaches if everything takes the most it may: the longest is 60 m, and it takes 96 m.", ""),
    ("crotchHeight=11m&anchor=base&ropeStock=27m", "None of the lengths to buy reaches if everything takes the most it may: the longest is 27 m, and it takes 31 m. 27 m would reach only where everything comes out as likely: do not count on it.", ""),
    ("crotchHeight=11m&anchor=base&ropeOwned=40m", "The shortest to buy is 40 m; about 13.8 m of it is left over, 9.6 m at the least. 30 m would reach only where everything comes out as likely: do not count on it.", "Your 40 m goes over a crotch up to 15.8 m high if everything takes the most it may, 17.9 m as likely as not. For this one it reaches on paper."),
    ("crotchHeight=11m&anchor=base&ropeOwned=27m", "The shortest to buy is 40 m; about 13.8 m of it is left over, 9.6 m at the least. 30 m would reach only where everything comes out as likely: do not count on it.", "Your 27 m goes over a crotch up to 9.3 m high if everything takes the most it may, 11.4 m as likely as not. For this one it may be too short."),
    ("crotchHeight=11m&anchor=base&ropeOwned=6m", "The shortest to buy is 40 m; about 13.8 m of it is left over, 9.6 m at the least. 30 m would reach only where everything comes out as likely: do not count on it.", "Your 6 m goes over a crotch up to 0.9 m high as likely as not, and over none if everything takes the most it may. For this one it is too short."),
    ("crotchHeight=11m&anchor=base&ropeOwned=4m", "The shortest to buy is 40 m; about 13.8 m of it is left over, 9.6 m at the least. 30 m would reach only where everything comes out as likely: do not count on it.", "Your 4 m goes over no crotch. For this one it is too short."),
];

#[test]
fn what_to_buy_and_what_one_has_are_told() {
    for (plan, buy, owned) in BOUGHT {
        let inputs = Inputs::of(&link::read(plan).draft).expect(plan);
        let told = rope_report(&ask(&inputs), SI);
        assert_eq!((told.buy.as_str(), told.owned.as_str()), (*buy, *owned), "{plan}");
    }
    let feet = told("anchor=canopy", US);
    assert_eq!(
        feet.buy,
        "The shortest to buy is 150 ft; about 32 ft 6 in of it is left over, 23 ft 8 in at the least. 120 ft would reach only where everything comes out as likely: do not count on it."
    );
}

#[test]
fn a_rope_without_a_height_says_how_high_it_goes() {
    let inputs = Inputs::of(&link::read("ropeOwned=30m&anchor=base").draft).expect("in order");
    let told = rope_report(&ask(&inputs), SI);
    assert_eq!(
        told.first,
        "Your 30 m goes over a crotch up to 10.8 m high if everything takes the most it may, 12.9 m as likely as not."
    );
    assert_eq!((told.second.as_str(), told.buy.as_str(), told.owned.as_str()), (DOWN, "", ""));
    let errors = Inputs::of(&link::read("ropeOwned=5m&anchor=base").draft).expect_err("it goes over none");
    let messages: Vec<_> = errors.iter().map(|error| message(error, SI)).collect();
    assert_eq!(
        messages,
        [
            "With its knots and all this rope goes over no crotch if everything takes the most it may. Enter a longer one, or a height, and the answer says how much rope it takes."
        ]
    );
}

#[test]
fn a_length_to_buy_that_cannot_be_read_is_pointed_at() {
    for (stock, wanted) in [
        ("20m--thirty", "“thirty” among the lengths: “thirty” is not a number with a unit. Write it like “45 m”."),
        ("20m--1m", "“1m” among the lengths: 1m is outside 2 m to 400 m."),
        ("20m--30", "“30” among the lengths: write the unit too: 30 m or 30 ft."),
    ] {
        let errors =
            Inputs::of(&link::read(&format!("crotchHeight=9m&anchor=base&ropeStock={stock}")).draft).expect_err(stock);
        let messages: Vec<_> = errors.iter().map(|error| message(error, SI)).collect();
        assert_eq!(messages, [wanted]);
    }
}

#[test]
fn a_rope_that_only_runs_over_has_its_knot_at_the_fast_end() {
    let mut answer = answer("anchor=base");
    answer.anchor = None;
    let told = rope_report(&answer, SI);
    let knot = told.states.iter().flat_map(|state| &state.items).find(|item| item.id == "anchorKnot").unwrap();
    assert_eq!(knot.noun, "in the knot at its fast end");
}

#[test]
fn the_sums_are_shown() {
    let canopy = told("anchor=canopy", SI);
    let workings: Vec<_> =
        canopy.figures.iter().map(|figure| (figure.id, figure.noun, figure.workings.clone())).collect();
    assert_eq!(
        workings,
        [
            ("ropeNeeded", "rope needed", vec!["The most that any of these takes: setting the rope 35.7 m; starting the climb 23.2 m; topping out 14.15 m; going down 24.7 m; bringing the rope down 34.3 m.".to_owned(), "Stretch counts for nothing: under load a rope only grows longer.".to_owned()]),
            ("ropeToBuy", "rope to buy", vec!["The shortest that reaches if everything takes the most it may, of 20 m; 30 m; 40 m; 45 m; 50 m; 60 m.".to_owned()]),
            ("ropeLeftOver", "left over of it", vec!["40 m less 35.7 m".to_owned()]),
            ("ropeOverHeight", "rope for each unit of height", vec!["rope needed ÷ height of the crotch = 35.7 m ÷ 11 m".to_owned(), "An anchor that its own tail pulls down takes 3, before knots.".to_owned()]),
            ("presetLine", "preset line, left in the tree", vec!["A loop over the crotch and down both sides, and its knot.".to_owned()]),
        ]
    );
    let totals: Vec<_> = canopy.states.iter().map(|state| state.total.workings.clone()).collect();
    assert_eq!(totals.first(), Some(&vec!["11 m + 0.3 m + 11 m + 1 m + 11 m + 0.4 m + 1 m".to_owned()]));
    let last = ["11 m + 0.3 m + 11 m + 1 m + 11 m", "The stopper comes out first, or it jams on the way."];
    assert_eq!(totals.last().unwrap(), &last);
    let of = |more: &str, id: &str| {
        let figure = told(more, SI).figures.into_iter().find(|figure| figure.id == id).expect(id);
        (figure.text, figure.workings)
    };
    let lowerable = [
        "rope needed ÷ height of the crotch = 36.2 m ÷ 11 m",
        "An anchor that can let you down takes 3, before the device.",
    ];
    assert_eq!(of("anchor=base-lowerable", "ropeOverHeight").1, lowerable);
    assert_eq!(of("anchor=base", "ropeOverHeight").1, ["rope needed ÷ height of the crotch = 26.2 m ÷ 11 m"]);
    let cord = ("11.3 m".to_owned(), vec!["From the crotch to where you stand, and its knot.".to_owned()]);
    assert_eq!(of("anchor=canopy-hitch", "retrievalCord"), cord);
    let above = ("5.2 m".to_owned(), vec!["Going down, without anything to spare, less your rope.".to_owned()]);
    assert_eq!(of("anchor=base&ropeOwned=20m", "ropeEndsAbove"), above);
    let highest = ("12.9 m".to_owned(), vec!["The height that takes 30 m of rope.".to_owned()]);
    assert_eq!(of("anchor=base&ropeOwned=30m", "highestCrotch"), highest);
}

#[test]
fn a_rope_is_told_in_the_units_and_with_the_mark_of_the_view() {
    let us = told("anchor=base&rig=tail-3", View { decimal: Decimal::Comma, ..US });
    let shown = us.states.into_iter().flat_map(|state| state.items.into_iter().chain([state.total]));
    let mut texts = vec![us.first, us.assumed];
    texts.extend(
        shown.chain(us.figures).flat_map(|figure| figure.workings.into_iter().chain(figure.range).chain([figure.text])),
    );
    for text in texts {
        let metric = text.split([' ', '(', ')', ',', '.', ';']).find(|word| ["cm", "mm", "m"].contains(word));
        assert_eq!(metric, None, "{text}");
        let point = text
            .as_bytes()
            .windows(3)
            .find(|three| matches!(three, [before, b'.', after] if before.is_ascii_digit() && after.is_ascii_digit()));
        assert_eq!(point, None, "{text}");
    }
}

#[test]
fn what_a_rope_lacks_is_asked_for() {
    let complaints = |plan: &str, view: View| {
        let errors = Inputs::of(&link::read(plan).draft).expect_err("something is wrong with it");
        errors.iter().map(|error| message(error, view)).collect::<Vec<_>>()
    };
    let anchor = "Anchor is needed. Choose one: at the crotch, its tail to the ground; at the crotch, with a retrieval cord; at the crotch, on a quick link; at the crotch, on a releasable hitch; at the foot of the tree; at the foot, in a lowering device.";
    assert_eq!(complaints("", SI), ["Height of the crotch is needed. Write it like “12 m”.", anchor]);
    assert_eq!(complaints("", US), ["Height of the crotch is needed. Write it like “39 ft”.", anchor]);
    let above = complaints("crotchHeight=3m&anchor=base&hitchHeight=4m", SI);
    assert_eq!(above, ["The lower hitch must be below the crotch: measure both heights from the ground."]);
    assert_eq!(
        complaints("crotchHeight=3m&anchor=base&hitchHeight=1.5cm", SI),
        ["Lower hitch above the ground: 1.5cm is outside 20 cm to 10 m. Did you mean 1.5 m?"]
    );
    assert_eq!(variant(&Reason::HitchAboveCrotch), "HitchAboveCrotch");
}
