//! The README prints what the example prints.
#![allow(dead_code, unreachable_pub, reason = "the example is a program of its own")]

use boughline::quantity::View;

#[path = "../examples/can_i_climb.rs"]
mod can_i_climb;

#[test]
fn the_readme_has_the_numbers_of_the_example() {
    let readme = include_str!("../README.md");
    let printed = can_i_climb::answer(View::default()).map(|report| can_i_climb::lines(&report).join("\n"));
    assert!(printed.as_ref().is_ok_and(|printed| readme.contains(printed)), "the README should hold:\n{printed:?}");
}
