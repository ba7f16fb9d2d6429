//! From inputs to an answer.

use super::{Answer, Caution, Inputs};
use crate::field::Spread;
use crate::rope::{Anchor, Course, STOPPER_AND_TAIL, State, courses, section};

/// How much rope it takes.
///
/// # Guarantees
/// Total, and the same bits for the same inputs on every machine. Low and high are the sums of the low and the high ends
/// of the pieces (by definition): nothing is sampled.
#[must_use]
pub fn ask(inputs: &Inputs) -> Answer {
    let courses = courses(&inputs.rig, inputs.anchor, &inputs.sizes);
    let mut need = Spread::point(0.0);
    for Course { total, .. } in &courses {
        need = Spread::new(need.low.max(total.low), need.likely.max(total.likely), need.high.max(total.high));
    }
    Answer {
        anchor: inputs.anchor,
        crotch: inputs.sizes.crotch,
        section: section(&inputs.rig),
        assumed: inputs.assumed().to_vec(),
        decides: greatest(&courses),
        courses,
        need,
        cautions: cautions(inputs),
    }
}

/// The state that needs most: of those that need alike going down, on which somebody hangs, or else the first.
fn greatest(courses: &[Course]) -> State {
    let down = courses.iter().filter(|course| course.state == State::Down);
    let mut best: Option<&Course> = None;
    for course in down.chain(courses) {
        if best.is_none_or(|best| course.total.likely > best.total.likely) {
            best = Some(course);
        }
    }
    best.map_or(State::Down, |best| best.state)
}

fn cautions(inputs: &Inputs) -> Vec<Caution> {
    let mut cautions = vec![Caution::Arithmetic, Caution::Stopper];
    if inputs.sizes.end.likely < STOPPER_AND_TAIL {
        cautions.push(Caution::ShortEnd);
    }
    cautions.push(Caution::EstimatedHeight);
    cautions.push(Caution::LayItOut);
    match inputs.anchor {
        Some(Anchor::Canopy) => {
            cautions.push(Caution::NotLowerable);
            cautions.push(Caution::AnchorTail);
        }
        Some(Anchor::Base) => cautions.push(Caution::BaseAnchorLoad),
        None if inputs.anchor_is_idle => cautions.push(Caution::NoAnchor),
        None => {}
    }
    if inputs.rig.ropes().len() > 1 {
        cautions.push(Caution::CordApart);
    }
    cautions
}
