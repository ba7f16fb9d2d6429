//! Rope lengths.

use super::formula::formula;
use super::table::digits;
use super::unit::{M, one, usual};
use super::{Chapter, Given, Table};
use crate::climber::{STACK_LENGTH, TO_LAP};
use crate::field::Spread;
use crate::quantity::{FOOT, System};
use crate::reeving::{Backup, RigName};
use crate::rope::{
    ANCHOR_KNOT, Anchor, BASE_TIE, DEVICE_WRAPS, HITCH_HEIGHT, LINE_TIE, Ladder, OVER_CROTCH, ROPE_SPARE, ROPE_TAIL,
    STOPPER_AND_TAIL, Sizes, State, courses, preset_line, retrieval_cord, section,
};
use crate::source::{ANSUR, COMMON_PRACTICE, GEOMETRY, JUDGED, KNOT_PAGES, OREGON, RESCUE_MANUAL, ROPE_LADDER};

/// What a rope needs in a state, of sizes as they are when nothing is said, with somebody who stands under the crotch.
fn likely(x: &Given, anchor: Anchor, state: State) -> f64 {
    let knot = match anchor {
        Anchor::Base => &BASE_TIE,
        Anchor::BaseLowerable => &DEVICE_WRAPS,
        _ => &ANCHOR_KNOT,
    };
    let sizes = Sizes { knot: usual(&knot.row), ..sizes(x) };
    let Ok(rig) = RigName::HandOverHand.rig(Backup::None) else { return f64::NAN };
    let courses = courses(&rig, Some(anchor), &sizes);
    courses.iter().find(|course| course.state == state).map_or(f64::NAN, |course| course.total.likely)
}

fn sizes(x: &Given) -> Sizes {
    Sizes {
        crotch: x.of("h"),
        hitch: usual(&HITCH_HEIGHT.row),
        aside: 0.0,
        over: usual(&OVER_CROTCH.row),
        redirect: 0.0,
        knot: Spread::point(0.0),
        end: usual(&ROPE_TAIL.row),
        spare: usual(&ROPE_SPARE.row),
    }
}

fn ladder() -> Table {
    let mut table = Table::new(
        "ladder",
        "Lengths that ropes are sold in, unless you say others",
        &["where", "lengths"],
        &[ROPE_LADDER],
    );
    for (name, system, size) in [("metres", System::Si, 1.0), ("feet", System::Us, FOOT.si(1.0))] {
        let lengths: Vec<String> = Ladder::usual(system).0.iter().map(|length| digits(length / size)).collect();
        table = table.row(vec![name.to_owned(), lengths.join(", ")], &[]);
    }
    table
}

pub(super) fn chapter() -> Chapter {
    let aloft = RigName::TailThree.rig(Backup::None).ok().and_then(|rig| section(&rig)).unwrap_or(one(f64::NAN));
    let hauled = RigName::GroundThree.rig(Backup::None).ok().and_then(|rig| section(&rig)).unwrap_or(one(f64::NAN));
    Chapter::new(
        "rope-length",
        "Rope lengths",
        "No formula for an anchor or a rig: the way is read off the rig’s own stops, with its bodies at their heights of six moments (set, start, top, down, lowered, retrieved), and the rope must do for all of them. The answer says which decided. Each end of a range is the sum of those ends. Items are rounded up by themselves and a total is the sum of what is shown.",
        vec![
            formula("canopy-rope", "Rope to set a canopy anchor that its own tail pulls down again")
                .words("Up, over the crotch and down, the tail from its knot to the ground, the knot, a stopper with its tail, and some to spare.")
                .symbols(M, "L = 3 × h + o + k + e + s")
                .term("L", "rope", M)
                .term("h", "height of the crotch", M)
                .figure("o", "over the crotch", usual(&OVER_CROTCH.row), M, &[JUDGED])
                .figure("k", "in the knot", usual(&ANCHOR_KNOT.row), M, &[JUDGED, KNOT_PAGES])
                .figure("e", "stopper and tail", usual(&ROPE_TAIL.row), M, &[KNOT_PAGES, JUDGED])
                .figure("s", "to spare", usual(&ROPE_SPARE.row), M, &[JUDGED])
                .from(&[GEOMETRY, RESCUE_MANUAL])
                .used("How much rope? Three times the height is the rule that the manual prints.")
                .example(&[("h", 12.0)], |x| likely(x, Anchor::Canopy, State::Set)),
            formula("lowering-rope", "Rope to be lowered from the top on a device at the foot")
                .words("Up from the device, over, down to the climber on the ground, and as much again on the ground side when they are at the top; with the wraps of the device, a stopper and some to spare.")
                .symbols(M, "L = 3 × h + o + k + e + s")
                .term("L", "rope, hand over hand", M)
                .term("h", "height of the crotch", M)
                .figure("o", "over the crotch", usual(&OVER_CROTCH.row), M, &[JUDGED])
                .figure("k", "in the device", usual(&DEVICE_WRAPS.row), M, &[JUDGED])
                .figure("e", "stopper and tail", usual(&ROPE_TAIL.row), M, &[KNOT_PAGES, JUDGED])
                .figure("s", "to spare", usual(&ROPE_SPARE.row), M, &[JUDGED])
                .from(&[GEOMETRY])
                .used("How much rope? And whether somebody can be let down at all.")
                .example(&[("h", 12.0)], |x| likely(x, Anchor::BaseLowerable, State::Lowered)),
            formula("preset-line", "Thin line that stays in the tree")
                .words("A loop down both sides, and its tie.")
                .symbols(M, "T = 2 × h + o + t")
                .term("T", "line", M)
                .term("h", "height of the crotch", M)
                .figure("o", "over the crotch", usual(&OVER_CROTCH.row), M, &[JUDGED])
                .figure("t", "in its tie", LINE_TIE, M, &[JUDGED, KNOT_PAGES])
                .from(&[GEOMETRY])
                .used("How much rope?")
                .example(&[("h", 12.0)], |x| preset_line(&sizes(x)).likely),
            formula("retrieval-cord", "Cord that brings an anchor down")
                .words("From the crotch to where people stand, and its tie.")
                .symbols(M, "T = h + t")
                .term("T", "cord", M)
                .term("h", "height of the crotch", M)
                .figure("t", "in its tie", LINE_TIE, M, &[JUDGED, KNOT_PAGES])
                .from(&[GEOMETRY])
                .used("How much rope?")
                .example(&[("h", 12.0)], |x| retrieval_cord(&sizes(x)).likely),
            formula("rope-sizes", "Other figures of a rope’s way")
                .words("Where people stand aside of the crotch a strand takes at the least what it is longer aslant, at the most all of that along the ground.")
                .figure("", "lower hitch above the ground at the start", usual(&HITCH_HEIGHT.row), M, &[JUDGED])
                .figure("", "in a tie at the foot", usual(&BASE_TIE.row), M, &[JUDGED, KNOT_PAGES])
                .figure("", "a stopper and the shortest tail", one(STOPPER_AND_TAIL), M, &[KNOT_PAGES])
                .figure("", "upper hitch above the climber at the most, 1.75 m (1.5 to 2.0) tall", aloft, M, &[ANSUR, JUDGED])
                .figure("", "a helper’s hitch above the ground at the most", hauled, M, &[JUDGED])
                .figure("", "lower hitch under the crotch at the top", usual(&STACK_LENGTH.row), M, &[JUDGED])
                .figure("", "reach to the lap for each metre of stature", one(TO_LAP.0), M, &[ANSUR])
                .from(&[GEOMETRY])
                .used("How much rope? Haul cords."),
        ],
    )
    .table(ladder())
    .note(
        "how high a rope goes",
        "The other way round: the highest crotch for which the rope you have is still enough, found by halving.",
        &[GEOMETRY],
    )
    .note("a stopper", "A stopper in every end, so that it cannot run through a hitch or a hand.", &[OREGON])
    .note(
        "what climbers count",
        "Up over a crotch and back to a hitch five feet off the ground takes twice the crotch less five feet: the same as here, without knots, tail and stopper.",
        &[COMMON_PRACTICE],
    )
}
