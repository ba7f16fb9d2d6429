//! A helper on the tail.

use super::{Body, BodyKind, Rig, Stop, What};

impl Rig {
    /// This rig with a helper on the ground who pulls the rope beyond the climber's hands; none where no climber's hand
    /// drives it, or somebody helps already.
    #[must_use]
    pub fn helped_on_the_tail(&self) -> Option<Self> {
        if self.is_hauled() || self.helpers > 0 {
            return None;
        }
        let (mut bodies, mut ropes) = (self.bodies.clone(), self.ropes.clone());
        let ground = self.body(BodyKind::Ground).unwrap_or_else(|| {
            bodies.push(Body::new(BodyKind::Ground, "ground"));
            bodies.len() - 1
        });
        let rope = ropes.iter_mut().find(|rope| rope.stops.iter().any(|stop| stop.what == What::Hand))?;
        let hand = rope.stops.iter().position(|stop| stop.what == What::Hand)?;
        rope.stops.insert(hand + 1, Stop::helper(ground, "helper"));
        Self::new(bodies, ropes).ok()
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Backup, Balance, Drive, Losses, Phase, RigName, kinematics};

    /// On a self-haul of real advantage A a helper's H on the tail leaves (W + H) / A - H to pull: the rope above the hand
    /// carries both pulls, and the climber hangs on their own hand's alone.
    #[test]
    fn a_helper_on_the_tail_pulls_for_the_climber() {
        for name in [RigName::TailThree, RigName::TailFive, RigName::CordThree, RigName::HandOverHand] {
            let rig = name.rig(Backup::None).unwrap();
            let pull = |rig: &super::Rig, helps: Vec<f64>| {
                let motion = kinematics(rig, &Phase::pull(rig)).unwrap();
                let balance = Balance::of(rig, &motion);
                let losses =
                    Losses { turns: Losses::none(rig).turns.iter().map(|_| 0.8).collect(), ..Losses::none(rig) };
                let alone =
                    balance.forces(&losses, &Drive::Pull(1.0, helps.iter().map(|_| 0.0).collect())).unwrap().load.low;
                let helped = balance.forces(&losses, &Drive::Pull(0.0, helps)).map_or(0.0, |forces| forces.load.low);
                (alone, helped)
            };
            let (advantage, _) = pull(&rig, Vec::new());
            let (same, lifted) = pull(&rig.helped_on_the_tail().unwrap(), vec![100.0]);
            assert!((advantage - same).abs() < 1e-12, "{name:?}");
            let (weight, help) = (800.0, 100.0);
            let left = (weight - lifted) / advantage;
            let by_hand = (weight + help) / advantage - help;
            assert!((left - by_hand).abs() < 1e-9, "{name:?}: {left} and {by_hand}");
        }
    }

    #[test]
    fn nobody_helps_a_helper() {
        let hauled = RigName::GroundThree.rig(Backup::None).unwrap();
        assert_eq!(hauled.helped_on_the_tail(), None);
        let helped = RigName::TailThree.rig(Backup::None).unwrap().helped_on_the_tail().unwrap();
        assert_eq!(helped.helped_on_the_tail(), None);
    }
}
