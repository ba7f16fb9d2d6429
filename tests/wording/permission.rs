//! No sentence gives leave, promises or reassures: `data/permission.txt` lists the phrases.
//!
//! Pages and packages as they are built are read the same way by `tests/packaging/permission.test.mjs`.

use super::templates::{all_told, every_literal};
use boughline::words::method;

const LIST: &str = include_str!("../data/permission.txt");

/// The phrases, and the places in which one is said to be untrue.
fn phrases() -> (Vec<&'static str>, Vec<&'static str>) {
    let lines = LIST.lines().filter(|line| !line.is_empty() && !line.starts_with('#'));
    let (untrue, phrases): (Vec<_>, Vec<_>) = lines.partition(|line| line.starts_with("said: "));
    (phrases, untrue.iter().map(|line| &line["said: ".len()..]).collect())
}

/// The first phrase in a text, as a whole word.
fn leave_in(text: &str) -> Option<&'static str> {
    let (phrases, untrue) = phrases();
    let mut text = text.to_lowercase().split_whitespace().collect::<Vec<_>>().join(" ");
    for place in untrue {
        text = text.replace(place, "");
    }
    phrases.into_iter().find(|phrase| {
        text.match_indices(phrase).any(|(at, _)| {
            let before = text[..at].chars().next_back();
            let after = text[at + phrase.len()..].chars().next();
            !before.is_some_and(char::is_alphabetic) && !after.is_some_and(char::is_alphabetic)
        })
    })
}

fn given_in(texts: impl IntoIterator<Item = String>) -> Vec<(&'static str, String)> {
    texts.into_iter().filter_map(|text| Some((leave_in(&text)?, text))).collect()
}

#[test]
fn no_sentence_that_a_plan_tells_gives_leave() {
    assert_eq!(given_in(all_told().iter().cloned()), []);
}

/// Of rows that no plan here tells too, and of every file.
#[test]
fn no_template_gives_leave() {
    assert_eq!(given_in(every_literal()), []);
}

/// But what the chapter on what is never said names, where a name goes on from "never says".
#[test]
fn the_method_gives_no_leave() {
    let mut texts = Vec::new();
    let told = method();
    for chapter in &told.chapters {
        texts.extend([chapter.title.to_owned(), chapter.about.to_owned()]);
        texts.extend(chapter.formulas.iter().flat_map(|line| [line.gives, line.words, line.used]).map(str::to_owned));
        for note in &chapter.notes {
            texts.push(note.says.to_owned());
            if chapter.id == "never" {
                assert!(note.about.starts_with("never that "), "{}", note.about);
            } else {
                texts.push(note.about.to_owned());
            }
        }
    }
    assert!(texts.len() > 200 && told.chapters.iter().any(|chapter| chapter.id == "never"), "{}", texts.len());
    assert_eq!(given_in(texts), []);
}

#[test]
fn leave_is_found_where_it_is() {
    assert_eq!(leave_in("On this rig\nYou can climb."), Some("you can climb"));
    assert_eq!(leave_in("It is safe."), Some("is safe"));
    assert_eq!(leave_in("No time is safe."), None);
    assert_eq!(leave_in("The harness is safest low down."), None);
    assert!(phrases().0.len() > 80 && phrases().1.len() < 12);
}
