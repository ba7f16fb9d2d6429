//! What the question reads, checked.

use super::gear::{Gear, counted, rigged};
use super::kind::{Kind, Wanted};
use super::rig_cords::{RigCord, rig_cords};
use super::rope::{Rope, rope};
use crate::cord::list::{CORDS, HANKS, HankRow};
use crate::cord::{END_ALLOWANCE, KERF};
use crate::draft::{Draft, Reader};
use crate::error::Error;
use crate::field::Row;
use crate::gear::{CORD_FIBRE, Fibre};
use crate::quantity::MILLIMETRE;
use crate::question::Question;
use crate::question::fields::reader;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) kinds: Vec<Kind>,
    /// What else the rig takes; none where none was said.
    pub(super) gear: Option<Gear>,
    /// The cords that the rig takes.
    pub(super) rig_cords: Vec<RigCord>,
    /// The rope that it takes; none where that is not known.
    pub(super) rope: Option<Rope>,
    /// What every cut and every hank takes, in metres.
    pub(super) kerf: f64,
    pub(super) end: f64,
    /// The fields whose defaults the answer rests on.
    pub(super) assumed: Vec<&'static Row>,
}

/// The lengths of hanks one can usually buy, in metres: from memory. In whatever system answers are written, so that a
/// plan is the same in both.
pub const USUAL_HANKS: [f64; 5] = [5.0, 10.0, 20.0, 30.0, 50.0];

impl Inputs {
    /// The fields whose defaults the answer rests on.
    #[must_use]
    pub fn assumed(&self) -> &[&'static Row] {
        &self.assumed
    }

    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::CutPlan);
        let (mut gear, mut own, mut climbed) = (None, Vec::new(), None);
        if let Some((rig, turns)) = rigged(&mut reader) {
            let counted = counted(&rig, &turns);
            own = rig_cords(&mut reader, &rig, counted.hitches);
            climbed = rope(&mut reader, &rig);
            gear = Some(counted);
        }
        // The cords of a rig are enough.
        let has_cords = own.iter().any(|cord| cord.made.is_ok());
        let cords = if has_cords { reader.maybe(&CORDS) } else { reader.need(&CORDS) };
        let hanks = reader.maybe(&HANKS).map_or_else(Vec::new, |list| list.rows);
        let (kerf, end) = (reader.spread(&KERF), reader.spread(&END_ALLOWANCE));
        let fibre = reader.chosen(&CORD_FIBRE);
        let mut kinds: Vec<Kind> = Vec::new();
        let mut defaults = has_cords;
        for row in cords.iter().flat_map(|list| &list.rows) {
            defaults |= row.fibre.is_none();
            let of = row.fibre.or(fibre).unwrap_or(Fibre::Nylon);
            let kind = kind_of(&mut kinds, row.diameter, of);
            for _ in 0..row.count {
                kind.push(Wanted { name: row.name.clone(), length: row.length });
            }
        }
        for cord in &own {
            let Ok(told) = &cord.made else { continue };
            let diameter = (MILLIMETRE.count(told.make.cord) * 10.0).round() as u32;
            let kind = kind_of(&mut kinds, diameter, fibre.unwrap_or(Fibre::Nylon));
            for _ in 0..cord.count {
                // As long as it may have to be: a cord that comes out short is none.
                kind.push(Wanted { name: told.cord_use.named().noun.to_owned(), length: told.cut.total.high });
            }
        }
        kinds.sort_by_key(|kind| (kind.diameter, kind.fibre as usize));
        for kind in &mut kinds {
            kind.hanks.extend(hanks.iter().filter(|hank| hank.suits(kind.diameter, kind.fibre)));
            kind.is_usual = kind.hanks.is_empty();
            if kind.is_usual {
                for length in USUAL_HANKS {
                    kind.hanks.push(HankRow { diameter: None, length, fibre: None, price: None, limit: None });
                }
            }
        }
        let mut assumed = assumed(&reader, defaults);
        let rope = climbed.map(|(rope, rests_on)| {
            assumed.extend(rests_on);
            rope
        });
        reader.done(|| Some(Self { kinds, gear, rig_cords: own, rope, kerf: kerf?.likely, end: end?.likely, assumed }))
    }
}

/// The cords of a diameter and fibre.
fn kind_of(kinds: &mut Vec<Kind>, diameter: u32, fibre: Fibre) -> &mut Vec<Wanted> {
    let at = kinds.iter().position(|kind| kind.diameter == diameter && kind.fibre == fibre);
    let at = at.unwrap_or(kinds.len());
    if at == kinds.len() {
        kinds.push(Kind { diameter, fibre, cords: Vec::new(), hanks: Vec::new(), is_usual: false });
    }
    // There is one at that place.
    #[expect(clippy::indexing_slicing, reason = "pushed above where it was not there")]
    &mut kinds[at].cords
}

/// The fields that have their defaults.
fn assumed(reader: &Reader<'_>, fibre: bool) -> Vec<&'static Row> {
    let mut assumed: Vec<&'static Row> = vec![&KERF.row, &END_ALLOWANCE.row];
    if fibre {
        assumed.push(&CORD_FIBRE.row);
    }
    assumed.retain(|row| !reader.says(row));
    assumed
}
