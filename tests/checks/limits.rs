//! Limits and their neighbours, defaults, strict choices.

use super::{fields, in_order, text, with};
use boughline::error::Reason;
use boughline::field::{Kind, Limits, Refusal, Row, Said};
use boughline::link::write;
use boughline::quantity::{View, canonical_si, read};
use boughline::question::can_i_climb::{self, Inputs, Missing};
use boughline::question::{Effort, Question};

fn quantities() -> impl Iterator<Item = (&'static Row, Limits)> {
    fields().iter().filter_map(|row| match row.kind {
        Kind::Quantity(limits) => Some((*row, limits)),
        _ => None,
    })
}

fn choices() -> impl Iterator<Item = (&'static Row, Vec<&'static str>, Option<&'static str>)> {
    fields().iter().filter_map(|row| match row.kind {
        Kind::Choice { options, likely } => Some((*row, options.iter().map(|option| option.id).collect(), likely)),
        _ => None,
    })
}

/// Whether the field is refused for being out of range, by the question and not by the row alone.
fn is_out_of_range(row: &Row, said: Said) -> bool {
    let Err(errors) = Inputs::of(&with(row.id, said)) else { return false };
    errors
        .iter()
        .any(|error| error.fields == [row.id] && matches!(error.reason, Reason::Refused(Refusal::OutOfRange { .. })))
}

#[test]
fn limits_are_within_and_their_neighbours_without() {
    let mut met = 0;
    for (row, limits) in quantities() {
        for (inside, outside) in [(limits.least, limits.least.next_down()), (limits.most, limits.most.next_up())] {
            assert!(!is_out_of_range(row, Said::Number(inside)), "{} of {inside}", row.id);
            assert!(is_out_of_range(row, Said::Number(outside)), "{} of {outside}", row.id);
            let said = canonical_si(inside, limits.dimension);
            assert_eq!(read(&said, limits.dimension, None), Ok(inside), "{said}");
            assert!(!is_out_of_range(row, text(&said)), "{} of {said}", row.id);
            met += 1;
        }
        assert!(is_out_of_range(row, text(&canonical_si(limits.most * 10.0, limits.dimension))), "{}", row.id);
    }
    assert_eq!(met, 2 * quantities().count());
    assert!(met > 20, "most fields are quantities");
}

#[test]
fn defaults_and_examples_are_within_limits_and_in_order() {
    for (row, limits) in quantities() {
        let within = |si: f64| (limits.least..=limits.most).contains(&si);
        assert!(limits.least < limits.most && limits.least >= 0.0, "{}", row.id);
        assert!(within(limits.example), "{}", row.id);
        if let Some(likely) = limits.likely {
            assert!(within(likely.low) && within(likely.likely) && within(likely.high), "{}", row.id);
            assert!(likely.low <= likely.likely && likely.likely <= likely.high, "{}", row.id);
            assert_eq!(likely.likely.to_bits(), limits.example.to_bits(), "{}: the example is the default", row.id);
        }
        for unit in limits.bare.into_iter().flatten() {
            assert_eq!(unit.dimension, limits.dimension, "{}", row.id);
        }
    }
    for (row, ids, likely) in choices() {
        assert!(likely.is_none_or(|id| ids.contains(&id)), "{}", row.id);
    }
}

/// What is not said is what the default says.
#[test]
fn a_default_that_is_chosen_changes_nothing() {
    let unsaid = Inputs::of(&in_order()).expect("in order");
    for (row, _, likely) in choices() {
        if let Some(id) = likely {
            assert_eq!(Inputs::of(&with(row.id, text(id))).as_ref(), Ok(&unsaid), "{}", row.id);
        }
    }
}

#[test]
fn choices_take_their_ids_and_nothing_like_them() {
    for (row, ids, _) in choices() {
        // A rig of one's own needs its stops.
        for id in ids.into_iter().filter(|id| *id != "own") {
            assert!(Inputs::of(&with(row.id, text(id))).is_ok(), "{} of {id}", row.id);
            assert!(Inputs::of(&with(row.id, text(&format!(" {id} ")))).is_ok(), "space around {id}");
            let near =
                [id.to_uppercase(), format!("{id}s"), format!("{id} {id}"), id.replace('-', " - "), format!("-{id}")];
            for near in near.iter().filter(|near| *near != id) {
                let errors = Inputs::of(&with(row.id, text(near))).expect_err(near);
                let refused = |reason: &Reason| matches!(reason, Reason::Refused(Refusal::UnknownChoice { said, .. }) if said == near);
                assert!(errors.iter().all(|error| error.fields == [row.id] && refused(&error.reason)), "{errors:?}");
            }
        }
        for said in [Said::Number(0.0), Said::Number(f64::NAN), Said::Other("true or false"), Said::Other("null")] {
            let errors = Inputs::of(&with(row.id, said)).expect_err(row.id);
            assert!(
                matches!(errors.as_slice(), [error] if matches!(error.reason, Reason::Refused(Refusal::WrongType { .. })))
            );
        }
    }
}

#[test]
fn what_is_needed_is_needed_and_the_rest_is_not() {
    assert!(Inputs::of(&in_order()).is_ok());
    for needed in ["bodyMass", "climbHeight"] {
        let mut draft = boughline::Draft::new();
        for id in in_order().ids().filter(|id| *id != needed) {
            draft.put(id, in_order().get(id).expect("said").clone());
        }
        let errors = Inputs::of(&draft).expect_err(needed);
        assert!(matches!(errors.as_slice(), [error] if error.fields == [needed] && error.reason == Reason::Needed));
    }
}

/// No rig said: the usual one, and it is missing. What was tried on a rig, or written down of one, asks which.
#[test]
fn a_rig_is_taken_for_granted_until_something_was_tried_on_one() {
    let unsaid = || boughline::Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m");
    let needs = |draft: &boughline::Draft| {
        let inputs = Inputs::of(draft).expect("in order");
        let answer = can_i_climb::ask(&inputs, Effort::samples(100));
        (answer.need, answer.missing)
    };
    let (usual, mut missing) = needs(&unsaid());
    let (chosen, without) = needs(&in_order());
    assert_eq!(usual, chosen);
    missing.retain(|one| *one != Missing::Rig);
    assert_eq!(missing, without, "a rig that is chosen is not missing");
    assert!(needs(&unsaid()).1.contains(&Missing::Rig));
    let link = write(Question::CanIClimb, &unsaid(), View::default()).expect("readable");
    assert!(!link.contains("rig="), "{link} makes a choice that nobody made");
    for (id, value) in [("trialStrokes", "10"), ("ownRig", "rope: tied tree, hitch harness, hand")] {
        let errors = Inputs::of(&unsaid().set(id, value)).expect_err(id);
        assert!(errors.iter().any(|error| error.fields == ["rig"] && error.reason == Reason::Needed), "{id}");
    }
}
