//! What a label says that a part bears.

use crate::field::{Field, Kind, Limits, Row};
use crate::quantity::{Dimension, Force, KILONEWTON, POUND_FORCE};

const HINT: &str = "From its label, new and without a knot. Left open, the least that its standard allows is taken, where there is one.";
const WHY: &str = "Labels of single parts lie between 1 and 100 kN (judged).";

const fn label(id: &'static str, noun: &'static str) -> Field<Force> {
    Field::new(Row {
        id,
        noun,
        hint: HINT,
        kind: Kind::Quantity(Limits {
            dimension: Dimension::Force,
            least: KILONEWTON.si(1.0),
            most: KILONEWTON.si(100.0),
            example: KILONEWTON.si(22.0),
            likely: None,
            bare: Some([KILONEWTON, POUND_FORCE]),
        }),
        why: WHY,
        private: false,
    })
}

/// What the climbing rope bears.
pub static ROPE_STRENGTH: Field<Force> = label("ropeStrength", "strength of the rope");
/// What the cord of the hitches bears.
pub static HITCH_CORD_STRENGTH: Field<Force> = label("hitchCordStrength", "strength of the hitch cord");
/// What the haul cord bears.
pub static HAUL_CORD_STRENGTH: Field<Force> = label("haulCordStrength", "strength of the haul cord");
/// What a connector bears along its back, gate shut.
pub static CONNECTOR_STRENGTH: Field<Force> = label("connectorStrength", "strength of the connectors");
/// What a pulley bears.
pub static PULLEY_STRENGTH: Field<Force> = label("pulleyStrength", "strength of the pulleys");
/// What the harness bears where the rope is attached.
pub static HARNESS_STRENGTH: Field<Force> = label("harnessStrength", "strength of the harness attachment");
