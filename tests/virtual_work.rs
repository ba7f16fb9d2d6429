//! The law that ties motion to forces: what the hands put in is what the load gains. Motion and forces are worked out
//! by code written apart, so this can fail.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a rig that cannot be made fails the test")]

use boughline::chance::Draws;
use boughline::reeving::{
    Body, BodyKind, Drive, Fraction, Losses, Phase, Rig, Rope, Stop, What, kinematics, single_parts, statics,
};

/// A random rig with one more run between fixed stops than carriages: most of them cannot work.
fn random_rig(random: &mut Dice) -> Option<Rig> {
    let carriages = [0, 1, 1, 1, 2, 2, 2, 3, 3, 3][random.below(10)];
    let (climber, ground) = (carriages + 1, carriages + 2);
    let mut kinds = vec![BodyKind::Tree];
    kinds.extend(vec![BodyKind::Carriage; carriages]);
    kinds.extend([BodyKind::Climber, BodyKind::Ground]);
    let bodies: Vec<Body> = kinds.into_iter().map(|kind| Body::new(kind, format!("{kind:?}"))).collect();
    let runs: Vec<Vec<usize>> = (0..=carriages).map(|_| path(random, carriages)).collect();
    // What a carriage hangs from and what hangs from it: without either it is no carriage.
    let strands = || runs.iter().flat_map(|run| run.windows(2));
    let hangs = |body: usize| strands().any(|s| s.contains(&body) && *s.iter().min().unwrap() < body);
    let bears = |body: usize| strands().any(|s| s.contains(&body) && *s.iter().max().unwrap() > body);
    if !(1..=carriages).all(|body| hangs(body) && bears(body)) || !hangs(climber) {
        return None;
    }
    let mut ropes: Vec<Vec<Stop>> = Vec::new();
    for (at, run) in runs.iter().enumerate() {
        let (first, last) = (run[0], run[run.len() - 1]);
        let inner = run[1..run.len() - 1].iter().map(|&body| Stop::turn(body, "turn"));
        // A run goes on along the rope before it where that ends on the same carriage, which then grips the rope.
        let joins = ropes.last().and_then(|rope| rope.last()).and_then(|stop| stop.body);
        if joins == Some(first) && (1..=carriages).contains(&first) && random.chance(50) {
            let rope = ropes.last_mut().unwrap();
            rope.pop();
            rope.push(Stop::hitch(first, "hitch"));
            rope.extend(inner);
        } else {
            ropes.push(std::iter::once(Stop::tied(first, "tie")).chain(inner).collect());
        }
        let rope = ropes.last_mut().unwrap();
        if at == carriages {
            if last != climber && last != ground {
                return None;
            }
            rope.push(Stop::hand(last, "hand"));
            if random.chance(30) && run[run.len() - 2] < last {
                rope.push(Stop::hand(ground, "helper"));
            }
            rope.push(Stop::free());
        } else {
            rope.push(Stop::tied(last, "tie"));
        }
    }
    if random.chance(20) {
        // A helper on a rope of their own, over the tree to the climber or a carriage. Hands count along the ropes,
        // so it comes after the driving hand.
        let lifted = 1 + random.below(climber);
        ropes.push(vec![
            Stop::tied(lifted, "tie"),
            Stop::turn(0, "crotch"),
            Stop::hand(ground, "helper"),
            Stop::free(),
        ]);
    }
    let ropes = ropes.into_iter().map(|stops| Rope::new("rope", stops)).collect();
    Rig::new(bodies, ropes).ok()
}

/// Bodies that a run visits, up and down in turn.
fn path(random: &mut Dice, carriages: usize) -> Vec<usize> {
    let climber = carriages + 1;
    let strands = 1 + random.below(4);
    let mut up = random.chance(50);
    let mut path = vec![if up { 1 + random.below(climber) } else { random.below(carriages + 1) }];
    for _ in 0..strands {
        let here = path[path.len() - 1];
        let next = if up { random.below(here) } else { here + 1 + random.below(climber + 1 - here) };
        path.push(next);
        up = !up;
    }
    path
}

/// A seeded source of numbers: the same rigs every time.
struct Dice(u32);

impl Dice {
    fn below(&mut self, bound: usize) -> usize {
        self.0 += 1;
        (Draws::sample(self.0).uniform(0) * bound as f64) as usize
    }

    fn chance(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }
}

/// The rig with every rope written from its other end.
fn reversed(rig: &Rig) -> Rig {
    let rope = |rope: &Rope| Rope::new(rope.noun.clone(), rope.stops.iter().rev().cloned().collect());
    Rig::new(rig.bodies().to_vec(), rig.ropes().iter().map(rope).collect()).unwrap()
}

#[derive(Default, Debug)]
struct Counts {
    /// Drawn at all, also where a carriage had nothing to hang from or nothing on it.
    drawn: u32,
    /// Rigs that could be tried.
    made: u32,
    accepted: u32,
    three_bodies: u32,
    several_ropes: u32,
    both_hands: u32,
}

#[test]
fn virtual_work_holds_on_ten_thousand_random_rigs() {
    let counts = virtual_work_on(10_000, Dice(0));
    println!("{counts:?}");
    assert!(counts.made <= 3 * counts.accepted, "a third survives: {counts:?}");
    assert!(2 * counts.three_bodies >= counts.accepted, "{counts:?}");
    assert!(counts.several_ropes > 1_000 && counts.both_hands > 1_000, "{counts:?}");
}

/// Other rigs than the quick test's, and many more.
#[test]
#[ignore = "long: pkg-config/prove virtual-work"]
fn prove_virtual_work() {
    println!("{:?}", virtual_work_on(2_000_000, Dice(1 << 20)));
}

fn virtual_work_on(rigs: u32, mut random: Dice) -> Counts {
    let mut counts = Counts::default();
    while counts.accepted < rigs {
        counts.drawn += 1;
        let Some(rig) = random_rig(&mut random) else { continue };
        counts.made += 1;
        let phase = Phase::pull(&rig);
        let Ok(motion) = kinematics(&rig, &phase) else { continue };
        let help = Fraction::new(1 + random.below(4) as i64, 4).unwrap();
        let losses = Losses::none(&rig);
        let Ok(forces) = statics(&rig, &phase, &motion, &losses, &Drive::Pull(Fraction::ONE, vec![help])) else {
            continue;
        };
        let loose =
            |rope: &Rope, strand: usize| rope.stops[strand].body.is_none() || rope.stops[strand + 1].body.is_none();
        let taut = rig.ropes().iter().zip(&forces.strands).all(|(rope, strands)| {
            strands
                .iter()
                .enumerate()
                .all(|(at, tension)| loose(rope, at) || tension.low > Fraction::ZERO || behind_hand(rope, at))
        });
        if !taut {
            continue;
        }
        counts.accepted += 1;
        let hands = rig.stops().filter(|stop| matches!(stop.what, What::Hand(_))).count();
        // Bodies that a rope touches, the ground left out.
        let touched = (0..rig.bodies().len() - 1).filter(|&at| rig.stops().any(|stop| stop.body == Some(at))).count();
        counts.three_bodies += u32::from(touched >= 3);
        counts.several_ropes += u32::from(rig.ropes().len() > 1);
        counts.both_hands += u32::from(hands > 1);

        let climber = rig.body(BodyKind::Climber).unwrap();
        let helper_takes: Fraction = rig
            .ropes()
            .iter()
            .zip(&motion.passes)
            .flat_map(|(rope, passes)| rope.stops.iter().zip(passes))
            .filter(|(stop, _)| matches!(stop.what, What::Hand(number) if number > 0))
            .map(|(_, pass)| *pass)
            .fold(Fraction::ZERO, |sum, pass| sum + pass);
        let gained = forces.load.low * motion.rises[climber];
        assert_eq!(gained, Fraction::ONE + help * helper_takes, "{rig:?}");
        if hands == 1 {
            assert_eq!(Some(forces.load.low), motion.rope_per_rise, "{rig:?}");
        }
        nothing_changes_from_the_other_end(&rig, &motion, &forces, help);
    }
    counts
}

/// Beyond the driving hand a rope is slack unless a helper pulls on it.
fn behind_hand(rope: &Rope, strand: usize) -> bool {
    rope.stops.iter().position(|stop| stop.what == What::Hand(0)).is_some_and(|hand| strand >= hand)
}

fn nothing_changes_from_the_other_end(
    rig: &Rig,
    motion: &boughline::reeving::Motion,
    forces: &boughline::reeving::Forces<Fraction>,
    help: Fraction,
) {
    let other = reversed(rig);
    let hands = |rope: &Rope| rope.stops.iter().filter(|stop| matches!(stop.what, What::Hand(_))).count();
    if rig.ropes().iter().any(|rope| hands(rope) > 1) {
        // Hands are numbered along the ropes: from the other end the helper would drive.
        return;
    }
    let phase = Phase::pull(&other);
    let again = kinematics(&other, &phase).unwrap();
    assert_eq!(again.rises, motion.rises);
    let forces_again =
        statics(&other, &phase, &again, &Losses::none(&other), &Drive::Pull(Fraction::ONE, vec![help])).unwrap();
    assert_eq!(forces_again.bodies, forces.bodies);
    for (strands, before) in forces_again.strands.iter().zip(&forces.strands) {
        assert!(strands.iter().rev().eq(before.iter()));
    }
    assert_eq!(single_parts(&other).len(), single_parts(rig).len());
}
