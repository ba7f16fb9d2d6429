//! The answer to "How much rope?" in words.

use super::assumed::assumed;
use super::figure::figure;
use super::rope_caution::rope_caution;
use super::source::cited;
use super::template::{said, say};
use super::{Figure, RopeReport, RopeState};
use crate::field::{Row, Spread};
use crate::quantity::{FOOT, METRE, System, View, plain};
use crate::question::rope_length::Answer;
use crate::rope::{ANCHOR_KNOT, Anchor, Course, OVER_CROTCH, Piece, ROPE_SPARE, ROPE_TAIL, State};
use crate::source::{ANSUR, GEOMETRY, JUDGED, KNOT_PAGES, RESCUE_MANUAL, Source};

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's, rounded up where rope is bought.
#[must_use]
pub fn rope_report(answer: &Answer, view: View) -> RopeReport {
    let mut states = Vec::new();
    for course in &answer.courses {
        states.push(state(answer, course, view));
    }
    let mut cautions = Vec::new();
    for caution in &answer.cautions {
        cautions.push(rope_caution(*caution, view));
    }
    let figures = figures(answer, &states, view);
    let mut lists = vec![figures.as_slice()];
    for state in &states {
        lists.push(&state.items);
    }
    let sources = cited(&lists, &cautions, &[]);
    RopeReport {
        first: first(answer.need, view),
        second: second(answer.decides).to_owned(),
        assumed: assumed(&answer.assumed, view),
        figures,
        states,
        cautions,
        sources,
    }
}

/// How much to buy, in whole metres or feet, never less than is needed.
fn first(need: Spread, view: View) -> String {
    let unit = if view.system == System::Si { METRE } else { FOOT };
    // What is more by less than this came of adding up.
    let whole = |si: f64| plain((unit.count(si) - 1e-6).ceil(), 0, view);
    let (likely, high) = (whole(need.likely), whole(need.high));
    let mut text = said("About {} {} of rope", &[], &[&likely, unit.symbol], view);
    if likely != high {
        say(&mut text, "; {} to be sure of it", &[], &[&high], view);
    }
    text + "."
}

/// The state that decides, and what that means.
const fn second(decides: State) -> &'static str {
    match decides {
        State::Set => {
            "Setting it decides: the end goes up, over and down to be tied, and beside it lies the tail that will hang from the knot to the ground."
        }
        State::Down => "Going down decides: with the stopper in its end the rope must reach the ground.",
        State::Start | State::Top | State::Retrieve => {
            "Starting decides: the rig itself takes rope, back and forth, on top of the way over the crotch."
        }
    }
}

/// Its id, and what people call it.
const fn named(state: State) -> (&'static str, &'static str) {
    match state {
        State::Set => ("set", "setting the rope"),
        State::Start => ("start", "starting the climb"),
        State::Top => ("top", "topping out"),
        State::Down => ("down", "going down"),
        State::Retrieve => ("retrieve", "bringing the rope down"),
    }
}

fn figures(answer: &Answer, states: &[RopeState], view: View) -> Vec<Figure> {
    let mut each = "The most that any of these takes".to_owned();
    let mut before = ": ";
    for state in states {
        for part in [before, state.noun, " ", &state.total.text] {
            each.push_str(part);
        }
        before = "; ";
    }
    let mut need = figure("ropeNeeded", "rope needed", &answer.need, "{M}", view, &[GEOMETRY, JUDGED]);
    need.workings.push(each + ".");
    let over = |length: f64| length / answer.crotch;
    let times = Spread::new(over(answer.need.low), over(answer.need.likely), over(answer.need.high));
    let canopy = answer.anchor == Some(Anchor::Canopy);
    let sources = if canopy { &[GEOMETRY, RESCUE_MANUAL][..] } else { &[GEOMETRY] };
    let mut times = figure("ropeOverHeight", "rope for each unit of height", &times, "{1}", view, sources);
    let numbers = [&answer.need, &Spread::point(answer.crotch)];
    times.workings.push(said("rope needed ÷ height of the crotch = {M} ÷ {M}", &numbers, &[], view));
    if canopy {
        times.workings.push("An anchor that its own tail pulls down takes 3, before knots.".to_owned());
    }
    vec![need, times]
}

fn state(answer: &Answer, course: &Course, view: View) -> RopeState {
    let (id, noun) = named(course.state);
    let mut items = Vec::new();
    let mut sum = String::new();
    for (piece, length) in &course.pieces {
        let item = item(answer, *piece, length, view);
        if !sum.is_empty() {
            sum.push_str(" + ");
        }
        sum.push_str(&item.text);
        items.push(item);
    }
    let mut total = figure("total", "in all", &course.total, "{M}", view, &[GEOMETRY]);
    total.workings.push(sum);
    if course.state == State::Retrieve {
        total.workings.push("The stopper comes out first, or it jams on the way.".to_owned());
    }
    RopeState { id, noun, decides: course.state == answer.decides, total, items }
}

fn item(answer: &Answer, piece: Piece, length: &Spread, view: View) -> Figure {
    let allowance = |row: &'static Row, own: &'static [Source]| {
        if answer.assumed.iter().any(|assumed| assumed.id == row.id) {
            ("Judged, for want of your own figure.".to_owned(), own)
        } else {
            ("Your own figure.".to_owned(), &[GEOMETRY][..])
        }
    };
    let from_heights = |words: &str| (words.to_owned(), &[GEOMETRY][..]);
    let ((id, noun), (working, sources)) = match piece {
        Piece::Up => (("up", "up to the crotch"), from_heights("From where it starts to the crotch.")),
        Piece::Over => (("overCrotch", "over the crotch"), allowance(&OVER_CROTCH.row, &[JUDGED])),
        Piece::Down => (("down", "down from the crotch"), from_heights("From the crotch to where it ends or is held.")),
        Piece::InRig => (("inRig", "back and forth in the rig"), in_rig(answer, view)),
        Piece::Knot => {
            let noun = match answer.anchor {
                Some(Anchor::Canopy) => "in the knot at the crotch",
                Some(Anchor::Base) => "in the tie at the foot",
                None => "in the knot at its fast end",
            };
            (("anchorKnot", noun), allowance(&ANCHOR_KNOT.row, &[JUDGED, KNOT_PAGES]))
        }
        Piece::Tail => {
            (("tail", "tail that pulls it down"), from_heights("From the knot at the crotch to the ground."))
        }
        Piece::End => (("ropeTail", "stopper and tail below it"), allowance(&ROPE_TAIL.row, &[KNOT_PAGES, JUDGED])),
        Piece::Spare => (("ropeSpare", "to spare"), allowance(&ROPE_SPARE.row, &[JUDGED])),
    };
    let mut item = figure(id, noun, length, "{M}", view, sources);
    item.workings.push(working);
    item
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
