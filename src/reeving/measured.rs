//! Feeding back one's own test: what the turns must keep for the rig to give the advantage that was measured.

use super::{Balance, Drive, Fault, Losses, Motion, Number, Rig, What};
use crate::field::{Field, Kind, Limits, Row};
use crate::float;
use crate::quantity::{Dimension, Force, KILOGRAM, KILOGRAM_FORCE, Mass, POUND, POUND_FORCE};

/// The power that what every turn keeps is raised to for a rig to give a real advantage to a hand that takes rope.
///
/// One reading and several unknown turns: so the ratio e of each turn that rope passes becomes e^k with the same k, and
/// what the sliding hitch drags is taken to be in the reading.
///
/// # Guarantees
/// With each turn that rope passes [`raised`] to it the rig gives the advantage. None when no power does: where rope
/// passes no turn, where there is not one ratio for each turn, or where the advantage is not between what the rig gives
/// without loss and with every turn keeping a hundredth.
///
/// # Errors
/// A [`Fault`] of the rig's own.
///
/// # Source
/// Geometry. Common practice, no source: a rope-only 3:1 measured at a real advantage of 2.28 to 2.31 comes to
/// 0.737 to 0.750 a turn, hitch drag included.
pub fn power_that_gives(rig: &Rig, motion: &Motion, turns: &[f64], advantage: f64) -> Result<Option<f64>, Fault> {
    let base = Losses { turns: turns.to_vec(), hitches: vec![1.0; rig.hitches] };
    if !base.fit(rig.turns, rig.hitches) {
        return Ok(None);
    }
    // What the best turn that rope passes keeps.
    let mut best: f64 = 0.0;
    let mut passed = vec![false; turns.len()];
    for (at, rope) in rig.ropes.iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            if let What::Turn(number) = stop.what
                && !motion.pass(at, place).is_nought()
                && let (Some(kept), Some(passed)) = (turns.get(number), passed.get_mut(number))
            {
                best = best.max(kept.min(PERFECT));
                *passed = true;
            }
        }
    }
    let balance = Balance::of(rig, motion);
    let given = |power: f64| {
        let mut losses = base.clone();
        for (kept, passed) in losses.turns.iter_mut().zip(&passed) {
            if *passed {
                *kept = raised(*kept, power);
            }
        }
        match balance.forces(&losses, &Drive::Pull(1.0, Vec::new())) {
            Err(Fault::NotMoved) => Ok(0.0),
            forces => forces.map(|forces| forces.load.low),
        }
    };
    let (mut less, mut more) = (0.0, float::ln(LEAST_KEPT) / float::ln(best));
    // What is not a number is not between them either.
    if best <= 0.0 || !(given(more)? <= advantage && advantage <= given(less)?) {
        return Ok(None);
    }
    // Halving an interval of doubles: after 200 steps its ends are neighbours.
    for _ in 0..200 {
        let middle = less + (more - less) / 2.0;
        if given(middle)? >= advantage {
            less = middle;
        } else {
            more = middle;
        }
    }
    Ok(Some(less))
}

/// What a turn keeps, raised to a power.
///
/// # Guarantees
/// At least a hundredth, and what would keep less stops there; a turn said to lose nothing can still account for a loss.
#[must_use]
pub fn raised(kept: f64, power: f64) -> f64 {
    float::exp(power * float::ln(kept.min(PERFECT))).max(LEAST_KEPT)
}

/// A turn said to lose nothing must still be able to account for a loss.
const PERFECT: f64 = 0.999;

/// What a turn keeps at the least (judged: one that keeps less is no turn but a jam).
pub const LEAST_KEPT: f64 = 0.01;

/// The mass lifted in one's own test.
pub static TEST_MASS: Field<Mass> = Field::new(Row {
    id: "testMass",
    noun: "all-up mass in your own test",
    hint: "You and all you carried when you measured the pull of this rig.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Mass,
        least: 5.0,
        most: 310.0,
        example: 90.0,
        likely: None,
        bare: Some([KILOGRAM, POUND]),
    }),
    why: "Up to the heaviest body and kit that are taken.",
    private: true,
});

/// The pull it took in one's own test.
pub static TEST_PULL: Field<Force> = Field::new(Row {
    id: "testPull",
    noun: "pull in your own test",
    hint: "What a luggage scale in the rope at your hand showed while you rose slowly on this rig. A bare number is taken for the kilograms (kgf) or pounds (lbf) that scales show.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Force,
        least: 5.0,
        most: 3100.0,
        example: 380.0,
        likely: None,
        bare: Some([KILOGRAM_FORCE, POUND_FORCE]),
    }),
    why: "Up to the heaviest mass on a rig that helps nothing (geometry).",
    private: true,
});

#[cfg(test)]
mod tests {
    use super::super::{Backup, Phase, catalogue, kinematics};
    use super::*;

    fn kept_at(turns: &[f64], advantage: f64) -> Option<Vec<f64>> {
        let rig = catalogue::tail_three_to_one(Backup::None).unwrap();
        let motion = kinematics(&rig, &Phase::pull(&rig)).unwrap();
        let power = power_that_gives(&rig, &motion, turns, advantage).unwrap()?;
        Some(turns.iter().map(|kept| raised(*kept, power)).collect())
    }

    /// Common practice, no source: 94.3 kg all-up and 400 N; 0.737 to 0.750 a turn, hitch drag included.
    #[test]
    fn one_reported_test_comes_to_0_737_to_0_750_a_turn() {
        let measured = Mass::kilograms(94.3).weight().in_newtons() / 400.0;
        for advantage in [2.28, measured] {
            let kept = kept_at(&[0.9, 0.9], advantage).unwrap();
            assert!((0.7365..0.7505).contains(&kept[0]), "{advantage}: {kept:?}");
            // By hand: 1 + x + x^2 = advantage.
            let by_hand = ((4.0 * advantage - 3.0).sqrt() - 1.0) / 2.0;
            assert!((kept[0] - by_hand).abs() < 1e-12 && (kept[1] - by_hand).abs() < 1e-12);
        }
    }

    #[test]
    fn unlike_turns_are_scaled_by_one_power() {
        let kept = kept_at(&[0.9, 0.55], 2.0).unwrap();
        assert!((float::ln(kept[0]) / float::ln(0.9) - float::ln(kept[1]) / float::ln(0.55)).abs() < 1e-9);
    }

    #[test]
    fn a_reading_that_cannot_be_has_no_losses() {
        assert_eq!(kept_at(&[0.9, 0.9], 3.01), None);
        assert_eq!(kept_at(&[0.9, 0.9], 0.99), None);
        assert_eq!(kept_at(&[0.9, 0.9], f64::NAN), None);
        assert_eq!(kept_at(&[0.9, 0.9], f64::INFINITY), None);
    }

    #[test]
    fn ratios_that_are_not_one_for_each_turn_have_no_losses() {
        for turns in [&[0.9][..], &[0.9; 3], &[0.9, 0.0], &[0.9, f64::NAN], &[]] {
            assert_eq!(kept_at(turns, 2.3), None, "{turns:?}");
        }
    }

    #[test]
    fn every_turn_keeps_a_hundredth_at_the_least() {
        // By hand: turns that keep a hundredth give 1 + 0.01 + 0.0001.
        assert_eq!(kept_at(&[0.9, 0.9], 1.0100), None);
        assert_eq!(kept_at(&[0.9, 0.05], 1.0102).map(|kept| kept[1]), Some(0.01));
        assert!(kept_at(&[0.9, 0.9], 1.0102).is_some_and(|kept| kept.iter().all(|kept| *kept >= 0.01)));
    }
}
