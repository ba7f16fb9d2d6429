//! What the question reads, checked.

use super::rig::rig;
use crate::climber::{BODY_MASS, KIT_MASS};
use crate::cord::{CORD_USE, CordUse, Told, haul_strands, said, thickness, told};
use crate::draft::Draft;
use crate::error::Error;
use crate::field::{Row, Spread};
use crate::gear::{CORD_FIBRE, Fibre, HAUL_CORD, HAUL_CORD_STRENGTH, HITCH_CORD, HITCH_CORD_STRENGTH};
use crate::quantity::{Force, Mass};
use crate::question::Question;
use crate::question::fields::reader;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) told: Told,
    pub(super) strands: Option<(u32, Spread)>,
    pub(super) fibre: Fibre,
    pub(super) labelled: Option<Force>,
    pub(super) body_mass: Option<Mass>,
    pub(super) kit_mass: Spread,
    pub(super) assumed: Vec<&'static Row>,
}

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
        let mut faults = Vec::new();
        let said = said(&mut reader, cord_use, &mut faults);
        let fibre = reader.chosen(&CORD_FIBRE);
        let labels = [reader.maybe(&HITCH_CORD_STRENGTH), reader.maybe(&HAUL_CORD_STRENGTH)];
        let (body_mass, kit_mass) = (reader.maybe(&BODY_MASS), reader.spread(&KIT_MASS));
        let hauls = cord_use == Some(CordUse::HaulCord) && said.is_usual();
        let strands = rig(&mut reader, hauls).as_deref().and_then(haul_strands);
        let told = cord_use.and_then(|cord_use| told(&mut reader, cord_use, &said, strands, &mut faults));
        for fault in faults {
            reader.note(fault);
        }
        let mut assumed = vec![&CORD_FIBRE.row];
        if reader.says(&BODY_MASS.row) {
            assumed.push(&KIT_MASS.row);
        }
        assumed.retain(|row| !reader.says(row));
        reader.done(|| {
            let told = told?;
            let [hitch, haul] = labels;
            let labelled = match thickness(told.cord_use).row.id {
                id if id == HITCH_CORD.row.id => hitch,
                id if id == HAUL_CORD.row.id => haul,
                _ => None,
            };
            Some(Self { told, strands, fibre: fibre?, labelled, body_mass, kit_mass: kit_mass?, assumed })
        })
    }
}
