//! Blake's hitch, tied with a split tail.

use super::pattern::{Lay, Pattern};
use crate::gear::Ends;
use crate::source::{HITCH_PAGES, JUDGED};

/// Four coils, and the end brought down across them and out between the second and the third. One leg, the bridge, ends in an
/// eye; the end has a stopper and its tail.
///
/// ```text
///   ((|   third and fourth
///   ((|--tail with a stopper
///     bridge--eye
/// ```
///
/// # Source
/// Four wraps, the tail out between the second and the third: quoted. On the line's own tail about 3.5 ft beyond the bight cover
/// bridge, hitch and backup: read. Of that about 0.35 m are bridge (judged, from 0.2 to 0.5).
pub const BLAKES: Pattern = Pattern {
    coils: Some(4),
    lay: Lay::Single,
    beside: 0.0,
    crossings: 1,
    crossing: 1,
    legs: 1,
    ends: &[Ends::Scaffold, Ends::DoubleOverhand, Ends::Sewn],
    eyes: 1,
    usual: 0.35,
    sources: &[HITCH_PAGES, JUDGED],
};
