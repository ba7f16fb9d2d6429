//! A plan to and from an address: the same inputs for ever, and never a silently different plan.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unreachable,
    reason = "what is missing fails the test"
)]

#[path = "every_question/drawn.rs"]
mod drawn;
#[path = "link/hostile.rs"]
mod hostile;
#[path = "link/mutated.rs"]
mod mutated;
#[path = "laws/plans.rs"]
mod plans;
#[path = "link/round.rs"]
mod round;
#[path = "link/short.rs"]
mod short;
#[path = "every_question/told.rs"]
mod told;
#[path = "lib/views.rs"]
mod views;

use boughline::Draft;
use boughline::link::{self, Link, Notice, read};
use boughline::quantity::{Decimal, System, View};
use boughline::question::{Question, all_fields};
use views::VIEWS;

/// The link for a plan that can be read.
fn write(question: Question, draft: &Draft, view: View) -> String {
    link::write(question, draft, view).expect("nothing in it is unreadable")
}

const COMMON: &str = "bodyMass=80kg&climbHeight=11m&rig=tail-3&measuredPull=520N&stature=175cm";

#[test]
fn the_common_case_is_short_and_says_the_choices_that_were_not_made() {
    let fragment = write(Question::CanIClimb, &read(COMMON).draft, View::default());
    assert_eq!(
        fragment,
        "v=1&q=can-i-climb&f=1&u=si&bodyMass=80kg&climbHeight=11m&rig=tail-3&measuredPull=520N&pullTaken=overhead&pullArms=two&pullHeld=cross-handle&trunk=steady&hold=bare-rope&gloves=none&stature=175cm&posture=upright&upperTurn=bearing-pulley&lowerTurn=bearing-pulley&backup=none&ropeKind=low-stretch-b"
    );
    assert!(fragment.len() < 300, "{}", fragment.len());
}

/// An ampersand and one of these is a sign in HTML, with or without a semicolon (HTML Standard, named character
/// references that need none; from memory), so a link pasted there would be spoilt.
const ENTITIES: &str = "aacute acirc acute aelig agrave amp aring atilde auml brvbar ccedil cedil cent copy curren deg divide eacute ecirc egrave eth euml frac gt iacute icirc iexcl igrave iquest iuml laquo lt macr micro middot nbsp not ntilde oacute ocirc ograve ord oslash otilde ouml para plusmn pound quot raquo reg sect shy sup szlig thorn times uacute ucirc ugrave uml uuml yacute yen yuml";

#[test]
fn no_key_begins_a_sign_of_html() {
    let keys = ["v", "q", "f", "u", "d"].into_iter().chain(all_fields().into_iter().map(|row| row.id));
    for key in keys {
        let sign = ENTITIES.split(' ').find(|sign| key.to_lowercase().starts_with(sign));
        assert_eq!(sign, None, "{key}");
    }
}

#[test]
fn a_whole_address_is_read_like_its_fragment() {
    let plain = read(COMMON);
    assert_eq!(plain.notices, []);
    for before in
        ["#", "  #", "https://example.org/#", "https://example.org/a/index.html?from=chat#", "file:///home/a/b.html#"]
    {
        assert_eq!(read(&format!("{before}{COMMON}")), plain, "{before}");
        assert_eq!(read(&format!("{before}{COMMON}\n")), plain, "{before}");
    }
}

#[test]
fn a_link_of_the_pocket_edition_is_read_like_that_of_its_page() {
    let of_page = read("#v=1&q=rope-length&crotchHeight=9m");
    assert_eq!(of_page.notices, []);
    assert_eq!(read("https://example.org/pocket.html#rope-length/v=1&q=rope-length&crotchHeight=9m"), of_page);
    for other in ["#rope-length/crotchHeight=9m", "#Rope/v=1", "#a=b/v=1", "#/"] {
        assert_eq!(read(other).notices.len(), 1, "{other}");
    }
}

#[test]
fn an_empty_link_says_nothing() {
    for text in ["", "#", "https://example.org/index.html#", " \n"] {
        let link = read(text);
        assert_eq!((link.notices.len(), link.draft.ids().count(), link.question), (0, 0, None), "{text}");
    }
}

#[test]
fn the_head_of_a_link_is_read() {
    let link = read("v=1&q=can-i-climb&f=1&u=us&d=comma");
    assert_eq!(link.question, Some(Question::CanIClimb));
    assert_eq!(link.view, View { system: System::Us, decimal: Decimal::Comma });
    assert_eq!(link.notices, []);
}

/// A plan for one question is there on the other: what it does not read travels with it.
#[test]
fn each_question_has_its_links_and_carries_the_fields_of_the_others() {
    let plan = read("crotchHeight=12m&anchor=canopy&bodyMass=80kg&climbHeight=10.5m&rig=tail-3");
    assert_eq!(plan.notices, []);
    let fragment = write(Question::RopeLength, &plan.draft, View::default());
    assert_eq!(
        fragment,
        "v=1&q=rope-length&f=1&u=si&crotchHeight=12m&anchor=canopy&rig=tail-3&bodyMass=80kg&climbHeight=10.5m"
    );
    for question in Question::ALL {
        let link = read(&write(*question, &plan.draft, View::default()));
        assert_eq!((link.question, link.notices.len()), (Some(*question), 0));
        for id in plan.draft.ids() {
            assert_eq!(link.draft.get(id), plan.draft.get(id), "{id} of {}", question.id());
        }
    }
}

#[test]
fn what_is_not_understood_is_noticed() {
    let notices = |text: &str| read(text).notices;
    assert_eq!(notices("v=2"), [Notice::UnknownForm("2".to_owned())]);
    assert_eq!(notices("f=0"), [Notice::OtherFigures("0".to_owned())]);
    assert_eq!(notices("q=x"), [Notice::UnknownQuestion("x".to_owned())]);
    assert_eq!(notices("u=metric"), [Notice::UnknownPart("u=metric".to_owned())]);
    assert_eq!(notices("boots=11"), [Notice::UnknownPart("boots=11".to_owned())]);
    assert_eq!(notices("bodymass=80kg"), [Notice::UnknownPart("bodymass=80kg".to_owned())]);
    assert_eq!(notices("bodyMass"), [Notice::NoValue("bodyMass".to_owned())]);
    assert_eq!(notices("bodyMass="), [Notice::NoValue("bodyMass=".to_owned())]);
    assert_eq!(notices("=80kg"), [Notice::UnknownPart("=80kg".to_owned())]);
}

#[test]
fn a_link_that_went_through_html_is_read_as_it_was() {
    let link = format!("https://example.org/#v=1&q=can-i-climb&{COMMON}");
    assert_eq!(read(&link).notices, []);
    for sign in ["&amp;", "&amp;amp;"] {
        assert_eq!(read(&link.replace('&', sign)), read(&link), "{sign}");
    }
    assert_eq!(read("v=1&amp;amp=80kg").notices, [Notice::UnknownPart("amp=80kg".to_owned())]);
}

/// The link of a comparison, opened where one plan is asked for.
#[test]
fn of_two_plans_in_a_link_the_first_is_taken_whole_and_one_notice_says_so() {
    let first = format!("v=1&q=can-i-climb&f=1&u=us&{COMMON}");
    for second in ["v=1&q=rope-length&f=1&u=si&d=comma&bodyMass=90kg&slingCord=8mm", "v=9", "v=1&v=1"] {
        for sign in ["&", "&amp;"] {
            let both = read(&format!("{first}{sign}{}", second.replace('&', sign)));
            assert_eq!(both.notices, [Notice::TwoPlans], "{second}");
            assert_eq!(Link { notices: Vec::new(), ..both }, read(&first), "{second}");
        }
    }
}

#[test]
fn a_plan_of_an_unknown_form_takes_nothing_of_the_second() {
    let link = read("v=9&q=can-i-climb&bodyMass=64kg&v=1&q=can-i-climb&bodyMass=90kg&secondPerson=rescuer");
    assert_eq!(link.notices, [Notice::UnknownForm("9".to_owned()), Notice::TwoPlans]);
    assert_eq!(link.draft.get("secondPerson"), None);
}

#[test]
fn of_a_field_said_twice_the_first_stands() {
    let link = read("bodyMass=80kg&bodyMass=90kg&bodyMass=80kg");
    assert_eq!(link.notices, [Notice::Twice("bodyMass".to_owned()), Notice::Twice("bodyMass".to_owned())]);
    assert_eq!(link.draft, read("bodyMass=80kg").draft);
}

#[test]
fn of_a_head_said_twice_the_first_stands_too() {
    let link = read("u=us&u=si");
    assert_eq!(link.view.system, System::Us);
    for twice in ["u=us&u=si", "v=1&v=1", "q=can-i-climb&q=can-i-climb", "f=1&f=1", "d=comma&d=comma"] {
        assert_eq!(read(twice).notices.len(), 1, "{twice}");
    }
}

#[test]
fn a_plan_with_an_error_is_never_shared_as_one_without() {
    for (id, typed) in [("kitMass", "1,200 kg"), ("hold", "loop"), ("backup", "hitch"), ("measuredPull", "40 kg")] {
        let typed = read(COMMON).draft.set(id, typed);
        assert!(boughline::question::can_i_climb::Inputs::of(&typed).is_err());
        assert_eq!(link::write(Question::CanIClimb, &typed, View::default()), None, "{id}");
    }
}

#[test]
fn next_to_nothing_survives_a_link() {
    let mut draft = read(COMMON).draft;
    draft.put("setback", boughline::field::Said::Number(1e-300));
    let link = read(&write(Question::CanIClimb, &draft, View::default()));
    assert!(boughline::question::can_i_climb::Inputs::of(&link.draft).is_ok());
}
