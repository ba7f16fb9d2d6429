//! What cords and ropes are made of.

use crate::field::{Field, Kind, Row, choice};

choice! {
    /// What a cord or rope is made of.
    Fibre {
        /// Polyamide.
        Nylon = "nylon", "nylon", "Stretches most; melts near 220 °C.";
        /// Polyester.
        Polyester = "polyester", "polyester", "Stretches little; melts near 250 °C.";
        /// Aramid.
        Aramid = "aramid", "aramid", "Bears heat; weak in knots and sharp bends.";
        /// High-modulus polyethylene.
        Hmpe = "hmpe", "high-modulus polyethylene", "Slippery and strong; melts near 147 °C, so it is no cord for a hitch that slides.";
    }
}

/// What the cords are made of.
pub static CORD_FIBRE: Field<Fibre> = Field::new(Row {
    id: "cordFibre",
    noun: "fibre of the cords",
    hint: "A knot leaves less of stiff fibres.",
    kind: Kind::Choice { options: Fibre::OPTIONS, likely: Some("nylon") },
    why: "The usual fibre of accessory cord (judged).",
    private: false,
});
