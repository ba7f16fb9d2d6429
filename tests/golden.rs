//! Links as they were published, and what they came to: the same inputs for ever, and with the same version of the
//! figures the same answer.
//!
//! `data/golden.tsv`: a link, and every figure of its answer as likely, low and high in SI. When a change is meant to
//! alter an answer, raise `link::FIGURES`, say so in CHANGELOG.md, and add rows for the new version: the old rows stay,
//! and are from then on only read. `GOLDEN=write cargo test --test golden` fills in the figures of rows that have none.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, reason = "a row that is out of order fails the test")]

use boughline::field::{Kind, Said};
use boughline::link::{self, FIGURES, Link, Notice};
use boughline::question::{
    Effort, Question, advantage, can_i_climb, coming_down, cut_length, cut_plan, loads, rescue, rope_length,
};
use boughline::words::{
    Figure, advantage_report, cord_report, cut_report, descent_report, loads_report, report, rescue_report, rope_report,
};

const TABLE: &str = "tests/data/golden.tsv";

fn rows() -> Vec<(String, String)> {
    let text = std::fs::read_to_string(TABLE).expect("the table is there");
    let row = |line: &str| {
        line.split_once('\t')
            .map_or((line.to_owned(), String::new()), |(link, figures)| (link.to_owned(), figures.to_owned()))
    };
    text.lines().map(row).collect()
}

/// Every figure of the answer to a link, in the order they are shown.
fn figures(link: &Link) -> String {
    let figures: Vec<Figure> = match link.question {
        Some(Question::CanIClimb) => {
            let inputs = can_i_climb::Inputs::of(&link.draft).expect("in order");
            report(&can_i_climb::ask(&inputs, Effort::FULL), link.view).figures
        }
        Some(Question::RopeLength) => {
            let inputs = rope_length::Inputs::of(&link.draft).expect("in order");
            rope_report(&rope_length::ask(&inputs), link.view).figures
        }
        Some(Question::CutLength) => {
            let inputs = cut_length::Inputs::of(&link.draft).expect("in order");
            cord_report(&cut_length::ask(&inputs), link.view).figures
        }
        Some(Question::Advantage) => {
            let inputs = advantage::Inputs::of(&link.draft).expect("in order");
            let report = advantage_report(&advantage::ask(&inputs, Effort::FULL), link.view);
            report.figures.into_iter().chain(report.rigs.into_iter().flat_map(|rig| rig.figures)).collect()
        }
        Some(Question::Loads) => {
            let inputs = loads::Inputs::of(&link.draft).expect("in order");
            let report = loads_report(&loads::ask(&inputs, Effort::FULL), link.view);
            let parts = report.states.into_iter().flat_map(|state| state.parts).flat_map(|part| [part.load, part.peak]);
            report.figures.into_iter().chain(report.limb.figures).chain(parts).collect()
        }
        Some(Question::CutPlan) => {
            let inputs = cut_plan::Inputs::of(&link.draft).expect("in order");
            let report = cut_report(&cut_plan::ask(&inputs, Effort::FULL), link.view);
            report.figures.into_iter().chain(report.kinds.into_iter().flat_map(|kind| kind.figures)).collect()
        }
        Some(Question::ComingDown) => {
            let inputs = coming_down::Inputs::of(&link.draft).expect("in order");
            descent_report(&coming_down::ask(&inputs, Effort::FULL), link.view).figures
        }
        Some(Question::Rescue) => {
            let inputs = rescue::Inputs::of(&link.draft).expect("in order");
            let report = rescue_report(&rescue::ask(&inputs), link.view);
            let ways = report.ways.into_iter().filter_map(|way| way.total);
            let hauls = report.hauls.into_iter().flat_map(|haul| [haul.pull, haul.people]);
            report.figures.into_iter().chain(ways).chain(hauls).collect()
        }
        _ => panic!("no question that is known here"),
    };
    let number = |value: Option<f64>| value.map_or("endless".to_owned(), |value| format!("{value:?}"));
    let one = |figure: &Figure| {
        format!("{}={},{},{}", figure.id, number(figure.value), number(figure.low), number(figure.high))
    };
    figures.iter().map(one).collect::<Vec<_>>().join(" ")
}

fn is_of_these_figures(link: &str) -> bool {
    link.contains(&format!("&f={FIGURES}&"))
}

#[test]
fn every_published_link_is_read_whole() {
    for (link, _) in rows() {
        let read = link::read(&link);
        let others = read.notices.iter().filter(|notice| !matches!(notice, Notice::OtherFigures(_))).count();
        assert_eq!((others, read.question.is_some()), (0, true), "{link}: {:?}", read.notices);
        assert_eq!(read.notices.is_empty(), is_of_these_figures(&link), "{link}");
    }
}

/// A question without one could come to anything.
#[test]
fn every_question_has_a_published_link() {
    let asked: Vec<Question> = rows().iter().filter_map(|(link, _)| link::read(link).question).collect();
    for question in Question::ALL {
        assert!(asked.contains(question), "{}: add a link to {TABLE}", question.id());
    }
}

#[test]
fn a_link_of_these_figures_is_written_as_it_was() {
    for (link, _) in rows().into_iter().filter(|(link, _)| is_of_these_figures(link)) {
        let read = link::read(&link);
        let question = read.question.expect("read whole");
        assert_eq!(link::write(question, &read.draft, read.view), Some(link));
    }
}

#[test]
fn a_link_of_these_figures_comes_to_what_it_came_to() {
    let mut rows = rows();
    let write = std::env::var("GOLDEN").is_ok_and(|what| what == "write");
    let mut checked = 0;
    for (link, wanted) in rows.iter_mut().filter(|(link, _)| is_of_these_figures(link)) {
        let found = figures(&link::read(link));
        if write && wanted.is_empty() {
            wanted.clone_from(&found);
        }
        assert_eq!(found, *wanted, "{link}: another answer needs another version of the figures");
        checked += 1;
    }
    if write {
        let lines: Vec<String> = rows.iter().map(|(link, figures)| format!("{link}\t{figures}\n")).collect();
        std::fs::write(TABLE, lines.concat()).expect("the table can be written");
    }
    assert!(checked >= 20, "some twenty plans of these figures");
}

/// A module without a question writes out all of that question's choices into a link to it.
#[test]
fn a_link_that_says_the_other_defaults_too_comes_to_the_same() {
    let mut added = 0;
    for (link, _) in rows().into_iter().filter(|(link, _)| is_of_these_figures(link)) {
        let mut read = link::read(&link);
        let wanted = figures(&read);
        for row in read.question.expect("read whole").fields() {
            if let Kind::Choice { likely: Some(likely), .. } = row.kind
                && read.draft.get(row.id).is_none()
            {
                read.draft.put(row.id, Said::Text(likely.to_owned()));
                added += 1;
            }
        }
        assert_eq!(figures(&read), wanted, "{link}");
    }
    assert!(added > 20, "some were left out: {added}");
}
