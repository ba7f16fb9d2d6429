//! What would help most.

use super::change::Change;
use super::climb::Climb;
use super::outcome::Outcome;
use super::{Plan, Reeved};
use crate::chance::{Draws, Effort, Likely};

/// What a climb comes to, as far as it is compared.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compared {
    /// The share of sampled climbs that come to the height in time; of one pull where the count of pulls is not known.
    pub chance: f64,
    /// The share of one's strength that a pull takes, of arms or hands, whichever is tighter; most likely.
    pub share: f64,
    /// The strokes in all, most likely; unknown as [`f64::NAN`].
    pub strokes: f64,
    /// The time with rests, in seconds, most likely.
    pub time: f64,
}

/// What one change comes to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Help {
    /// The change.
    pub change: Change,
    /// What the climb comes to with it.
    pub with: Compared,
}

/// What would help, the most helpful first.
#[derive(Debug, Clone, PartialEq)]
pub struct Helps {
    /// What the climb comes to as it is.
    pub as_it_is: Compared,
    /// Every change that can be made.
    pub changes: Vec<Help>,
    /// The name of the next rig, where there is one.
    pub next: Option<&'static str>,
    /// Whether the count of pulls is known.
    pub counted: bool,
    /// How many samples each rests on.
    pub samples: u32,
}

/// One change at a time, each on the very same samples; none while the strength is not known.
///
/// # Guarantees
/// In the order of the chance, then of the share of strength.
pub(crate) fn helps(plan: &Plan, next: Option<&Reeved>, effort: Effort) -> Option<Helps> {
    let as_it_is = compared(plan, effort)?;
    let mut changes: Vec<Help> = Vec::new();
    for change in Change::ALL {
        let Some(with) = plan.with(*change, next).and_then(|plan| compared(&plan, effort)) else { continue };
        let help = Help { change: *change, with };
        let place = changes.iter().position(|other| is_better(&with, &other.with)).unwrap_or(changes.len());
        changes.insert(place, help);
    }
    let counted = !as_it_is.strokes.is_nan();
    Some(Helps { as_it_is, changes, next: next.map(|rig| rig.name.named().noun), counted, samples: effort.count() })
}

fn is_better(one: &Compared, other: &Compared) -> bool {
    one.chance > other.chance || one.chance >= other.chance && one.share < other.share
}

fn compared(plan: &Plan, effort: Effort) -> Option<Compared> {
    let likely = Climb::of(plan, &Likely);
    if !plan.rig.is_hauled() && likely.hands_share.is_nan() {
        return None;
    }
    let mut succeed = 0;
    for sample in 0..effort.count() {
        succeed += u32::from(Outcome::of(&Climb::of(plan, &Draws::sample(sample)))?.whole <= 1.0);
    }
    let (arms, hands) = (likely.arms_share, likely.hands_share);
    Some(Compared {
        chance: f64::from(succeed) / f64::from(effort.count()),
        share: if hands > arms { hands } else { arms },
        strokes: likely.all_strokes,
        time: likely.lasting_time,
    })
}
