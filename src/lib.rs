//! Climbing-rope arithmetic: whether, with this body, this rope and this rig, a tree can be climbed by the arms alone.
//!
//! A person, a height and a rig go in as text; a model of ropes, turns and hitches answers in facts; one storey turns
//! facts into sentences. The same code answers natively and, bit for bit the same, in WebAssembly.
//!
//! # Example
//! ```
//! use boughline::question::{Effort, can_i_climb};
//! use boughline::quantity::View;
//! use boughline::{Draft, words};
//!
//! let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "tail-3");
//! let answer = can_i_climb::Inputs::of(&draft).map(|inputs| can_i_climb::ask(&inputs, Effort::FULL));
//! let report = answer.map(|answer| words::report(&answer, View::default())).map_err(|errors| errors.len())?;
//! assert_eq!(report.verdict.id, "none");
//! assert_eq!(report.figures[0].text, "328 N");
//! # Ok::<(), usize>(())
//! ```
//!
//! # The storeys
//! Each uses only those above it.
//!
//! | storey | knows |
//! |---|---|
//! | `told` | which texts the shipped module leaves to the npm package |
//! | `float` | the transcendental functions, from `libm` |
//! | [`quantity`] | lengths, masses, forces, durations, ratios, as people write them |
//! | [`source`] | every publication cited |
//! | [`field`] | what a field's row is |
//! | [`chance`] | seeded sampling |
//! | [`gear`], [`hitch`] | what turns and hitches lose; what ropes, cords, knots and connectors bear |
//! | [`reeving`] | a rig as data, or as people write it; motion, forces, who is held by what |
//! | [`error`], [`draft`] | what is wrong; what has been said so far |
//! | [`climber`] | what they weigh, pull, hold and reach |
//! | [`tree`] | what friction keeps over a crotch, what a crotch carries, what bending does to a limb |
//! | [`rope`] | the pieces of a rope and their sum, state by state |
//! | [`cord`] | what a cord is for, and what it takes of cord |
//! | [`descent`] | friction added for the way down, heat, the change-over step by step, the foot of the tree |
//! | [`ascent`] | one climb with one value for everything that varies, and many of them |
//! | [`question`] | one pure function a question |
//! | [`link`] | a draft to and from an address |
//! | [`method`] | every formula with its figures, sources and an example, for the method page |
//! | [`words`] | facts to sentences |
//! | `wasm` | the boundary to JavaScript, behind the feature `wasm` |
//!
//! # What it does not do
//! It does not see the tree, the gear or the person. How long strength lasts is reckoned of muscles that were tested,
//! not of this person, and not their pain, breath or heat. Of a way down it knows what a hand holds, the heat and the
//! steps; how rope, hitch and hand behave on the day it does not. The times of a rescue are judged, not measured, and
//! nobody's skill is known. Legs are asked for, and nothing of what they lift is reckoned. It is arithmetic, not
//! training: a qualified climber checks the rig and the tree; makers' instructions, local codes and licensed practice
//! win over any number here.

pub mod ascent;
pub mod chance;
pub mod climber;
pub mod cord;
pub mod descent;
pub mod draft;
pub mod error;
pub mod field;
mod float;
pub mod gear;
pub mod hitch;
pub mod link;
#[cfg(not(boughline_terse))]
pub mod method;
pub mod quantity;
pub mod question;
pub mod reeving;
pub mod rope;
pub mod source;
mod told;
pub mod tree;
#[cfg(feature = "wasm")]
pub mod wasm;
pub mod words;

pub use draft::Draft;

/// The README's example runs as a test.
#[cfg(doctest)]
#[doc = include_str!("../README.md")]
pub struct Readme;
