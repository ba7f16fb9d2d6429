//! Where the climb starts and ends, and on what rope.

use crate::climber::SEAT_HEIGHT;
use crate::draft::Reader;
use crate::field::{Kind, Row, Spread};
use crate::gear::{ROPE_KIND, RopeKind};
use crate::quantity::Quantity;
use crate::rope::{ANCHOR, Anchor, CROTCH_HEIGHT, PLATFORM_HEIGHT};

/// Where the climb starts and ends, in metres above the ground, and on what rope.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Setting {
    /// What the climber sits on at the start.
    pub(crate) seat: Spread,
    pub(crate) crotch: Option<f64>,
    /// The edge of a platform that they want to get over.
    pub(crate) edge: Option<f64>,
    pub(crate) rope: RopeKind,
    pub(crate) anchor: Anchor,
}

/// Where the rope is made fast where nothing is said.
pub(super) static USUAL_ANCHOR: Row =
    Row { kind: Kind::Choice { options: Anchor::OPTIONS, likely: Some("canopy") }, ..ANCHOR.row };

impl Setting {
    pub(super) fn read(reader: &mut Reader<'_>) -> Option<Self> {
        let seat = reader.spread(&SEAT_HEIGHT);
        let (crotch, edge) = (reader.maybe(&CROTCH_HEIGHT), reader.maybe(&PLATFORM_HEIGHT));
        let (rope, anchor) = (reader.chosen(&ROPE_KIND), reader.maybe(&ANCHOR));
        Some(Self {
            seat: seat?,
            crotch: crotch.map(Quantity::si),
            edge: edge.map(Quantity::si),
            rope: rope?,
            anchor: anchor.unwrap_or(Anchor::Canopy),
        })
    }
}
