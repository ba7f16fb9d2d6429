//! What was said is checked: every error at once, and no answer with one.

use boughline::Draft;
use boughline::cord::CordUse;
use boughline::error::{Error, Reason};
use boughline::field::Said;
use boughline::gear::Ends;
use boughline::quantity::View;
use boughline::question::Question;
use boughline::question::cut_length::{Answer, Caution, Inputs, ask};
use boughline::words::error_lines;

fn prusik() -> Draft {
    Draft::new().set("cordUse", "prusik").set("ropeDiameter", "11 mm").set("hitchCord", "8 mm")
}

fn answer(draft: &Draft) -> Answer {
    ask(&Inputs::of(draft).unwrap_or_else(|errors| panic!("{:?}", error_lines(&errors, View::default()))))
}

fn errors_of(draft: &Draft) -> Vec<Error> {
    Inputs::of(draft).expect_err("something is wrong with it")
}

fn named(errors: &[Error]) -> Vec<Vec<&str>> {
    errors.iter().map(|error| error.fields.iter().map(String::as_str).collect()).collect()
}

#[test]
fn each_wrong_thing_is_one_error_of_its_field() {
    let texts = ["", " ", "1,200", "1,200 m", "inf", "-1 m", "9999999 m", "two metres", "12 s", "<b>"];
    let mut wrongs: Vec<Said> = texts.map(|text| Said::Text(text.to_owned())).to_vec();
    wrongs.extend([f64::NAN, f64::INFINITY, -1.0, 1e300].map(Said::Number));
    wrongs.extend(["null", "undefined", "true or false", "a list", "an object"].map(Said::Other));
    for row in Question::CutLength.fields() {
        for wrong in &wrongs {
            // What it came out at needs what was cut.
            let mut draft = if row.id == "cameOut" { prusik().set("cordCut", "1.2 m") } else { prusik() };
            draft.put(row.id, wrong.clone());
            let errors = errors_of(&draft);
            let without_cut = row.id == "cordUse" || named(&errors) == [[row.id]];
            assert!(without_cut && named(&errors).contains(&vec![row.id]), "{}: {wrong:?}: {errors:?}", row.id);
            for line in error_lines(&errors, View::default()) {
                assert!(line.message.ends_with(['.', '?']) && line.message.len() > 20, "{line:?}");
            }
        }
    }
}

#[test]
fn what_is_needed_depends_on_what_the_cord_is_for() {
    assert_eq!(named(&errors_of(&Draft::new())), [["cordUse"]]);
    for cord_use in CordUse::ALL {
        let id = cord_use.named().id;
        let errors = errors_of(&Draft::new().set("cordUse", id));
        let wanted: &[&str] = match id {
            "own-hitch" => &["ropeDiameter", "hitchCord", "hitchCoils"],
            "garda" => &["hitchCord"],
            "foot-loop" | "hand-loop" | "bridge" | "lanyard" => &["slingCord"],
            "haul-cord" => &["haulCord", "rig"],
            _ => &["ropeDiameter", "hitchCord"],
        };
        assert_eq!(named(&errors).concat(), wanted, "{id}");
    }
}

#[test]
fn every_use_has_an_answer_with_each_of_its_ends() {
    for cord_use in CordUse::ALL {
        for ends in Ends::ALL {
            let draft = Draft::new().set("cordUse", cord_use.named().id).set("cordEnds", ends.named().id);
            let draft = draft.set("ropeDiameter", "12 mm").set("hitchCord", "8 mm").set("slingCord", "8 mm");
            let draft = draft.set("haulCord", "7 mm").set("rig", "haul-cord-4").set("hitchCoils", "5");
            let goes = cord_use.pattern().ends.contains(ends);
            assert_eq!(Inputs::of(&draft).is_ok(), goes, "{cord_use:?} {ends:?}");
            if !goes {
                assert_eq!(named(&errors_of(&draft)), [["cordEnds"]]);
                continue;
            }
            let answer = answer(&draft);
            let sewn = *ends == Ends::Sewn && cord_use.pattern().eyes != 1;
            assert_eq!((answer.cut.total.likely - answer.cut.run.likely).abs() < 1e-9, sewn, "{cord_use:?} {ends:?}");
        }
    }
}

#[test]
fn lengths_that_contradict_each_other_are_named_together() {
    let plan = |said: &[(&str, &str)]| said.iter().fold(prusik(), |draft, (id, text)| draft.set(id, text));
    for (said, fields, reason) in [
        (&[("freeLeg", "20 cm"), ("finishedLength", "30 cm")][..], ["freeLeg", "finishedLength"], Reason::TwoLengths),
        (&[("cordCut", "1 m"), ("freeLeg", "20 cm")], ["freeLeg", "cordCut"], Reason::CutAndWanted),
        (&[("cordCut", "1 m"), ("finishedLength", "30 cm")], ["finishedLength", "cordCut"], Reason::CutAndWanted),
        (&[("cameOut", "20 cm")], ["cordCut", "cameOut"], Reason::CameOutAlone),
    ] {
        let errors = errors_of(&plan(said));
        assert_eq!(named(&errors), [fields]);
        assert!(errors.iter().all(|error| error.reason == reason), "{errors:?}");
    }
    // A fit leaves room for what is wanted.
    let wanted = [("cordCut", "1.1 m"), ("cameOut", "20 cm"), ("freeLeg", "30 cm")];
    assert!(answer(&plan(&wanted)).make.fit.is_some());
}

#[test]
fn nonsense_is_refused() {
    let reason = |draft: Draft| errors_of(&draft).remove(0).reason;
    for (cut, out) in [("3 m", "20 cm"), ("60 cm", "59 cm"), ("40 cm", "2 m")] {
        assert!(matches!(reason(prusik().set("cordCut", cut).set("cameOut", out)), Reason::OddFit { .. }), "{cut}");
    }
    assert!(matches!(reason(prusik().set("cordCut", "50 cm")), Reason::TooShort { .. }));
    assert!(matches!(reason(prusik().set("finishedLength", "10 cm")), Reason::TooShort { .. }));
    for end in ["10 cm", "60 cm"] {
        assert!(matches!(reason(prusik().set("workingEnd", end)), Reason::WorkingEnd { .. }), "{end}");
    }
    let sewn = Draft::new().set("cordUse", "bridge").set("slingCord", "10 mm").set("cordEnds", "sewn");
    assert_eq!(reason(sewn.set("cordCut", "1 m")), Reason::SewnIsBought);
}

/// What belongs to another use of the cord is left alone: one plan is asked about many cords.
#[test]
fn what_another_cord_would_read_changes_nothing() {
    let loop_of = Draft::new().set("cordUse", "hand-loop").set("slingCord", "6 mm");
    let more = loop_of.clone().set("hitchCoils", "5").set("freeLeg", "30 cm").set("workingEnd", "10 cm");
    assert_eq!(answer(&loop_of).cut, answer(&more.set("rig", "tail-3").set("ropeDiameter", "11 mm")).cut);
}

#[test]
fn the_haul_cord_follows_the_rig() {
    let haul = |rig: &str| Draft::new().set("cordUse", "haul-cord").set("haulCord", "7 mm").set("rig", rig);
    for (rig, strands) in [("haul-cord-2", 2), ("haul-cord-3", 3), ("haul-cord-4", 4), ("haul-cord-5", 5)] {
        assert_eq!(answer(&haul(rig)).strands.map(|(count, _)| count), Some(strands), "{rig}");
    }
    for rig in ["tail-3", "hand-over-hand", "moving-rope"] {
        assert!(errors_of(&haul(rig)).iter().all(|error| error.reason == Reason::NoHaulCord), "{rig}");
        assert_eq!(answer(&haul(rig).set("finishedLength", "3 m")).strands, None);
    }
    let own = "tied tree, hitch upper, hitch climber\ntied climber, turn upper, hand climber";
    assert_eq!(answer(&haul("own").set("ownRig", own)).strands.map(|(count, _)| count), Some(2));
    assert_eq!(named(&errors_of(&haul("own"))), [["ownRig"]]);
}

/// Whether a caution is there, by the name of its variant.
fn warns(draft: &Draft, name: &str) -> bool {
    answer(draft).cautions.iter().any(|caution| format!("{caution:?}").starts_with(name))
}

#[test]
fn cautions_are_there_where_they_hold_and_only_there() {
    let prusik_of = |rope: &str, cord: &str| prusik().set("ropeDiameter", rope).set("hitchCord", cord);
    for (rope, cord, thick, thin, life, thin_rope) in [
        ("11 mm", "8 mm", false, false, false, false),
        ("11 mm", "9 mm", true, false, false, false), // 82 %
        ("11 mm", "9.5 mm", true, false, false, false),
        ("11 mm", "6 mm", false, true, true, false),
        ("11 mm", "7 mm", false, false, true, false),
        ("10 mm", "8 mm", false, false, false, true), // 80 % and 2 mm, neither over
        ("9.5 mm", "7.9 mm", true, false, true, true),
        ("0.5 in", "8 mm", false, false, false, false),
    ] {
        let draft = prusik_of(rope, cord);
        let found = ["TooThick", "TooThin", "ThinLifeCord", "ThinRope"].map(|name| warns(&draft, name));
        assert_eq!(found, [thick, thin, life, thin_rope], "{rope} {cord}");
    }
    // Blake's is tied with cord as thick as the line.
    let blakes = prusik_of("12 mm", "12 mm").set("cordUse", "blakes");
    assert!(!warns(&blakes, "TooThick") && warns(&blakes.clone().set("hitchCord", "13 mm"), "TooThick"));
    for (fibre, stiff) in [("nylon", false), ("polyester", false), ("aramid", true), ("hmpe", true)] {
        let draft = prusik().set("cordFibre", fibre);
        assert_eq!((warns(&draft, "Stiff"), warns(&draft, "Melts")), (stiff, true), "{fibre}");
    }
    assert!(warns(&prusik_of("13 mm", "10 mm"), "NoStandard"));
    assert!(!warns(&prusik_of("13 mm", "10 mm").set("hitchCordStrength", "20 kN"), "NoStandard"));
    let weak = prusik_of("11 mm", "4 mm").set("bodyMass", "200 kg");
    assert!(warns(&weak, "Weak") && !warns(&prusik().set("bodyMass", "80 kg"), "Weak"));
    for (id, field, life) in [("foot-loop", "slingCord", false), ("bridge", "slingCord", true)] {
        let draft = Draft::new().set("cordUse", id).set(field, "8 mm");
        assert_eq!(warns(&draft, "NoLifeLine"), !life, "{id}");
        assert!(!warns(&draft, "SetDressTest") && !warns(&draft, "Melts"), "{id}");
    }
    assert!(answer(&prusik()).cautions.contains(&Caution::SetDressTest));
}
