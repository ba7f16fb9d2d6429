//! Single parts against a second implementation: a linear programme of strands, by a general-purpose library.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a rig that cannot be made fails the test")]

use boughline::reeving::{Backup, BodyKind, Part, Rig, RigName, Stop, What, is_held, single_parts};
use microlp::{ComparisonOp, LinearExpr, OptimizationDirection, Problem};

mod rigs;
use rigs::random::{Dice, random_rig};

/// A rope's stops after a loss: whether each still holds, and no stop where a turn has let go.
struct Course {
    stops: Vec<(Stop, bool)>,
    cut: Option<usize>,
}

fn holds(stop: &Stop) -> bool {
    matches!(stop.what, What::Tied | What::Hitch(_) | What::Knot(_))
}

/// Whether some tensions, none negative, balance every body with a load of one, after a loss.
fn is_feasible(rig: &Rig, lost: Option<(usize, usize)>, cut: Option<(usize, usize)>) -> bool {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let mut balances: Vec<LinearExpr> = rig.bodies().iter().map(|_| LinearExpr::empty()).collect();
    for (at, rope) in rig.ropes().iter().enumerate() {
        let mut course =
            Course { stops: Vec::new(), cut: cut.filter(|(rope, _)| *rope == at).map(|(_, strand)| strand) };
        for (place, stop) in rope.stops.iter().enumerate() {
            let gone = lost == Some((at, place));
            if gone && matches!(stop.what, What::Turn(_)) {
                continue;
            }
            // A knot beside a turn on the same body jams there, and nowhere once the turn is gone.
            let beside = |other: usize| {
                let stop = rope.stops.get(other).filter(|_| lost == Some((at, other)));
                stop.is_some_and(|other| matches!(other.what, What::Turn(_)) && other.body == rope.stops[place].body)
            };
            let jams = matches!(stop.what, What::Knot(_)) && (beside(place + 1) || place > 0 && beside(place - 1));
            course.stops.push((stop.clone(), holds(stop) && !gone && !jams));
        }
        let strands: Vec<_> = (1..course.stops.len()).map(|_| problem.add_var(0.0, (0.0, f64::INFINITY))).collect();
        for (place, (_, held)) in course.stops.iter().enumerate() {
            match (place.checked_sub(1).map(|before| strands[before]), strands.get(place).copied()) {
                // An end that nothing holds carries nothing.
                (None, Some(only)) | (Some(only), None) if !held => {
                    problem.add_constraint([(only, 1.0)], ComparisonOp::Eq, 0.0);
                }
                (Some(before), Some(behind)) if !held => {
                    problem.add_constraint([(before, 1.0), (behind, -1.0)], ComparisonOp::Eq, 0.0);
                }
                _ => {}
            }
        }
        if let Some(strand) = course.cut {
            problem.add_constraint([(strands[strand], 1.0)], ComparisonOp::Eq, 0.0);
        }
        for (place, strand) in strands.iter().enumerate() {
            if let (Some(one), Some(other)) = (course.stops[place].0.body, course.stops[place + 1].0.body)
                && one != other
            {
                balances[one.max(other)].add(*strand, 1.0);
                balances[one.min(other)].add(*strand, -1.0);
            }
        }
    }
    for (body, balance) in rig.bodies().iter().zip(balances) {
        match body.kind {
            BodyKind::Carriage => problem.add_constraint(balance, ComparisonOp::Eq, 0.0),
            BodyKind::Climber => problem.add_constraint(balance, ComparisonOp::Eq, 1.0),
            BodyKind::Tree | BodyKind::Ground => {}
        }
    }
    problem.solve().is_ok()
}

/// The single parts by the programme.
fn singles(rig: &Rig) -> Vec<Part> {
    let mut parts = Vec::new();
    for (at, rope) in rig.ropes().iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            if stop.can_fail() && !is_feasible(rig, Some((at, place)), None) {
                parts.push(Part::Stop { rope: at, stop: place });
            }
        }
        if (1..rope.stops.len()).any(|strand| !is_feasible(rig, None, Some((at, strand - 1)))) {
            parts.push(Part::Rope { rope: at });
        }
    }
    parts
}

fn is_backed(rig: &Rig) -> bool {
    rig.stops().any(|stop| stop.backup)
}

#[test]
fn two_thousand_random_rigs_have_the_single_parts_that_a_linear_programme_finds() {
    let (mut dice, mut tried, mut backed, mut not_held) = (Dice(3), 0, 0, 0);
    while tried < 2000 {
        let Some(rig) = random_rig(&mut dice) else { continue };
        // A third of them with a backup.
        let backs = is_backed(&rig);
        if (tried % 3 == 0) != backs {
            continue;
        }
        let feasible = is_feasible(&rig, None, None);
        assert_eq!(is_held(&rig), feasible, "{rig:?}");
        if !feasible {
            not_held += 1;
            continue;
        }
        assert_eq!(single_parts(&rig), singles(&rig), "{rig:?}");
        (tried, backed) = (tried + 1, backed + u32::from(backs));
    }
    assert!(backed >= 666 && not_held > 1000, "{backed} with a backup; {not_held} more that nothing holds");
}

#[test]
fn every_rig_of_the_catalogue_has_the_single_parts_that_a_linear_programme_finds() {
    for name in RigName::CATALOGUE {
        for backup in [Backup::None, Backup::SecondHitch, rigs::knot()] {
            let rig = name.rig(backup).unwrap();
            let feasible = is_feasible(&rig, None, None);
            assert_eq!(is_held(&rig), feasible, "{name:?}");
            if feasible {
                assert_eq!(single_parts(&rig), singles(&rig), "{name:?}");
            }
        }
    }
}

/// A backup takes away single parts and adds none.
#[test]
fn a_backup_never_adds_a_single_part() {
    for name in RigName::CATALOGUE {
        let nouns = |backup| rigs::single_nouns(&name.rig(backup).unwrap());
        let bare = nouns(Backup::None);
        for backup in [Backup::SecondHitch, rigs::knot()] {
            let backed = nouns(backup);
            assert!(backed.iter().all(|noun| bare.contains(noun)), "{name:?}: {backed:?}, without {bare:?}");
        }
    }
}
