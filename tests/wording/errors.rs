//! Every error, as a sentence.

use super::{SI, US, variant, variants};
use boughline::Draft;
use boughline::error::{Error, Reason};
use boughline::field::{Kind, Refusal, Said};
use boughline::quantity::{Decimal, Misread, View};
use boughline::question::all_fields;
use boughline::question::can_i_climb::Inputs;
use boughline::words::message;
use std::collections::BTreeSet;

/// What is said on top of a plan that is in order, and the one sentence that comes of it, in either system.
type Row = (&'static [(&'static str, &'static str)], &'static str, &'static str);

const TOLD_ALIKE: &str = "";

#[rustfmt::skip]
const TEXTS: &[Row] = &[
    (&[("bodyMass", " ")], "Body mass is empty, and empty is not nought. Write it like “80 kg”.", "Body mass is empty, and empty is not nought. Write it like “176 lb”."),
    (&[("rig", "")], "Rig is empty, and empty is not nought. Choose one: hand over hand, 1:1; moving rope, 2:1; or another of the list.", TOLD_ALIKE),
    (&[("hitchDrag", "")], "Kept past the sliding hitch is empty, and empty is not nought. Write it like “0.90”.", TOLD_ALIKE),
    (&[("rig", "tail-9")], "Rig cannot be “tail-9”. Choose one: hand over hand, 1:1 (hand-over-hand); moving rope, 2:1 (moving-rope); self-haul on the rope's tail, 3:1 (tail-3); self-haul on the rope's tail, 5:1 (tail-5); self-haul on the rope's tail, 7:1 (tail-7); self-haul on a haul cord, 2:1 (haul-cord-2); self-haul on a haul cord, 3:1 (haul-cord-3); self-haul on a haul cord, 4:1 (haul-cord-4); self-haul on a haul cord, 5:1 (haul-cord-5); a helper hauls over the crotch, 1:1 (ground-1); a helper hauls over the crotch, 3:1 (ground-3); a helper hauls over the crotch, 5:1 (ground-5); a helper hauls over the crotch, 9:1 (ground-9); a rig of your own (own).", TOLD_ALIKE),
    (&[("hold", "Bare-rope")], "What your hands hold cannot be “Bare-rope”. Choose one: bare rope (bare-rope); handle along the rope (vertical-handle); handle across the rope (cross-handle); hand loop (hand-loop); foot loop used as a hand loop (foot-loop).", TOLD_ALIKE),
    (&[("bodyMass", "80")], "Body mass: write the unit too: 80 kg or 80 lb.", TOLD_ALIKE),
    (&[("gripRight", "40")], "Grip, right hand: write the unit too: 40 kgf or 40 lbf.", TOLD_ALIKE),
    (&[("bodyMass", "eighty")], "Body mass: “eighty” is not a number with a unit. Write it like “80 kg”.", "Body mass: “eighty” is not a number with a unit. Write it like “176 lb”."),
    (&[("bodyMass", "1,200 kg")], "Body mass: “1,200” can be read two ways. Write 1200 or 1.2.", TOLD_ALIKE),
    (&[("bodyMass", "1,200.5 kg")], "Body mass: “1,200.5 kg” has more than one comma or point. Write it like “80 kg”.", "Body mass: “1,200.5 kg” has more than one comma or point. Write it like “176 lb”."),
    (&[("climbHeight", "1e1 m")], "Height to climb: write “1e1 m” out without a power of ten. Write it like “11 m”.", "Height to climb: write “1e1 m” out without a power of ten. Write it like “36 ft”."),
    (&[("climbHeight", "inf")], "Height to climb: “inf” is too large for a number here. Write it like “11 m”.", "Height to climb: “inf” is too large for a number here. Write it like “36 ft”."),
    (&[("climbHeight", "11 kg")], "Height to climb: “11 kg” is a mass, and a length is wanted. Write it like “11 m”.", "Height to climb: “11 kg” is a mass, and a length is wanted. Write it like “36 ft”."),
    (&[("measuredPull", "40 kg")], "Measured pull: “40 kg” is a mass, and a pull is a force. If it is the reading of a scale, write 40 kgf.", TOLD_ALIKE),
    (&[("measuredPull", "90 lbs")], "Measured pull: “90 lbs” is a mass, and a pull is a force. If it is the reading of a scale, write 90 lbf.", TOLD_ALIKE),
    (&[("measuredPull", "94⅞ kg")], "Measured pull: “94⅞ kg” is a mass, and a pull is a force. If it is the reading of a scale, write 94.8750 kgf.", TOLD_ALIKE),
    (&[("climbHeight", "45°")], "Height to climb: “45°” is an angle, and a length is wanted. Write it like “11 m”.", "Height to climb: “45°” is an angle, and a length is wanted. Write it like “36 ft”."),
    (&[("measuredPull", "40 m")], "Measured pull: “40 m” is a length, and a force is wanted. Write it like “41 kgf”.", "Measured pull: “40 m” is a length, and a force is wanted. Write it like “90 lbf”."),
    (&[("bodyMass", "80 furlongs")], "Body mass: the unit “furlongs” is not known here. Write it like “80 kg”.", "Body mass: the unit “furlongs” is not known here. Write it like “176 lb”."),
    (&[("bodyMass", "4 lb 15 st")], "Body mass: write the larger unit of “4 lb 15 st” first, and each only once. Write it like “80 kg”.", "Body mass: write the larger unit of “4 lb 15 st” first, and each only once. Write it like “176 lb”."),
    (&[("climbHeight", "6 ft 20 cm")], "Height to climb: feet and centimetres do not go together; use one of them. Write it like “11 m”.", "Height to climb: feet and centimetres do not go together; use one of them. Write it like “36 ft”."),
    (&[("climbHeight", "6.5 ft 3 in")], "Height to climb: with a smaller unit after it, the number of feet must be a whole one. Write it like “11 m”.", "Height to climb: with a smaller unit after it, the number of feet must be a whole one. Write it like “36 ft”."),
    (&[("climbHeight", "6 ft 12 in")], "Height to climb: 12 in make 1 ft; carry them over. Write it like “11 m”.", "Height to climb: 12 in make 1 ft; carry them over. Write it like “36 ft”."),
    (&[("bodyMass", "0000000000000000000000000000000000000000000000000000000000080 kg")], "Body mass: this is too long to be a number. Write it like “80 kg”.", "Body mass: this is too long to be a number. Write it like “176 lb”."),
    (&[("bodyMass", "800 kg")], "Body mass: 800 kg is outside 20 kg to 250 kg.", "Body mass: 800 kg is outside 45 lb to 551 lb."),
    (&[("climbHeight", "-3 m")], "Height to climb: -3 m is outside 20 cm to 120 m.", "Height to climb: -3 m is outside 7.9 in to 393 ft 8 in."),
    (&[("stature", "175 m")], "Stature: 175 m is outside 90 cm to 2.3 m. Did you mean 175 cm?", "Stature: 175 m is outside 3 ft to 7 ft 6 in. Did you mean 175 cm?"),
    (&[("hitchDrag", "90")], "Kept past the sliding hitch: 90 is outside 0.30 to 1.00. Did you mean 90 %?", TOLD_ALIKE),
    (&[("testMass", "94.3 kg")], "A test has two halves, the mass and the pull: fill in both, or leave both empty.", TOLD_ALIKE),
    (&[("testMass", "94.3 kg"), ("testPull", "200 N")], "All-up mass in your own test and pull in your own test come to a real advantage of 4.62, and this rig can only give between 1 and 3. Measure again, with the scale in the rope at the hand and nothing else holding you.", TOLD_ALIKE),
    (&[("rig", "ground-3"), ("testMass", "94.3 kg"), ("testPull", "200 N")], "All-up mass in your own test and pull in your own test come to a real advantage of 4.62, and this rig can only give between 0 and 3. Measure again, with the scale in the rope at the hand and nothing else holding you.", TOLD_ALIKE),
    (&[("testMass", "94.3 kg"), ("testPull", "1500 N")], "All-up mass in your own test and pull in your own test come to a real advantage of 0.62, and this rig can only give between 1 and 3. Measure again, with the scale in the rope at the hand and nothing else holding you.", TOLD_ALIKE),
    (&[("testMass", "94.3 kg"), ("testPull", "400 N"), ("rig", "hand-over-hand")], "All-up mass in your own test and pull in your own test tell nothing about this rig, which has no turns. Leave them empty, or choose the rig you tested.", TOLD_ALIKE),
];

#[rustfmt::skip]
const OTHERS: &[(&str, Said, &str, &str)] = &[
    ("bodyMass", Said::Number(f64::NAN), "Body mass must be an ordinary number. Write it like “80 kg”.", "Body mass must be an ordinary number. Write it like “176 lb”."),
    ("bodyMass", Said::Number(f64::NEG_INFINITY), "Body mass must be an ordinary number. Write it like “80 kg”.", "Body mass must be an ordinary number. Write it like “176 lb”."),
    ("bodyMass", Said::Number(300.0), "Body mass: 300 kg is outside 20 kg to 250 kg.", "Body mass: 300 kg is outside 45 lb to 551 lb."),
    ("bodyMass", Said::Other("null"), "Body mass cannot be null. Write it like “80 kg”.", "Body mass cannot be null. Write it like “176 lb”."),
    ("rig", Said::Other("a list"), "Rig cannot be a list. Choose one: hand over hand, 1:1; moving rope, 2:1; or another of the list.", TOLD_ALIKE),
    ("rig", Said::Number(3.0), "Rig cannot be a number. Choose one: hand over hand, 1:1; moving rope, 2:1; or another of the list.", TOLD_ALIKE),
    ("boots", Said::Text(String::new()), "“boots” is not a field of any question here; check how it is spelt, or leave it out.", TOLD_ALIKE),
];

fn in_order() -> Draft {
    Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "tail-3")
}

/// The one error of a draft.
fn one_error(draft: &Draft) -> Error {
    let errors = Inputs::of(draft).expect_err("something is wrong with it");
    let [error] = errors.as_slice() else { panic!("one error is wanted: {errors:?}") };
    error.clone()
}

fn check(error: &Error, si: &str, us: &str) {
    assert_eq!(message(error, SI), si);
    assert_eq!(message(error, US), if us == TOLD_ALIKE { si } else { us });
}

fn texts() -> impl Iterator<Item = (Error, &'static str, &'static str)> {
    TEXTS.iter().map(|(said, si, us)| {
        let draft = said.iter().fold(in_order(), |draft, (id, text)| draft.set(id, text));
        (one_error(&draft), *si, *us)
    })
}

fn others() -> impl Iterator<Item = (Error, &'static str, &'static str)> {
    OTHERS.iter().map(|(id, said, si, us)| {
        let mut draft = in_order();
        draft.put(id, said.clone());
        (one_error(&draft), *si, *us)
    })
}

#[test]
fn every_error_has_its_sentence() {
    for (error, si, us) in texts().chain(others()) {
        check(&error, si, us);
    }
}

#[test]
fn what_is_needed_and_not_said_has_its_sentence() {
    let errors = Inputs::of(&Draft::new()).expect_err("nothing was said");
    let said: Vec<String> = errors.iter().map(|error| message(error, SI)).collect();
    assert_eq!(
        said,
        ["Body mass is needed. Write it like “80 kg”.", "Height to climb is needed. Write it like “11 m”.",]
    );
    assert_eq!(message(errors.first().unwrap(), US), "Body mass is needed. Write it like “176 lb”.");
}

/// No catalogue rig is unworkable, and an empty text is refused before it is read.
#[test]
fn errors_that_no_input_reaches_have_their_sentences() {
    let unworkable = Error::of("rig", Reason::UnworkableRig);
    check(&unworkable, "This rig cannot be worked out. Choose another.", TOLD_ALIKE);
    let empty = Refusal::Misread { said: String::new(), misread: Misread::Empty };
    check(
        &Error::of("climbHeight", Reason::Refused(empty)),
        "Height to climb: it is empty, and empty is not nought. Write it like “11 m”.",
        "Height to climb: it is empty, and empty is not nought. Write it like “36 ft”.",
    );
}

#[test]
fn figures_in_errors_have_the_mark_of_the_view() {
    let comma = View { decimal: Decimal::Comma, ..SI };
    let error = one_error(&in_order().set("stature", "2.45 m"));
    assert!(
        message(&error, comma).starts_with("Stature: 2.45 m is outside 90 cm to 2,3 m."),
        "{}",
        message(&error, comma)
    );
}

#[test]
fn every_reason_refusal_and_misread_has_a_row() {
    // Those of no text here: two above, those of somebody's own rig, and those that only a rope or a cord meets.
    let others_reasons = [
        "Needed",
        "UnworkableRig",
        "ClimbAboveCrotch",
        "HitchAboveCrotch",
        "RopeTooShort",
        "ImpossibleRig",
        "NoCrotch",
    ];
    let mut reasons = BTreeSet::from(others_reasons.map(str::to_owned));
    reasons.extend(super::cut_length::ERRORS.iter().map(|(_, reason, _)| (*reason).to_owned()));
    reasons.insert("NoHaulCord".to_owned());
    let mut refusals = BTreeSet::from(["Miswritten".to_owned()]);
    let mut misreads = BTreeSet::from(["Empty".to_owned()]);
    for (error, ..) in texts().chain(others()) {
        reasons.insert(variant(&error.reason));
        let Reason::Refused(refusal) = &error.reason else { continue };
        refusals.insert(variant(refusal));
        if let Refusal::Misread { misread, .. } = refusal {
            misreads.insert(variant(misread));
        }
    }
    assert_eq!(reasons, variants(include_str!("../../src/error.rs"), "Reason"));
    assert_eq!(refusals, variants(include_str!("../../src/field/said.rs"), "Refusal"));
    assert_eq!(misreads, variants(include_str!("../../src/quantity/misread.rs"), "Misread"));
}

/// Whoever knows a form says where a text goes wrong, and in the words of no other form.
#[test]
fn every_text_is_refused_in_words_of_its_own() {
    let mut told = BTreeSet::new();
    for row in all_fields().into_iter().filter(|row| matches!(row.kind, Kind::Text(_))) {
        let refusal = Refusal::Miswritten { said: "?".to_owned() };
        let sentence = message(&Error::of(row.id, Reason::Refused(refusal)), SI);
        assert!(!sentence.contains("cannot be read"), "{}: say in words/error.rs where it goes wrong", row.id);
        assert!(told.insert(sentence.clone()), "{} is refused as another is: {sentence}", row.id);
    }
    assert!(told.len() > 3, "{told:?}");
}
