//! The feasibility map as people read it.

use super::SourceLine;
use super::chart::{ALL_UP, Axis, axis, told, units};
use super::record::records;
use super::source::source_line;
use crate::climber::PullTaken;
use crate::quantity::View;
use crate::question::advantage::Map;
use crate::source::{JUDGED, TIRING};

records! {
    /// A rig of the map, and the letter that stands for it.
    pub struct MapRig {
        /// Its id.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// The letter in the rows.
        pub letter: String,
    }

    /// Where somebody stands on the map.
    pub struct MapPlace {
        /// Across.
        pub x: f64,
        /// Up.
        pub y: f64,
        /// What that means.
        pub text: String,
    }

    /// The least rig that works, by weight and pull.
    pub struct FeasibilityMap {
        /// What people call it.
        pub noun: &'static str,
        /// What it shows, in words.
        pub text: String,
        /// Across: the mass with kit.
        pub x: Axis,
        /// Up: the pull.
        pub y: Axis,
        /// The rigs, the least kit first.
        pub rigs: Vec<MapRig>,
        /// From the weakest pull up, a letter a column: a rig's, or a point where none works.
        pub rows: Vec<String>,
        /// Where this person stands; none where the strength is not known.
        pub you: Option<MapPlace>,
        /// The sources it rests on.
        pub sources: Vec<SourceLine>,
    }
}

/// What a measured pull is called on an axis.
const fn measured(taken: PullTaken) -> &'static str {
    match taken {
        PullTaken::Overhead => "pull measured still, hands overhead",
        PullTaken::LowestPoint => "pull measured still, hands at chest height",
        PullTaken::TenRepetitions => "load pulled ten times",
    }
}

/// The map as people read it.
#[must_use]
pub fn map_report(map: &Map, view: View) -> FeasibilityMap {
    let [mass, force] = units(view);
    let mut rigs = Vec::new();
    for (at, name) in map.rigs.iter().enumerate() {
        let named = name.named();
        rigs.push(MapRig { id: named.id, noun: named.noun, letter: letter(Some(at)).to_string() });
    }
    let mut rows = Vec::new();
    for cells in &map.cells {
        let mut row = String::new();
        for cell in cells {
            row.push(letter(*cell));
        }
        rows.push(row);
    }
    let you = map.you.map(|(kilograms, newtons, rig)| {
        let noun = rig.and_then(|rig| map.rigs.get(rig)).map(|name| name.named().noun);
        let template = match noun {
            Some(_) => "You, at {K} with kit and {N} of pull: {}.",
            None => "You, at {K} with kit and {N} of pull: none of these rigs, at likely values.",
        };
        let words = noun.as_slice();
        MapPlace {
            x: mass.count(kilograms),
            y: force.count(newtons),
            text: told(template, &[kilograms, newtons], words, view),
        }
    });
    let axes: [Axis; 2] = [axis(ALL_UP, mass, map.masses), axis(measured(map.taken), force, map.pulls)];
    let [x, y] = axes;
    FeasibilityMap {
        noun: "The least rig for every weight and pull",
        text: "Each place is the rig of least kit with which, at likely values and with your reach and hands, one pull, the hold of the hands, and pulls again and again, with time to move the hitch between, succeed; whether pulls last is told by the kinder of two published edges. The list counts ranges, every pull and the time you allow, so it may name another rig.".to_owned(),
        x,
        y,
        rigs,
        rows,
        you,
        sources: vec![source_line(&TIRING), source_line(&JUDGED)],
    }
}

/// The letter that stands for a rig of the map.
fn letter(rig: Option<usize>) -> char {
    rig.map_or('.', |rig| char::from(b'a'.saturating_add(rig as u8)))
}
