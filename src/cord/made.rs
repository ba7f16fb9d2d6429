//! How a cord is laid and ended.

use super::{CordUse, HITCH_COILS, HITCH_CROSSINGS, Make, WORKING_END};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::{Field, Spread, Value};
use crate::gear::{CORD_ENDS, HAUL_CORD, HITCH_CORD, ROPE_DIAMETER, SLING_CORD};
use crate::quantity::{Count, Length, Quantity};

/// The field of its diameter.
pub(crate) const fn thickness(cord_use: CordUse) -> &'static Field<Length> {
    match cord_use {
        CordUse::FootLoop | CordUse::HandLoop | CordUse::Bridge | CordUse::Lanyard => &SLING_CORD,
        CordUse::HaulCord => &HAUL_CORD,
        _ => &HITCH_CORD,
    }
}

/// The value of a field that must be said.
fn need<T: Value>(reader: &mut Reader<'_>, field: &Field<T>, faults: &mut Vec<Error>) -> Option<T> {
    if !reader.says(&field.row) {
        faults.push(Error::of(field.row.id, Reason::Needed));
    }
    reader.maybe(field)
}

/// How the cord is laid and ended; what is missing for it goes to the faults.
pub(super) fn make(reader: &mut Reader<'_>, cord_use: CordUse, faults: &mut Vec<Error>) -> Option<Make> {
    let pattern = cord_use.pattern();
    let rope = if cord_use.is_hitch() { need(reader, &ROPE_DIAMETER, faults) } else { reader.maybe(&ROPE_DIAMETER) };
    let mut cord = None;
    for field in [&HITCH_CORD, &SLING_CORD, &HAUL_CORD] {
        if std::ptr::eq(field, thickness(cord_use)) {
            cord = need(reader, field, faults);
        } else {
            reader.maybe(field);
        }
    }
    let (coils, crossings) = (reader.maybe(&HITCH_COILS), reader.maybe(&HITCH_CROSSINGS));
    let ends = reader.maybe(&CORD_ENDS).or(pattern.ends.first().copied());
    if ends.is_some_and(|ends| !pattern.ends.contains(&ends)) {
        let reason = Reason::EndsOfAnother { noun: cord_use.named().noun, ends: pattern.ends };
        faults.push(Error::of(CORD_ENDS.row.id, reason));
    }
    let working_end = reader.maybe(&WORKING_END);
    if pattern.coils.is_none() && !reader.says(&HITCH_COILS.row) {
        faults.push(Error::of(HITCH_COILS.row.id, Reason::Needed));
    }
    let hitch = cord_use.is_hitch();
    let count =
        |said: Option<Count>, usual: Option<u32>| said.filter(|_| hitch).map(Quantity::si).or(usual.map(f64::from));
    Some(Make {
        pattern,
        ends: ends?,
        rope: if hitch { rope?.si() } else { 0.0 },
        cord: cord?.si(),
        coils: count(coils, pattern.coils)?,
        crossings: count(crossings, Some(pattern.crossings))?,
        hand_end: Spread::point(0.0),
        fit: None,
        working_end: working_end.filter(|_| hitch).map(Quantity::si),
    })
}
