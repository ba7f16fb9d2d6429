//! What somebody cut, and what it came out at.

use super::wanted::{length, long};
use crate::field::Field;
use crate::quantity::Length;

/// What was cut.
pub static CORD_CUT: Field<Length> = long(
    (
        "cordCut",
        "cord that you cut",
        "The whole of it before a knot is in it. Alone it tells what that leaves; with what it came out at, your own way of tying is reckoned with.",
    ),
    (1.0, 100.0),
    "A hank is seldom longer than 100 m (judged).",
);

/// What it came out at.
pub static CAME_OUT: Field<Length> = length(
    (
        "cameOut",
        "what it came out at",
        "Once tied, dressed and loaded. Of a hitch, what hangs free between it and its connector, all legs added up; of anything else, its finished length.",
    ),
    (0.25, 60.0),
    "As for the finished length (judged).",
);
