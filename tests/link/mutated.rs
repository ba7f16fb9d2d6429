//! Every question's plans out and back, and links with one mistake in them.

use super::drawn::plan_of;
use super::plans::{Plan, draft};
use super::told::told;
use super::{VIEWS, write};
use boughline::field::{Reading, Said};
use boughline::link::read;
use boughline::question::{Effort, Question, field};
use proptest::prelude::*;
use proptest::test_runner::Config;

/// A question and a plan for it.
fn asked() -> impl Strategy<Value = (Question, Plan)> {
    let question = prop::sample::select(Question::ALL.to_vec());
    question.prop_flat_map(|question| (Just(question), plan_of(question)))
}

/// One mistake at a letter: the letter lost, doubled, swapped with the next, a stray sign before it or in its place; or
/// the part that it is in, said again.
fn mistaken(link: &str, at: usize, how: usize) -> String {
    let letters: Vec<char> = link.chars().collect();
    let at = at % letters.len();
    let (before, behind) = letters.split_at(at);
    let text = |letters: &[char]| letters.iter().collect::<String>();
    let (here, after) = (behind[0], text(&behind[1..]));
    let before = text(before);
    match how {
        0 => before + &after,
        1 => format!("{before}{here}{here}{after}"),
        2 => match behind {
            [one, two, rest @ ..] => format!("{before}{two}{one}{}", text(rest)),
            _ => format!("{here}{before}"),
        },
        3 => format!("{before}%{here}{after}"),
        4 => format!("{before}%{after}"),
        _ => {
            let part = link.split('&').scan(0, |end, part| {
                *end += part.len() + 1;
                Some((*end, part))
            });
            let part = part.filter(|(end, _)| *end > at).map(|(_, part)| part).next().unwrap_or_default();
            format!("{link}&{part}")
        }
    }
}

/// What each field that is said comes to; a text as links carry it. None where one cannot be read, which is told.
fn readings(link: &str) -> Option<Vec<(String, Reading)>> {
    let link = read(link);
    let reading = |id: &str| {
        let (row, said) = (field(id)?, link.draft.get(id)?);
        let reading = row.reading(said).ok()?;
        let canonical = matches!(reading, Reading::Text(_)).then(|| row.linked(said)).flatten();
        Some((id.to_owned(), canonical.map_or(reading, Reading::Text)))
    };
    link.draft.ids().map(reading).collect()
}

/// Whether one id is the other with its number at the end lost or changed: a turn for its neighbour.
fn is_neighbour(one: &str, other: &str) -> bool {
    let stem = |id: &str| id.trim_end_matches(|letter: char| letter.is_ascii_digit()).to_owned();
    one != other && stem(one) == stem(other)
}

proptest! {
    #![proptest_config(Config { cases: 512, failure_persistence: None, max_shrink_iters: 300, ..Config::default() })]

    /// Whatever is asked: the same readings, the same answer, and the same link when it is written again.
    #[test]
    fn every_question_s_plan_comes_back_with_the_same_answer((question, plan) in asked(), view in prop::sample::select(VIEWS.to_vec())) {
        let sent = draft(&plan);
        let fragment = write(question, &sent, view);
        let link = read(&fragment);
        prop_assert_eq!((link.question, link.view, &link.notices), (Some(question), view, &Vec::new()));
        for id in sent.ids() {
            let (row, said) = (field(id).expect("a field"), sent.get(id).expect("said"));
            let back = link.draft.get(id).expect("it comes back");
            let same = match (row.reading(said), row.reading(back)) {
                (Ok(Reading::Si(one)), Ok(Reading::Si(other))) => one.to_bits() == other.to_bits(),
                (Ok(Reading::Text(_)), Ok(Reading::Text(_))) => row.linked(said) == row.linked(back),
                (one, other) => one.is_ok() && one == other,
            };
            prop_assert!(same, "{}: {:?} came back as {:?}", id, said, back);
        }
        prop_assert_eq!(write(question, &link.draft, view), fragment.clone(), "written again");
        // A default that the link writes out is then said, and some questions name only those that are not.
        let answer = |draft| {
            let mut reports = told(question, draft, &[view], Effort::samples(50)).map(|told| told.reports);
            for report in reports.iter_mut().flatten() {
                report.as_object_mut().map(|report| report.remove("assumed"));
            }
            reports
        };
        prop_assert!(answer(&sent) == answer(&link.draft), "{}", fragment);
    }
}

proptest! {
    #![proptest_config(Config { cases: 2_000, failure_persistence: None, max_shrink_iters: 300, ..Config::default() })]

    /// A mistake in the name of a part, in its marks or in the head is noticed. One in a value stays in its field: it is
    /// refused there, or stands there as it is written, and everything else is as it was.
    #[test]
    fn one_mistake_is_noticed_or_stays_in_its_field((question, plan) in asked(), view in prop::sample::select(VIEWS.to_vec()), at in any::<usize>(), how in 0..6_usize) {
        let link = write(question, &draft(&plan), view);
        let mistaken = mistaken(&link, at, how);
        let (Some(before), Some(after)) = (readings(&link), readings(&mistaken)) else { return Ok(()) };
        if !read(&mistaken).notices.is_empty() {
            return Ok(());
        }
        let not_in = |one: &[(String, Reading)], other: &[(String, Reading)]| {
            one.iter().filter(|said| !other.contains(said)).map(|(id, _)| id.clone()).collect::<Vec<_>>()
        };
        match (not_in(&before, &after).as_slice(), not_in(&after, &before).as_slice()) {
            ([], []) => prop_assert!(read(&mistaken).view == view && read(&mistaken).question == Some(question), "{}", mistaken),
            ([was], [is]) if was == is => {
                let said = read(&mistaken).draft.get(is).cloned();
                let stands = if let Some(Said::Text(text)) = said { mistaken.contains(&format!("{is}={text}")) } else { false };
                prop_assert!(stands, "{}", mistaken);
            }
            // A turn's number lost, and nobody at the turn before it: the one mistake in a name that is another name.
            ([was], [is]) => prop_assert!(is_neighbour(was, is), "{} became {} in {}", was, is, mistaken),
            (was, is) => prop_assert!(false, "{:?} became {:?} in {}", was, is, mistaken),
        }
    }
}
