//! The climb by the legs, beside the arms': a rope with foot loops and no mechanical advantage.

use super::Level;
use crate::climber::{Legs, Stairs};
use crate::field::Spread;
use crate::gear::PAST_MOST;

/// All-up, of one climber who found it hard, in kilograms (common practice, no source). Whoever is past most ratings is
/// told of them (judged).
pub const HEAVY_CLIMBER: f64 = 172.0;

/// How a climb by the legs stands. Nobody has published what legs drive up a rope, so none is ever within reach.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LegStanding {
    /// Worth a try at knee height.
    WorthATrial,
    /// Something must be found out first.
    FindOut {
        /// Whether they climb a flight of stairs.
        stairs: bool,
        /// Whether the legs lift the whole body.
        lift: bool,
    },
    /// Not likely.
    NotLikely,
}

/// A climb by the legs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LegClimb {
    /// How it stands.
    pub standing: LegStanding,
    /// Whether the climber may be past most ratings.
    pub is_heavy: bool,
}

impl LegClimb {
    /// Where somebody stands with it; none where that must be found out.
    #[must_use]
    pub const fn level(self) -> Option<Level> {
        match self.standing {
            LegStanding::WorthATrial => Some(Level::AtLimit),
            LegStanding::FindOut { .. } => None,
            LegStanding::NotLikely => Some(Level::OutOfReach),
        }
    }
}

/// What legs offer, by the question that climbers ask first; none where they do not move, or nothing is said of them.
pub(super) fn leg_climb(legs: Option<Legs>, stairs: Option<Stairs>, mass: Spread) -> Option<LegClimb> {
    let lift = match legs? {
        Legs::None => return None,
        Legs::Some => true,
        Legs::Full => false,
    };
    let standing = match stairs {
        Some(Stairs::No) => LegStanding::NotLikely,
        Some(Stairs::Yes) if !lift => LegStanding::WorthATrial,
        _ => LegStanding::FindOut { stairs: stairs.is_none(), lift },
    };
    Some(LegClimb { standing, is_heavy: mass.high > PAST_MOST })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stairs_decide_and_weak_legs_ask_for_more() {
        use LegStanding::{FindOut, NotLikely, WorthATrial};
        let standing = |legs, stairs| leg_climb(legs, stairs, Spread::point(80.0)).map(|climb| climb.standing);
        for (legs, stairs, wanted) in [
            (None, Some(Stairs::Yes), None),
            (Some(Legs::None), Some(Stairs::Yes), None),
            (Some(Legs::Some), None, Some(FindOut { stairs: true, lift: true })),
            (Some(Legs::Some), Some(Stairs::Yes), Some(FindOut { stairs: false, lift: true })),
            (Some(Legs::Some), Some(Stairs::No), Some(NotLikely)),
            (Some(Legs::Full), None, Some(FindOut { stairs: true, lift: false })),
            (Some(Legs::Full), Some(Stairs::Yes), Some(WorthATrial)),
            (Some(Legs::Full), Some(Stairs::No), Some(NotLikely)),
        ] {
            assert_eq!(standing(legs, stairs), wanted, "{legs:?} {stairs:?}");
        }
    }

    #[test]
    fn no_legs_are_ever_within_reach() {
        for legs in Legs::ALL {
            for stairs in [None, Some(Stairs::Yes), Some(Stairs::No)] {
                let climb = leg_climb(Some(*legs), stairs, Spread::new(130.0, 139.0, 141.0));
                assert!(climb.is_none_or(|climb| climb.is_heavy && climb.level() != Some(Level::WithinReach)));
            }
        }
        let light = leg_climb(Some(Legs::Full), None, Spread::point(140.0));
        assert!(light.is_some_and(|climb| !climb.is_heavy), "140 kg is not over 140 kg");
    }
}
