//! What was said is checked: every error at once, and no answer with one.

use boughline::Draft;
use boughline::error::{Error, Reason};
use boughline::field::{Kind, Refusal, Row, Said};
use boughline::quantity::View;
use boughline::question::Question;
use boughline::question::rope_length::{Caution, Inputs, ask};
use boughline::reeving::{Backup, RigName};
use boughline::rope::is_anchored;
use boughline::words::error_lines;

fn fields() -> &'static [&'static Row] {
    Question::RopeLength.fields()
}

/// A plan that is in order, and no more than is needed.
fn in_order() -> Draft {
    Draft::new().set("crotchHeight", "12 m").set("anchor", "canopy")
}

fn with(id: &str, said: Said) -> Draft {
    let mut draft = in_order();
    draft.put(id, said);
    draft
}

fn errors_of(draft: &Draft) -> Vec<Error> {
    Inputs::of(draft).expect_err("something is wrong with it")
}

/// What each error is about, in order.
fn named(errors: &[Error]) -> Vec<Vec<&str>> {
    errors.iter().map(|error| error.fields.iter().map(String::as_str).collect()).collect()
}

/// Nothing that any field takes.
fn wrongs() -> Vec<Said> {
    let texts = ["", " ", ";", "1,200", "1,200 m", "inf", "-1 m", "9999999 m", "two metres", "12 kg", "<b>"];
    let mut wrongs: Vec<Said> = texts.map(|text| Said::Text(text.to_owned())).to_vec();
    wrongs.extend([f64::NAN, f64::INFINITY, -1.0, 1e300].map(Said::Number));
    wrongs.extend(["null", "undefined", "true or false", "a list", "an object"].map(Said::Other));
    wrongs
}

#[test]
fn each_wrong_thing_is_one_error_of_its_field() {
    for row in fields() {
        for wrong in wrongs() {
            let errors = errors_of(&with(row.id, wrong.clone()));
            assert_eq!(named(&errors), [[row.id]], "{wrong:?}");
            for line in error_lines(&errors, View::default()) {
                assert!(line.message.ends_with(['.', '?']) && line.message.len() > 20, "{line:?}");
            }
        }
    }
}

#[test]
fn all_wrong_at_once_every_field_is_named_in_its_order() {
    let mut draft = Draft::new().set("boots", "11");
    for (row, wrong) in fields().iter().zip(wrongs().iter().cycle()) {
        draft.put(row.id, wrong.clone());
    }
    let wanted: Vec<&str> = fields().iter().map(|row| row.id).chain(["boots"]).collect();
    assert_eq!(named(&errors_of(&draft)).concat(), wanted);
}

#[test]
fn what_is_needed_is_needed_and_the_rest_is_not() {
    assert!(Inputs::of(&in_order()).is_ok());
    let nothing = errors_of(&Draft::new());
    assert_eq!(named(&nothing), [["crotchHeight"], ["anchor"]]);
    assert!(nothing.iter().all(|error| error.reason == Reason::Needed));
}

/// A rope that only runs over the crotch has no anchor to ask for, and one that was chosen is said to be idle.
#[test]
fn an_anchor_is_needed_where_the_rig_is_anchored() {
    let mut anchored = 0;
    for (name, option) in RigName::CATALOGUE.iter().zip(RigName::OPTIONS) {
        let is_anchored = is_anchored(&name.rig(Backup::None).expect("a catalogue rig"));
        let without = Inputs::of(&Draft::new().set("crotchHeight", "12 m").set("rig", option.id));
        assert_eq!(without.is_ok(), !is_anchored, "{}", option.id);
        let with = ask(&Inputs::of(&in_order().set("rig", option.id)).expect("in order"));
        assert_eq!(with.anchor.is_some(), is_anchored, "{}", option.id);
        assert_eq!(with.cautions.contains(&Caution::NoAnchor), !is_anchored, "{}", option.id);
        anchored += usize::from(is_anchored);
    }
    assert!(anchored > 1);
}

#[test]
fn a_rig_that_was_not_chosen_is_hand_over_hand_and_said_to_be() {
    let answer = |draft: &Draft| ask(&Inputs::of(draft).expect("in order"));
    let (unsaid, said) = (answer(&in_order()), answer(&in_order().set("rig", "hand-over-hand")));
    assert_eq!((unsaid.courses, unsaid.need), (said.courses, said.need));
    let rigs = |rows: &[&'static Row]| rows.iter().filter(|row| row.id == "rig").count();
    assert_eq!((rigs(&unsaid.assumed), rigs(&said.assumed)), (1, 0));
}

#[test]
fn limits_are_within_and_their_neighbours_without() {
    for row in fields() {
        let Kind::Quantity(limits) = row.kind else { continue };
        for (inside, outside) in [(limits.least, limits.least.next_down()), (limits.most, limits.most.next_up())] {
            let refused = |si: f64| {
                let errors = Inputs::of(&with(row.id, Said::Number(si))).err().unwrap_or_default();
                errors.iter().any(|error| matches!(error.reason, Reason::Refused(Refusal::OutOfRange { .. })))
            };
            assert!(!refused(inside) && refused(outside), "{}", row.id);
        }
    }
}

#[test]
fn the_lower_hitch_is_below_the_crotch() {
    let plan = |crotch: &str, hitch: &str| in_order().set("crotchHeight", crotch).set("hitchHeight", hitch);
    for (crotch, hitch) in [("3 m", "4 m"), ("3 m", "3 m"), ("3 m", "9.85 ft")] {
        let errors = errors_of(&plan(crotch, hitch));
        assert_eq!(named(&errors), [["crotchHeight", "hitchHeight"]]);
        assert!(errors.iter().all(|error| error.reason == Reason::HitchAboveCrotch));
    }
    assert!(Inputs::of(&plan("3 m", "2.9 m")).is_ok());
    // What was not said is no contradiction, and what cannot be read is not compared.
    assert!(Inputs::of(&in_order().set("crotchHeight", "1 m")).is_ok());
    assert_eq!(named(&errors_of(&plan("3 kg", "4 m"))), [["crotchHeight"]]);
    // Beside whatever else is wrong.
    assert_eq!(named(&errors_of(&plan("3 m", "4 m").set("ropeTail", ""))).len(), 2);
}

#[test]
fn what_other_questions_read_is_left_alone() {
    let mut draft = in_order().set("bodyMass", "not yet").set("climbHeight", "");
    draft.put("measuredPull", Said::Other("null"));
    let (with, without) = (Inputs::of(&draft), Inputs::of(&in_order()));
    assert_eq!(with, without);
    assert!(with.is_ok());
}
