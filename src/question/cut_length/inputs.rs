//! What the question reads, checked.

use super::Asked;
use super::made::{diameter, make, rig};
use super::said::{Said, said};
use crate::climber::{BODY_MASS, KIT_MASS};
use crate::cord::{
    CAME_OUT, CORD_CUT, CORD_USE, CordUse, Cut, FINISHED_LENGTH, FREE_LEG, HAND_END, HITCH_COILS, HITCH_CROSSINGS,
    Make, Short, WORKING_END, Wanted, haul_strands,
};
use crate::draft::{Draft, Reader};
use crate::error::{Error, Reason};
use crate::field::{Row, Spread};
use crate::gear::{CORD_ENDS, CORD_FIBRE, Ends, Fibre, HAUL_CORD, HAUL_CORD_STRENGTH, HITCH_CORD, HITCH_CORD_STRENGTH};
use crate::quantity::{Force, Mass};
use crate::question::Question;
use crate::question::fields::reader;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) cord_use: CordUse,
    pub(super) asked: Asked,
    pub(super) make: Make,
    pub(super) cut: Cut,
    pub(super) strands: Option<(u32, Spread)>,
    pub(super) fibre: Fibre,
    pub(super) labelled: Option<Force>,
    pub(super) body_mass: Option<Mass>,
    pub(super) kit_mass: Spread,
    pub(super) assumed: Vec<&'static Row>,
    pub(super) usual: Vec<&'static Row>,
}

/// What somebody's coils and knots can take, over what they usually do: beyond that something was misread (judged).
const BELIEVED: std::ops::RangeInclusive<f64> = 0.5..=2.0;

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
        let mut reader = reader(draft, Question::CutLength);
        let cord_use = reader.need(&CORD_USE);
        let made = cord_use.and_then(|cord_use| make(&mut reader, cord_use));
        let said = said(&mut reader, cord_use);
        let fibre = reader.chosen(&CORD_FIBRE);
        let labels = [reader.maybe(&HITCH_CORD_STRENGTH), reader.maybe(&HAUL_CORD_STRENGTH)];
        let (body_mass, kit_mass) = (reader.maybe(&BODY_MASS), reader.spread(&KIT_MASS));
        let hauls = cord_use == Some(CordUse::HaulCord) && said.is_usual();
        let rig = rig(&mut reader, hauls);
        let mut strands = None;
        let mut built = None;
        if let (Some(cord_use), Some(mut make)) = (cord_use, made) {
            strands = rig.as_deref().and_then(haul_strands);
            built = wanted(&mut reader, cord_use, &mut make, &said, strands)
                .and_then(|(asked, wanted)| Some((asked, make, laid(&mut reader, &make, wanted)?)));
        }
        let (assumed, usual) = assumed(&reader, cord_use, &said, strands.is_some());
        reader.done(|| {
            let (cord_use, (asked, make, cut)) = (cord_use?, built?);
            let [hitch, haul] = labels;
            let labelled = match diameter(cord_use).row.id {
                id if id == HITCH_CORD.row.id => hitch,
                id if id == HAUL_CORD.row.id => haul,
                _ => None,
            };
            Some(Self {
                cord_use,
                asked,
                make,
                cut,
                strands,
                fibre: fibre?,
                labelled,
                body_mass,
                kit_mass: kit_mass?,
                assumed,
                usual,
            })
        })
    }
}

/// What is asked, and the length that is known; the fit goes into the make.
fn wanted(
    reader: &mut Reader<'_>,
    cord_use: CordUse,
    make: &mut Make,
    said: &Said,
    strands: Option<(u32, Spread)>,
) -> Option<(Asked, Wanted)> {
    let twice = if make.is_loop() { 2.0 } else { 1.0 };
    let hitch = cord_use.is_hitch();
    if let Some(cut) = said.cut {
        if make.ends == Ends::Sewn {
            reader.note(Error::of(CORD_CUT.row.id, Reason::SewnIsBought));
            return None;
        }
        let Some(came_out) = said.came_out else { return Some((Asked::Leaves, Wanted::Cut(cut))) };
        let fit = make.fitted(cut, if hitch { came_out } else { came_out * twice });
        if !BELIEVED.contains(&fit) {
            let fields = vec![CORD_CUT.row.id.to_owned(), CAME_OUT.row.id.to_owned()];
            reader.note(Error { fields, reason: Reason::OddFit { share: fit } });
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
fn laid(reader: &mut Reader<'_>, make: &Make, wanted: Wanted) -> Option<Cut> {
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
            reader.note(match short {
                Short::Legs(least) => Error::of(row.id, Reason::TooShort { least: least / per }),
                Short::WorkingEnd([least, most]) => Error::of(WORKING_END.row.id, Reason::WorkingEnd { least, most }),
            });
            None
        }
    }
}

/// The fields that have their defaults: those of everybody, and those that depend on what the cord is for.
fn assumed(
    reader: &Reader<'_>,
    cord_use: Option<CordUse>,
    said: &Said,
    from_rig: bool,
) -> (Vec<&'static Row>, Vec<&'static Row>) {
    let mut assumed = vec![&CORD_FIBRE.row];
    if reader.says(&BODY_MASS.row) {
        assumed.push(&KIT_MASS.row);
    }
    assumed.retain(|row| !reader.says(row));
    let mut usual: Vec<&'static Row> = Vec::new();
    if cord_use.is_some_and(CordUse::is_hitch) {
        usual.extend([&HITCH_COILS.row, &HITCH_CROSSINGS.row]);
    }
    usual.push(&CORD_ENDS.row);
    if said.is_usual() && !from_rig {
        usual.push(if cord_use.is_some_and(CordUse::is_hitch) { &FREE_LEG.row } else { &FINISHED_LENGTH.row });
    }
    usual.retain(|row| !reader.says(row));
    (assumed, usual)
}
