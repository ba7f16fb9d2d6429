//! What is told about a cutting plan: what to buy, what is proved, why there is none, what is wrong in a list.

use super::{SI, US, variant, variants};
use boughline::cord::list::{Wrong, read_cords, read_hanks};
use boughline::link;
use boughline::quantity::View;
use boughline::question::cut_plan::{Answer, Caution, Inputs, Outcome, ask};
use boughline::question::{Effort, cut_length};
use boughline::words::{CutReport, cut_report, error_lines};
use std::collections::BTreeSet;

fn answer(plan: &str) -> Answer {
    let link = link::read(plan);
    assert_eq!(link.notices, [], "{plan}");
    ask(
        &Inputs::of(&link.draft).unwrap_or_else(|errors| panic!("{plan}: {:?}", error_lines(&errors, SI))),
        Effort::FULL,
    )
}

fn told(plan: &str, view: View) -> CutReport {
    cut_report(&answer(plan), view)
}

const PROVED: &str = "Proved: of every cord nothing less would do.";

/// The plan, the headline and the second sentence, and what is said of the first kind of cord.
#[rustfmt::skip]
const PLANS: &[(&str, &str, &str, &str)] = &[
    ("cords=2~6mm~1.8m", "Buy 1 hank of 5 m of 6 mm nylon cord.", PROVED, "Buy 1 hank of 5 m of 6 mm nylon cord."),
    ("cords=2~6mm~1.8m,1~7mm~2.1m~aramid&hanks=any~4m", "Buy 1 hank of 4 m of 6 mm nylon cord and 1 hank of 4 m of 7 mm aramid cord.", PROVED, "Buy 1 hank of 4 m of 6 mm nylon cord."),
    ("cords=2~6mm~1.8m&hanks=6mm~4m~0", "Nothing is to buy: these cords come out of what you have.", PROVED, "Cut what you have: 1 hank of 4 m of 6 mm nylon cord."),
    ("cords=3~6mm~1.8m&hanks=6mm~4m~0~x1,6mm~5m~9", "Buy 1 hank of 5 m of 6 mm nylon cord.", PROVED, "Buy 1 hank of 5 m of 6 mm nylon cord, and cut what you have: 1 hank of 4 m of 6 mm nylon cord."),
    ("cords=5~6mm~1.8m&hanks=6mm~4m", "Buy 3 hanks of 4 m of 6 mm nylon cord.", PROVED, "Buy 3 hanks of 4 m of 6 mm nylon cord."),
    ("cords=1~6mm~9m~haul%20cord&hanks=6mm~5m", "No plan for the 6 mm nylon cord: the haul cord of 9 m is longer than any hank gives, 4.95 m. Add a longer hank.", "", "No plan for the 6 mm nylon cord: the haul cord of 9 m is longer than any hank gives, 4.95 m. Add a longer hank."),
    ("cords=1~6mm~60m,1~7mm~2m", "No plan for the 6 mm nylon cord: the longest cord of 60 m is longer than any hank gives, 50 m. Add a longer hank.", "For the rest: Buy 1 hank of 5 m of 7 mm nylon cord. ", "No plan for the 6 mm nylon cord: the longest cord of 60 m is longer than any hank gives, 50 m. Add a longer hank."),
    ("cords=2~6mm~4m&hanks=6mm~5m~x1", "No plan for the 6 mm nylon cord: the hanks there are do not do for these cords. Add hanks, or more of one.", "", "No plan for the 6 mm nylon cord: the hanks there are do not do for these cords. Add hanks, or more of one."),
];

#[test]
fn what_to_buy_is_told() {
    for (plan, first, second, kind) in PLANS {
        let told = told(plan, SI);
        assert_eq!(
            (told.first.as_str(), told.second.trim_end(), told.kinds[0].text.as_str()),
            (*first, second.trim_end(), *kind),
            "{plan}"
        );
    }
    assert_eq!(told("cords=1~6mm~9m", US).first, "Buy 1 hank of 32 ft 10 in of 6 mm nylon cord.");
}

#[test]
fn what_else_the_rig_takes_is_on_the_list_and_its_haul_cord_among_the_cords() {
    let told = told("rig=haul-cord-3&haulCord=7mm&hanks=any~10m", SI);
    assert_eq!(told.kinds[0].hanks[0].cuts[0].noun, "haul cord");
    assert_eq!(
        told.shopping,
        [
            "1 hank of 10 m of 7 mm nylon cord",
            "2 x pulley with bearings for the rope to turn round",
            "connectors, 4 at the most: one for each hitch, pulley and ring, fewer where two share one",
            "the rope, as long as “How much rope?” says",
        ]
    );
    assert_eq!(
        told.notes,
        [
            "Not on the plan, unless you entered it, though the rig takes it: 2 x hitch cord. Choose a hitch as what the cord is for.",
            "On the plan for the rig, as long as it may have to be: 1 x haul cord of 5.5 m.",
        ]
    );
    let own = "cords=1~6mm~1m&rig=own&ownRig=tied.tree--hitch.upper--hitch.climber--turn.climber.carabiner--turn.upper.ring--hand.climber";
    let told = super::cut_plan::told(own, SI);
    assert!(told.shopping.contains(&"1 x carabiner for the rope to turn round".to_owned()));
    assert!(told.shopping.iter().any(|line| line.starts_with("connectors, 3 at the most")), "{:?}", told.shopping);
    assert_eq!(answer("cords=1~6mm~1m").gear, None);
}

const PRUSIK: &str = "cordUse=prusik&ropeDiameter=11mm&hitchCord=6mm";

#[test]
fn a_cord_for_each_hitch_of_the_rig_is_on_the_plan_as_long_as_it_may_have_to_be() {
    for more in ["", "&freeLeg=30cm&cordEnds=sewn", "&cordCut=1m&cameOut=15cm", "&hitchCoils=4&cordCut=2m"] {
        let cord = format!("{PRUSIK}{more}");
        let length = cut_length::ask(&cut_length::Inputs::of(&link::read(&cord).draft).expect(&cord)).cut.total;
        for (rig, hitches) in [("hand-over-hand", 1), ("tail-3", 2), ("tail-3&backup=second-hitch", 3)] {
            let answer = answer(&format!("{cord}&rig={rig}"));
            let cords: Vec<f64> = answer.kinds[0].kind.cords.iter().map(|cord| cord.length).collect();
            assert_eq!(cords, vec![length.high; hitches], "{rig}{more}");
        }
    }
    assert_eq!(
        told(&format!("{PRUSIK}&rig=tail-3&cordCut=1m"), SI).notes,
        ["On the plan for the rig, as long as it may have to be: 2 x prusik loop of 1 m."]
    );
}

#[test]
fn a_cord_that_cannot_be_worked_out_is_not_on_the_plan_and_what_is_missing_is_told() {
    const LACKS: &str = "Not on the plan, unless you entered it, though the rig takes it: ";
    for (cord, note) in [
        ("cordUse=prusik&hitchCord=6mm", "1 x prusik loop. Diameter of the rope is needed. Write it like “11 mm”."),
        ("cordUse=foot-loop&slingCord=6mm", "1 x hitch cord. Choose a hitch as what the cord is for."),
        (
            "cordUse=prusik&hitchCord=6mm&ropeDiameter=11mm&freeLeg=20cm&finishedLength=40cm",
            "1 x prusik loop. Free legs in all and finished length follow from each other: say one of them.",
        ),
    ] {
        let told = told(&format!("cords=1~6mm~1m&rig=hand-over-hand&{cord}"), SI);
        assert_eq!(told.notes, [format!("{LACKS}{note}")], "{cord}");
        assert_eq!(told.kinds[0].hanks[0].cuts.len(), 1, "{cord}");
    }
}

#[test]
fn the_rope_to_buy_and_its_retrieval_cord_are_on_the_list_unless_a_rope_is_enough() {
    // 3 x 14 m, and nothing else; or 3 x 552 in, each begun.
    let bare = "cords=1~6mm~1m&rig=hand-over-hand&crotchHeight=14m&anchor=canopy&overCrotch=0m&anchorKnot=0m&ropeTail=0m&ropeSpare=0m";
    let lines = |more: &str, view| told(&format!("{bare}{more}"), view).shopping.split_off(2);
    assert_eq!(lines("", SI), ["a rope of 45 m: it takes 42 m at the most"]);
    assert_eq!(lines("", US), ["a rope of 150 ft: it takes 138 ft at the most"]);
    assert_eq!(lines("&ropeOwned=41m", SI), lines("", SI));
    assert_eq!(lines("&ropeStock=20m--30m", SI), ["a rope of 42 m or more, longer than any of the lengths to buy"]);
    assert!(lines("&ropeOwned=42m", SI).is_empty());
    let had = told(&format!("{bare}&ropeOwned=42m"), SI);
    assert_eq!(had.notes[1..], ["Your rope of 42 m reaches on paper: it takes 42 m at the most."]);
    assert!(had.figures.iter().all(|figure| figure.id != "ropeToBuy"));
    // The height, and at the most a metre to tie it.
    let cord = told(&bare.replace("=canopy", "=canopy-cord"), SI);
    assert_eq!(
        cord.shopping.last().map(String::as_str),
        Some("a retrieval cord of 15 m, as long as it may have to be")
    );
    for unsaid in [
        bare.replace("&anchor=canopy", ""),
        bare.replace("&crotchHeight=14m", ""),
        format!("{}&hitchHeight=3m", bare.replace("=14m", "=2.5m")),
    ] {
        assert_eq!(
            told(&unsaid, SI).shopping.last().map(String::as_str),
            Some("the rope, as long as “How much rope?” says")
        );
    }
}

/// An answer with something else proved of its first plan.
fn proof(plan: &str, change: fn(&mut boughline::cord::cutting::Best, &mut bool)) -> String {
    let mut answer = answer(plan);
    let kind = &mut answer.kinds[0];
    let Outcome::Plan(best) = &mut kind.outcome else { panic!("{plan} has a plan") };
    change(best, &mut kind.more);
    cut_report(&answer, SI).kinds[0].proof.clone()
}

#[test]
fn what_is_proved_is_told_and_how_far_off_it_is_at_the_most() {
    let plan = "cords=2~6mm~1.8m";
    let priced = "cords=2~6mm~1.8m&hanks=any~5m~12.5";
    assert_eq!(
        proof(plan, |_, _| {}),
        "Proved: no plan buys less, and none that buys as much takes fewer hanks. Nor does any of those leave a longer single piece."
    );
    assert_eq!(
        proof(priced, |best, more| (best.remainder_proved, *more) = (false, true)),
        "Proved: no plan costs less, and none that costs as much takes fewer hanks. Whether one of those leaves a longer single piece is not proved. Going on may still change it."
    );
    assert_eq!(
        proof(plan, |best, _| (best.proved, best.least_cost) = (false, 40_000)),
        "Not proved: this is 5 m, and whether any plan comes to less is not known, only that none comes to less than 4 m."
    );
    assert_eq!(
        proof(priced, |best, _| (best.proved, best.least_cost) = (false, 1_000)),
        "Not proved: this is 12.50, and whether any plan comes to less is not known, only that none comes to less than 10.00."
    );
    assert_eq!(
        proof("cords=5~6mm~1.8m&hanks=6mm~4m", |best, _| (best.proved, best.least_hanks) = (false, 2)),
        "Proved: no plan buys less. Not proved: whether one takes fewer than these 3 hanks; none takes fewer than 2."
    );
    let mut open = answer(plan);
    if let Outcome::Plan(best) = &mut open.kinds[0].outcome {
        best.proved = false;
    }
    assert_eq!(
        cut_report(&open, SI).second,
        "Not proved of 6 mm nylon cord: below stands how far off it is at the most."
    );
}

#[test]
fn a_kind_without_a_plan_says_why() {
    let mut answer = answer("cords=2~6mm~1.8m");
    for (outcome, text) in [
        (
            Outcome::RunsOut { proved: false },
            "No plan for the 6 mm nylon cord was found with the hanks there are, and whether there is one is not known. Add hanks, or more of one.",
        ),
        (
            Outcome::TooMuch,
            "No plan for the 6 mm nylon cord: more than 200 cords are too many for one plan. Cut them in two plans.",
        ),
    ] {
        answer.kinds[0].outcome = outcome;
        assert_eq!(cut_report(&answer, SI).kinds[0].text, text);
    }
}

#[test]
fn every_caution_is_told() {
    let met: BTreeSet<String> = answer("cords=1~6mm~1m").cautions.iter().map(variant).collect();
    assert_eq!(met, variants(include_str!("../../src/question/cut_plan/answer.rs"), "Caution"));
    assert!(!answer("cords=1~6mm~1m&hanks=any~5m").cautions.contains(&Caution::UsualHanks));
}

const LIKE: &str = "Write it like “2 ~ 6 mm ~ 1.8 m ~ foot loop”.";

#[test]
fn what_is_wrong_in_a_list_is_told_with_its_row() {
    let sixty_one = ["1~6mm~1m"; 61].join(",");
    let rows: &[(&str, &str, String)] = &[
        ("cords", "2 ~ 6 mm", format!("Row 1 does not say the cut length. {LIKE}")),
        ("cords", "2~6mm~1.8m,1~~2m", format!("Row 2 does not say the diameter. {LIKE}")),
        ("cords", "2 ~ 6 mm ~ 1.8", "“1.8” in row 1: write the unit too: 1.8 m or 1.8 ft.".to_owned()),
        ("cords", "1.5 ~ 6 mm ~ 2 m", format!("“1.5” in row 1 is no whole number. {LIKE}")),
        (
            "cords",
            "1~6mm~2m~nylon~loop~other",
            format!("“other” in row 1 has no place there, or is said twice. {LIKE}"),
        ),
        (
            "cords",
            "100~6mm~1m,101~6mm~1m",
            "With row 2 these are more than 200 cords. Cut them in two plans.".to_owned(),
        ),
        ("cords", &sixty_one, "Row 61 is one too many: 60 rows are the most. Leave some out.".to_owned()),
        (
            "hanks",
            "6 mm ~ 50 m ~ red",
            "“red” in row 1: “red” is not a number with a unit. Write it like “42.00”.".to_owned(),
        ),
        (
            "hanks",
            "8 kg ~ 50 m",
            "“8 kg” in row 1: “8 kg” is a mass, and a length is wanted. Write it like “8 mm”.".to_owned(),
        ),
    ];
    let mut met = BTreeSet::new();
    for (field, text, sentence) in rows {
        let draft = boughline::Draft::new().set("cords", "1 ~ 6 mm ~ 1 m").set(field, text);
        let lines = error_lines(&Inputs::of(&draft).expect_err(text), SI);
        assert_eq!(lines.iter().map(|line| &line.message).collect::<Vec<_>>(), [sentence], "{text}");
        met.extend(read_cords(text).err().filter(|_| *field == "cords").map(|mistake| variant(&mistake.wrong)));
        met.extend(read_hanks(text).err().filter(|_| *field == "hanks").map(|mistake| variant(&mistake.wrong)));
    }
    assert_eq!(met, variants(include_str!("../../src/cord/list/mistake.rs"), "Wrong"));
    assert_eq!(variant(&Wrong::NotWhole), "NotWhole");
}
