//! What was said of the gear, and what each piece of it bears.

use super::piece::PieceKind;
use crate::draft::Reader;
use crate::field::{Row, Spread};
use crate::gear::{
    CONNECTOR, CONNECTOR_STRENGTH, CORD_FIBRE, Connector, Fibre, HARNESS_STRENGTH, HAUL_CORD, HAUL_CORD_STRENGTH,
    HITCH_CORD, HITCH_CORD_STRENGTH, Knot, LEAST_LIFE_CORD, LIFE_LINE, LIFE_PART, Minimum, PULLEY_MINIMUM,
    PULLEY_STRENGTH, ROPE_KIND, ROPE_STRENGTH, RopeKind, cord_minimum,
};
use crate::quantity::{Force, Length};
use crate::source::{EN_564, Source};

/// What a piece bears.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strength {
    /// New, and in a straight pull, in newtons.
    pub new: f64,
    /// The standard that asks for no less; none where the label says what it bears.
    pub source: Option<Source>,
    /// What its knots leave; none where it has none.
    pub knot: Option<Spread>,
    /// On how many legs it hangs.
    pub legs: f64,
}

impl Strength {
    /// What it bears as it is rigged, in newtons, to plan on.
    #[must_use]
    pub fn rigged(&self) -> f64 {
        self.new * self.knot.map_or(1.0, |kept| kept.likely) * self.legs
    }
}

/// How a piece stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standing {
    /// Its peak load may pass what it bears as it is rigged.
    Short,
    /// It bears less than the least that is asked of what bears a tree worker.
    UnderMinimum,
    /// What it bears is not known.
    NotKnown,
    /// Neither.
    Over,
}

/// What was said of the gear.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Gear {
    pub(super) rope: RopeKind,
    rope_strength: Option<Force>,
    pub(super) hitch_cord: Option<Length>,
    hitch_cord_strength: Option<Force>,
    haul_cord: Option<Length>,
    haul_cord_strength: Option<Force>,
    fibre: Fibre,
    connector: Connector,
    connector_strength: Option<Force>,
    pulley_strength: Option<Force>,
    harness_strength: Option<Force>,
}

impl Gear {
    pub(super) fn read(reader: &mut Reader<'_>) -> Option<Self> {
        let rope = reader.chosen(&ROPE_KIND);
        let rope_strength = reader.maybe(&ROPE_STRENGTH);
        let (hitch_cord, haul_cord) = (reader.maybe(&HITCH_CORD), reader.maybe(&HAUL_CORD));
        let hitch_cord_strength = reader.maybe(&HITCH_CORD_STRENGTH);
        let haul_cord_strength = reader.maybe(&HAUL_CORD_STRENGTH);
        let fibre = reader.chosen(&CORD_FIBRE);
        let connector = reader.chosen(&CONNECTOR);
        let connector_strength = reader.maybe(&CONNECTOR_STRENGTH);
        let pulley_strength = reader.maybe(&PULLEY_STRENGTH);
        let harness_strength = reader.maybe(&HARNESS_STRENGTH);
        Some(Self {
            rope: rope?,
            rope_strength,
            hitch_cord,
            hitch_cord_strength,
            haul_cord,
            haul_cord_strength,
            fibre: fibre?,
            connector: connector?,
            connector_strength,
            pulley_strength,
            harness_strength,
        })
    }

    /// The fields whose defaults strengths rest on.
    pub(super) const ASSUMED: &[&'static Row] = &[&ROPE_KIND.row, &CORD_FIBRE.row, &CONNECTOR.row];

    /// What a piece of a kind bears, where that is known.
    pub(super) fn strength(&self, kind: PieceKind) -> Option<Strength> {
        let one = |new: Force, source| Strength { new: new.in_newtons(), source, knot: None, legs: 1.0 };
        let labelled = |label: Option<Force>, least: Option<Minimum>| match (label, least) {
            (Some(label), _) => Some(one(label, None)),
            (None, Some(least)) => Some(one(least.force, Some(least.source))),
            _ => None,
        };
        let cord = |label: Option<Force>, diameter: Option<Length>, legs: f64| {
            let least = diameter.and_then(cord_minimum).map(|force| Minimum { force, source: EN_564 });
            let kept = Knot::Any.kept(self.fibre);
            labelled(label, least).map(|strength| Strength { knot: Some(kept), legs, ..strength })
        };
        let [shut, ..] = self.connector.minimums();
        match kind {
            PieceKind::Rope | PieceKind::Anchor => {
                let kept = Knot::Any.kept(Fibre::Polyester);
                labelled(self.rope_strength, self.rope.minimum())
                    .map(|strength| Strength { knot: Some(kept), ..strength })
            }
            // A knot in the tail jams: what an overhand leaves.
            PieceKind::Knot => {
                let kept = Knot::Overhand.kept(Fibre::Polyester);
                labelled(self.rope_strength, self.rope.minimum())
                    .map(|strength| Strength { knot: Some(kept), ..strength })
            }
            PieceKind::HaulCord => cord(self.haul_cord_strength, self.haul_cord, 1.0),
            PieceKind::HitchCord => cord(self.hitch_cord_strength, self.hitch_cord, 2.0),
            PieceKind::Connector => labelled(self.connector_strength, Some(shut)),
            PieceKind::Pulley => labelled(self.pulley_strength, Some(PULLEY_MINIMUM)),
            PieceKind::Harness => labelled(self.harness_strength, None),
            PieceKind::Ring | PieceKind::Crotch | PieceKind::Redirect => None,
        }
    }

    /// The least that is asked of a piece that bears a tree worker, who hangs on it with no hand on the rope or does not.
    pub(super) fn minimum(kind: PieceKind, hangs: bool) -> Option<Minimum> {
        match kind {
            PieceKind::HaulCord if hangs => Some(LIFE_PART),
            PieceKind::Rope | PieceKind::Anchor => Some(LIFE_LINE),
            PieceKind::HitchCord | PieceKind::Connector | PieceKind::Pulley | PieceKind::Ring | PieceKind::Harness => {
                Some(LIFE_PART)
            }
            // A cord that only hauls holds nobody, and no standard asks anything of the others.
            PieceKind::HaulCord | PieceKind::Knot | PieceKind::Crotch | PieceKind::Redirect => None,
        }
    }

    /// Whether the cord of a hitch is thinner than any that somebody's life may hang on.
    pub(super) fn is_thin(&self) -> bool {
        self.hitch_cord.is_some_and(|cord| cord.in_metres() < LEAST_LIFE_CORD.in_metres() - 1e-9)
    }
}

/// How a piece stands that bears this, under this peak.
pub(super) fn standing(strength: Option<Strength>, minimum: Option<Minimum>, peak: f64) -> Standing {
    match strength {
        None => Standing::NotKnown,
        Some(strength) if peak > strength.rigged() => Standing::Short,
        Some(strength) => {
            // A loop of cord is one part, with its knot and both its legs; a line is asked for new and without knots.
            let bears = if strength.legs > 1.0 { strength.rigged() } else { strength.new };
            let under = minimum.is_some_and(|least| bears < least.force.in_newtons());
            if under { Standing::UnderMinimum } else { Standing::Over }
        }
    }
}
