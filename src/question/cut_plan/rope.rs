//! The rope that the rig of the plan is climbed on.

use crate::draft::Reader;
use crate::field::{Row, Spread};
use crate::quantity::Quantity;
use crate::reeving::Rig;
use crate::rope::{
    ADDING_UP, ANCHOR, CROTCH_HEIGHT, HITCH_HEIGHT, ROPE_OWNED, ROPE_STOCK, Sizes, Stock, assumed_sizes, comes_to_tree,
    courses, is_anchored, need, retrieval_cord, stock,
};

/// The rope that the rig takes. In metres.
#[derive(Debug, Clone, PartialEq)]
pub struct Rope {
    /// How much it takes.
    pub need: Spread,
    /// What one can buy, where metres and where feet are sold.
    pub stock: [Stock; 2],
    /// The rope that somebody has.
    pub owned: Option<f64>,
    /// The cord that brings the anchor down, where it needs one.
    pub retrieval: Option<Spread>,
}

impl Rope {
    /// The rope that somebody has, if it reaches with everything taking the most it may.
    #[must_use]
    pub fn enough(&self) -> Option<f64> {
        self.owned.filter(|owned| *owned >= self.need.high - ADDING_UP)
    }
}

/// The rope that a rig takes, as "How much rope?" has it, and the fields whose defaults it rests on; none where the
/// height of the crotch or the anchor was not said, or they do not go together.
pub(super) fn rope(reader: &mut Reader<'_>, rig: &Rig) -> Option<(Rope, Vec<&'static Row>)> {
    let (crotch, said) = (reader.maybe(&CROTCH_HEIGHT).map(Quantity::si), reader.maybe(&ANCHOR));
    let (owned, ladder) = (reader.maybe(&ROPE_OWNED).map(Quantity::si), reader.maybe(&ROPE_STOCK));
    let anchored = is_anchored(rig);
    let anchor = said.filter(|_| anchored);
    let hitch = reader.spread(&HITCH_HEIGHT);
    let sizes = Sizes::read(reader, crotch.unwrap_or(0.0), hitch, anchor)?;
    let above = reader.says(&HITCH_HEIGHT.row) && sizes.hitch.likely >= sizes.crotch;
    if crotch.is_none() || above || anchored && anchor.is_none() || !comes_to_tree(rig) {
        return None;
    }
    let courses = courses(rig, anchor, &sizes);
    let retrieval = anchor.filter(|anchor| anchor.needs_retrieval_cord()).map(|_| retrieval_cord(&sizes));
    let rope = Rope { need: need(&courses), stock: stock(&courses, ladder.as_ref()), owned, retrieval };
    Some((rope, assumed_sizes(reader, anchor)))
}
