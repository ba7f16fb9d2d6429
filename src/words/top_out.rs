//! What to be careful about near the crotch.

use super::known_caution::Known;
use crate::source::{COMMON_PRACTICE, GEOMETRY, JUDGED};

pub(super) static CROTCH_TOO_LOW: Known = Known {
    id: "crotch-too-low",
    grave: true,
    sources: &[GEOMETRY, JUDGED, COMMON_PRACTICE],
    template: "The crotch is too low for the height you want to climb: pulled up as far as the rig goes, you are still about {}{}{}{} short. A higher crotch or a shorter stack helps. Stop before anything jams under the crotch: what is jammed and loaded may not come free.",
};

pub(super) static CROTCH_NEAR: Known = Known {
    id: "crotch-near",
    grave: true,
    sources: &[GEOMETRY, JUDGED, COMMON_PRACTICE],
    template: "The crotch may be up to {} too low for the height you want to climb. Stop before anything jams under it: what is jammed and loaded may not come free.",
};

pub(super) static BELOW_EDGE: Known = Known {
    id: "below-edge",
    grave: false,
    sources: &[GEOMETRY, JUDGED],
    template: "Your seat does not come above the edge: pulled up as far as the rig goes, it stays about {}{}{}{} below. A higher crotch, a lower edge or a shorter stack helps.",
};

pub(super) static EDGE_NEAR: Known = Known {
    id: "edge-near",
    grave: false,
    sources: &[GEOMETRY, JUDGED],
    template: "Your seat may not come above the edge: pulled up as far as the rig goes, it may stay up to {} below.",
};
