//! Quantities: what a number measures, how people write it, and how it is written for them.
//!
//! ```text
//! "6 ft 3 in" ── read ──> 1.905 (SI) ── Length::from_si ──> Length ── written ──> "1.91 m"
//!      └──── canonical ──> "6ft3in", which reads to the same bits
//! ```
//!
//! One newtype a file, SI inside. A file also holds its units, each from its exact definition, and how that quantity
//! is written. A new quantity is a new file, a variant of [`Dimension`] and a row in `table`.
//!
//! Inside, a file uses only files above it here:
//!
//! | file | knows |
//! |---|---|
//! | `newtype` | what every newtype is made of |
//! | `unit` | what a unit's row is |
//! | `pieces` | a text taken apart by kinds of characters, and put together |
//! | `decimal` | decimal digits to and from binary, exactly |
//! | `figures` | decimal figures, for people and for links |
//! | `length`, `force`, `mass`, `angle`, `duration`, `energy`, `power`, `speed`, `ratio`, `count` | one quantity each: its newtype, units, way of being written |
//! | `table` | all of them by dimension, all units by name |
//! | `misread` | what can be wrong with a text |
//! | `number` | one number, as people write it |
//! | `reading` | a text understood: numbers of units, in falling order |
//! | `read`, `canonical`, `write` | text to SI, text for links, SI to text |
//!
//! # Example
//!
//! ```
//! use boughline::quantity::{Dimension, Length, Quantity, System, View, read, written};
//!
//! let height = Length::from_si(read("36 ft", Dimension::Length, None)?);
//! assert_eq!(height, Length::feet(36.0));
//! let us = View { system: System::Us, ..View::default() };
//! assert_eq!(written(height.si(), Dimension::Length, View::default()), "11 m");
//! assert_eq!(written(height.si(), Dimension::Length, us), "36 ft");
//! # Ok::<(), boughline::quantity::Misread>(())
//! ```

mod angle;
mod canonical;
mod count;
mod decimal;
mod duration;
mod energy;
mod figures;
mod force;
mod length;
mod mass;
mod misread;
mod newtype;
mod number;
mod pieces;
mod power;
mod ratio;
mod read;
mod reading;
mod speed;
mod table;
mod temperature;
mod unit;
mod write;

pub use angle::{Angle, DEGREE, RADIAN};
pub use canonical::{canonical, canonical_si};
pub use count::Count;
pub use duration::{Duration, HOUR, MINUTE, SECOND};
pub use energy::{Energy, FOOT_POUND, JOULE, KILOJOULE};
pub use figures::{percent, plain};
pub use force::{Force, KILOGRAM_FORCE, KILONEWTON, NEWTON, POUND_FORCE, STANDARD_GRAVITY};
pub use length::{CENTIMETRE, FOOT, INCH, Length, METRE, MILLIMETRE};
pub use mass::{KILOGRAM, Mass, POUND, STONE};
pub use misread::Misread;
pub(crate) use pieces::{behind, ending, is_blank, joined, leading, parted, trimmed};
pub use power::{Power, WATT};
pub use ratio::{PERCENT, Ratio};
pub use read::{read, tidy};
pub use speed::{FOOT_A_MINUTE, METRE_A_MINUTE, METRE_A_SECOND, Speed};
pub(crate) use table::{si_unit, units_of};
pub use table::{unit, units};
pub use temperature::temperature;
pub use unit::Unit;
pub use write::written;

/// The system of units that answers are written in. What people write is read in either.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum System {
    /// Metres, kilograms, newtons.
    #[default]
    Si,
    /// Feet and inches, pounds, pounds-force.
    Us,
}

/// The mark before the decimals that answers are written with. What people write is read with either.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Decimal {
    /// `2.63`
    #[default]
    Point,
    /// `2,63`
    Comma,
}

/// The way one person wants figures written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct View {
    /// The system of units.
    pub system: System,
    /// The decimal mark.
    pub decimal: Decimal,
}

/// The kind of thing a number measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimension {
    /// How long or how high, in metres.
    Length,
    /// How much matter, in kilograms. Never a force: [`Mass::weight`] is the one bridge.
    Mass,
    /// How hard a pull, in newtons.
    Force,
    /// How far something is turned, in radians.
    Angle,
    /// How long it takes, in seconds.
    Duration,
    /// How much work, in joules.
    Energy,
    /// How much work by the second, in watts.
    Power,
    /// How fast, in metres a second.
    Speed,
    /// One thing over another of its kind: an efficiency, an advantage, a share.
    Ratio,
    /// How many of something.
    Count,
}

impl Dimension {
    /// Every dimension.
    pub const ALL: [Self; 10] = [
        Self::Length,
        Self::Mass,
        Self::Force,
        Self::Angle,
        Self::Duration,
        Self::Energy,
        Self::Power,
        Self::Speed,
        Self::Ratio,
        Self::Count,
    ];

    /// The word for it in a sentence.
    #[must_use]
    pub const fn noun(self) -> &'static str {
        match self {
            Self::Length => "length",
            Self::Mass => "mass",
            Self::Force => "force",
            Self::Angle => "angle",
            Self::Duration => "duration",
            Self::Energy => "energy",
            Self::Power => "power",
            Self::Speed => "speed",
            Self::Ratio => "ratio",
            Self::Count => "count",
        }
    }
}

/// A value that knows its dimension and holds SI.
pub trait Quantity: Copy {
    /// What it measures.
    const DIMENSION: Dimension;

    /// The quantity of `si` metres, kilograms, newtons, …, or of one.
    fn from_si(si: f64) -> Self;

    /// Its value in metres, kilograms, newtons, …, or of one.
    fn si(self) -> f64;
}
