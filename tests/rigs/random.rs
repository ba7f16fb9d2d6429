//! Random rigs, built so that most of them work.

use boughline::chance::Draws;
use boughline::quantity::Length;
use boughline::reeving::{Body, BodyKind, Rig, Rope, Stop, What};

/// How much a run of unit tension pulls on each body, upward.
fn pulls(run: &[usize], bodies: usize) -> Vec<f64> {
    let mut pulls = vec![0.0; bodies];
    for strand in run.windows(2) {
        pulls[strand[0].max(strand[1])] += 1.0;
        pulls[strand[0].min(strand[1])] -= 1.0;
    }
    pulls
}

/// A random rig with one more run between fixed stops than carriages. The driving run comes first; then each carriage
/// gets a run of its own against what pulls on it by then, and further bodies on it come later. None where that leaves
/// a carriage without a pull, or the climber without a lift.
pub fn random_rig(random: &mut Dice) -> Option<Rig> {
    let carriages = [0, 1, 1, 1, 2, 2, 2, 3, 3, 3][random.below(10)];
    let (climber, ground) = (carriages + 1, carriages + 2);
    let driving = driving_run(random, carriages);
    let mut pulled = pulls(&driving, ground + 1);
    let mut runs = Vec::new();
    let mut waiting: Vec<usize> = (1..=carriages).collect();
    while !waiting.is_empty() {
        let pulled_on: Vec<usize> = waiting.iter().copied().filter(|&body| pulled[body].abs() > 1e-9).collect();
        let own = *pulled_on.get(random.below(pulled_on.len().max(1)))?;
        waiting.retain(|&body| body != own);
        let up = pulled[own] < 0.0;
        // Carriages that are balanced already are left alone; those that wait are balanced later.
        let there = |body: usize| body == 0 || body >= climber || waiting.contains(&body);
        let beyond: Vec<usize> = (0..=ground).filter(|&body| there(body) && (body < own) == up).collect();
        let turn = beyond[random.below(beyond.len())];
        let run = match random.below(4) {
            0 => vec![turn, own],
            1 => vec![own, turn, own],
            2 => vec![turn, own, beyond[random.below(beyond.len())]],
            _ => {
                let back: Vec<usize> = (0..=ground).filter(|&b| there(b) && b != turn && (b > turn) == up).collect();
                let last = back.get(random.below(back.len().max(1))).copied();
                [own, turn].into_iter().chain(last).collect()
            }
        };
        let each = pulls(&run, ground + 1);
        let tension = -pulled[own] / each[own];
        for (sum, each) in pulled.iter_mut().zip(each) {
            *sum += tension * each;
        }
        runs.push(run);
    }
    if pulled[climber] < 1e-9 {
        return None;
    }
    if !runs.is_empty() && random.chance(15) {
        // Any run at all instead of one of these: some still work, and not one carriage after the other.
        let at = random.below(runs.len());
        runs[at] = any_run(random, carriages);
    }
    let mut kinds = vec![BodyKind::Tree];
    kinds.extend(vec![BodyKind::Carriage; carriages]);
    kinds.extend([BodyKind::Climber, BodyKind::Ground]);
    let bodies = kinds.into_iter().map(|kind| Body::new(kind, format!("{kind:?}"))).collect();
    Rig::new(bodies, ropes(random, runs, &driving, climber)).ok()
}

/// The ropes of these runs, which go on from one to the next where they meet at a carriage, and of a helper's.
fn ropes(random: &mut Dice, runs: Vec<Vec<usize>>, driving: &[usize], climber: usize) -> Vec<Rope> {
    let ground = climber + 1;
    let mut ropes: Vec<Vec<Stop>> = Vec::new();
    let ends = |rope: &Vec<Stop>, body: usize| {
        (1..climber).contains(&body)
            && rope.last().is_some_and(|stop| stop.what == What::Tied && stop.body == Some(body))
    };
    for (at, mut run) in runs.into_iter().chain([driving.to_vec()]).enumerate() {
        let drives = at + 1 == climber;
        let mut joined = ropes.iter().position(|rope| ends(rope, run[0]));
        if let (None, false) = (joined, drives) {
            joined = ropes.iter().position(|rope| ends(rope, run[run.len() - 1]));
            if joined.is_some() {
                run.reverse();
            }
        }
        let rope = match joined.filter(|_| random.chance(70)) {
            Some(joined) => {
                ropes[joined].pop();
                ropes[joined].push(Stop::hitch(run[0], "hitch"));
                &mut ropes[joined]
            }
            None => {
                ropes.push(vec![Stop::tied(run[0], "tie")]);
                ropes.last_mut().unwrap()
            }
        };
        for (place, &body) in run.iter().enumerate().skip(1) {
            // It slides while the hand pulls.
            if body == climber && random.chance(30) {
                rope.push(if random.chance(30) {
                    Stop::backup_hitch(body, "backup")
                } else {
                    Stop::hitch(body, "slider")
                });
            }
            if place + 1 < run.len() {
                rope.push(Stop::turn(body, "turn"));
                if random.chance(20) {
                    rope.push(Stop::knot(body, Length::metres(1.0 + random.below(4) as f64), "knot"));
                }
            } else if !drives {
                rope.push(Stop::tied(body, "tie"));
            } else {
                rope.push(Stop::hand(body, "hand"));
                if random.chance(30) && run[place - 1] < body {
                    rope.push(Stop::helper(ground, "helper"));
                }
                rope.push(Stop::free());
            }
        }
    }
    if random.chance(20) {
        // Over the tree to the climber or a carriage.
        let lifted = 1 + random.below(climber);
        ropes.push(vec![
            Stop::tied(lifted, "tie"),
            Stop::turn(0, "crotch"),
            Stop::helper(ground, "helper"),
            Stop::free(),
        ]);
    }
    ropes.into_iter().map(|stops| Rope::new("rope", stops)).collect()
}

/// The bodies of the run that ends in the hand of the climber, or of somebody on the ground; most carriages are on it.
fn driving_run(random: &mut Dice, carriages: usize) -> Vec<usize> {
    let climber = carriages + 1;
    let end = climber + usize::from(random.chance(30));
    let mut run = zigzag(random, end, true, climber);
    for body in 1..=carriages {
        if !run.contains(&body) && random.chance(70) {
            run.push(body);
        }
    }
    run.reverse();
    run
}

/// Bodies that a run visits, up and down in turn.
fn any_run(random: &mut Dice, carriages: usize) -> Vec<usize> {
    let (climber, up) = (carriages + 1, random.chance(50));
    let first = if up { 1 + random.below(climber) } else { random.below(climber) };
    zigzag(random, first, up, climber)
}

fn zigzag(random: &mut Dice, first: usize, mut up: bool, lowest: usize) -> Vec<usize> {
    let mut run = vec![first];
    for _ in 0..=random.below(4) {
        let here = run[run.len() - 1];
        run.push(if up { random.below(here) } else { here + 1 + random.below(lowest - here) });
        up = !up;
    }
    run
}

/// A seeded source of numbers: the same rigs every time.
pub struct Dice(pub u32);

impl Dice {
    pub fn below(&mut self, bound: usize) -> usize {
        self.0 += 1;
        (Draws::sample(self.0).uniform(0) * bound as f64) as usize
    }

    pub fn chance(&mut self, percent: usize) -> bool {
        self.below(100) < percent
    }
}
