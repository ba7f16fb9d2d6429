//! How it is reckoned: every formula with its figures and sources, as the method page shows them.
//!
//! Figures are the very constants that are reckoned with, and the example of a formula is the library's own function at
//! numbers that are shown. `tests/method/` works each example out a second time, from the symbols that are printed.
//! Not in the module as shipped, where nothing reckons with texts.

mod chapter;
mod conflicts;
mod cutting;
mod down;
mod fall;
mod formula;
mod friction;
mod gear;
mod hands;
mod hitch;
mod never;
mod plan;
mod pull;
mod rescue;
mod rig;
mod rope_length;
mod sampling;
mod stroke;
mod table;
mod tiring;
mod tree;
mod unit;
mod unknown;
mod verdict;

pub use chapter::{Chapter, Note};
pub use formula::{Example, Formula, Given, Shown, Term};
pub use table::{Table, digits};

/// Every chapter, in the order they are read.
#[must_use]
pub fn chapters() -> Vec<Chapter> {
    vec![
        friction::chapter(),
        rig::chapter(),
        pull::chapter(),
        hands::chapter(),
        tiring::chapter(),
        stroke::chapter(),
        sampling::chapter(),
        verdict::chapter(),
        rope_length::chapter(),
        hitch::chapter(),
        cutting::chapter(),
        gear::chapter(),
        fall::chapter(),
        tree::chapter(),
        down::chapter(),
        rescue::chapter(),
        conflicts::chapter(),
        unknown::chapter(),
        never::chapter(),
    ]
}
