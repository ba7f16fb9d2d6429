//! The rig, as far as it does not depend on figures that vary.

use crate::climber::STACK_LENGTH;
use crate::field::{Row, Spread};
use crate::gear::{LOWER_TURNS, TOP_TURN, TurnFields, TurnKind, UPPER_TURNS};
use crate::hitch::HITCH_DRAG;
use crate::reeving::{Balance, BodyKind, Drive, Fraction, Losses, Motion, Rig, RigName, What, tended_hitches};
use std::sync::Arc;

/// A turn of the rig.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TurnFact {
    /// What the rope turns round.
    pub kind: TurnKind,
    /// The share of the tension that is kept.
    pub kept: Spread,
    /// Who says so.
    pub by: By,
}

/// Who says what a turn keeps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum By {
    /// The figures of its kind.
    Kind,
    /// The climber, of this turn.
    Own,
    /// The climber's own test of a rig.
    Test,
}

/// A rig that has been worked out as far as it does not depend on figures that vary.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Reeved {
    pub(crate) name: RigName,
    pub(crate) rig: Arc<Rig>,
    pub(crate) motion: Motion,
    pub(crate) balance: Balance,
    /// What helpers beside the driving hand pull, in newtons.
    pub(crate) help: Vec<f64>,
    /// In the order of the ropes.
    pub(crate) turns: Vec<TurnFact>,
    /// Which turn each is, whatever the rig: the second upper one from the hand draws the same on a 5:1 and a 7:1.
    pub(crate) places: Vec<u32>,
    /// The rope that runs before a knot in the tail catches.
    pub(crate) slack: Spread,
    pub(crate) drag: Spread,
    /// Whether load passes a hitch while it slides, and no test of one's own has that in it. On a haul cord's rig none
    /// does.
    pub(crate) drags: bool,
    /// How far the ropes to the crotch give under the climber, of what one strand of that length would give.
    pub(crate) give: f64,
}

impl Reeved {
    /// Whether a helper on the ground pulls.
    pub(crate) fn is_hauled(&self) -> bool {
        self.rig.is_hauled()
    }

    /// The rope that the hand takes for each metre of rise.
    pub(crate) fn rope_per_rise(&self) -> f64 {
        self.motion.rope_per_rise.map_or(1.0, Fraction::in_f64)
    }

    /// How many turns the upper hitch carries, where there is one that the climber pushes up.
    pub(crate) fn upper_turns(&self) -> Option<usize> {
        self.rig.upper_turns()
    }

    /// The fields that say what its turns and hitches are.
    pub(crate) fn asked(&self) -> Vec<&'static Row> {
        let mut asked: Vec<&'static Row> = Vec::new();
        // Whoever writes a rig down writes its turns down.
        let mut unmet = if self.name == RigName::Own { [&[][..]; 3] } else { fields() };
        for stop in self.rig.stops() {
            if matches!(stop.what, What::Turn(_))
                && let Some(turns) = unmet.get_mut(body_of(self.rig.kind_at(stop)))
                && let Some(nearest) = turns.first()
            {
                asked.push(&nearest.kind.row);
                *turns = &[];
            }
        }
        if self.upper_turns().is_some() {
            asked.push(&STACK_LENGTH.row);
        }
        if self.drags {
            asked.push(&HITCH_DRAG.row);
        }
        asked
    }
}

/// The fields of the turns in the crotch, at the hitches that move, and at harness or foot, each from the hand.
pub(super) fn fields() -> [&'static [TurnFields]; 3] {
    [std::slice::from_ref(&TOP_TURN), &UPPER_TURNS, &LOWER_TURNS]
}

/// Whose place in [`fields`] a body has.
fn body_of(kind: Option<BodyKind>) -> usize {
    match kind {
        Some(BodyKind::Tree) => 0,
        Some(BodyKind::Carriage) => 1,
        _ => 2,
    }
}

/// Which turn each of a rig's is, by its number: whose place in [`fields`] its body has, and how many on it are nearer to
/// the hand.
pub(super) fn places(rig: &Rig) -> Vec<(usize, usize)> {
    let (mut places, mut met) = (Vec::new(), [0; 3]);
    let from_hand = rig.turns_from_hand();
    for _ in &from_hand {
        places.push((0, 0));
    }
    for (rope, at) in from_hand {
        let Some(stop) = rig.ropes().get(rope).and_then(|rope| rope.stops.get(at)) else { continue };
        let body = body_of(rig.kind_at(stop));
        if let (What::Turn(number), Some(met)) = (stop.what, met.get_mut(body))
            && let Some(place) = places.get_mut(number)
        {
            *place = (body, *met);
            *met += 1;
        }
    }
    places
}

/// The number that a turn draws by. Those past the tenth of a body, which only somebody's own rig has, come after all
/// others.
pub(super) fn draw(body: usize, place: usize) -> u32 {
    (if place < 10 { 10 * body + place } else { 1000 + 100 * body + place }) as u32
}

/// Whether load passes a hitch that slides.
pub(super) fn drags(rig: &Rig, motion: &Motion, balance: &Balance) -> bool {
    balance
        .forces(&Losses::none(rig), &Drive::Pull(1.0, Vec::new()))
        .is_ok_and(|forces| !tended_hitches(rig, motion, &forces).is_empty())
}

/// How far the ropes to the crotch give under the climber, of what one strand of that length would give: each in
/// proportion to its tension, and as much as it lets the climber down by.
pub(super) fn give(rig: &Rig, balance: &Balance) -> f64 {
    let Ok(forces) = balance.forces(&Losses::none(rig), &Drive::Pull(1.0, Vec::new())) else { return 1.0 };
    let mut give = 0.0;
    for (rope, spans) in rig.ropes().iter().zip(&forces.strands) {
        for (ends, span) in rope.stops.windows(2).zip(spans) {
            let mut at_the_tree = 0;
            for stop in ends {
                at_the_tree += u32::from(rig.kind_at(stop) == Some(BodyKind::Tree));
            }
            let share = span.high / forces.load.low;
            give += if at_the_tree == 1 { share * share } else { 0.0 };
        }
    }
    give
}
