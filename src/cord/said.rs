//! The lengths that are said.

use super::{CAME_OUT, CORD_CUT, CordUse, FINISHED_LENGTH, FREE_LEG};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::quantity::Quantity;

/// The lengths that are said, in metres.
#[derive(Clone, Copy)]
pub(crate) struct Said {
    pub(super) legs: Option<f64>,
    pub(super) finished: Option<f64>,
    pub(super) cut: Option<f64>,
    pub(super) came_out: Option<f64>,
}

impl Said {
    /// Whether it is asked what to cut, and no length but the usual one is to go by.
    pub(crate) const fn is_usual(&self) -> bool {
        self.legs.is_none() && self.finished.is_none() && (self.cut.is_none() || self.came_out.is_some())
    }
}

/// The lengths that are said, in metres; what makes no sense together goes to the faults.
pub(crate) fn said(reader: &mut Reader<'_>, cord_use: Option<CordUse>, faults: &mut Vec<Error>) -> Said {
    let hitch = cord_use.is_none_or(CordUse::is_hitch);
    let mut length = |field| reader.maybe(field).map(Quantity::si);
    let (legs, finished) = (length(&FREE_LEG), length(&FINISHED_LENGTH));
    let said = Said { legs: legs.filter(|_| hitch), finished, cut: length(&CORD_CUT), came_out: length(&CAME_OUT) };
    // What cannot be read is wrong by itself.
    let [no_cut, no_outcome] = [&CORD_CUT.row, &CAME_OUT.row].map(|row| !reader.says(row));
    let wanted = if said.legs.is_some() { &FREE_LEG.row } else { &FINISHED_LENGTH.row };
    let is_wanted = said.legs.is_some() || said.finished.is_some();
    for (clash, [one, other], reason) in [
        (said.legs.is_some() && said.finished.is_some(), [&FREE_LEG.row, &FINISHED_LENGTH.row], Reason::TwoLengths),
        (said.cut.is_some() && no_outcome && is_wanted, [wanted, &CORD_CUT.row], Reason::CutAndWanted),
        (said.came_out.is_some() && no_cut, [&CORD_CUT.row, &CAME_OUT.row], Reason::CameOutAlone),
    ] {
        if clash {
            faults.push(Error { fields: vec![one.id.to_owned(), other.id.to_owned()], reason });
        }
    }
    said
}
