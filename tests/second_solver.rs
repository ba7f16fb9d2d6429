//! Motion and forces against a general-purpose linear solver, assembled anew from the rules.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a rig that cannot be made fails the test"
)]

use boughline::reeving::{
    Backup, BodyKind, Drive, Losses, Motion, Phase, Rig, RigName, Stop, What, kinematics, statics,
};
use nalgebra::{DMatrix, DVector};

mod rigs;
use rigs::random::{Dice, random_rig};
use rigs::solver::{is_wrapped, solved};

/// The rises of all bodies for each metre the hand takes; none where they are not told by the ropes.
fn rises(rig: &Rig, phase: &Phase) -> Option<Vec<f64>> {
    let moving: Vec<usize> = (0..rig.bodies().len()).filter(|&body| rig.bodies()[body].moves()).collect();
    let mut rows: Vec<(Vec<f64>, f64)> = Vec::new();
    for rope in rig.ropes() {
        // Rope between two places that hold it keeps its length, less what the hand takes.
        let (mut row, mut begun, mut taken) = (vec![0.0; rig.bodies().len()], false, 0.0);
        for (at, stop) in rope.stops.iter().enumerate() {
            if at > 0
                && let (Some(one), Some(other)) = (rope.stops[at - 1].body, stop.body)
                && one != other
            {
                row[one.min(other)] += 1.0;
                row[one.max(other)] -= 1.0;
            }
            let hand = stop.what == What::Hand;
            if hand || stop.what == What::Tied || matches!(stop.what, What::Hitch(number) if phase.grips[number]) {
                taken += f64::from(u8::from(hand && begun));
                if begun {
                    rows.push((std::mem::replace(&mut row, vec![0.0; rig.bodies().len()]), -taken));
                }
                // Rope of which the hand took the other side.
                (row, begun, taken) = (vec![0.0; rig.bodies().len()], true, f64::from(u8::from(hand)));
            }
        }
    }
    let matrix = DMatrix::from_fn(rows.len(), moving.len(), |row, column| rows[row].0[moving[column]]);
    let right = DVector::from_fn(rows.len(), |row, _| rows[row].1);
    let svd = matrix.clone().svd(true, true);
    if rows.is_empty() || svd.rank(1e-9) < moving.len() {
        return None;
    }
    let found = svd.solve(&right, 1e-12).ok()?;
    if (&matrix * &found - &right).amax() > 1e-9 {
        return None;
    }
    let mut rises = vec![0.0; rig.bodies().len()];
    for (body, rise) in moving.iter().zip(found.iter()) {
        rises[*body] = *rise;
    }
    Some(rises)
}

fn takes(rig: &Rig) -> Option<(Phase, Motion)> {
    let phase = Phase::pull(rig);
    let motion = kinematics(rig, &phase).ok()?;
    Some((phase, motion))
}

/// Random shares, one where the rope rests on a turn: there the library answers with both ends of a range.
fn losses(rig: &Rig, motion: &Motion, dice: &mut Dice) -> Losses {
    let mut losses = Losses::none(rig);
    for (at, rope) in rig.ropes().iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            let share = 0.3 + 0.7 * dice.below(1000) as f64 / 1000.0;
            if motion.passes[at][place].in_f64() != 0.0 {
                match stop.what {
                    What::Turn(number) if is_wrapped(&rope.stops, place) => losses.turns[number] = share,
                    What::Hitch(number) => losses.hitches[number] = share,
                    _ => {}
                }
            }
        }
    }
    losses
}

fn kept(losses: &Losses) -> impl Fn(&Stop) -> f64 {
    |stop| match stop.what {
        What::Turn(number) => losses.turns[number],
        What::Hitch(number) => losses.hitches[number],
        _ => 1.0,
    }
}

fn agrees(rig: &Rig, dice: &mut Dice) -> bool {
    let Some((phase, motion)) = takes(rig) else { return false };
    let own = rises(rig, &phase).expect("what the library solves has one solution");
    for (body, rise) in own.iter().enumerate() {
        assert!((rise - motion.rises[body].in_f64()).abs() < 1e-9, "{rig:?}: {own:?} {motion:?}");
    }
    let losses = losses(rig, &motion, dice);
    let Ok(forces) = statics(rig, &motion, &losses, &Drive::Pull(1.0, Vec::new())) else { return false };
    let ahead = |rope: usize, stop: usize| motion.passes[rope][stop].in_f64();
    let (tensions, load) = solved(rig, &phase, ahead, kept(&losses)).expect("one solution");
    for (tension, span) in tensions.iter().zip(forces.strands.iter().flatten()) {
        assert!((span.high - span.low).abs() < 1e-9, "nothing rests with a loss here: {rig:?}");
        assert!((tension - span.low).abs() < 1e-7 * tension.abs().max(1.0), "{rig:?}: {tensions:?} {forces:?}");
    }
    assert!((load - forces.load.low).abs() < 1e-7 * load.abs().max(1.0), "{rig:?}");
    true
}

#[test]
fn every_rig_of_the_catalogue_moves_and_pulls_as_a_general_solver_says() {
    let mut dice = Dice(7);
    for name in RigName::CATALOGUE {
        for backup in [Backup::None, Backup::SecondHitch, rigs::knot()] {
            let rig = name.rig(backup).unwrap();
            for _ in 0..20 {
                assert!(agrees(&rig, &mut dice), "{name:?}");
            }
        }
    }
}

#[test]
fn three_thousand_random_rigs_move_and_pull_as_a_general_solver_says() {
    let (mut dice, mut agreed, mut carriages) = (Dice(11), 0, 0);
    while agreed < 3000 {
        if let Some(rig) = random_rig(&mut dice)
            && agrees(&rig, &mut dice)
        {
            agreed += 1;
            carriages += u32::from(rig.body(BodyKind::Carriage).is_some());
        }
    }
    assert!(carriages > 2000, "{carriages}");
}

/// The tensions of lowering are those of hauling with every share turned over, where only turns lose.
#[test]
fn lowering_is_hauling_with_every_share_turned_over() {
    let (mut dice, mut lowered) = (Dice(23), 0);
    let rigs: Vec<Rig> = RigName::CATALOGUE.iter().map(|name| name.rig(Backup::None).unwrap()).collect();
    let random: Vec<Rig> = (0..3000).filter_map(|_| random_rig(&mut dice)).collect();
    for rig in rigs.into_iter().chain(random) {
        let Some((phase, motion)) = takes(&rig) else { continue };
        let mut losses = losses(&rig, &motion, &mut Dice(lowered));
        losses.hitches.fill(1.0);
        let down = kinematics(&rig, &Phase::lower(&rig)).unwrap();
        let Ok(forces) = statics(&rig, &down, &losses, &Drive::Pull(1.0, Vec::new())) else { continue };
        let ahead = |rope: usize, stop: usize| motion.passes[rope][stop].in_f64();
        let over = |stop: &Stop| 1.0 / kept(&losses)(stop);
        let Some((tensions, load)) = solved(&rig, &phase, ahead, over) else { continue };
        for (tension, span) in tensions.iter().zip(forces.strands.iter().flatten()) {
            assert!((tension - span.low).abs() < 1e-7 * tension.abs().max(1.0), "{rig:?}");
        }
        assert!((load - forces.load.low).abs() < 1e-7 * load.abs().max(1.0));
        lowered += 1;
    }
    assert!(lowered > 500, "{lowered}");
}
