//! What else is made of cord: no coils, the same model.

use crate::gear::Ends;
use crate::hitch::{Lay, Pattern};
use crate::source::{JUDGED, KNOT_PAGES, MOUNTAIN_PAGES};

const TIED_EYES: &[Ends] = &[Ends::Scaffold, Ends::DoubleOverhand, Ends::Sewn];

const LOOP: Pattern = Pattern {
    coils: Some(0),
    lay: Lay::Single,
    beside: 0.0,
    crossings: 0,
    crossing: 0,
    legs: 2,
    ends: &[Ends::Loop, Ends::Sewn],
    eyes: 0,
    usual: 0.30,
    sources: &[KNOT_PAGES, JUDGED],
};

/// To stand in.
///
/// # Source
/// 25 ft or 8 m of 6 mm for a pair: read. Half of that, less its knot, is 1.80 m inside (1.2 to 2.2 by stature, judged).
pub(super) const FOOT_LOOP: Pattern = Pattern { usual: 1.80, sources: &[MOUNTAIN_PAGES, JUDGED], ..LOOP };

/// To pull by.
///
/// # Source
/// A loop of 30 cm inside, which takes 1.00 m of 6 mm: read. That one is a hand's: judged, 20 to 40 cm.
pub(super) const HAND_LOOP: Pattern = LOOP;

/// Between the rings of a harness.
///
/// # Source
/// 0.50 m from eye to eye, 0.35 to 0.70: judged. The harness's maker says how long it may be.
pub(super) const BRIDGE: Pattern =
    Pattern { ends: TIED_EYES, eyes: 2, legs: 1, usual: 0.50, sources: &[JUDGED], ..LOOP };

/// From the harness round the stem and back to the adjuster.
///
/// # Source
/// 2.5 m from eye to stopper, 1.8 to 4: judged.
pub(super) const LANYARD: Pattern = Pattern { eyes: 1, usual: 2.5, ..BRIDGE };

/// Back and forth between harness and upper hitch.
///
/// # Source
/// Geometry: as many strands as the rig has, each as long as the upper hitch goes off.
pub(super) const HAUL_CORD: Pattern = Pattern { ends: &[Ends::DoubleOverhand, Ends::Scaffold], ..LANYARD };
