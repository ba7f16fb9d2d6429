//! What the question reads, checked.

use crate::draft::{Draft, Reader};
use crate::error::{Error, Reason};
use crate::field::{Kind, Row};
use crate::quantity::Quantity;
use crate::question::Question;
use crate::question::fields::reader;
use crate::reeving::{Backup, OWN_RIG, RIG, Rig, RigName};
use crate::rope::{
    ANCHOR, ANCHOR_KNOT, Anchor, BASE_TIE, CROTCH_HEIGHT, HITCH_HEIGHT, OVER_CROTCH, ROPE_SPARE, ROPE_TAIL, Sizes,
    comes_to_tree, is_anchored,
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
        let crotch = reader.need(&CROTCH_HEIGHT).map(Quantity::si);
        let rig = rig(&mut reader);
        let runs_over = rig.as_ref().is_some_and(|rig| !is_anchored(rig));
        let said = if runs_over { reader.maybe(&ANCHOR) } else { reader.need(&ANCHOR) };
        let hitch = reader.spread(&HITCH_HEIGHT);
        if let (Some(crotch), Some(hitch)) = (crotch, hitch)
            && reader.says(&HITCH_HEIGHT.row)
            && hitch.likely >= crotch
        {
            let fields = vec![CROTCH_HEIGHT.row.id.to_owned(), HITCH_HEIGHT.row.id.to_owned()];
            reader.note(Error { fields, reason: Reason::HitchAboveCrotch });
        }
        let fast = if said == Some(Anchor::Base) && !runs_over { &BASE_TIE } else { &ANCHOR_KNOT };
        let (over, knot) = (reader.spread(&OVER_CROTCH), reader.spread(fast));
        let (end, spare) = (reader.spread(&ROPE_TAIL), reader.spread(&ROPE_SPARE));
        let assumed = assumed(&reader, &fast.row);
        reader.done(|| {
            Some(Self {
                rig: rig?,
                anchor: said.filter(|_| !runs_over),
                anchor_is_idle: runs_over && said.is_some(),
                sizes: Sizes { crotch: crotch?, hitch: hitch?, over: over?, knot: knot?, end: end?, spare: spare? },
                assumed,
            })
        })
    }
}

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

/// The fields that have their defaults.
fn assumed(reader: &Reader<'_>, fast: &'static Row) -> Vec<&'static Row> {
    let mut assumed: Vec<&'static Row> =
        vec![&USUAL_RIG, &HITCH_HEIGHT.row, &OVER_CROTCH.row, fast, &ROPE_TAIL.row, &ROPE_SPARE.row];
    assumed.retain(|row| !reader.says(row));
    assumed
}
