//! How fibres take heat.

use super::Fibre;

/// How a fibre takes heat, dry and solid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Warmth {
    /// The heat that warms a kilogram by a kelvin, in joules.
    pub specific_heat: f64,
    /// In kilograms a cubic metre.
    pub density: f64,
    /// In watts a metre and kelvin.
    pub conductivity: f64,
    /// Where it changes and a cord is to be given up, in degrees Celsius.
    pub changes: f64,
    /// Where it melts, or chars, in degrees Celsius.
    pub fails: f64,
}

/// The share of a cord's round that is fibre and not air (judged, from 0.70 to 0.85).
pub const PACKED: f64 = 0.80;

impl Fibre {
    /// How it takes heat.
    ///
    /// # Source
    /// Specific heat of nylon 6 and polyester: Morton and Hearle, Physical Properties of Textile Fibres, table 6.1. Density
    /// 1.14 and 1.38; conductivity 0.25 and 0.15 to 0.24 (read, weak). Nylon changes near 165 and melts near 220 degrees,
    /// polyester softens near 170 and melts at 250 to 260; HMPE melts at 147; aramid chars near 500. The rest of aramid and
    /// HMPE, and where they change, from memory.
    #[must_use]
    pub const fn warmth(self) -> Warmth {
        let (specific_heat, density, conductivity, changes, fails) = match self {
            Self::Nylon => (1430.0, 1140.0, 0.25, 165.0, 220.0),
            Self::Polyester => (1030.0, 1380.0, 0.20, 170.0, 250.0),
            Self::Aramid => (1400.0, 1440.0, 0.13, 300.0, 500.0),
            Self::Hmpe => (1850.0, 970.0, 0.40, 110.0, 147.0),
        };
        Warmth { specific_heat, density, conductivity, changes, fails }
    }
}

impl Warmth {
    /// The mass of a metre of cord of a diameter in metres, in kilograms.
    #[must_use]
    pub fn mass_a_metre(&self, diameter: f64) -> f64 {
        PACKED * self.density * std::f64::consts::FRAC_PI_4 * diameter * diameter
    }

    /// The heat that warms a cubic metre of cord by a kelvin, in joules.
    #[must_use]
    pub const fn by_volume(&self) -> f64 {
        PACKED * self.density * self.specific_heat
    }
}
