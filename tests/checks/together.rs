//! Everything wrong at once.

use super::{fields, in_order, text, with};
use boughline::Draft;
use boughline::error::{Error, Reason};
use boughline::field::{Kind, Refusal, Said};
use boughline::quantity::View;
use boughline::question::can_i_climb::Inputs;
use boughline::words::error_lines;

/// Nothing that any field takes.
fn wrongs() -> Vec<Said> {
    let mut wrongs: Vec<Said> = [
        "",
        " ",
        "1,200",
        "1,200 kg",
        "1e3",
        "inf",
        "NaN",
        "-",
        "9999999 m",
        "9999999 kg",
        "two hundred",
        "½½",
        "<b>",
        "0x10",
    ]
    .map(text)
    .to_vec();
    wrongs.extend([f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 1e300].map(Said::Number));
    wrongs.extend(["null", "undefined", "true or false", "a list", "an object"].map(Said::Other));
    wrongs
}

/// What each error is about, in order.
fn named(errors: &[Error]) -> Vec<Vec<&str>> {
    errors.iter().map(|error| error.fields.iter().map(String::as_str).collect()).collect()
}

fn errors_of(draft: &Draft) -> Vec<Error> {
    Inputs::of(draft).expect_err("something is wrong with it")
}

#[test]
fn each_wrong_thing_is_refused_by_each_field() {
    for row in fields() {
        for wrong in wrongs() {
            let errors = errors_of(&with(row.id, wrong.clone()));
            let about = errors.iter().filter(|error| error.fields == [row.id]).count();
            assert_eq!(about, 1, "{} of {wrong:?}: {errors:?}", row.id);
            for line in error_lines(&errors, View::default()) {
                assert!(line.message.ends_with(['.', '?']) && line.message.len() > 20, "{line:?}");
            }
        }
    }
}

#[test]
fn each_wrong_thing_is_one_error() {
    for row in fields() {
        for wrong in wrongs() {
            let draft = in_order().set("testMass", "94.3 kg").set("testPull", "400 N");
            let mut draft = draft;
            draft.put(row.id, wrong.clone());
            assert_eq!(named(&errors_of(&draft)), [[row.id]], "{wrong:?}");
        }
    }
}

fn all_wrong(shift: usize) -> Draft {
    let (mut draft, wrongs) = (Draft::new(), wrongs());
    for (row, wrong) in fields().iter().zip(wrongs.iter().cycle().skip(shift)) {
        draft.put(row.id, wrong.clone());
    }
    draft
}

#[test]
fn all_wrong_at_once_every_field_is_named_once() {
    for shift in 0..wrongs().len() {
        let errors = errors_of(&all_wrong(shift).set("boots", "11"));
        let mut named: Vec<&str> = named(&errors).concat();
        let mut wanted: Vec<&str> = fields().iter().map(|row| row.id).chain(["boots"]).collect();
        named.sort_unstable();
        wanted.sort_unstable();
        assert_eq!(named, wanted);
    }
}

#[test]
fn all_wrong_at_once_errors_come_in_the_order_of_the_fields() {
    let errors = errors_of(&all_wrong(0));
    let wanted: Vec<&str> = fields().iter().map(|row| row.id).collect();
    assert_eq!(named(&errors).concat(), wanted);
}

#[test]
fn a_contradictory_test_is_named_beside_what_else_is_wrong() {
    let draft =
        with("testMass", text("94.3 kg")).set("testPull", "200 N").set("bodyMass", "").set("stature", "1,75 km");
    let errors = errors_of(&draft);
    assert_eq!(errors.len(), 3, "{errors:?}");
    assert!(errors.iter().any(|error| matches!(error.reason, Reason::TestOutOfRange { .. })));
}

#[test]
fn half_a_test_is_named_beside_what_else_is_wrong() {
    for (id, wrong) in
        [("bodyMass", "1,200 kg"), ("kitMass", ""), ("rig", "tail-9"), ("upperTurn", "wheel"), ("backup", "hope")]
    {
        for half in [("testMass", "94.3 kg"), ("testPull", "400 N")] {
            let errors = errors_of(&with(half.0, text(half.1)).set(id, wrong));
            assert!(errors.iter().any(|error| error.reason == Reason::HalfATest), "{id}: {errors:?}");
            assert_eq!(errors.len(), 2, "{errors:?}");
        }
    }
    let mut nothing_else = Draft::new().set("testMass", "94.3 kg");
    nothing_else.put("bodyMass", Said::Number(80.0));
    assert!(errors_of(&nothing_else).iter().any(|error| error.reason == Reason::HalfATest), "no rig yet");
}

#[test]
fn nothing_typed_is_lost_from_what_is_told() {
    for typed in ["eighty", "80 furlongs", "1,200.5 kg", "1e3 kg", "15 N"] {
        let errors = errors_of(&with("bodyMass", text(typed)));
        let [line] = error_lines(&errors, View::default()).try_into().expect("one error");
        let kept = if typed == "80 furlongs" { "furlongs" } else { typed };
        assert!(line.message.contains(kept), "{}", line.message);
        assert!(
            matches!(&errors.first().expect("one").reason, Reason::Refused(Refusal::Misread { said, .. }) if said == typed)
        );
    }
}

#[test]
fn a_field_of_a_kind_these_tests_do_not_know_is_none() {
    for row in fields() {
        assert!(
            matches!(row.kind, Kind::Quantity(_) | Kind::Choice { .. } | Kind::Text(_)),
            "{}: give it wrong values too",
            row.id
        );
    }
}
