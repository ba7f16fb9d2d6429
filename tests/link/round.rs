//! Out and back: the same bits.

use super::VIEWS;
use super::plans::{draft, plans};
use super::write;
use boughline::Draft;
use boughline::field::{Reading, Row};
use boughline::link::read;
use boughline::question::can_i_climb::{Inputs, ask};
use boughline::question::{Effort, Question};
use proptest::prelude::*;
use proptest::test_runner::Config;

/// What a field comes to, to the last bit; a choice by its place, a text as links carry it.
fn bits(row: &Row, draft: &Draft) -> Option<(u64, Option<String>)> {
    let said = draft.get(row.id)?;
    Some(match row.reading(said).ok()? {
        Reading::Si(si) => (si.to_bits(), None),
        Reading::Choice(place) => (place as u64, None),
        Reading::Text(_) => (0, row.linked(said)),
    })
}

/// The plainest letters: those that no chat, mail or spreadsheet takes for the end of an address or for an escape.
fn is_plain(letter: char) -> bool {
    letter.is_ascii_alphanumeric() || ".-~,:&=".contains(letter)
}

proptest! {
    #![proptest_config(Config { cases: 512, failure_persistence: None, ..Config::default() })]

    #[test]
    fn a_plan_comes_back_to_the_same_bits(plan in plans(), view in prop::sample::select(VIEWS.to_vec())) {
        let sent = draft(&plan);
        let fragment = write(Question::CanIClimb, &sent, view);
        let link = read(&fragment);
        prop_assert_eq!(&link.notices, &[]);
        prop_assert_eq!(link.question, Some(Question::CanIClimb));
        prop_assert_eq!(link.view, view);
        for row in Question::CanIClimb.fields() {
            let sent = bits(row, &sent);
            prop_assert!(sent.is_none() || sent == bits(row, &link.draft), "{} in {}", row.id, fragment);
        }
        prop_assert_eq!(Inputs::of(&link.draft), Inputs::of(&sent));
        prop_assert_eq!(write(Question::CanIClimb, &link.draft, view), fragment, "written again");
    }

    #[test]
    fn a_link_is_made_of_plain_letters_and_ends_in_one(plan in plans(), view in prop::sample::select(VIEWS.to_vec())) {
        let fragment = write(Question::CanIClimb, &draft(&plan), view);
        prop_assert!(fragment.chars().all(is_plain), "{}", fragment);
        prop_assert!(fragment.ends_with(|last: char| last.is_ascii_alphanumeric()), "{}", fragment);
        for part in fragment.split('&') {
            prop_assert_eq!(part.matches('=').count(), 1, "{}", part);
        }
    }

    #[test]
    fn whoever_follows_a_link_has_the_same_answer(plan in plans()) {
        let sent = draft(&plan);
        let link = read(&write(Question::CanIClimb, &sent, VIEWS[0]));
        let answer = |draft: &Draft| ask(&Inputs::of(draft).expect("in order"), Effort::samples(50));
        prop_assert_eq!(answer(&sent), answer(&link.draft));
    }
}
