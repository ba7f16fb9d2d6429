//! The limits of every field, in every unit and view, and their neighbours.

use super::views::VIEWS;
use boughline::error::{Error, Reason};
use boughline::field::{Kind, Limits, Refusal, Row, Said};
use boughline::quantity::{System, Unit, View, canonical_si, plain, read, units, written};
use boughline::question::all_fields;
use boughline::words::{message, row_line};

/// Each end of each quantity: the row, its limits, which end, and where the outside is from it.
fn ends() -> impl Iterator<Item = (&'static Row, Limits, f64, f64)> {
    all_fields().into_iter().flat_map(|row| {
        let limits = if let Kind::Quantity(limits) = row.kind { Some(limits) } else { None };
        limits.into_iter().flat_map(move |limits| [(row, limits, limits.least, -1.0), (row, limits, limits.most, 1.0)])
    })
}

fn text(text: &str) -> Said {
    Said::Text(text.to_owned())
}

/// The sentence that refuses it for being out of range; none where it is taken, or cannot be read.
fn refusal(row: &Row, said: &Said, view: View) -> Option<String> {
    let refusal = row.reading(said).err()?;
    assert!(matches!(refusal, Refusal::OutOfRange { .. }), "{}: {said:?} {refusal:?}", row.id);
    Some(message(&Error::of(row.id, Reason::Refused(refusal)), view))
}

/// The two ends as forms and sentences show them.
fn shown(row: &'static Row, view: View) -> [String; 2] {
    let range = row_line(row, view).range.expect("a quantity has limits");
    let (least, most) = range.split_once(" to ").expect("two ends");
    [least.to_owned(), most.to_owned()]
}

/// The text with its last number one step of its last digit further; none below nought.
fn stepped(text: &str, way: f64, view: View) -> Option<String> {
    let end = text.rfind(|letter: char| letter.is_ascii_digit())? + 1;
    let start = text[..end]
        .rfind(|letter: char| !(letter.is_ascii_digit() || ".,".contains(letter)))
        .map_or(0, |at| at + text[at..].chars().next().map_or(0, char::len_utf8));
    let number = text.get(start..end)?.replace(',', ".");
    let decimals = number.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    let step = (0..decimals).fold(1.0, |step, _| step / 10.0);
    let moved = number.parse::<f64>().ok()? + way * step;
    (moved > -1e-9).then(|| format!("{}{}{}", &text[..start], plain(moved, decimals, view), &text[end..]))
}

#[test]
fn limits_are_taken_to_the_last_bit_and_the_next_number_beyond_is_refused() {
    let mut met = 0;
    for (row, limits, end, way) in ends() {
        let beyond = if way < 0.0 { end.next_down() } else { end.next_up() };
        assert!(row.reading(&Said::Number(end)).is_ok(), "{} of {end}", row.id);
        assert!(row.reading(&text(&canonical_si(end, limits.dimension))).is_ok(), "{} of {end}", row.id);
        // Less than a hundredth of a millimetre or a gram is nothing, on either side of it.
        if end == 0.0 {
            assert!(row.reading(&Said::Number(-1e-5)).is_err(), "{}", row.id);
        } else {
            for view in VIEWS {
                let told = refusal(row, &Said::Number(beyond), view).expect(row.id);
                let [least, most] = shown(row, view);
                let (said, named) = told.split_once(" is outside ").expect(&told);
                assert!(named.starts_with(&format!("{least} to {most}.")), "{}: {told}", row.id);
                let said = said.rsplit(": ").next().expect("something was said");
                assert!(
                    read(said, limits.dimension, None).is_ok_and(|si| row.reading(&Said::Number(si)).is_err()),
                    "{told}"
                );
                met += 1;
            }
        }
    }
    assert!(met > 450, "{met}");
}

/// "44 lb is outside 44 lb to 551 lb" helps nobody: a limit that is named is taken, and is the last that is.
#[test]
fn a_limit_that_is_named_is_taken_and_the_next_figure_beyond_is_not() {
    let mut beyond = 0;
    for (row, limits, end, way) in ends() {
        for view in VIEWS {
            let [least, most] = shown(row, view);
            let named = if way < 0.0 { least } else { most };
            let taken = read(&named, limits.dimension, None).expect(&named);
            assert!(row.reading(&text(&named)).is_ok(), "{}: {named} is named and refused", row.id);
            // No figure is nearer to the limit.
            for share in [0.0, 0.25, 0.5, 0.75] {
                let near = read(&written(end + (taken - end) * share, limits.dimension, view), limits.dimension, None);
                assert!(
                    near.is_ok_and(|near| near == taken || row.reading(&Said::Number(near)).is_err()),
                    "{}: {named}",
                    row.id
                );
            }
            if let Some(next) = stepped(&named, way, view)
                && read(&next, limits.dimension, None).is_ok_and(|si| (si - taken) * way > 0.0)
            {
                let told = refusal(row, &text(&next), view);
                assert!(told.is_some_and(|told| told.contains(&format!("{next} is outside "))), "{}: {next}", row.id);
                beyond += 1;
            }
        }
    }
    assert!(beyond > 450, "{beyond}");
}

/// To two decimals in each unit that people may write.
#[test]
fn limits_hold_in_every_unit() {
    let mut met = 0;
    for (row, limits, end, way) in ends() {
        for unit in units().filter(|unit| unit.dimension == limits.dimension) {
            let said = |hundredths: f64, unit: &Unit| text(&format!("{:.2} {}", hundredths / 100.0, unit.symbol));
            let hundredths = unit.count(end) * 100.0;
            let inside = if way < 0.0 { (hundredths - 1e-6).ceil() } else { (hundredths + 1e-6).floor() };
            let is_room = unit.si(inside / 100.0) >= limits.least * (1.0 - 1e-9)
                && unit.si(inside / 100.0) <= limits.most * (1.0 + 1e-9);
            if is_room && inside < 1e15 {
                assert!(row.reading(&said(inside, unit)).is_ok(), "{}: {:?}", row.id, said(inside, unit));
                let outside = said(inside + way, unit);
                assert!(refusal(row, &outside, View::default()).is_some(), "{}: {outside:?}", row.id);
                met += 1;
            }
        }
    }
    assert!(met > 400, "{met}");
}

/// What a box makes of a bare number is that number in its unit, in either view.
#[test]
fn bare_limits_are_taken_in_the_unit_of_their_box() {
    for (row, limits, end, way) in ends() {
        for system in [System::Si, System::Us] {
            let Some(unit) = row.bare_unit(system) else { continue };
            let hundredths = unit.count(end) * 100.0;
            let inside = if way < 0.0 { (hundredths - 1e-6).ceil() } else { (hundredths + 1e-6).floor() };
            let tidied = row.tidied(&format!("{:.2}", inside / 100.0), system);
            let is_room = (limits.least..=limits.most).contains(&unit.si(inside / 100.0));
            assert!(!is_room || row.reading(&text(&tidied)).is_ok(), "{}: {tidied}", row.id);
        }
    }
}
