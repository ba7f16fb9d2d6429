//! What cords and ropes are made of.

use crate::field::choice;

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
