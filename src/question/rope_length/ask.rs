//! From inputs to an answer.

use super::{Answer, Caution, Inputs};
use crate::rope::{
    ADDING_UP, Anchor, Course, Owned, STOPPER_AND_TAIL, State, courses, heights, need, owned, preset_line,
    retrieval_cord, section, stock,
};

/// How much rope it takes, and what the rope that somebody has comes to.
///
/// # Guarantees
/// Total, and the same bits for the same inputs on every machine. Low and high are the sums of the low and the high ends
/// of the pieces (by definition): nothing is sampled.
#[must_use]
pub fn ask(inputs: &Inputs) -> Answer {
    let Inputs { rig, anchor, sizes, .. } = inputs;
    let courses = courses(rig, *anchor, sizes);
    let need = need(&courses);
    let owned = inputs.owned.map(|rope| owned(rope, heights(rope, rig, *anchor, sizes), &courses, need, sizes.crotch));
    let decides = greatest(&courses);
    Answer {
        anchor: *anchor,
        crotch: sizes.crotch,
        planned: inputs.planned,
        section: section(rig),
        assumed: inputs.assumed().to_vec(),
        decides,
        need,
        stock: stock(&courses, inputs.ladder.as_ref()),
        preset_line: preset_line(sizes),
        retrieval_cord: anchor.filter(|anchor| anchor.needs_retrieval_cord()).map(|_| retrieval_cord(sizes)),
        cautions: cautions(inputs, owned.as_ref(), decides),
        owned,
        courses,
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

fn cautions(inputs: &Inputs, owned: Option<&Owned>, decides: State) -> Vec<Caution> {
    let mut cautions = vec![Caution::Arithmetic, Caution::Stopper];
    if inputs.sizes.end.likely < STOPPER_AND_TAIL {
        cautions.push(Caution::ShortEnd);
    }
    match owned {
        Some(Owned { above: Some(above), .. }) => cautions.push(Caution::RopeEndsAbove { by: *above }),
        Some(Owned { short, .. }) if short.high > ADDING_UP => {
            cautions.push(Caution::RopeTooShort { state: decides, by: *short });
        }
        _ => {}
    }
    cautions.push(Caution::EstimatedHeight);
    cautions.push(Caution::LayItOut);
    match inputs.anchor {
        Some(Anchor::BaseLowerable) => cautions.extend([Caution::BaseAnchorLoad, Caution::LoweringHelper]),
        Some(Anchor::Base) => cautions.extend([Caution::BaseAnchorLoad, Caution::PlainTie]),
        Some(canopy) => {
            cautions.push(Caution::NotLowerable);
            cautions.push(match canopy {
                Anchor::CanopyHitch => Caution::LockRelease,
                _ if canopy.needs_retrieval_cord() => Caution::CordSnags,
                _ => Caution::AnchorTail,
            });
            if canopy == Anchor::CanopyLink {
                cautions.push(Caution::LinkShut);
            }
        }
        None => {
            if !inputs.rig.is_hauled() {
                cautions.push(Caution::NotLowerable);
            }
            if inputs.anchor_is_idle {
                cautions.push(Caution::NoAnchor);
            }
        }
    }
    if inputs.sizes.aside > 0.0 {
        cautions.push(Caution::Swing);
    }
    if inputs.rig.ropes().len() > 1 {
        cautions.push(Caution::CordApart);
    }
    cautions
}
