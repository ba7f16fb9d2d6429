#![no_main]

#[path = "../../corpus/holds.rs"]
#[allow(dead_code, reason = "each target asks for one of them")]
mod holds;
#[path = "../../corpus/typed.rs"]
mod typed;
#[path = "../../lib/views.rs"]
mod views;

libfuzzer_sys::fuzz_target!(|text: &str| holds::quantity(text, holds::Breadth::One));
