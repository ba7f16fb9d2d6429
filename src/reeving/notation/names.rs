//! What people call the parts of somebody's own rig.

use super::super::{BodyKind, Noun, Rig};
use super::stop::Place;
use crate::quantity::joined;

impl Place {
    /// What people call a tie there.
    pub(super) const fn tie(self) -> &'static str {
        match self {
            Self::Tree => "anchor",
            Self::Climber => "harness tie",
            Self::Ground => "anchor at the foot",
            _ => "hitch tie",
        }
    }

    /// What people call a hitch there.
    pub(super) const fn hitch(self) -> &'static str {
        match self {
            Self::Tree => "hitch at the crotch",
            Self::Climber => "lower hitch",
            Self::Ground => "hitch at the foot",
            _ => self.named().noun,
        }
    }
}

/// The turns by what they are on, counted from the hand.
pub(super) fn name_turns(rig: &mut Rig) {
    let mut met = [0; 4];
    for (rope, place) in rig.turns_from_hand() {
        let on = rig.ropes.get(rope).and_then(|rope| rope.stops.get(place)).and_then(|stop| rig.kind_at(stop));
        let (group, noun) = match on {
            Some(BodyKind::Tree) => (0, "crotch"),
            Some(BodyKind::Carriage) => (1, "upper turn"),
            Some(BodyKind::Ground) => (2, "turn at the foot"),
            _ => (3, "lower turn"),
        };
        let stop = rig.ropes.get_mut(rope).and_then(|rope| rope.stops.get_mut(place));
        if let (Some(stop), Some(count)) = (stop, met.get_mut(group)) {
            let noun = if group == 0 && *count > 0 { "turn at the crotch" } else { noun };
            stop.noun = ordinal(*count, noun);
            *count += 1;
        }
    }
}

/// "turn", "second turn", "third turn".
pub(super) fn ordinal(place: usize, noun: &'static str) -> Noun {
    const SPELT: &[&str] = &["second ", "third ", "fourth ", "fifth ", "sixth "];
    match place.checked_sub(1) {
        None => noun.into(),
        Some(place) => joined(&[SPELT.get(place).copied().unwrap_or("further "), noun]).into(),
    }
}
