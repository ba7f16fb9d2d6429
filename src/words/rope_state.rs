//! The states of a rope and the pieces of each, in words.

use super::RopeState;
use super::rope_measure::{all_begun, measured, text};
use super::template::said;
use crate::field::{Row, Spread};
use crate::quantity::View;
use crate::question::rope_length::Answer;
use crate::rope::{ANCHOR_KNOT, Anchor, Course, OVER_CROTCH, Piece, ROPE_SPARE, ROPE_TAIL, State};
use crate::source::{ANSUR, GEOMETRY, JUDGED, KNOT_PAGES, Source};

/// Its id, and what people call it.
pub(super) const fn named(state: State) -> (&'static str, &'static str) {
    match state {
        State::Set => ("set", "setting the rope"),
        State::Start => ("start", "starting the climb"),
        State::Top => ("top", "topping out"),
        State::Down => ("down", "going down"),
        State::Lowered => ("lowered", "being let down"),
        State::Retrieve => ("retrieve", "bringing the rope down"),
    }
}

/// A state in words, and the steps of its total.
pub(super) fn state(answer: &Answer, course: &Course, view: View) -> (RopeState, Spread) {
    let (id, noun) = named(course.state);
    let (mut items, mut sum, mut all) = (Vec::new(), String::new(), Spread::point(0.0));
    for (piece, length) in &course.pieces {
        let steps = all_begun(*length, view);
        all = Spread::new(all.low + steps.low, all.likely + steps.likely, all.high + steps.high);
        if !sum.is_empty() {
            sum.push_str(" + ");
        }
        sum.push_str(&text(steps.likely, view));
        let (name, working, sources) = worded(answer, *piece, view);
        let mut item = measured(name, length, steps, view, sources);
        item.workings.push(working);
        items.push(item);
    }
    let mut total = measured(("total", "in all"), &course.total, all, view, &[GEOMETRY]);
    total.workings.push(sum);
    if course.state == State::Retrieve {
        total.workings.push("The stopper comes out first, or it jams on the way.".to_owned());
    }
    (RopeState { id, noun, decides: course.state == answer.decides, total, items }, all)
}

/// What a piece is called, how it comes about, and what it rests on.
fn worded(answer: &Answer, piece: Piece, view: View) -> ((&'static str, &'static str), String, &'static [Source]) {
    let allowance = |row: &'static Row, own: &'static [Source]| {
        if answer.assumed.iter().any(|assumed| assumed.id == row.id) {
            ("Judged, for want of your own figure.".to_owned(), own)
        } else {
            ("Your own figure.".to_owned(), &[GEOMETRY][..])
        }
    };
    let from_heights = |words: &str| (words.to_owned(), &[GEOMETRY][..]);
    let (name, (working, sources)) = match piece {
        Piece::Up => (("up", "up to the crotch"), from_heights("From where it starts to the crotch.")),
        Piece::Over => (("overCrotch", "over the crotch"), allowance(&OVER_CROTCH.row, &[JUDGED])),
        Piece::Down => (("down", "down from the crotch"), from_heights("From the crotch to where it ends or is held.")),
        Piece::Redirect => (("redirectRope", "for redirects"), from_heights("Your own figure.")),
        Piece::Aside => (
            ("footOffset", "out to where you stand"),
            from_heights(
                "For each part that comes down there: straight down and then along the ground, or at the least aslant.",
            ),
        ),
        Piece::InRig => (("inRig", "back and forth in the rig"), in_rig(answer, view)),
        Piece::Knot => {
            let noun = match answer.anchor {
                Some(Anchor::BaseLowerable) => "in the device at the foot",
                Some(Anchor::Base) => "in the tie at the foot",
                Some(Anchor::CanopyHitch) => "in the hitch at the crotch",
                Some(_) => "in the knot at the crotch",
                None => "in the knot at its fast end",
            };
            (("anchorKnot", noun), allowance(&ANCHOR_KNOT.row, &[JUDGED, KNOT_PAGES]))
        }
        Piece::Tail => {
            (("tail", "tail that pulls it down"), from_heights("From the knot at the crotch to the ground."))
        }
        Piece::Reserve => (("reserve", "to let you down with"), from_heights("From the crotch to the ground again.")),
        Piece::End => (("ropeTail", "stopper and tail below it"), allowance(&ROPE_TAIL.row, &[KNOT_PAGES, JUDGED])),
        Piece::Spare => (("ropeSpare", "to spare"), allowance(&ROPE_SPARE.row, &[JUDGED])),
    };
    (name, working, sources)
}

/// What the rig itself takes comes of how far its hitch stands off.
fn in_rig(answer: &Answer, view: View) -> (String, &'static [Source]) {
    let Spread { low, likely, high } = answer.section.unwrap_or(Spread::point(0.0));
    let working = said(
        "Every strand beside the one that goes down, with the moving hitch as far off as it comes: {M} ({M} to {M}).",
        &[&Spread::point(likely), &Spread::point(low), &Spread::point(high)],
        &[],
        view,
    );
    // A helper's hitch goes as far as there is room at the foot, a climber's as far as they reach.
    (working, if answer.anchor.is_some() { &[GEOMETRY, ANSUR, JUDGED] } else { &[GEOMETRY, JUDGED] })
}
