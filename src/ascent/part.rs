//! A part of a rig, and what happens when it fails.

use crate::quantity::Length;
use crate::reeving::{Part, Rig, Stop, What, drop_after, drop_in_hand, is_held};

/// A part of the rig, and what happens when it fails.
#[derive(Debug, Clone, PartialEq)]
pub struct PartFact {
    /// The rope it is on.
    pub rope: usize,
    /// The stop it is at; none for the rope itself.
    pub stop: Option<usize>,
    /// Whether its failure alone drops the climber.
    pub single: bool,
    /// How far the climber drops before something else holds, where that can be told.
    pub drop: Option<Length>,
}

impl PartFact {
    /// The stop it is at.
    #[must_use]
    pub fn stop_in<'a>(&self, rig: &'a Rig) -> Option<&'a Stop> {
        rig.ropes().get(self.rope)?.stops.get(self.stop?)
    }

    /// Whether it is a friction hitch.
    #[must_use]
    pub fn is_hitch(&self, rig: &Rig) -> bool {
        self.stop_in(rig).is_some_and(|stop| matches!(stop.what, What::Hitch(_)))
    }
}

/// Every part, and what happens when it fails. Where nothing holds the climber but a hand, that is a part too.
pub(crate) fn parts(rig: &Rig) -> Vec<PartFact> {
    let (by_hand, after): (_, fn(&Rig, Part) -> _) =
        if is_held(rig) { (false, drop_after) } else { (true, drop_in_hand) };
    let mut parts = Vec::new();
    for (at, rope) in rig.ropes().iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            if stop.can_fail() || by_hand && stop.what == What::Hand {
                let drop = after(rig, Part::Stop { rope: at, stop: place });
                parts.push(PartFact { rope: at, stop: Some(place), single: drop.is_none(), drop });
            }
        }
        let drop = after(rig, Part::Rope { rope: at });
        parts.push(PartFact { rope: at, stop: None, single: drop.is_none(), drop });
    }
    parts
}
