//! What the hand below the brake holds.

use crate::chance::Pick;
use crate::climber::{AGE, Arms, GLOVES, GRIP_LEFT, GRIP_RIGHT, Gloves, Grip, Hold, Norm, SEX, STATURE, TRUNK, Trunk};
use crate::draft::Reader;
use crate::quantity::{Force, Mass};

/// What a hand is usually taken to hold on a rope, in newtons; the largest hand is about three times the smallest.
///
/// # Source
/// 50 lbf: BMC, Summit 90.
pub const USUAL_HAND: f64 = 222.0;

/// The draws of this storey begin here.
const HOLDS: u32 = 6000;
const NORM: u32 = 6001;

/// What is known of the hands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hand {
    grip: Option<Grip>,
    norm: Option<Norm>,
    gloves: Gloves,
}

impl Hand {
    /// What is said of them. After an injury at the neck nothing is foretold from age and sex.
    pub(crate) fn read(reader: &mut Reader<'_>, body_mass: Option<Mass>) -> Option<Self> {
        let newtons = |force: Force| force.in_newtons();
        let (left, right) = (reader.maybe(&GRIP_LEFT).map(newtons), reader.maybe(&GRIP_RIGHT).map(newtons));
        let (age, sex, stature) = (reader.maybe(&AGE), reader.maybe(&SEX), reader.maybe(&STATURE));
        let (gloves, trunk) = (reader.chosen(&GLOVES), reader.chosen(&TRUNK)?);
        let known = age.zip(sex).filter(|_| trunk != Trunk::Cervical).zip(body_mass);
        let norm = known.map(|((age, sex), body_mass)| Norm { sex, age, stature, body_mass });
        Some(Self { grip: Grip::of(left, right), norm, gloves: gloves? })
    }

    /// Whether its grip was measured.
    #[must_use]
    pub const fn is_measured(&self) -> bool {
        self.grip.is_some()
    }

    /// What the weaker hand holds on bare rope, in newtons; none where nothing tells.
    #[must_use]
    pub fn holds(&self, pick: &dyn Pick) -> Option<f64> {
        let grip = match (self.grip, self.norm) {
            (Some(grip), _) => grip,
            (_, norm) => Grip::combined(norm?.combined_grip(pick.deviations(NORM))),
        };
        Some(grip.used(Arms::One) * pick.of(HOLDS, Hold::BareRope.over_grip(self.gloves)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::chance::Likely;

    /// By hand: 360 N of grip in the weaker hand, three quarters of it on bare rope, 0.64 of that in smooth gloves.
    #[test]
    fn the_weaker_hand_counts_and_smooth_gloves_take_from_it() {
        let grip = Grip::of(None, Some(400.0));
        let holds = |gloves| Hand { grip, norm: None, gloves }.holds(&Likely).unwrap();
        assert!((holds(Gloves::None) - 270.0).abs() < 1e-9);
        assert!((holds(Gloves::Slick) - 172.8).abs() < 1e-9);
    }
}
