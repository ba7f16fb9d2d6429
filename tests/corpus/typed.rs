//! What holds of anything typed: it means the same everywhere, or is refused with how to write it.
#![allow(dead_code, reason = "each test that takes this in asks for some of it")]
#![allow(clippy::expect_used, reason = "what does not hold fails the test")]

use boughline::error::{Error, Reason};
use boughline::field::{Kind, Limits, Row, Said};
use boughline::quantity::{Dimension, Misread, Unit, View, canonical, read, tidy};
use boughline::words::message;

/// A text as a quantity of a dimension, and where a bare number has this unit.
pub(crate) fn quantity(text: &str, dimension: Dimension, default: &'static Unit) {
    let alone = read(text, dimension, None);
    let with_default = read(text, dimension, Some(default));
    if let Ok(si) = alone {
        assert!(si.is_finite());
        assert_eq!(with_default.clone(), Ok(si));
    }
    match canonical(text, dimension) {
        Ok(link) => {
            assert!(link.bytes().all(|byte| byte.is_ascii_alphanumeric() || matches!(byte, b'.' | b'-')), "{}", link);
            assert_eq!(read(&link, dimension, None).map(f64::to_bits), alone.map(f64::to_bits));
            assert_eq!(canonical(&link, dimension), Ok(link));
        }
        // Only what is next to nothing, or long, has no link although it can be read.
        Err(misread) => {
            let tiny = text.split('/').nth(1).is_some_and(|below| below.len() > 5);
            let long = text.trim().chars().count() > 30 || text.bytes().filter(u8::is_ascii_digit).count() > 18;
            assert!(alone == Err(misread.clone()) || (misread == Misread::TooLong && (tiny || long)), "{}", text);
        }
    }
    let tidied = tidy(text, dimension, default);
    assert_eq!(tidy(&tidied, dimension, default), tidied.clone());
    let fits = text.trim().chars().count() + 1 + default.symbol.len() <= 60;
    match with_default {
        Ok(si) if fits => assert_eq!(read(&tidied, dimension, None).map(f64::to_bits), Ok(si.to_bits())),
        Ok(_) => {}
        Err(_) => assert_eq!(tidied, text.trim()),
    }
}

/// What stands before the quantities that a refusal tells people to write, what between them, and whether the field
/// itself must take them.
const TELLING: [(&str, &str, bool); 7] = [
    ("Write it like “", "\n", true),
    ("Did you mean ", "\n", true),
    (" is outside ", " to ", false),
    ("write the unit too: ", " or ", false),
    ("after every number, like ", " or ", false),
    ("of a scale, write ", " or ", false),
    ("two ways. Write ", " or ", false),
];

/// The quantities that a refusal tells people to write, each with whether the field must take it.
fn told(message: &str) -> Vec<(String, bool)> {
    // The sentences quote what was typed, which may be anything: what comes last is the sentence's own.
    let last =
        TELLING.iter().filter_map(|row| Some((message.rfind(row.0)? + row.0.len(), row))).max_by_key(|(end, _)| *end);
    let Some((end, (_, between, by_field))) = last else { return Vec::new() };
    let ways = message[end..].trim_end_matches(['”', '.', '?']).split(between);
    ways.map(|way| (way.to_owned(), *by_field)).collect()
}

/// A text in a field, as somebody with this view sees it.
pub(crate) fn field(row: &Row, text: &str, view: View) {
    let said = Said::Text(text.to_owned());
    let refusal = match row.reading(&said) {
        Ok(reading) => {
            let linked = row.linked(&said).expect("what can be read can be linked");
            if let Kind::Text(_) = row.kind {
                for other in [linked.clone(), row.tidied(text, view.system)] {
                    assert_eq!(row.linked(&Said::Text(other)), Some(linked.clone()));
                }
                return;
            }
            assert_eq!(row.reading(&Said::Text(linked.clone())), Ok(reading.clone()), "{linked:?}");
            let tidied = row.tidied(text, view.system);
            assert_eq!(row.reading(&Said::Text(tidied.clone())), Ok(reading), "{tidied:?}");
            return;
        }
        Err(refusal) => refusal,
    };
    assert_eq!(row.linked(&said), None);
    let message = message(&Error::of(row.id, Reason::Refused(refusal)), view);
    match row.kind {
        Kind::Quantity(Limits { dimension, bare, .. }) => {
            let ways = told(&message);
            assert!(!ways.is_empty(), "{message:?} tells nothing");
            for (way, by_field) in ways {
                let read = read(&way, dimension, bare.map(|[si, _]| si));
                assert!(read.is_ok(), "{message:?} tells {way:?}: {read:?}");
                assert!(!by_field || row.reading(&Said::Text(way)).is_ok(), "{message:?} tells what is refused");
            }
        }
        Kind::Text(_) if row.id == "ropeStock" => assert!(!told(&message).is_empty(), "{message:?} tells nothing"),
        Kind::Text(_) => {
            let does = [". ", "write ", "put a unit ", "use one of them", "carry them over"];
            assert!(does.iter().any(|what| message.contains(what)), "{message:?} does not say what to do");
        }
        _ => assert!(message.contains("Choose one: "), "{message:?}"),
    }
}
