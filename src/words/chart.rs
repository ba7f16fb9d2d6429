//! Charts, in the units that people see.

use super::record::records;
use super::template::said;
use crate::field::Spread;
use crate::quantity::{KILOGRAM, NEWTON, POUND, POUND_FORCE, System, Unit, View};

records! {
    /// An axis, in the shown unit.
    pub struct Axis {
        /// What it measures.
        pub noun: &'static str,
        /// The unit.
        pub unit: &'static str,
        /// Where it begins.
        pub least: f64,
        /// Where it ends.
        pub most: f64,
    }

    /// A point, in the shown units.
    pub struct Point {
        /// Across.
        pub x: f64,
        /// Up.
        pub y: f64,
    }

    /// A line.
    pub struct ChartLine {
        /// Its id.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// Its points, from left to right.
        pub points: Vec<Point>,
    }

    /// A band across: what somebody has.
    pub struct Band {
        /// What people call it.
        pub noun: &'static str,
        /// Its low edge.
        pub low: f64,
        /// Its high edge.
        pub high: f64,
    }

    /// A line across: a limit.
    pub struct Mark {
        /// What people call it.
        pub noun: &'static str,
        /// How high.
        pub y: f64,
    }

    /// A chart: lines over bands and marks.
    pub struct Chart {
        /// What people call it.
        pub noun: &'static str,
        /// What it shows, in words.
        pub text: String,
        /// Across.
        pub x: Axis,
        /// Up.
        pub y: Axis,
        /// The lines.
        pub lines: Vec<ChartLine>,
        /// The bands.
        pub bands: Vec<Band>,
        /// The limits.
        pub marks: Vec<Mark>,
        /// Where this person stands, across; none where that is not known.
        pub you: Option<f64>,
    }
}

/// The unit of masses in a view, and that of forces.
pub(super) fn units(view: View) -> [&'static Unit; 2] {
    if view.system == System::Si { [KILOGRAM, NEWTON] } else { [POUND, POUND_FORCE] }
}

/// An axis from one value in SI to another.
pub(super) fn axis(noun: &'static str, unit: &'static Unit, (least, most): (f64, f64)) -> Axis {
    Axis { noun, unit: unit.symbol, least: unit.count(least), most: unit.count(most) }
}

/// A template with plain numbers, no spreads, in its places.
pub(super) fn told(template: &str, numbers: &[f64], words: &[&str], view: View) -> String {
    let mut spreads = Vec::new();
    for number in numbers {
        spreads.push(Spread::point(*number));
    }
    said(template, &spreads.iter().collect::<Vec<_>>(), words, view)
}

/// What the mass of climber and kit is called on an axis.
pub(super) const ALL_UP: &str = "climber and kit";
