//! Every rig of the catalogue, on either anchor, with every backup and every kind of turn, in every state.

use boughline::gear::TurnKind;
use boughline::quantity::Length;
use boughline::reeving::{
    Backup, BodyKind, Drive, Forces, Losses, Motion, Rig, RigName, Span, State, What, in_state, kinematics,
    made_fast_at_the_foot, statics,
};

const WEIGHT: f64 = 800.0;

/// Each rig of the catalogue with each backup, tied in the crotch and at the foot.
fn rigs() -> Vec<(String, Rig)> {
    let mut rigs = Vec::new();
    for name in RigName::CATALOGUE {
        for backup in [Backup::None, Backup::SecondHitch, Backup::TailKnot { slack: Length::metres(2.0) }] {
            let rig = name.rig(backup).unwrap();
            let foot = made_fast_at_the_foot(&rig).map(Result::unwrap);
            rigs.push((format!("{name:?} {backup:?}"), rig));
            rigs.extend(foot.map(|rig| (format!("{name:?} {backup:?} at the foot"), rig)));
        }
    }
    rigs
}

/// What turns keep: all alike of each kind at each end of its range, and each turn of its own with a bad one among them.
fn kept(turns: usize) -> Vec<Vec<f64>> {
    let alike = TurnKind::ALL.iter().flat_map(|kind| [kind.kept().low, kind.kept().likely, kind.kept().high]);
    let mut all: Vec<Vec<f64>> = alike.chain([1.0]).map(|kept| vec![kept; turns]).collect();
    for bad in 0..turns {
        let mut unlike = vec![TurnKind::BearingPulley.kept().likely; turns];
        unlike[bad] = TurnKind::Bark.kept().low;
        all.push(unlike);
    }
    all
}

/// What the strands at a body pull it up with, taken from the tensions alone: up where the other end is higher.
fn added_up(rig: &Rig, forces: &Forces, body: usize) -> Span {
    let (mut low, mut high) = (0.0, 0.0);
    for (rope, strands) in rig.ropes().iter().zip(&forces.strands) {
        for (pair, tension) in rope.stops.windows(2).zip(strands) {
            for (here, there) in [(&pair[0], &pair[1]), (&pair[1], &pair[0])] {
                match (here.body, there.body) {
                    (Some(here), Some(there)) if here == body && there < body => {
                        low += tension.low;
                        high += tension.high;
                    }
                    (Some(here), Some(there)) if here == body && there > body => {
                        low -= tension.high;
                        high -= tension.low;
                    }
                    _ => {}
                }
            }
        }
    }
    Span { low, high }
}

/// Every tension is there and pulls; every body is in balance; at no turn is more lost than it loses.
fn assert_balanced(told: &str, rig: &Rig, motion: &Motion, losses: &Losses, forces: &Forces) {
    let near = WEIGHT * 20.0 * 1e-9;
    for (rope, strands) in rig.ropes().iter().zip(&forces.strands) {
        assert_eq!(strands.len() + 1, rope.stops.len(), "{told}");
        for tension in strands {
            assert!(
                tension.low >= -near && tension.low <= tension.high && tension.high.is_finite(),
                "{told}: {tension:?}"
            );
        }
    }
    for (body, pulled) in forces.bodies.iter().enumerate() {
        let added = added_up(rig, forces, body);
        assert!(added.low <= pulled.low + near && pulled.high <= added.high + near, "{told}: {pulled:?} {added:?}");
        if rig.bodies()[body].kind == BodyKind::Carriage {
            assert!(pulled.low.abs() < near && pulled.high.abs() < near, "{told}: a carriage is pulled by {pulled:?}");
        }
    }
    for (at, rope) in rig.ropes().iter().enumerate() {
        for (place, stop) in rope.stops.iter().enumerate() {
            let What::Turn(number) = stop.what else { continue };
            let (before, behind) = (forces.strands[at][place - 1], forces.strands[at][place]);
            let (slack, taut) = (before.high.min(behind.high), before.high.max(behind.high));
            assert!(slack >= taut * losses.turns[number] - near, "{told}: {slack} of {taut} at turn {number}");
            let runs = motion.passes[at][place].in_f64() != 0.0;
            let wraps = slack < taut - near;
            assert!(
                !runs || !wraps || (slack - taut * losses.turns[number]).abs() < near,
                "{told}: {slack} of {taut} at turn {number}"
            );
        }
    }
}

/// Friction helps whoever holds and lets down, and hinders whoever pulls: hold <= still and without friction <= pull.
#[test]
fn every_rig_in_every_state_is_refused_or_in_balance_and_friction_is_on_its_side() {
    let (mut solved, mut refused) = (0, 0);
    for (name, rig) in rigs() {
        for state in State::ALL {
            let Ok((moved, phase)) = in_state(&rig, *state) else {
                refused += 1;
                continue;
            };
            let motion = kinematics(&moved, &phase).unwrap();
            let of = |losses: &Losses, drive: &Drive| statics(&moved, &motion, losses, drive);
            let perfect = Losses::none(&moved);
            for turns in kept(perfect.turns.len()) {
                let told = format!("{name} {state:?} {turns:?}");
                let mut losses = Losses::none(&moved);
                losses.turns.clone_from(&turns);
                if *state == State::Resting {
                    let forces = of(&losses, &Drive::Load(WEIGHT)).expect(&told);
                    assert_balanced(&told, &moved, &motion, &losses, &forces);
                } else {
                    let unit = |losses| of(losses, &Drive::Pull(1.0, Vec::new())).expect(&told).load;
                    let (lossy, ideal) = (unit(&losses), unit(&perfect));
                    assert!((ideal.low - ideal.low.round()).abs() < 1e-9 && ideal.low >= 1.0, "{told}: {ideal:?}");
                    let efficiency = lossy.low / ideal.low;
                    if *state == State::Lowered {
                        assert!(efficiency >= 1.0 - 1e-12 && efficiency.is_finite(), "{told}: {efficiency}");
                    } else {
                        assert!(efficiency > 0.0 && efficiency <= 1.0 + 1e-12, "{told}: {efficiency}");
                    }
                    let forces = of(&losses, &Drive::Pull(WEIGHT / lossy.low, Vec::new())).expect(&told);
                    assert!((forces.load.low - WEIGHT).abs() < 1e-6, "{told}: {:?}", forces.load);
                    assert_balanced(&told, &moved, &motion, &losses, &forces);
                }
                solved += 1;
            }
        }
    }
    println!("{solved} solved, {refused} states refused with a reason");
    assert!(solved > 3_000 && refused > 50, "{solved} {refused}");
}
