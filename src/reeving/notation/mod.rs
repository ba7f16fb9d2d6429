//! A person's own rig as text: a line a rope, its stops with commas between them, each what the rope does, on what, and
//! with what.
//!
//! ```text
//! tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper 0.85, hand climber
//! tied.tree--hitch.upper--hitch.climber--turn.climber.bearing-pulley--turn.upper.0.85--hand.climber
//! ```
//!
//! The second line is the same rig for a link, which carries no blanks and no commas; ropes are then joined by `---`.
//! A rope that is not tied at an end has a loose tail there. Letter case and blanks are of no account.
//!
//! | word | means |
//! |---|---|
//! | `tied`, `turn`, `hitch`, `backup`, `knot`, `hand`, `helper` | [`Does`] |
//! | `tree`, `upper` to `upper-4`, `climber`, `ground` | [`Place`], from the highest to the lowest |
//! | `turn … carabiner`, `turn … 85 %` | the [`TurnKind`](crate::gear::TurnKind), or the share it keeps; left out, a bearing pulley, on the tree bark |
//! | `knot … 2 m` | the rope that runs before it catches |
//! | `helper … 150 N` | what the helper pulls |

mod making;
mod mistake;
mod names;
mod pieces;
mod stop;

pub use making::{OwnRig, OwnTurn, read};
pub use mistake::{Mistake, Wrong};
pub use stop::{Does, OwnRope, OwnStop, Place, written};

use crate::field::{Field, Form, Kind, Row};
use crate::quantity::System;
use making::rig_of;
use pieces::said;
use stop::write;

/// Somebody's own rig.
pub static OWN_RIG: Field<OwnRig> = Field::new(Row {
    id: "ownRig",
    noun: "your own rig",
    hint: "A line for each rope; along it, from one end to the other, what it does, where and with what, with commas between.",
    kind: Kind::Text(&FORM),
    why: "At most 32 strands and four moving hitches, so that the sums stay exact.",
    private: false,
});

static FORM: Form = Form {
    canonical,
    tidied: tidy,
    example: "tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper carabiner, hand climber",
};

/// The text as a link carries it; none where it is no rig.
///
/// # Guarantees
/// It reads as the same rig, to the last bit, in letters, digits, points and hyphens. Turns of which nothing was said
/// are written out.
///
/// # Example
/// ```
/// use boughline::reeving::notation::canonical;
///
/// assert_eq!(canonical("tied tree, HAND climber").as_deref(), Some("tied.tree--hand.climber"));
/// assert_eq!(canonical("tied tree, hand"), None);
/// ```
#[must_use]
pub fn canonical(text: &str) -> Option<String> {
    let mut ropes = read(text).ok()?.ropes;
    for rope in &mut ropes {
        for stop in &mut rope.stops {
            if let Some(amount) = stop.amount() {
                stop.with = amount.linked(&crate::field::Said::Text(std::mem::take(&mut stop.with)))?;
            }
        }
    }
    Some(write(&ropes, [".", "--", "---"]))
}

/// The text as people read it, amounts with their units; unchanged where it is no rig.
///
/// # Example
/// ```
/// use boughline::quantity::System;
/// use boughline::reeving::notation::tidy;
///
/// let text = "tied.tree--knot.climber.2--hand.climber";
/// assert_eq!(tidy(text, System::Si), "tied tree, knot climber 2 m, hand climber");
/// ```
#[must_use]
pub fn tidy(text: &str, system: System) -> String {
    let Ok(mut ropes) = said(text) else { return text.to_owned() };
    for stop in ropes.iter_mut().flat_map(|rope| &mut rope.stops) {
        if let Some(amount) = stop.amount() {
            stop.with = amount.tidied(&stop.with, system);
        } else if let Some(kind) = stop.kind() {
            kind.named().id.clone_into(&mut stop.with);
        }
    }
    let tidied = written(&ropes);
    if rig_of(ropes).is_ok() { tidied } else { text.to_owned() }
}
