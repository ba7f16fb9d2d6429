//! The answer to "How much rope?" in words.

use super::assumed::assumed;
use super::figure::figure;
use super::rope_buy::{buy, has, lines, of_owned, to_buy};
use super::rope_caution::rope_caution;
use super::rope_measure::{large, measured, text, whole};
use super::rope_state::state;
use super::source::cited;
use super::template::{said, say, worded};
use super::{Figure, RopeReport, RopeState};
use crate::field::Spread;
use crate::quantity::{FOOT, METRE, System, View};
use crate::question::rope_length::Answer;
use crate::rope::{Anchor, State};
use crate::source::{GEOMETRY, JUDGED, RESCUE_MANUAL};

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's, in whole centimetres or inches; what is needed is
/// rounded up, and a total is the sum of its items as they are shown.
#[must_use]
pub fn rope_report(answer: &Answer, view: View) -> RopeReport {
    let mut states = Vec::new();
    let mut need = Spread::point(0.0);
    for course in &answer.courses {
        let (state, total) = state(answer, course, view);
        need = Spread::new(need.low.max(total.low), need.likely.max(total.likely), need.high.max(total.high));
        states.push(state);
    }
    let mut cautions = Vec::new();
    for caution in &answer.cautions {
        cautions.push(rope_caution(*caution, view));
    }
    let figures = figures(answer, need, &states, view);
    let mut lists = vec![figures.as_slice()];
    for state in &states {
        lists.push(&state.items);
    }
    let sources = cited(&lists, &cautions, &[]);
    RopeReport {
        first: first(answer, need, view),
        second: second(answer).to_owned(),
        buy: buy(answer, need, view),
        owned: if answer.planned { has(answer, view) } else { String::new() },
        assumed: assumed(&answer.assumed, view),
        figures,
        states,
        cautions,
        sources,
    }
}

/// How much to buy, in whole metres or feet, never less than is needed; or how high the rope goes that somebody has.
fn first(answer: &Answer, need: Spread, view: View) -> String {
    if !answer.planned {
        return has(answer, view);
    }
    let unit = if view.system == System::Si { METRE } else { FOOT };
    let (likely, high) = (large(need.likely, view), large(need.high, view));
    let mut text = said("About {} {} of rope", &[], &[&likely, unit.symbol], view);
    if likely != high {
        say(&mut text, "; {} if everything takes the most it may", &[], &[&high], view);
    }
    text + "."
}

/// The state that decides, and what that means.
fn second(answer: &Answer) -> &'static str {
    match answer.decides {
        State::Set if answer.anchor == Some(Anchor::Canopy) => {
            "Setting it decides: the end goes up, over and down to be tied, and beside it lies the tail that will hang from the knot to the ground."
        }
        State::Set => "Setting it decides: the end goes up, over and down to be tied, and the loop is then drawn up.",
        State::Down => "Going down decides: with the stopper in its end the rope must reach the ground.",
        State::Lowered if answer.anchor.is_some() => {
            "Being let down decides: beside the way up, over and down, as much again lies at the foot to let out."
        }
        State::Lowered => {
            "Being let down decides: with you on the ground the rope still goes through all that a helper hauls with."
        }
        State::Start | State::Top | State::Retrieve => {
            "Starting decides: the rig itself takes rope, back and forth, on top of the way over the crotch."
        }
    }
}

fn figures(answer: &Answer, steps: Spread, states: &[RopeState], view: View) -> Vec<Figure> {
    let mut each = "The most that any of these takes".to_owned();
    let mut before = ": ";
    for state in states {
        for part in [before, state.noun, " ", &state.total.text] {
            each.push_str(part);
        }
        before = "; ";
    }
    let mut need = measured(("ropeNeeded", "rope needed"), &answer.need, steps, view, &[GEOMETRY, JUDGED]);
    need.workings.push(each + ".");
    need.workings.push("Stretch counts for nothing: under load a rope only grows longer.".to_owned());
    let over = |length: f64| length / answer.crotch;
    let times = Spread::new(over(answer.need.low), over(answer.need.likely), over(answer.need.high));
    let canopy = answer.anchor == Some(Anchor::Canopy);
    let sources = if canopy { &[GEOMETRY, RESCUE_MANUAL][..] } else { &[GEOMETRY] };
    let mut times = figure("ropeOverHeight", "rope for each unit of height", &times, "{1}", view, sources);
    let crotch = text(whole(answer.crotch, view), view);
    times.workings.push(worded("rope needed ÷ height of the crotch = {} ÷ {}", &[&text(steps.likely, view), &crotch]));
    match answer.anchor {
        Some(Anchor::Canopy) => {
            times.workings.push("An anchor that its own tail pulls down takes 3, before knots.".to_owned());
        }
        Some(Anchor::BaseLowerable) => {
            times.workings.push("An anchor that can let you down takes 3, before the device.".to_owned());
        }
        _ => {}
    }
    let mut figures = vec![need];
    figures.extend(to_buy(answer, steps, view));
    figures.extend(of_owned(answer, view));
    figures.push(times);
    figures.extend(lines(answer, view));
    figures
}
