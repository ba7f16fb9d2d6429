//! The stages of a rescue, and how long each takes.

use super::SENSIBLE_SPEED;
use crate::field::Spread;

/// What is done in a stage.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stage {
    /// Somebody sees that the climber hangs still.
    Notice,
    /// The brake at the foot is made ready and its lock undone.
    Unlock,
    /// A haul is rigged on the rope at the foot, to lift the climber off a plain tie.
    RigHaul,
    /// The climber is let down by somebody else.
    Lower,
    /// The climber changes over by themselves.
    ChangeOver,
    /// The climber comes down by themselves.
    ComeDown,
    /// A second rope is put into the tree.
    SetRope,
    /// The rescuer puts on what they need.
    GearUp,
    /// The rescuer climbs to them.
    Climb,
    /// The rescuer takes them over onto their own rope.
    TakeOver,
}

/// How fast a trained rescuer climbs on a rope, in metres a second (judged).
pub const RESCUER_SPEED: Spread = Spread::new(0.04, 0.10, 0.20);

impl Stage {
    /// How long it takes at a height in metres, in seconds.
    ///
    /// # Source
    /// Judged, every one; letting down and coming down at most at 0.5 m/s. Rehearse yours, with a watch.
    #[must_use]
    pub fn time(self, height: f64) -> Spread {
        match self {
            Self::Notice => Spread::new(10.0, 30.0, 120.0),
            Self::Unlock => Spread::new(10.0, 30.0, 90.0),
            Self::RigHaul => Spread::new(120.0, 300.0, 900.0),
            Self::Lower => Spread::new(1.0, 1.0, 3.0).scaled(height / SENSIBLE_SPEED),
            Self::ChangeOver => Spread::new(120.0, 300.0, 900.0),
            Self::ComeDown => Spread::new(1.0, 1.5, 4.0).scaled(height / SENSIBLE_SPEED),
            Self::SetRope => Spread::new(300.0, 900.0, 2400.0),
            Self::GearUp => Spread::new(60.0, 120.0, 300.0),
            Self::Climb => {
                Spread::new(height / RESCUER_SPEED.high, height / RESCUER_SPEED.likely, height / RESCUER_SPEED.low)
            }
            Self::TakeOver => Spread::new(120.0, 240.0, 600.0),
        }
    }
}

/// The time that stages take one after the other, in seconds: each end the sum of those ends.
#[must_use]
pub fn total(stages: &[Stage], height: f64) -> Spread {
    let mut sum = Spread::point(0.0);
    for stage in stages {
        let time = stage.time(height);
        sum = Spread::new(sum.low + time.low, sum.likely + time.likely, sum.high + time.high);
    }
    sum
}

#[cfg(test)]
mod tests {
    use super::*;

    /// By hand, 10 m: 30 to see, 30 to unlock, 20 to let down.
    #[test]
    fn stages_add_up() {
        let whole = total(&[Stage::Notice, Stage::Unlock, Stage::Lower], 10.0);
        assert_eq!(whole, Spread::new(40.0, 80.0, 270.0));
    }

    #[test]
    fn higher_never_takes_less_and_ends_are_in_order() {
        use Stage::*;
        for stage in [Notice, Unlock, RigHaul, Lower, ChangeOver, ComeDown, SetRope, GearUp, Climb, TakeOver] {
            let (low, high) = (stage.time(5.0), stage.time(20.0));
            assert!(low.low <= low.likely && low.likely <= low.high && low.likely <= high.likely, "{stage:?}");
        }
    }
}
