//! What a rig takes beyond rope, harness and the hitch that holds the climber.

use crate::ascent::Plan;
use crate::climber::{TO_LAP, reach};
use crate::field::Spread;
use crate::gear::TurnKind;
use crate::quantity::Quantity;
use crate::reeving::{BodyKind, Stop, What};

/// What a rig takes beyond rope, harness and the hitch that holds the climber.
#[derive(Debug, Clone, PartialEq)]
pub struct Kit {
    /// How many turns of each kind; bark is no kit.
    pub turns: Vec<(TurnKind, usize)>,
    /// How many more hitches.
    pub hitches: usize,
    /// How many haul cords.
    pub cords: usize,
    /// The length of haul cord in all, in metres; none where there is none, or the reach is not known.
    pub cord: Option<Spread>,
}

/// What a tie takes, in metres (judged).
const TIE: Spread = Spread::new(0.2, 0.3, 0.4);
/// How far off the reach of one in twenty is, in metres: 41 mm of standard deviation, see [`reach`].
const OFF: f64 = 1.645 * TO_LAP.2;

impl Kit {
    pub(super) fn of(plan: &Plan) -> Self {
        let rig = &plan.rig.rig;
        let mut kit = Self { turns: Vec::new(), hitches: 0, cords: 0, cord: None };
        for turn in &plan.rig.turns {
            if turn.kind != TurnKind::Bark {
                match kit.turns.iter_mut().find(|(kind, _)| *kind == turn.kind) {
                    Some((_, count)) => *count += 1,
                    None => kit.turns.push((turn.kind, 1)),
                }
            }
        }
        let mut holds = false;
        for stop in rig.stops() {
            if matches!(stop.what, What::Hitch(_)) {
                // The first at the harness is the one that holds the climber.
                let first = !holds && rig.kind_at(stop) == Some(BodyKind::Climber);
                holds |= first;
                kit.hitches += usize::from(!first);
            }
        }
        // A rope that touches neither tree nor ground is a cord between harness and upper hitch, each strand as long as
        // the reach from the lap.
        let (mut strands, mut ties) = (0.0, 0.0);
        let far = |stop: &Stop| matches!(rig.kind_at(stop), Some(BodyKind::Tree | BodyKind::Ground));
        for rope in rig.ropes().iter().filter(|rope| !rope.stops.iter().any(far)) {
            kit.cords += 1;
            let mut from = None;
            for stop in &rope.stops {
                strands += f64::from(u8::from(from.is_some() && stop.body.is_some() && from != stop.body));
                ties += f64::from(u8::from(stop.what == What::Tied));
                from = stop.body;
            }
        }
        if let Some(stature) = plan.stature
            && kit.cords > 0
        {
            let lap = reach(stature.si(), 0.0).to_lap;
            // A second tie stands for the knot that the hand meets at the end.
            let long = |lap: f64, tie: f64| strands * lap + (ties + kit.cords as f64) * tie;
            kit.cord = Some(Spread::new(long(lap - OFF, TIE.low), long(lap, TIE.likely), long(lap + OFF, TIE.high)));
        }
        kit
    }

    /// What tells the lesser kit: fewer turns, then fewer hitches, then fewer cords.
    #[must_use]
    pub fn key(&self) -> (usize, usize, usize) {
        (self.count(), self.hitches, self.cords)
    }

    /// How many turns in all.
    #[must_use]
    pub fn count(&self) -> usize {
        let mut count = 0;
        for (_, each) in &self.turns {
            count += each;
        }
        count
    }
}
