//! The law that ties motion to forces: what the hands put in is what the load gains. Motion and forces are worked out
//! by code written apart, so this can fail.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a rig that cannot be made fails the test")]

use boughline::quantity::Length;
use boughline::reeving::{
    BodyKind, Drive, Fault, Forces, Losses, Motion, Part, Phase, Rig, Rope, Span, Stop, What, drop_after, kinematics,
    single_parts, statics,
};

mod rigs;
use rigs::random::{Dice, random_rig};

/// The rig with every rope written from its other end.
fn reversed(rig: &Rig) -> Rig {
    let rope = |rope: &Rope| Rope::new(rope.noun.clone(), rope.stops.iter().rev().cloned().collect());
    Rig::new(rig.bodies().to_vec(), rig.ropes().iter().map(rope).collect()).unwrap()
}

/// The losses of the rig written from the other end.
fn reversed_losses(rig: &Rig, losses: &Losses) -> Losses {
    let mut reversed = Losses { turns: vec![], hitches: vec![] };
    for stop in rig.ropes().iter().flat_map(|rope| rope.stops.iter().rev()) {
        match stop.what {
            What::Turn(number) => reversed.turns.push(losses.turns[number]),
            What::Hitch(number) => reversed.hitches.push(losses.hitches[number]),
            _ => {}
        }
    }
    reversed
}

#[derive(Default, Debug)]
struct Counts {
    /// Drawn at all, also where a carriage had nothing to hang from or nothing on it.
    drawn: u32,
    accepted: u32,
    /// Rigs by how many bodies move: none, the climber, the climber and a carriage, and so on.
    moving: [u32; 5],
    /// With three bodies that ropes are on, tree and climber among them.
    three_bodies: u32,
    several_ropes: u32,
    both_hands: u32,
    sliding: u32,
    /// Rigs of which some part's failure ends in a knot.
    dropping: u32,
    /// Rigs that also work from the other end with losses.
    with_losses: u32,
}

#[test]
fn virtual_work_holds_on_ten_thousand_random_rigs() {
    let counts = virtual_work_on(10_000, Dice(0));
    println!("{counts:?}");
    assert!(counts.drawn <= 3 * counts.accepted, "a third survives: {counts:?}");
    assert!(2 * counts.three_bodies >= counts.accepted, "{counts:?}");
    assert!(2 * (counts.moving[2] + counts.moving[3] + counts.moving[4]) >= counts.accepted, "{counts:?}");
    assert!(counts.dropping > 100, "{counts:?}");
    let often = [counts.several_ropes, counts.both_hands, counts.sliding, counts.moving[3], counts.moving[4]];
    assert!(often.iter().all(|count| *count > 1_000) && 2 * counts.with_losses > counts.accepted, "{counts:?}");
}

/// Other rigs than the quick test's, and many more.
#[test]
#[ignore = "long: pkg-config/prove virtual-work"]
fn prove_virtual_work() {
    println!("{:?}", virtual_work_on(500_000, Dice(1 << 20)));
}

fn virtual_work_on(rigs: u32, mut random: Dice) -> Counts {
    let mut counts = Counts::default();
    while counts.accepted < rigs {
        counts.drawn += 1;
        let Some(rig) = random_rig(&mut random) else { continue };
        let Ok(motion) = kinematics(&rig, &Phase::pull(&rig)) else { continue };
        let help = (1 + random.below(4)) as f64 / 4.0;
        let drive = Drive::Pull(1.0, vec![help; 2]);
        let Ok(forces) = statics(&rig, &motion, &Losses::none(&rig), &drive) else { continue };
        let taut = rig.ropes().iter().zip(&forces.strands).all(|(rope, strands)| {
            strands
                .iter()
                .enumerate()
                .all(|(at, tension)| has_no_length(rope, at) || behind_hand(rope, at) || tension.low > 1e-9)
        });
        if !taut {
            continue;
        }
        counts.accepted += 1;
        let helped = rig.stops().any(|stop| matches!(stop.what, What::Helper(_)));
        counts.count(&rig, helped);
        let climber = rig.body(BodyKind::Climber).unwrap();
        // A helper pulls towards the loose end, which comes last.
        let helpers_take: f64 = rig
            .ropes()
            .iter()
            .zip(&motion.passes)
            .flat_map(|(rope, passes)| rope.stops.iter().zip(passes))
            .filter(|(stop, _)| matches!(stop.what, What::Helper(_)))
            .map(|(_, pass)| pass.in_f64())
            .sum();
        let gained = forces.load.low * motion.rises[climber].in_f64();
        assert!(is_near(gained, 1.0 + help * helpers_take), "{gained} for {help} {helpers_take}: {rig:?}");
        if !helped {
            assert!(is_near(forces.load.low, motion.rope_per_rise.unwrap().in_f64()), "{forces:?} {rig:?}");
        }
        nothing_changes_from_the_other_end(&rig, &motion, &Losses::none(&rig), &drive);
        let mut kept = |count: usize| (0..count).map(|_| (70 + random.below(31)) as f64 / 100.0).collect();
        let none = Losses::none(&rig);
        let losses = Losses { turns: kept(none.turns.len()), hitches: kept(none.hitches.len()) };
        counts.with_losses += u32::from(nothing_changes_from_the_other_end(&rig, &motion, &losses, &drive));
    }
    counts
}

impl Counts {
    fn count(&mut self, rig: &Rig, helped: bool) {
        let moving = rig.bodies().iter().filter(|body| body.moves()).count();
        self.moving[moving] += 1;
        let on = |body: usize| rig.stops().any(|stop| stop.body == Some(body));
        self.three_bodies += u32::from((0..rig.bodies().len()).filter(|&body| on(body)).count() >= 3);
        self.several_ropes += u32::from(rig.ropes().len() > 1);
        self.both_hands += u32::from(helped);
        let slides = |stop: &Stop| matches!(stop.what, What::Hitch(_)) && rig.kind_at(stop) == Some(BodyKind::Climber);
        self.sliding += u32::from(rig.stops().any(slides));
        let drops = |part: Part| drop_after(rig, part).is_some_and(|drop| drop > Length::metres(0.0));
        self.dropping += u32::from(stops(rig).into_iter().any(drops));
    }
}

/// To rounding in sums of some ten terms.
fn is_near(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-11 * one.abs().max(other.abs()).max(1.0)
}

/// A strand to a loose end, or one between stops on one body, which pulls nothing.
fn has_no_length(rope: &Rope, strand: usize) -> bool {
    let (one, other) = (rope.stops[strand].body, rope.stops[strand + 1].body);
    one.is_none() || other.is_none() || one == other
}

/// Beyond the driving hand a rope is slack unless a helper pulls on it.
fn behind_hand(rope: &Rope, strand: usize) -> bool {
    rope.stops.iter().position(|stop| stop.what == What::Hand).is_some_and(|hand| strand >= hand)
}

fn stops(rig: &Rig) -> Vec<Part> {
    let ropes = rig.ropes().iter().enumerate();
    ropes.flat_map(|(rope, stops)| (0..stops.stops.len()).map(move |stop| Part::Stop { rope, stop })).collect()
}

/// Whether the rig, which must do the same from the other end, does anything with these losses.
fn nothing_changes_from_the_other_end(rig: &Rig, motion: &Motion, losses: &Losses, drive: &Drive) -> bool {
    let other = reversed(rig);
    let again = kinematics(&other, &Phase::pull(&other)).unwrap();
    assert_eq!(again.rises, motion.rises);
    assert_eq!(again.rope_per_rise, motion.rope_per_rise);
    let forces = statics(rig, motion, losses, drive);
    let forces_again = statics(&other, &again, &reversed_losses(rig, losses), drive);
    let (forces, forces_again) = match (forces, forces_again) {
        (Ok(forces), Ok(again)) => (forces, again),
        (forces, again) => {
            let kind = |result: Result<Forces, Fault>| result.err().map(|fault| std::mem::discriminant(&fault));
            assert_eq!(kind(forces), kind(again), "{rig:?}");
            return false;
        }
    };
    let alike = |one: &Span, other: &Span| is_near(one.low, other.low) && is_near(one.high, other.high);
    assert!(forces.bodies.iter().zip(&forces_again.bodies).all(|(one, other)| alike(one, other)), "{rig:?}");
    for (strands, again) in forces.strands.iter().zip(&forces_again.strands) {
        assert!(strands.iter().zip(again.iter().rev()).all(|(one, other)| alike(one, other)), "{rig:?}");
    }
    let mirrored = |part: &Part| match *part {
        Part::Stop { rope, stop } => Part::Stop { rope, stop: rig.ropes()[rope].stops.len() - 1 - stop },
        whole @ Part::Rope { .. } => whole,
    };
    let (single, single_again) = (single_parts(rig), single_parts(&other));
    assert_eq!(single.len(), single_again.len());
    assert!(single.iter().all(|part| single_again.contains(&mirrored(part))), "{rig:?}");
    for part in stops(rig) {
        let (drop, again) = (drop_after(rig, part), drop_after(&other, mirrored(&part)));
        assert_eq!(drop.is_some(), again.is_some(), "{part:?} of {rig:?}");
        let metres = |drop: Option<Length>| drop.map_or(0.0, Length::in_metres);
        assert!(is_near(metres(drop), metres(again)), "{part:?} of {rig:?}");
    }
    true
}
