//! The cords that the rig of the plan takes: one for each hitch, and its haul cord.

use crate::cord::{CORD_USE, CordUse, Told, haul_strands, said, told, usual_haul};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::gear::HAUL_CORD;
use crate::quantity::Quantity;
use crate::reeving::Rig;

/// Like cords that a rig takes.
#[derive(Debug, Clone, PartialEq)]
pub struct RigCord {
    /// What they are for; none where nobody said which hitch.
    pub cord_use: Option<CordUse>,
    /// How many.
    pub count: usize,
    /// One of them; or what is missing or does not go together, nothing where nobody said which hitch.
    pub made: Result<Told, Vec<Error>>,
}

/// The cords that a rig takes. What is missing for them is no error of the plan's.
pub(super) fn rig_cords(reader: &mut Reader<'_>, rig: &Rig, hitches: usize) -> Vec<RigCord> {
    let (cord_use, haul) = (reader.maybe(&CORD_USE), reader.maybe(&HAUL_CORD));
    let mut faults = Vec::new();
    let said = said(reader, cord_use, &mut faults);
    let mut cords = Vec::new();
    if hitches > 0 {
        let cord_use = cord_use.filter(|cord_use| cord_use.is_hitch());
        let made = match cord_use {
            Some(hitch) => {
                let hitch = told(reader, hitch, &said, None, &mut faults);
                settled(hitch, std::mem::take(&mut faults))
            }
            None => Err(Vec::new()),
        };
        cords.push(RigCord { cord_use, count: hitches, made });
    }
    if let Some(strands) = haul_strands(rig) {
        let hauls = CordUse::HaulCord;
        let made = if cord_use == Some(hauls) {
            let cord = told(reader, hauls, &said, Some(strands), &mut faults);
            settled(cord, faults)
        } else {
            let cord = haul.and_then(|thick| usual_haul(thick.si(), strands));
            cord.ok_or_else(|| vec![Error::of(HAUL_CORD.row.id, Reason::Needed)])
        };
        cords.push(RigCord { cord_use: Some(hauls), count: 1, made });
    }
    cords
}

/// The cord, unless something that was said does not go together.
fn settled(cord: Option<Told>, faults: Vec<Error>) -> Result<Told, Vec<Error>> {
    match cord {
        Some(cord) if faults.is_empty() => Ok(cord),
        _ => Err(faults),
    }
}
