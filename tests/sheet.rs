//! Answers on paper: nothing that an answer says gets lost on the way, whatever the plan.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, clippy::indexing_slicing, reason = "what is missing fails the test")]

#[path = "every_question/told.rs"]
mod told;

use boughline::Draft;
use boughline::error::{Error, Reason};
use boughline::link::{self, Link};
use boughline::quantity::View;
use boughline::question::{Effort, Question, field};
use boughline::words::{Format, Sheet, Subject, as_text, message, sheet_text, trip_sheet};
use serde_json::Value;
use told::told;

fn effort() -> Effort {
    Effort::samples(100)
}

fn golden() -> Vec<Link> {
    let table = std::fs::read_to_string("tests/data/golden.tsv").expect("the table is there");
    table.lines().map(|line| link::read(line.split('\t').next().unwrap_or_default())).collect()
}

/// What is missing by its noun, what is wrong in its sentence.
fn lack(error: &Error, view: View) -> String {
    match (&error.reason, error.fields.as_slice()) {
        (Reason::Needed, [one]) => field(one).expect("a field").noun.to_owned(),
        _ => message(error, view),
    }
}

/// The answer as it crosses to JavaScript, or the sentences about what is wrong.
fn answer(question: Question, draft: &Draft, view: View) -> Result<Value, Vec<String>> {
    told(question, draft, &[view], effort())
        .map(|mut told| told.reports.remove(0))
        .map_err(|errors| errors.iter().map(|error| lack(error, view)).collect())
}

/// Everything in an answer that is a sentence or a figure, but workings, charts and the pieces of drawings.
fn said(value: &Value, key: &str, told: &mut Vec<String>) {
    const UNSAID: &[&str] = &["workings", "chart", "slip", "levels", "ropes", "fields", "glance"];
    const IDS: &[&str] = &["id", "kind", "standing", "attached", "place", "ends", "state"];
    match value {
        Value::String(text) if !IDS.contains(&key) && !text.is_empty() => told.push(text.clone()),
        // The ids of sources, and the stops of a step, whose sentence tells them.
        Value::Array(list) if key == "sources" && list.iter().all(Value::is_string) => {}
        Value::Array(_) if key == "rope" => {}
        Value::Array(list) => list.iter().for_each(|value| said(value, key, told)),
        Value::Object(map) => {
            for (key, value) in map.iter().filter(|(key, _)| !UNSAID.contains(&key.as_str())) {
                // A figure in a table stands under the noun of its column.
                let named = map.contains_key("value") && key == "noun";
                if !named {
                    said(value, key, told);
                }
            }
        }
        _ => {}
    }
}

/// Markdown without its escapes.
fn unescaped(text: &str) -> String {
    text.replace('\\', "")
}

fn of_question(question: Question, link: &Link, format: Format) -> String {
    as_text(Subject::Answer(question), &link.draft, link.view, effort(), format, "https://example.org/")
}

#[test]
fn the_text_of_an_answer_says_all_that_the_answer_says() {
    for link in golden() {
        let question = link.question.expect("a question");
        let mut wanted = Vec::new();
        said(&answer(question, &link.draft, link.view).expect("in order"), "", &mut wanted);
        assert!(wanted.len() > 15, "{wanted:?}");
        for text in
            [of_question(question, &link, Format::Text), unescaped(&of_question(question, &link, Format::Markdown))]
        {
            for wanted in &wanted {
                assert!(text.contains(wanted), "{wanted}\nis not in\n{text}");
            }
        }
    }
}

#[test]
fn an_answer_that_cannot_be_given_says_on_paper_what_it_needs() {
    for question in Question::ALL {
        let link = link::read("bodyMass=12&crotchHeight=9m");
        let text = of_question(*question, &link, Format::Text);
        for error in answer(*question, &link.draft, link.view).expect_err("too little") {
            assert!(text.contains(&error), "{error}\n{text}");
        }
        assert!(text.contains("height of the crotch: 9 m"), "what was entered is there: {text}");
    }
}

fn trip(link: &Link) -> (Sheet, String) {
    let sheet = trip_sheet(&link.draft, link.view, effort());
    let text = sheet_text(&sheet, Format::Text, "");
    (sheet, text)
}

#[test]
fn the_trip_sheet_loses_no_caution_nothing_missing_and_no_error() {
    const HEAD: &[Question] = &[
        Question::CanIClimb,
        Question::Loads,
        Question::RopeLength,
        Question::CutPlan,
        Question::ComingDown,
        Question::Rescue,
    ];
    for link in golden() {
        let (_, text) = trip(&link);
        let by_strength = text.contains("by strength alone within reach on paper\n")
            || text.contains("\nBy strength alone within reach on paper;");
        for question in HEAD {
            let wanted = match answer(*question, &link.draft, link.view) {
                Err(errors) => errors,
                Ok(answer) => {
                    let mut wanted = Vec::new();
                    let first = if *question == Question::CutPlan { "shopping" } else { "first" };
                    for key in [first, "cautions", "missing", "verdict"] {
                        said(answer.get(key).unwrap_or(&Value::Null), key, &mut wanted);
                    }
                    wanted
                }
            };
            for wanted in wanted.into_iter().filter(|wanted| !by_strength || wanted != "Within reach on paper") {
                assert!(text.contains(&wanted), "{question:?}: {wanted}\nis not in\n{text}");
            }
        }
    }
}

#[test]
fn what_stands_against_a_plan_stands_with_its_verdict() {
    let within = "bodyMass=80kg&climbHeight=9m&rig=tail-3&stature=1.75m&timeAllowed=1h&measuredPull=800N&gripRight=500N&gripLeft=500N&wayDown=descend&secondPerson=rescuer";
    for (more, stands, against) in [
        // 30 s to notice, 30 s to unlock and 18 s to let down are within the clock.
        ("&anchor=base-lowerable&crotchHeight=13m&ropeOwned=60m", true, ""),
        ("&anchor=canopy&crotchHeight=13m&ropeOwned=60m", false, "nobody gets you to the ground in time"),
        ("&anchor=base-lowerable&crotchHeight=13m&ropeOwned=25m", false, "the rope you have ends about"),
    ] {
        let (sheet, text) = trip(&link::read(&format!("{within}{more}")));
        let [_, verdict, next, ..] = sheet.sections.as_slice() else { panic!("{text}") };
        assert_eq!(verdict.blocks[0].text == "Within reach on paper", stands, "{text}");
        assert_eq!(next.id == "against", !stands, "{text}");
        assert!(stands || next.blocks[0].items.iter().any(|line| line.contains(against)), "{text}");
        assert!(stands || !text.contains("Within reach on paper"), "{text}");
    }
    // What is not answered is no leave either.
    for unanswered in ["", "&anchor=base-lowerable", "&crotchHeight=13m"] {
        let (_, text) = trip(&link::read(&format!("{within}{unanswered}")));
        assert!(text.contains("\nBy strength alone within reach on paper; the rest is not answered\n"), "{text}");
    }
}

#[test]
fn an_empty_plan_says_in_every_section_what_it_needs() {
    let (sheet, text) = trip(&Link::default());
    let needs: Vec<_> =
        sheet.sections.iter().filter(|section| !section.needs.is_empty()).map(|section| section.id).collect();
    assert_eq!(needs, ["verdict", "before", "rig", "coming-down", "rescue", "loads", "rope", "cords", "shopping"]);
    assert!(text.contains("This is arithmetic, not training."), "{text}");
    assert!(text.contains("Who gets me down: ____"), "{text}");
}

#[test]
fn a_rig_that_nobody_chose_is_drawn_as_one_that_was_taken_for_granted() {
    let of = |rig: &str| trip(&link::read(&format!("bodyMass=80kg&climbHeight=11m&measuredPull=520N{rig}"))).1;
    let taken = "Reckoned on a 3:1 on the rope’s own tail until you choose a rig.";
    let text = of("");
    let rig = text.split("The rig\n").nth(1).expect("a part of the rig");
    assert!(rig.contains(taken), "{rig}");
    assert!(!of("&rig=tail-3").contains(taken));
}

#[test]
fn one_wrong_field_hides_nothing_that_does_not_ask_for_it() {
    let (sheet, text) =
        trip(&link::read("bodyMass=80kg&climbHeight=11m&rig=tail-3&anchor=canopy&crotchHeight=12m&gripRight=hard"));
    let answered = |id: &str| {
        sheet.sections.iter().any(|section| section.id == id && section.needs.is_empty() && section.wrong.is_empty())
    };
    assert!(!answered("verdict") && answered("rope"), "{text}");
}

#[test]
fn the_link_of_a_trip_sheet_leads_back_to_the_same_answers() {
    for link in golden() {
        let (sheet, _) = trip(&link);
        let read = link::read(&sheet.link);
        assert_eq!((read.question, read.notices.len()), (None, 0), "{}", sheet.link);
        assert!(sheet.link.contains("&q=trip-sheet&"), "{}", sheet.link);
        for question in Question::ALL {
            assert_eq!(
                answer(*question, &read.draft, read.view).map(|answer| answer["first"].clone()),
                answer(*question, &link.draft, link.view).map(|answer| answer["first"].clone()),
                "{question:?} {}",
                sheet.link
            );
        }
    }
}

#[test]
fn nothing_that_was_typed_is_markdown() {
    let draft = Draft::new().set("cords", "2 ~ 6 mm ~ 1.8 m ~ *a* <b> |c| [d](e)");
    let text = as_text(Subject::Answer(Question::CutPlan), &draft, View::default(), effort(), Format::Markdown, "");
    assert!(!text.contains("*a*") && !text.contains("<b>") && !text.contains("[d](e)"), "{text}");
    assert!(text.contains("\\*a\\* \\<b\\> \\|c\\| \\[d\\](e)"), "{text}");
}

#[test]
fn the_link_stands_at_the_end_as_a_forum_takes_it() {
    let link = link::read("q=rope-length&crotchHeight=12m&anchor=base");
    let text = of_question(Question::RopeLength, &link, Format::Markdown);
    assert!(
        text.contains("\n<https://example.org/#v=1&q=rope-length&f=1&u=si&crotchHeight=12m&anchor=base>\n"),
        "{text}"
    );
    let bare = as_text(Subject::TripSheet, &link.draft, link.view, effort(), Format::Text, "");
    assert!(bare.contains("\n#v=1&q=trip-sheet&f=1&u=si&"), "{bare}");
    let version = concat!("Boughline ", env!("CARGO_PKG_VERSION"), ", figures 1.\n");
    assert!(text.ends_with(version) && bare.ends_with(version), "{bare}");
}

#[test]
#[ignore = "prints a trip sheet to look at"]
fn looked_at() {
    let link = link::read(
        "bodyMass=80kg&climbHeight=11m&rig=tail-3&anchor=base-lowerable&crotchHeight=13m&secondPerson=rescuer&wayDown=descend&stature=1.75m&measuredPull=620N&gripRight=420N&hitchCord=8mm&ropeDiameter=11mm&cordUse=distel&ropeOwned=45m&limbDiameter=20cm&species=white-oak",
    );
    println!(
        "{}",
        sheet_text(
            &trip_sheet(&link.draft, link.view, Effort::FULL),
            Format::Text,
            "https://example.org/trip-sheet.html"
        )
    );
    for question in Question::ALL {
        println!("{}", of_question(*question, &link, Format::Markdown));
    }
}
