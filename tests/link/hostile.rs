//! Links that nobody wrote in good faith.

use boughline::link::{Notice, read, write};
use boughline::quantity::View;
use boughline::question::can_i_climb::{Inputs, ask};
use boughline::question::{Effort, Question, all_fields, cut_length, rope_length};
use boughline::words::{cord_report, error_lines, notice, report, rope_report};
use proptest::prelude::*;
use proptest::test_runner::Config;

/// All that is done with a link; nothing of it may panic.
fn follow(text: &str) {
    let link = read(text);
    for found in &link.notices {
        assert!(notice(found).ends_with('.'));
    }
    match Inputs::of(&link.draft) {
        Ok(inputs) => assert!(!report(&ask(&inputs, Effort::samples(50)), link.view).figures.is_empty()),
        Err(errors) => assert!(!error_lines(&errors, link.view).is_empty()),
    }
    match rope_length::Inputs::of(&link.draft) {
        Ok(inputs) => assert!(!rope_report(&rope_length::ask(&inputs), link.view).figures.is_empty()),
        Err(errors) => assert!(!error_lines(&errors, link.view).is_empty()),
    }
    match cut_length::Inputs::of(&link.draft) {
        Ok(inputs) => assert!(!cord_report(&cut_length::ask(&inputs), link.view).figures.is_empty()),
        Err(errors) => assert!(!error_lines(&errors, link.view).is_empty()),
    }
    for question in Question::ALL {
        if let Some(again) = write(*question, &link.draft, View::default()) {
            assert!(read(&again).notices.is_empty(), "{again}");
        }
    }
}

#[test]
fn hostile_links_are_read_like_any_other() {
    let long = "9".repeat(100_000);
    for text in [
        "&&&&",
        "====",
        "#####",
        "=",
        "&=&",
        "v",
        "v=",
        "v=1=1",
        "bodyMass==80kg",
        "bodyMass=80kg=",
        "__proto__=1",
        "constructor=1",
        "toString=1",
        "bodyMass=<script>alert(1)</script>",
        "bodyMass=%00",
        "bodyMass=%",
        "bodyMass=80%6bg",
        "bodyMass=80+kg",
        "q=can-i-climb%00",
        "\u{202e}bodyMass=80kg",
        "bodyMass=8\u{200b}0kg",
        "bodyMass=NaN",
        "bodyMass=1e999kg",
        "javascript:alert(1)",
        "data:text/html,#bodyMass=80kg",
        "climbHeight=\u{feff}11m",
        "rig=tail-3\u{0}",
        "é=é&🪢=🪢",
        &long,
        &format!("bodyMass={long}kg"),
        &format!("{long}={long}"),
        &"bodyMass=80kg&".repeat(5_000),
        &"&".repeat(100_000),
    ] {
        follow(text);
    }
}

/// Pieces of links in any order.
fn pieces() -> impl Strategy<Value = String> {
    let mut words: Vec<&str> = vec![
        "&",
        "=",
        "#",
        "v",
        "q",
        "f",
        "u",
        "d",
        "1",
        "si",
        "us",
        "comma",
        "can-i-climb",
        "rope-length",
        "cut-plan",
        "2~6mm~1.8m~",
        "%",
        "canopy",
        "%20",
        "80kg",
        "11 m",
        "-",
        "",
    ];
    words.extend(all_fields().into_iter().map(|row| row.id));
    prop::collection::vec(prop::sample::select(words), 0..40).prop_map(|words| words.concat())
}

proptest! {
    #![proptest_config(Config { cases: 2_000, failure_persistence: None, ..Config::default() })]

    #[test]
    fn any_text_is_a_link(text in any::<String>()) {
        follow(&text);
    }

    #[test]
    fn any_pieces_of_links_are_a_link(text in pieces()) {
        follow(&text);
    }

    /// Every part is either taken or noticed, unless it is of a second plan, which is noticed as a whole.
    #[test]
    fn nothing_in_a_link_is_lost_without_a_notice(text in pieces()) {
        let link = read(&text);
        let fragment = text.split_once('#').map_or(text.as_str(), |(_, fragment)| fragment);
        let heads = ["v", "q", "f", "u", "d"];
        let parts = || fragment.split('&').filter(|part| !part.is_empty());
        let second = parts().enumerate().filter(|(_, part)| part.starts_with("v=") && part.len() > 2).map(|(at, _)| at).nth(1);
        prop_assert_eq!(second.is_some(), link.notices.contains(&Notice::TwoPlans));
        let fields = parts().take(second.unwrap_or(usize::MAX)).filter(|part| !heads.contains(&part.split('=').next().unwrap_or_default())).count();
        prop_assert!(link.draft.ids().count() + link.notices.len() >= fields, "{}: {:?}", text, link);
    }
}
