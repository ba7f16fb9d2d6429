//! What the library knows of people, recomputed from the surveys it comes from (`data/people/`), and what must hold of
//! it. `tests/js/norms.test.mjs` recomputes the table of grip once more, in another language and another way.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::indexing_slicing, clippy::panic, reason = "what is missing fails the test")]

#[path = "people/fatigue.rs"]
mod fatigue;
#[path = "people/going.rs"]
mod going;
#[path = "people/laws.rs"]
mod laws;
#[path = "people/lines.rs"]
mod lines;
#[path = "people/norms.rs"]
mod norms;
#[path = "people/reach.rs"]
mod reach;
#[path = "people/rows.rs"]
mod rows;
#[path = "people/squares.rs"]
mod squares;
#[path = "people/worked.rs"]
mod worked;

use rows::{Surveyed, rows, surveyed};

/// Whether a figure is what is printed, to the printed digits.
fn prints(found: f64, printed: &str) -> bool {
    let decimals = printed.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    format!("{found:.decimals$}") == printed
}

/// The mean, each counted by its weight.
fn mean(people: &[Surveyed], figure: fn(&Surveyed) -> f64) -> f64 {
    let weight: f64 = people.iter().map(|person| person.weight).sum();
    people.iter().map(|person| person.weight * figure(person)).sum::<f64>() / weight
}
