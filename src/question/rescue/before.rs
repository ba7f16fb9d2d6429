//! What to see to before going, made from the weak points of this plan.

use super::inputs::Inputs;
use crate::ascent::{SecondPerson, WayDown};
use crate::reeving::{BodyKind, Part, What, is_held, single_parts};
use crate::rope::Anchor;

/// Something to see to.
#[derive(Debug, Clone, PartialEq)]
pub enum Before {
    /// A part whose failure alone drops the climber.
    Single {
        /// What people call it.
        noun: String,
    },
    /// Nothing holds once hands let go.
    NothingHolds,
    /// Nobody is there who can get the climber down.
    NobodyToRescue,
    /// Nobody was named.
    WhoIsThere,
    /// No way down was named.
    NoWayDown,
    /// Being let down was named, and this rope lets nobody down.
    CannotBeLetDown,
    /// A tie at the foot that does not pay out.
    PlainTie,
    /// A releasable anchor, to lock and to keep its cord out of reach.
    LockTheAnchor,
    /// A tail or a cord within reach that undoes the anchor.
    KeepTheTailAway,
    /// Slack while the knot or backup has to run.
    Slack,
    /// The rope's end: a stopper, and long enough.
    RopeEnd,
    /// A mass that the labels must carry.
    RatedMass,
    /// Legs that do not move: the harness clock, the seat, the skin.
    HarnessClock,
    /// The second rope is not in the tree.
    SecondRope,
}

/// What to see to on this plan.
pub(super) fn before(inputs: &Inputs, in_time: bool) -> Vec<Before> {
    let rig = &inputs.rig.rig;
    let mut list = Vec::new();
    let mut when = |holds: bool, what: Before| {
        if holds {
            list.push(what);
        }
    };
    let hauled = rig.is_hauled();
    when(inputs.second_person.is_none() && !hauled, Before::WhoIsThere);
    when(!hauled && inputs.second_person.is_some_and(|person| person != SecondPerson::Rescuer), Before::NobodyToRescue);
    when(inputs.way_down.is_none(), Before::NoWayDown);
    when(inputs.way_down == Some(WayDown::Lowered) && !inputs.pays_out(), Before::CannotBeLetDown);
    when(!in_time && !inputs.has_second_rope(), Before::SecondRope);
    when(inputs.anchor == Some(Anchor::Base), Before::PlainTie);
    when(inputs.anchor == Some(Anchor::CanopyHitch), Before::LockTheAnchor);
    when(inputs.anchor.is_some_and(|anchor| !anchor.is_at_the_foot()), Before::KeepTheTailAway);
    when(!is_held(rig), Before::NothingHolds);
    let mut nouns: Vec<String> = Vec::new();
    for part in single_parts(rig) {
        if let Part::Stop { rope, stop } = part
            && let Some(stop) = rig.ropes().get(rope).and_then(|rope| rope.stops.get(stop))
            && matches!(stop.what, What::Hitch(_) | What::Tied)
            && rig.kind_at(stop) != Some(BodyKind::Ground)
            && !nouns.iter().any(|noun| *noun == stop.noun)
        {
            nouns.push(stop.noun.clone().into_owned());
        }
    }
    for noun in nouns {
        when(true, Before::Single { noun });
    }
    when(rig.stops().any(|stop| matches!(stop.what, What::Knot(_))), Before::Slack);
    when(true, Before::RopeEnd);
    when(inputs.is_past_ratings(), Before::RatedMass);
    when(inputs.hangs_still(), Before::HarnessClock);
    list
}
