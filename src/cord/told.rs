//! A cord as it was said, worked out.

use super::made::make;
use super::said::Said;
use super::{
    CAME_OUT, CORD_CUT, CordUse, Cut, FINISHED_LENGTH, FREE_LEG, HAND_END, HITCH_COILS, HITCH_CROSSINGS, Make, Short,
    WORKING_END, Wanted,
};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::{Row, Spread};
use crate::gear::{CORD_ENDS, Ends};

/// What is asked of a cord.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Asked {
    /// What to cut.
    Length,
    /// What a length that was cut leaves.
    Leaves,
}

/// A cord as it was said, worked out.
#[derive(Debug, Clone, PartialEq)]
pub struct Told {
    /// What it is for.
    pub cord_use: CordUse,
    /// What is asked of it.
    pub asked: Asked,
    /// How it is laid and ended.
    pub make: Make,
    /// Its pieces.
    pub cut: Cut,
    /// The fields in which what is usual of such a cord stands for what was not said.
    pub usual: Vec<&'static Row>,
}

/// What somebody's coils and knots can take, over what they usually do: beyond that something was misread (judged).
const BELIEVED: std::ops::RangeInclusive<f64> = 0.5..=2.0;

/// A cord as it was said, worked out; what is missing or does not go together goes to the faults, and only what cannot be
/// read to the reader. `strands` are those of a rig's haul cord.
pub(crate) fn told(
    reader: &mut Reader<'_>,
    cord_use: CordUse,
    said: &Said,
    strands: Option<(u32, Spread)>,
    faults: &mut Vec<Error>,
) -> Option<Told> {
    let mut make = make(reader, cord_use, faults)?;
    let (asked, wanted) = wanted(cord_use, &mut make, said, strands, faults)?;
    let cut = laid(&make, wanted, faults)?;
    Some(Told { cord_use, asked, make, cut, usual: usual(reader, cord_use, said, strands.is_some()) })
}

/// The usual haul cord so thick, in metres, of a rig's strands.
pub(crate) fn usual_haul(cord: f64, (count, section): (u32, Spread)) -> Option<Told> {
    let cord_use = CordUse::HaulCord;
    let pattern = cord_use.pattern();
    let make = Make {
        pattern,
        ends: pattern.ends.first().copied()?,
        rope: 0.0,
        cord,
        coils: 0.0,
        crossings: f64::from(pattern.crossings),
        hand_end: HAND_END,
        fit: None,
        working_end: None,
    };
    let cut = make.cut(Wanted::Legs(section.scaled(f64::from(count)))).ok()?;
    Some(Told { cord_use, asked: Asked::Length, make, cut, usual: Vec::new() })
}

/// What is asked, and the length that is known; the fit goes into the make.
fn wanted(
    cord_use: CordUse,
    make: &mut Make,
    said: &Said,
    strands: Option<(u32, Spread)>,
    faults: &mut Vec<Error>,
) -> Option<(Asked, Wanted)> {
    let twice = if make.is_loop() { 2.0 } else { 1.0 };
    let hitch = cord_use.is_hitch();
    if let Some(cut) = said.cut {
        if make.ends == Ends::Sewn {
            faults.push(Error::of(CORD_CUT.row.id, Reason::SewnIsBought));
            return None;
        }
        let Some(came_out) = said.came_out else { return Some((Asked::Leaves, Wanted::Cut(cut))) };
        let fit = make.fitted(cut, if hitch { came_out } else { came_out * twice });
        if !BELIEVED.contains(&fit) {
            let fields = vec![CORD_CUT.row.id.to_owned(), CAME_OUT.row.id.to_owned()];
            faults.push(Error { fields, reason: Reason::OddFit { share: fit } });
            return None;
        }
        make.fit = Some(fit);
    }
    let usual = cord_use.pattern().usual;
    let wanted = match (said.legs, said.finished) {
        (Some(legs), _) => Wanted::Legs(Spread::point(legs)),
        (None, Some(finished)) if hitch => Wanted::Run(finished * twice),
        (None, Some(finished)) => Wanted::Legs(Spread::point(finished * twice)),
        (None, None) if hitch => Wanted::Legs(Spread::point(usual)),
        (None, None) if cord_use == CordUse::HaulCord => {
            let (count, section) = strands?;
            make.hand_end = HAND_END;
            Wanted::Legs(section.scaled(f64::from(count)))
        }
        (None, None) => Wanted::Legs(Spread::point(usual * twice)),
    };
    Some((Asked::Length, wanted))
}

/// The pieces of the cord.
fn laid(make: &Make, wanted: Wanted, faults: &mut Vec<Error>) -> Option<Cut> {
    let row = match wanted {
        Wanted::Cut(_) => &CORD_CUT.row,
        Wanted::Run(_) => &FINISHED_LENGTH.row,
        Wanted::Legs(_) => &FREE_LEG.row,
    };
    // A loop's inside is half of what goes round in it.
    let per = if matches!(wanted, Wanted::Run(_)) && make.is_loop() { 2.0 } else { 1.0 };
    match make.cut(wanted) {
        Ok(cut) => Some(cut),
        Err(short) => {
            faults.push(match short {
                Short::Legs(least) => Error::of(row.id, Reason::TooShort { least: least / per }),
                Short::WorkingEnd([least, most]) => Error::of(WORKING_END.row.id, Reason::WorkingEnd { least, most }),
            });
            None
        }
    }
}

/// The fields in which what is usual of such a cord stands for what was not said.
fn usual(reader: &Reader<'_>, cord_use: CordUse, said: &Said, from_rig: bool) -> Vec<&'static Row> {
    let mut usual: Vec<&'static Row> = Vec::new();
    if cord_use.is_hitch() {
        usual.extend([&HITCH_COILS.row, &HITCH_CROSSINGS.row]);
    }
    usual.push(&CORD_ENDS.row);
    if said.is_usual() && !from_rig {
        usual.push(if cord_use.is_hitch() { &FREE_LEG.row } else { &FINISHED_LENGTH.row });
    }
    usual.retain(|row| !reader.says(row));
    usual
}
