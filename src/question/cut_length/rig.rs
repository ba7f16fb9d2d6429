//! The rig that a cord may belong to.

use crate::cord::haul_strands;
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::reeving::{Backup, OWN_RIG, RIG, Rig, RigName};
use std::sync::Arc;

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
