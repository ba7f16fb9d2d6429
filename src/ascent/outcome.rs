//! How one reckoned climb ends, and what ends it.

use super::climb::Climb;
use super::decided::Decided;
use super::level::Level;
use crate::chance::ranked;

/// How one reckoned climb ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Outcome {
    /// What one pull takes over what there is for it; endless where a stroke gains nothing.
    pub(super) one: f64,
    /// What the climb to the height takes over what there is for it, the tightest of all; as one pull where the count of
    /// pulls is not known.
    pub(super) whole: f64,
    /// What it would fail by.
    pub(super) by: Decided,
}

impl Outcome {
    /// None where the strength of the arms is not known.
    pub(super) fn of(climb: &Climb) -> Option<Self> {
        let (arms, hands) = (climb.arms_share, climb.hands_share);
        if arms.is_nan() {
            return None;
        }
        if climb.is_stuck() {
            return Some(Self { one: f64::INFINITY, whole: f64::INFINITY, by: Decided::Stroke });
        }
        let lasting = &climb.lasting;
        let mut one = Tightest { strain: arms, by: Decided::Arms };
        one.meet(hands, Decided::Hands);
        let mut whole = one;
        if climb.top.left > 0.0 || climb.top.over_edge < 0.0 {
            whole.meet(f64::INFINITY, Decided::TopOut);
        }
        if lasting.slow {
            whole.meet(f64::INFINITY, Decided::Time);
        }
        whole.meet(lasting.arms, Decided::LastingArms);
        whole.meet(lasting.hands, Decided::LastingHands);
        whole.meet(lasting.power_needed / lasting.power, Decided::Power);
        // What fails at one pull fails at that.
        let by = if one.strain > 1.0 { one.by } else { whole.by };
        Some(Self { one: one.strain, whole: whole.strain, by })
    }
}

/// The greatest of some strains.
#[derive(Clone, Copy)]
struct Tightest {
    strain: f64,
    by: Decided,
}

impl Tightest {
    /// A strain that is not known is none.
    fn meet(&mut self, strain: f64, by: Decided) {
        if strain > self.strain {
            *self = Self { strain, by };
        }
    }
}

/// How all reckoned climbs end.
pub(crate) struct Outcomes {
    pub(super) ends: Vec<Outcome>,
    /// The shares of arms and hands that one pull takes, most likely.
    pub(super) likely: [f64; 2],
    /// Whether the count of pulls is known.
    pub(super) counted: bool,
}

impl Outcomes {
    /// The share of them of which something is true.
    pub(super) fn share(&self, is_true: &dyn Fn(&Outcome) -> bool) -> f64 {
        self.count(is_true) as f64 / self.ends.len().max(1) as f64
    }

    /// How many they are of which something is true.
    pub(super) fn count(&self, is_true: &dyn Fn(&Outcome) -> bool) -> usize {
        self.ends.iter().filter(|end| is_true(end)).count()
    }

    /// How many times the strength a share of them needs for the whole climb; nothing where none is reckoned.
    pub(super) fn strain_of(&self, share: f64) -> f64 {
        let mut strains = Vec::with_capacity(self.ends.len());
        for end in &self.ends {
            strains.push(end.whole);
        }
        let place = ((strains.len() as f64 * share).ceil() as usize).saturating_sub(1);
        ranked(&mut strains, place).unwrap_or(0.0)
    }

    /// What most of the climbs that fail do so by, or what makes the difference to one pull that succeeds; of climbs that
    /// all succeed, what most of them come nearest to failing by.
    pub(super) fn decided(&self, grip_is_entered: bool) -> Decided {
        let succeeds = self.count(&|end| end.whole <= 1.0) == self.ends.len();
        let count = |by| self.count(&|end| end.by == by && (succeeds || end.whole > 1.0));
        let (mut of_many, mut most) = (0, (Decided::Arms, 0));
        for by in [Decided::LastingArms, Decided::LastingHands, Decided::Power, Decided::Time, Decided::TopOut] {
            let by_this = count(by);
            of_many += by_this;
            if by_this > most.1 {
                most = (by, by_this);
            }
        }
        let (of_one, of_none) = (count(Decided::Arms) + count(Decided::Hands), count(Decided::Stroke));
        let [arms, hands] = self.likely;
        let level = |is_true: &dyn Fn(&Outcome) -> bool| Level::of(self.share(is_true));
        // Most likely one pull succeeds, and by it alone they would stand better.
        let one_would_do = arms <= 1.0 && hands <= 1.0 && level(&|end| end.one <= 1.0) < level(&|end| end.whole <= 1.0);
        if of_none > of_one && of_none > of_many {
            Decided::Stroke
        } else if of_many > of_one || of_many > 0 && one_would_do {
            most.0
        } else if arms > 1.0 && hands > 1.0 && grip_is_entered {
            Decided::ArmsAndHands
        } else if hands > arms {
            Decided::Hands
        } else {
            Decided::Arms
        }
    }
}
