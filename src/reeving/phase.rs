//! A phase: which hitches grip, what the driving hand does, and the runs of rope that follow from it.

use super::{BodyKind, Rig, Rope, What};

/// What the driving hand does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HandDoes {
    /// Takes rope in.
    Takes,
    /// Gives rope out under control.
    Gives,
    /// Is not there.
    Off,
}

/// A state of the rig's hitches and hands.
///
/// Gripping is a state, never a second copy of the rig: a gripping hitch holds its place on the rope, a sliding one
/// moves along it and drags.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Phase {
    /// Whether each hitch grips, in the order of [`What::Hitch`]; one that is not named slides.
    pub grips: Vec<bool>,
    /// What the driving hand does.
    pub hand: HandDoes,
    /// Whether knots have run to where they jam.
    pub knots: bool,
}

impl Phase {
    /// The hand takes rope: hitches on carriages grip, those at the climber slide. Those on what does not move grip,
    /// unless somebody on the ground hauls: then they are there to keep what is gained.
    #[must_use]
    pub fn pull(rig: &Rig) -> Self {
        let grip: fn(BodyKind) -> bool =
            if rig.is_hauled() { |kind| kind == BodyKind::Carriage } else { |kind| kind != BodyKind::Climber };
        Self { grips: Self::gripping(rig, false, grip), hand: HandDoes::Takes, knots: false }
    }

    /// The upper hitches are moved up: those at the climber grip.
    #[must_use]
    pub fn reset(rig: &Rig) -> Self {
        Self { grips: Self::gripping(rig, false, |kind| kind != BodyKind::Carriage), hand: HandDoes::Off, knots: false }
    }

    /// Every hitch grips and no hand is on the rope; a backup carries nothing while another hitch holds the climber.
    #[must_use]
    pub fn hold(rig: &Rig) -> Self {
        let backups = !rig.stops().any(|stop| rig.is_main_hitch(stop));
        Self { grips: Self::gripping(rig, backups, |_| true), hand: HandDoes::Off, knots: false }
    }

    /// The hand gives back the rope it took.
    #[must_use]
    pub fn lower(rig: &Rig) -> Self {
        Self { hand: HandDoes::Gives, ..Self::pull(rig) }
    }

    fn gripping(rig: &Rig, backups: bool, on: fn(BodyKind) -> bool) -> Vec<bool> {
        let mut grips = vec![false; rig.hitches];
        for stop in rig.stops() {
            if let What::Hitch(number) = stop.what
                && let Some(grips) = grips.get_mut(number)
            {
                *grips = (backups || !stop.backup) && rig.kind_at(stop).is_some_and(on);
            }
        }
        grips
    }

    /// Whether the rope cannot move past a stop.
    pub(super) fn fixes(&self, what: What) -> bool {
        match what {
            What::Tied => true,
            What::Hitch(number) => self.grips.get(number).copied().unwrap_or(false),
            What::Hand => self.hand != HandDoes::Off,
            What::Knot(_) => self.knots,
            What::Helper(_) | What::Turn(_) | What::Free => false,
        }
    }

    /// The pieces of a rope between neighbouring fixed stops or its ends.
    pub(super) fn runs(&self, rope: &Rope) -> Vec<Run> {
        let mut runs = Vec::new();
        let mut from: Option<(usize, End)> = None;
        for (at, stop) in rope.stops.iter().enumerate() {
            if at > 0 && at + 1 < rope.stops.len() && !self.fixes(stop.what) {
                continue;
            }
            let end = End::of(stop.what);
            if let Some((first, start)) = from {
                runs.push(Run { first, last: at, start, end });
            }
            from = Some((at, end));
        }
        runs
    }
}

/// How a run ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum End {
    /// Tied, or gripped.
    Fixed,
    /// In the driving hand.
    Hand,
    /// Loose.
    Free,
}

impl End {
    fn of(what: What) -> Self {
        match what {
            What::Hand => Self::Hand,
            What::Free => Self::Free,
            _ => Self::Fixed,
        }
    }
}

/// A piece of rope from one fixed stop, or end, to the next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Run {
    /// The stop it starts at.
    pub(super) first: usize,
    /// The stop it ends at.
    pub(super) last: usize,
    /// How it starts.
    pub(super) start: End,
    /// How it ends.
    pub(super) end: End,
}

impl Run {
    /// Whether one end is loose, so that it carries only what a helper's hand puts on it.
    pub(super) fn is_loose(&self) -> bool {
        self.start == End::Free || self.end == End::Free
    }

    /// Whether a helper's hand is on it.
    pub(super) fn is_helped(&self, rope: &Rope) -> bool {
        let inside = rope.stops.get(self.first..=self.last).unwrap_or_default();
        inside.iter().any(|stop| matches!(stop.what, What::Helper(_)))
    }
}
