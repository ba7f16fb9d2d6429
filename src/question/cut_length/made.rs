//! How the cord is laid and ended, and the rig that it may belong to.

use crate::cord::{CordUse, HITCH_COILS, HITCH_CROSSINGS, Make, WORKING_END, haul_strands};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::{Field, Spread};
use crate::gear::{CORD_ENDS, HAUL_CORD, HITCH_CORD, ROPE_DIAMETER, SLING_CORD};
use crate::quantity::{Count, Length, Quantity};
use crate::reeving::{Backup, OWN_RIG, RIG, Rig, RigName};
use std::sync::Arc;

/// The field of its diameter.
pub(super) const fn diameter(cord_use: CordUse) -> &'static Field<Length> {
    match cord_use {
        CordUse::FootLoop | CordUse::HandLoop | CordUse::Bridge | CordUse::Lanyard => &SLING_CORD,
        CordUse::HaulCord => &HAUL_CORD,
        _ => &HITCH_CORD,
    }
}

/// How the cord is laid and ended.
pub(super) fn make(reader: &mut Reader<'_>, cord_use: CordUse) -> Option<Make> {
    let pattern = cord_use.pattern();
    let rope = if cord_use.is_hitch() { reader.need(&ROPE_DIAMETER) } else { reader.maybe(&ROPE_DIAMETER) };
    let mut cord = None;
    for field in [&HITCH_CORD, &SLING_CORD, &HAUL_CORD] {
        if std::ptr::eq(field, diameter(cord_use)) {
            cord = reader.need(field);
        } else {
            reader.maybe(field);
        }
    }
    let (coils, crossings) = (reader.maybe(&HITCH_COILS), reader.maybe(&HITCH_CROSSINGS));
    let ends = reader.maybe(&CORD_ENDS).or(pattern.ends.first().copied());
    if ends.is_some_and(|ends| !pattern.ends.contains(&ends)) {
        let reason = Reason::EndsOfAnother { noun: cord_use.named().noun, ends: pattern.ends };
        reader.note(Error::of(CORD_ENDS.row.id, reason));
    }
    let working_end = reader.maybe(&WORKING_END);
    if pattern.coils.is_none() && !reader.says(&HITCH_COILS.row) {
        reader.note(Error::of(HITCH_COILS.row.id, Reason::Needed));
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

/// The rig whose haul cord is to be cut, where that is what is asked.
pub(super) fn rig(reader: &mut Reader<'_>, is_asked: bool) -> Option<Arc<Rig>> {
    let (name, own) = (reader.maybe(&RIG), reader.maybe(&OWN_RIG));
    if !is_asked {
        return None;
    }
    let rig = match name {
        None => {
            if !reader.says(&RIG.row) {
                reader.note(Error::of(RIG.row.id, Reason::NoHaulCord));
            }
            return None;
        }
        Some(RigName::Own) => {
            if !reader.says(&OWN_RIG.row) {
                reader.note(Error::of(OWN_RIG.row.id, Reason::Needed));
            }
            own.map(|own| own.rig)
        }
        Some(name) => name.rig(Backup::None).ok().map(Arc::new),
    };
    if rig.as_deref().is_some_and(|rig| haul_strands(rig).is_none()) {
        reader.note(Error::of(RIG.row.id, Reason::NoHaulCord));
    }
    rig
}
