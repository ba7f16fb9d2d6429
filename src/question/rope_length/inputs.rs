//! What the question reads, checked.

use crate::draft::{Draft, Reader};
use crate::error::{Error, Reason};
use crate::field::{Kind, Row};
use crate::quantity::Quantity;
use crate::question::Question;
use crate::question::fields::reader;
use crate::reeving::{Backup, OWN_RIG, RIG, Rig, RigName};
use crate::rope::{
    ANCHOR, Anchor, CROTCH_HEIGHT, HITCH_HEIGHT, Ladder, ROPE_OWNED, ROPE_STOCK, Sizes, assumed_sizes, comes_to_tree,
    heights, is_anchored,
};
use std::sync::Arc;

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) rig: Arc<Rig>,
    /// None where the rope only runs over the crotch.
    pub(super) anchor: Option<Anchor>,
    /// Whether an anchor was chosen for a rope that has none.
    pub(super) anchor_is_idle: bool,
    pub(super) sizes: Sizes,
    /// Whether the height of the crotch was said, and is not what the rope that somebody has goes to.
    pub(super) planned: bool,
    /// The rope that somebody has.
    pub(super) owned: Option<f64>,
    /// The lengths one can buy, if they were said.
    pub(super) ladder: Option<Ladder>,
    /// The fields whose defaults the answer rests on.
    pub(super) assumed: Vec<&'static Row>,
}

/// What is climbed on where nothing is said: it takes the least rope of those that are anchored, and is said so.
static USUAL_RIG: Row =
    Row { kind: Kind::Choice { options: RigName::OPTIONS, likely: Some("hand-over-hand") }, ..RIG.row };

impl Inputs {
    /// The fields whose defaults the answer rests on.
    #[must_use]
    pub fn assumed(&self) -> &[&'static Row] {
        &self.assumed
    }

    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::RopeLength);
        let planned = reader.says(&CROTCH_HEIGHT.row) || !reader.says(&ROPE_OWNED.row);
        let crotch = if planned { reader.need(&CROTCH_HEIGHT).map(Quantity::si) } else { Some(LEAST) };
        let (owned, ladder) = (reader.maybe(&ROPE_OWNED).map(Quantity::si), reader.maybe(&ROPE_STOCK));
        let rig = rig(&mut reader);
        let runs_over = rig.as_ref().is_some_and(|rig| !is_anchored(rig));
        let said = if runs_over { reader.maybe(&ANCHOR) } else { reader.need(&ANCHOR) };
        let anchor = said.filter(|_| !runs_over);
        let hitch = reader.spread(&HITCH_HEIGHT);
        let is_said = reader.says(&HITCH_HEIGHT.row);
        if let (Some(crotch), Some(hitch)) = (crotch, hitch)
            && planned
            && is_said
            && hitch.likely >= crotch
        {
            let fields = vec![CROTCH_HEIGHT.row.id.to_owned(), HITCH_HEIGHT.row.id.to_owned()];
            reader.note(Error { fields, reason: Reason::HitchAboveCrotch });
        }
        let mut sizes = Sizes::read(&mut reader, crotch.unwrap_or(LEAST), hitch, anchor).filter(|_| crotch.is_some());
        if let (Some(rope), Some(rig), Some(sizes)) = (owned.filter(|_| !planned), &rig, &mut sizes) {
            let [sure, ..] = heights(rope, rig, anchor, sizes);
            let least = if is_said { sizes.hitch.likely.max(LEAST) } else { LEAST };
            match sure.filter(|height| *height > least) {
                Some(height) => sizes.crotch = height,
                None => reader.note(Error::of(ROPE_OWNED.row.id, Reason::RopeTooShort)),
            }
        }
        let mut assumed = vec![&USUAL_RIG];
        assumed.retain(|row| !reader.says(row));
        assumed.extend(assumed_sizes(&reader, anchor));
        reader.done(|| {
            let (rig, sizes) = (rig?, sizes?);
            Some(Self {
                rig,
                anchor,
                anchor_is_idle: runs_over && said.is_some(),
                sizes,
                planned,
                owned,
                ladder,
                assumed,
            })
        })
    }
}

/// The lowest crotch that a height can be said of, in metres.
const LEAST: f64 = match CROTCH_HEIGHT.row.kind {
    Kind::Quantity(limits) => limits.least,
    _ => 0.0,
};

fn rig(reader: &mut Reader<'_>) -> Option<Arc<Rig>> {
    let own = reader.maybe(&OWN_RIG);
    let name = if reader.says(&RIG.row) { reader.maybe(&RIG)? } else { RigName::HandOverHand };
    if name == RigName::Own {
        if !reader.says(&OWN_RIG.row) {
            reader.note(Error::of(OWN_RIG.row.id, Reason::Needed));
        }
        let rig = own?.rig;
        if !comes_to_tree(&rig) {
            reader.note(Error::of(OWN_RIG.row.id, Reason::NoCrotch));
        }
        return Some(rig);
    }
    // A backup takes no rope between the bodies.
    let made = name.rig(Backup::None);
    if made.is_err() {
        reader.note(Error::of(RIG.row.id, Reason::UnworkableRig));
    }
    made.ok().map(Arc::new)
}
