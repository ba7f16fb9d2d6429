//! What holds of any text at all. A fuzzer makes texts up; `tests/corpus.rs` keeps those that once meant something.

use super::typed;
use super::views::VIEWS;
use boughline::Draft;
use boughline::field::{Kind, Reading, Said};
use boughline::link;
use boughline::quantity::{Dimension, System, read, units, written};
use boughline::question::{Effort, Question, all_fields, field};
use boughline::reeving::notation;
use boughline::words::{Format, Subject, as_text};

/// How much of what a text could be is tried.
#[derive(Clone, Copy)]
pub(crate) enum Breadth {
    All,
    /// One of each list, another for almost every other text: a fuzzer comes to more texts in its time.
    #[allow(dead_code, reason = "the corpus asks for all")]
    One,
}

impl Breadth {
    fn of<'list, T>(self, list: &'list [T], text: &str) -> &'list [T] {
        let at = text.bytes().map(usize::from).sum::<usize>() % list.len();
        match self {
            Self::All => list,
            Self::One => &list[at..=at],
        }
    }
}

/// A text as a quantity of every kind, and in every field.
pub(crate) fn quantity(text: &str, breadth: Breadth) {
    for unit in breadth.of(&units().collect::<Vec<_>>(), text) {
        typed::quantity(text, unit.dimension, unit);
    }
    for dimension in Dimension::ALL.iter().copied() {
        let Ok(value) = read(text, dimension, None) else { continue };
        for view in VIEWS {
            let written = written(value, dimension, view);
            // Beyond 2^53 there is no figure, and nobody can read one.
            assert!(written == "—" || read(&written, dimension, None).is_ok(), "{text:?} written as {written:?}");
        }
    }
    for row in breadth.of(&all_fields(), text) {
        for view in breadth.of(&VIEWS, text) {
            typed::field(row, text, *view);
        }
    }
}

/// A text as a rig: what is read is the same rig in a link and tidied, and every other text is refused in words.
pub(crate) fn rig(text: &str, _: Breadth) {
    match notation::read(text) {
        Ok(rig) => {
            let linked = notation::canonical(text).expect("what can be read can be linked");
            assert_eq!(
                notation::read(&linked).map(|rig| rig.ropes.len()).ok(),
                Some(rig.ropes.len()),
                "{text:?} linked as {linked:?}"
            );
            assert_eq!(notation::canonical(&linked).as_deref(), Some(linked.as_str()), "{text:?} linked twice");
            for system in [System::Si, System::Us] {
                let tidied = notation::tidy(text, system);
                assert_eq!(
                    notation::canonical(&tidied).as_deref(),
                    Some(linked.as_str()),
                    "{text:?} tidied as {tidied:?}"
                );
            }
        }
        Err(_) => assert_eq!(notation::canonical(text), None, "{text:?} is refused, and linked all the same"),
    }
}

/// A text as a link: it is read without an error, and what it says is the same once written and read again.
pub(crate) fn link(text: &str, _: Breadth) {
    let said = link::read(text);
    for id in said.draft.ids() {
        assert!(field(id).is_some(), "{text:?} says something of {id:?}, which is no field");
    }
    for question in said.question.iter().copied() {
        let Some(written) = link::write(question, &said.draft, said.view) else { continue };
        let again = link::read(&written);
        assert_eq!(again.question, Some(question), "{written}");
        assert!(again.notices.is_empty(), "{written}");
        assert_eq!(again.view, said.view, "{written}");
        assert_eq!(link::write(question, &again.draft, again.view).as_deref(), Some(written.as_str()), "{text:?}");
    }
}

/// Few, since what holds of an answer holds of each of its samples.
const SAMPLES: u32 = 3;

/// A text as a link, and every question's answer to its plan: in sentences, with the cautions, and no number that is none.
pub(crate) fn answer(text: &str, breadth: Breadth) {
    let said = link::read(text);
    let draft = lighter(&said.draft);
    let numbers = in_numbers(&draft);
    let effort = Effort::samples(SAMPLES);
    let mut subjects: Vec<Subject> = Question::ALL.iter().copied().map(Subject::Answer).collect();
    subjects.push(Subject::TripSheet);
    for subject in breadth.of(&subjects, text).iter().copied() {
        let told = as_text(subject, &draft, said.view, effort, Format::Text, "");
        assert!(is_fit_to_read(&told, text), "{text:?}, {subject:?}:\n{told}");
        let of_numbers = as_text(subject, &numbers, said.view, effort, Format::Text, "");
        assert!(is_fit_to_read(&of_numbers, text), "{text:?}, {subject:?}:\n{of_numbers}");
        if let Subject::Answer(question) = subject {
            // What was entered is told as it was entered.
            let answer_of = |told: &str| told.split("\nWhat was entered").next().map(str::to_owned);
            assert_eq!(answer_of(&of_numbers), answer_of(&told), "{text:?}, {subject:?}, said in numbers");
            let answered = question.assumed(&draft).is_some();
            assert_eq!(told.contains("arithmetic, not training"), answered, "{text:?}, {subject:?}:\n{told}");
        }
    }
}

/// The draft without lists so long that the search for a way to cut them is all that happens.
fn lighter(draft: &Draft) -> Draft {
    let mut lighter = Draft::new();
    for id in draft.ids() {
        match draft.get(id) {
            Some(Said::Text(text))
                if text.len() > 400 && matches!(field(id).map(|row| row.kind), Some(Kind::Text(_))) => {}
            Some(said) => lighter.put(id, said.clone()),
            None => {}
        }
    }
    lighter
}

/// The draft with a number wherever a text says a quantity.
fn in_numbers(draft: &Draft) -> Draft {
    let mut numbers = Draft::new();
    for id in draft.ids() {
        let Some(said) = draft.get(id) else { continue };
        match field(id).map(|row| row.reading(said)) {
            Some(Ok(Reading::Si(si))) => numbers.put(id, Said::Number(si)),
            _ => numbers.put(id, said.clone()),
        }
    }
    numbers
}

/// Whether what is shown has no number that is none, and no place that was left unfilled; a refusal quotes what was typed.
fn is_fit_to_read(shown: &str, typed: &str) -> bool {
    let quoted = |wrong| typed.contains('%') || typed.contains(wrong);
    !["NaN", "inf ", "inf,", "-0 ", "{", "}", "\u{e000}"].iter().any(|wrong| shown.contains(wrong) && !quoted(wrong))
}
