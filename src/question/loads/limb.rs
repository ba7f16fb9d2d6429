//! What bending says of the limb.

use crate::draft::Reader;
use crate::field::Spread;
use crate::quantity::{Angle, Force, Length};
use crate::source::Source;
use crate::tree::{
    Bending, FOREARM_GIRTH, LEAST_BOLE, LIMB_ANGLE, LIMB_DIAMETER, LIMB_REACH, LIMB_WOOD, SPECIES, Species, Wood,
    bending, moment, stress, thickness,
};

/// What was said of the limb.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Limb {
    diameter: Option<Length>,
    reach: Spread,
    angle: Spread,
    species: Option<Species>,
    wood: Option<Wood>,
    forearm: Option<Length>,
}

/// What bending says of the limb.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimbFact {
    /// What it says.
    pub says: Bending,
    /// Whether what a slip pulls is in it: else it may rule out, and not the other way.
    pub with_slips: bool,
    /// Whether somebody looked whether it lives.
    pub looked_at: bool,
    /// The pull it is reckoned with, in newtons.
    pub pull: f64,
    /// The moment at the union, in newton metres; none where the thickness was not said.
    pub moment: Option<f64>,
    /// The stress at the union, in pascals.
    pub stress: Option<f64>,
    /// The low strength of its green wood, in pascals, and where it comes from.
    pub strength: Option<(f64, Source)>,
}

impl Limb {
    pub(super) fn read(reader: &mut Reader<'_>) -> Option<Self> {
        let (diameter, forearm) = (reader.maybe(&LIMB_DIAMETER), reader.maybe(&FOREARM_GIRTH));
        let (species, wood) = (reader.maybe(&SPECIES), reader.maybe(&LIMB_WOOD));
        let (reach, angle) = (reader.spread(&LIMB_REACH), reader.spread(&LIMB_ANGLE));
        Some(Self { diameter, reach: reach?, angle: angle?, species, wood, forearm })
    }

    /// Whether it is thinner than the climber's forearm, where both are known.
    pub(super) fn is_thinner_than_forearm(&self) -> Option<bool> {
        Some(self.diameter?.in_metres() < thickness(self.forearm?).in_metres())
    }

    /// Whether it is thinner than the least bole.
    pub(super) fn is_thinner_than_bole(&self) -> Option<bool> {
        Some(self.diameter?.in_metres() < LEAST_BOLE.in_metres())
    }

    /// What bending says of it under a pull straight down; none where too little is known to say anything.
    pub(super) fn under(&self, pull: f64, with_slips: bool) -> Option<LimbFact> {
        let dead = self.wood == Some(Wood::Dead);
        let between = Angle::radians(self.angle.likely);
        let bent = self.diameter.map(|diameter| {
            let moment = moment(Force::newtons(pull), Length::metres(self.reach.high), between);
            (moment, stress(moment, diameter))
        });
        let strength = self.species.and_then(Species::low);
        let says = match (bent, strength) {
            _ if dead => Bending::DeadWood,
            _ if self.is_thinner_than_forearm() == Some(true) || self.is_thinner_than_bole() == Some(true) => {
                Bending::TooThin
            }
            // Nothing that is reckoned pulls on it.
            _ if pull <= 0.0 => return None,
            (Some((_, stress)), Some((strength, _))) => bending(stress, strength, dead),
            _ => return None,
        };
        Some(LimbFact {
            says,
            with_slips,
            looked_at: self.wood.is_some(),
            pull,
            moment: bent.map(|(moment, _)| moment),
            stress: bent.map(|(_, stress)| stress),
            strength,
        })
    }
}
