//! The advantage of each rig, derived by hand.

use super::*;
use boughline::reeving::{Losses, Phase};

/// Something worked out from a row of ratios.
pub type Of<T> = Box<dyn Fn(&[f64]) -> T>;

/// A rig, the losses it takes out of a row of ratios, and what one unit of pull lifts, derived by hand.
pub struct Hand {
    pub name: &'static str,
    pub rig: Rig,
    pub phase: fn(&Rig) -> Phase,
    pub losses: Of<Losses>,
    pub advantage: Of<f64>,
    pub ideal: i64,
}

// A row of ratios is read as: h (drag of the sliding hitch), e (the crotch), then p1, q1, p2, q2, p3, q3: the upper
// and lower turns, numbered from the hand.
fn h(r: &[f64]) -> f64 {
    r[0]
}
fn e(r: &[f64]) -> f64 {
    r[1]
}
fn p(r: &[f64], number: usize) -> f64 {
    r[2 * number]
}
fn q(r: &[f64], number: usize) -> f64 {
    r[2 * number + 1]
}

fn row(
    name: &'static str,
    rig: Rig,
    ideal: i64,
    turns: impl Fn(&[f64]) -> Vec<f64> + 'static,
    hitches: impl Fn(&[f64]) -> Vec<f64> + 'static,
    advantage: impl Fn(&[f64]) -> f64 + 'static,
) -> Hand {
    let losses = move |r: &[f64]| Losses { turns: turns(r), hitches: hitches(r) };
    Hand { name, rig, phase: Phase::pull, losses: Box::new(losses), advantage: Box::new(advantage), ideal }
}

/// Every rig with its advantage, derived by hand from the rule quoted in `reeving.rs`.
pub fn hand_derived() -> Vec<Hand> {
    let tied = Stop::tied;
    let lower = |n: usize| (1..=n).rev();
    // Turns are numbered along the rope, which starts at the end away from the hand.
    let pairs = move |n: usize| move |r: &[f64]| lower(n).flat_map(|i| [q(r, i), p(r, i)]).collect::<Vec<f64>>();
    let grip_and_drag = |r: &[f64]| vec![1.0, h(r)];
    let grip_only = |_: &[f64]| vec![1.0, 1.0];
    let up = |n: usize| (0..n).flat_map(|_| [Stop::turn(2, "lower turn"), Stop::turn(1, "upper turn")]);
    let hand = || [Stop::hand(2, "hands"), Stop::free()];
    let cord = |start: Vec<Stop>, n: usize| haul_cord(start.into_iter().chain(up(n)).chain(hand()).collect());
    let upper = || Stop::turn(1, "upper turn");
    vec![
        row(
            "hand over hand",
            two_bodies(vec![tied(TREE, "anchor"), Stop::hand(1, "hands"), Stop::hitch(1, "hitch"), Stop::free()]),
            1,
            |_| vec![],
            |r| vec![h(r)],
            |_| 1.0,
        ),
        row("moving rope", moving_rope(), 2, |r| vec![e(r)], |r| vec![h(r)], |r| 1.0 + e(r)),
        row(
            "moving rope through a tending pulley",
            moving_rope_with_tending_pulley(),
            2,
            |r| vec![e(r), q(r, 1)],
            |r| vec![h(r)],
            |r| h(r) * q(r, 1) * (1.0 + e(r)),
        ),
        // The pulley wraps nothing: the rope comes from above, past the hitch, and goes on down. Up e and 1, down 1.
        row("moving rope from the ground", moving_rope_from_the_ground(), 1, |r| vec![e(r), q(r, 1)], |_| vec![1.0], e),
        row("tail 3:1", tail(1), 3, pairs(1), grip_and_drag, |r| 1.0 + p(r, 1) + p(r, 1) * q(r, 1) * h(r)),
        // The hand gives rope: what it holds is the least, and every turn and the hitch help it.
        Hand {
            phase: Phase::lower,
            ..row("tail 3:1 lowered", tail(1), 3, pairs(1), grip_and_drag, |r| {
                1.0 + 1.0 / p(r, 1) + 1.0 / (p(r, 1) * q(r, 1) * h(r))
            })
        },
        row("tail 5:1", tail(2), 5, pairs(2), grip_and_drag, |r| {
            let (p1, q1, p2, q2) = (p(r, 1), q(r, 1), p(r, 2), q(r, 2));
            1.0 + p1 + p1 * q1 + p1 * q1 * p2 + p1 * q1 * p2 * q2 * h(r)
        }),
        row("tail 7:1", tail(3), 7, pairs(3), grip_and_drag, |r| {
            let (p1, q1, p2, q2, p3, q3) = (p(r, 1), q(r, 1), p(r, 2), q(r, 2), p(r, 3), q(r, 3));
            let third = p1 * q1 * p2 * q2;
            1.0 + p1 + p1 * q1 + p1 * q1 * p2 + third + third * p3 + third * p3 * q3 * h(r)
        }),
        row(
            "haul cord 2:1",
            cord(vec![tied(2, "tie"), upper()], 0),
            2,
            |r| vec![p(r, 1)],
            grip_only,
            |r| 1.0 + p(r, 1),
        ),
        row("haul cord 3:1", cord(vec![tied(1, "tie")], 1), 3, pairs(1), grip_only, |r| {
            1.0 + p(r, 1) + p(r, 1) * q(r, 1)
        }),
        row(
            "haul cord 4:1",
            cord(vec![tied(2, "tie"), upper()], 1),
            4,
            |r| vec![p(r, 2), q(r, 1), p(r, 1)],
            grip_only,
            |r| 1.0 + p(r, 1) + p(r, 1) * q(r, 1) + p(r, 1) * q(r, 1) * p(r, 2),
        ),
        row("haul cord 5:1", cord(vec![tied(1, "tie")], 2), 5, pairs(2), grip_only, |r| {
            let (p1, q1, p2, q2) = (p(r, 1), q(r, 1), p(r, 2), q(r, 2));
            1.0 + p1 + p1 * q1 + p1 * q1 * p2 + p1 * q1 * p2 * q2
        }),
        row("ground 1:1", ground(0, 0), 1, |r| vec![e(r)], |_| vec![], e),
        row(
            "ground 3:1",
            ground(1, 1),
            3,
            |r| vec![e(r), q(r, 1), p(r, 1)],
            |_| vec![1.0],
            |r| e(r) * (1.0 + p(r, 1) + p(r, 1) * q(r, 1)),
        ),
        Hand {
            phase: Phase::lower,
            ..row(
                "ground 3:1 lowered",
                ground(1, 1),
                3,
                |r| vec![e(r), q(r, 1), p(r, 1)],
                |_| vec![1.0],
                |r| (1.0 + 1.0 / p(r, 1) + 1.0 / (p(r, 1) * q(r, 1))) / e(r),
            )
        },
        row(
            "ground 5:1",
            ground(1, 2),
            5,
            |r| vec![e(r), q(r, 2), p(r, 2), q(r, 1), p(r, 1)],
            |_| vec![1.0],
            |r| {
                let (p1, q1, p2, q2) = (p(r, 1), q(r, 1), p(r, 2), q(r, 2));
                e(r) * (1.0 + p1 + p1 * q1 + p1 * q1 * p2 + p1 * q1 * p2 * q2)
            },
        ),
        row(
            "ground 9:1",
            ground(2, 1),
            9,
            |r| vec![e(r), q(r, 2), p(r, 2), q(r, 1), p(r, 1)],
            |_| vec![1.0, 1.0],
            |r| e(r) * (1.0 + p(r, 1) + p(r, 1) * q(r, 1)) * (1.0 + p(r, 2) + p(r, 2) * q(r, 2)),
        ),
        row(
            "tail 3:1 on a base anchor",
            on_base_anchor(),
            3,
            |r| vec![e(r), q(r, 1), p(r, 1)],
            grip_and_drag,
            |r| 1.0 + p(r, 1) + p(r, 1) * q(r, 1) * h(r),
        ),
    ]
}
