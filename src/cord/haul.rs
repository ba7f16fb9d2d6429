//! The haul cord of a rig.

use crate::field::Spread;
use crate::reeving::{BodyKind, Rig, What};
use crate::rope::section;

/// What hangs from the last turn for the hand, in metres.
///
/// # Source
/// Judged: from a hand's width to an arm's length below it.
pub const HAND_END: Spread = Spread::new(0.3, 0.5, 1.0);

/// The strands of a rig's haul cord between its bodies, and how long each is at the most, in metres; none where the rig has
/// no cord of its own beside the climbing rope.
#[must_use]
pub fn haul_strands(rig: &Rig) -> Option<(u32, Spread)> {
    for rope in rig.ropes() {
        let (mut strands, mut hand, mut tree) = (0, false, false);
        let mut last = None;
        for stop in &rope.stops {
            tree |= rig.kind_at(stop) == Some(BodyKind::Tree);
            hand |= matches!(stop.what, What::Hand);
            if stop.body.is_some() {
                strands += u32::from(last.is_some_and(|last| last != stop.body));
                last = Some(stop.body);
            }
        }
        if hand && !tree && strands > 0 {
            return Some((strands, section(rig)?));
        }
    }
    None
}
