//! What the length of a rope depends on.

use super::{
    ANCHOR_KNOT, Anchor, BASE_TIE, DEVICE_WRAPS, FOOT_OFFSET, HITCH_HEIGHT, OVER_CROTCH, REDIRECT_ROPE, ROPE_SPARE,
    ROPE_TAIL, STEM_GIRTH,
};
use crate::draft::Reader;
use crate::field::{Field, Row, Spread};
use crate::quantity::{Length, Quantity};

/// What the length of a rope depends on, beside rig and anchor. All in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sizes {
    /// The height of the crotch.
    pub crotch: f64,
    /// The height of the lower hitch at the start.
    pub hitch: Spread,
    /// How far from under the crotch people stand, tie and haul.
    pub aside: f64,
    /// The rope that lies over the crotch.
    pub over: Spread,
    /// What redirects take.
    pub redirect: f64,
    /// The rope in the knot or tie that makes it fast.
    pub knot: Spread,
    /// The stopper and the tail below it.
    pub end: Spread,
    /// What is to lie on the ground.
    pub spare: Spread,
}

/// What a strand takes more than straight down from so high, to end so far aside: at the most all of that, along the
/// ground; at the least what it is longer aslant. More than aslant is never needed, and more than straight down and along
/// never taken.
pub(super) fn aslant(high: f64, aside: f64) -> Spread {
    Spread::new((high * high + aside * aside).sqrt() - high, aside, aside)
}

/// The rope that the knot, tie or device takes which makes it fast, by where that is.
pub(crate) fn made_fast_by(anchor: Option<Anchor>) -> &'static Field<Length> {
    match anchor {
        Some(Anchor::Base) => &BASE_TIE,
        Some(Anchor::BaseLowerable) => &DEVICE_WRAPS,
        _ => &ANCHOR_KNOT,
    }
}

/// The fields of the sizes that have their defaults.
pub(crate) fn assumed_sizes(reader: &Reader<'_>, anchor: Option<Anchor>) -> Vec<&'static Row> {
    let mut assumed =
        vec![&HITCH_HEIGHT.row, &OVER_CROTCH.row, &made_fast_by(anchor).row, &ROPE_TAIL.row, &ROPE_SPARE.row];
    let girth = reader.says(&STEM_GIRTH.row);
    assumed.retain(|row| !(reader.says(row) || girth && row.id == OVER_CROTCH.row.id));
    assumed
}

impl Sizes {
    /// What was said of them, over a crotch and with the lower hitch at the start so high, in metres.
    pub(crate) fn read(
        reader: &mut Reader<'_>,
        crotch: f64,
        hitch: Option<Spread>,
        anchor: Option<Anchor>,
    ) -> Option<Self> {
        let (aside, girth) = (reader.maybe(&FOOT_OFFSET), reader.maybe(&STEM_GIRTH));
        let over = reader.spread(&OVER_CROTCH);
        let over = match girth {
            Some(girth) if !reader.says(&OVER_CROTCH.row) => {
                // A loop goes all the way round; what only lies over goes half of it.
                let loops = anchor.is_some_and(|anchor| !anchor.is_at_the_foot());
                Some(Spread::point(if loops { girth.si() } else { girth.si() / 2.0 }))
            }
            _ => over,
        };
        let redirect = reader.maybe(&REDIRECT_ROPE);
        let knot = reader.spread(made_fast_by(anchor));
        let (end, spare) = (reader.spread(&ROPE_TAIL), reader.spread(&ROPE_SPARE));
        let si = |length: Option<Length>| length.map_or(0.0, Quantity::si);
        Some(Self {
            crotch,
            hitch: hitch?,
            aside: si(aside),
            over: over?,
            redirect: si(redirect),
            knot: knot?,
            end: end?,
            spare: spare?,
        })
    }
}
