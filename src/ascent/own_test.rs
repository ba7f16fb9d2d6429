//! One's own test of a rig, and what it tells of turns.

use super::reeved::{By, Reeved};
use crate::draft::Reader;
use crate::error::{Error, Reason};
use crate::field::Spread;
use crate::gear::TurnKind;
use crate::quantity::{Force, Mass, Ratio};
use crate::reeving::{Fraction, RIG, TEST_MASS, TEST_PULL, What, power_that_gives, raised};

/// One's own test of a rig: one reading, so one power that what its turns keep is raised to.
pub(super) struct OwnTest {
    power: f64,
    /// The kinds of the turns that rope passed.
    kinds: Vec<TurnKind>,
    /// Whether load passed a hitch that slid, whose drag is then in the power.
    dragged: bool,
}

impl OwnTest {
    /// What a test of this rig came to; none where the rig cannot give that, which is noted.
    pub(super) fn read(reader: &mut Reader<'_>, reeved: &Reeved, mass: Mass, force: Force) -> Option<Self> {
        let Reeved { rig, motion, turns, .. } = reeved;
        let measured = mass.weight().in_newtons() / force.in_newtons();
        let mut kept = Vec::new();
        for turn in turns {
            kept.push(turn.kept.likely);
        }
        let Ok(power) = power_that_gives(rig, motion, &kept, measured) else {
            reader.note(Error::of(RIG.row.id, Reason::UnworkableRig));
            return None;
        };
        let Some(power) = power else {
            // A hand on the climber lifts with its own strand, whatever the turns eat.
            let least = if rig.is_hauled() { 0.0 } else { 1.0 };
            let ideal = motion.rope_per_rise.map_or(1.0, Fraction::in_f64);
            let [measured, least, ideal] = [measured, least, ideal].map(Ratio::new);
            reader.note(of_the_test(if turns.is_empty() {
                Reason::TestWithoutTurns
            } else {
                Reason::TestOutOfRange { measured, least, ideal }
            }));
            return None;
        };
        let mut kinds = Vec::new();
        for (at, rope) in rig.ropes().iter().enumerate() {
            for (place, stop) in rope.stops.iter().enumerate() {
                if let What::Turn(number) = stop.what
                    && motion.pass(at, place) != Fraction::from(0)
                    && let Some(turn) = turns.get(number)
                {
                    kinds.push(turn.kind);
                }
            }
        }
        Some(Self { power, kinds, dragged: reeved.drags })
    }

    /// A rig whose turns of the kinds that rope passed in the test keep what they did there.
    pub(super) fn told_of(&self, mut reeved: Reeved) -> Reeved {
        for turn in &mut reeved.turns {
            if self.kinds.contains(&turn.kind) {
                turn.kept = Spread::point(raised(turn.kept.likely, self.power));
                turn.by = By::Test;
            }
        }
        if self.dragged {
            reeved.drags = false;
            reeved.drag = Spread::point(1.0);
        }
        reeved
    }
}

/// What is wrong with both halves of one's own test together.
pub(super) fn of_the_test(reason: Reason) -> Error {
    Error { fields: vec![TEST_MASS.row.id.to_owned(), TEST_PULL.row.id.to_owned()], reason }
}
