//! Rigs written down stop by stop, with the advantage that each comes to by hand.
#![allow(dead_code, unreachable_pub, reason = "each test file uses some of them")]
#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a rig that cannot be made fails the test")]

use boughline::quantity::Length;
use boughline::reeving::{Backup, Body, BodyKind, Losses, Part, Rig, Rope, Stop, single_parts};

/// Something worked out from a row of ratios.
pub type Of<T> = Box<dyn Fn(&[f64]) -> T>;

/// A rig, the losses it takes out of a row of ratios, and what one unit of pull lifts, derived by hand.
pub struct Hand {
    pub name: &'static str,
    pub rig: Rig,
    pub losses: Of<Losses<f64>>,
    pub advantage: Of<f64>,
    pub ideal: i64,
}

const TREE: usize = 0;

fn bodies(kinds: &[BodyKind]) -> Vec<Body> {
    kinds.iter().map(|&kind| Body::new(kind, format!("{kind:?}").to_lowercase())).collect()
}

/// Tree, one carriage, climber: how every self-haul but hand over hand is made.
fn self_haul(ropes: Vec<Rope>) -> Rig {
    Rig::new(bodies(&[BodyKind::Tree, BodyKind::Carriage, BodyKind::Climber]), ropes).unwrap()
}

fn tail(pairs: usize) -> Rig {
    let mut stops = vec![Stop::tied(TREE, "anchor"), Stop::hitch(1, "upper hitch"), Stop::hitch(2, "lower hitch")];
    for _ in 0..pairs {
        stops.extend([Stop::turn(2, "lower turn"), Stop::turn(1, "upper turn")]);
    }
    stops.extend([Stop::hand(2, "hands"), Stop::free()]);
    self_haul(vec![Rope::new("climbing rope", stops)])
}

fn haul_cord(cord: Vec<Stop>) -> Rig {
    let main =
        vec![Stop::tied(TREE, "anchor"), Stop::hitch(1, "upper hitch"), Stop::hitch(2, "lower hitch"), Stop::free()];
    self_haul(vec![Rope::new("climbing rope", main), Rope::new("haul cord", cord)])
}

/// Tree, travellers, climber, ground: a helper hauls over the crotch.
fn ground(travellers: usize, pairs: usize) -> Rig {
    let mut kinds = vec![BodyKind::Tree];
    kinds.extend(vec![BodyKind::Carriage; travellers]);
    kinds.extend([BodyKind::Climber, BodyKind::Ground]);
    let (climber, ground) = (travellers + 1, travellers + 2);
    let mut stops = vec![Stop::tied(climber, "tie"), Stop::turn(TREE, "crotch")];
    for traveller in 1..=travellers {
        stops.push(Stop::hitch(traveller, "traveller"));
        for _ in 0..pairs {
            stops.extend([Stop::turn(ground, "ground turn"), Stop::turn(traveller, "traveller's turn")]);
        }
    }
    stops.extend([Stop::hand(ground, "helper"), Stop::free()]);
    Rig::new(bodies(&kinds), vec![Rope::new("rope", stops)]).unwrap()
}

pub fn ground_three_to_one() -> Rig {
    ground(1, 1)
}

/// The same self-haul with the rope's end at the foot of the tree, over the crotch.
fn on_base_anchor() -> Rig {
    let stops = vec![
        Stop::tied(3, "foot tie"),
        Stop::turn(TREE, "crotch"),
        Stop::hitch(1, "upper hitch"),
        Stop::hitch(2, "lower hitch"),
        Stop::turn(2, "lower turn"),
        Stop::turn(1, "upper turn"),
        Stop::hand(2, "hands"),
        Stop::free(),
    ];
    let kinds = [BodyKind::Tree, BodyKind::Carriage, BodyKind::Climber, BodyKind::Ground];
    Rig::new(bodies(&kinds), vec![Rope::new("climbing rope", stops)]).unwrap()
}

fn two_bodies(stops: Vec<Stop>) -> Rig {
    Rig::new(bodies(&[BodyKind::Tree, BodyKind::Climber]), vec![Rope::new("climbing rope", stops)]).unwrap()
}

pub fn moving_rope() -> Rig {
    two_bodies(vec![
        Stop::tied(1, "tie"),
        Stop::turn(TREE, "crotch"),
        Stop::hand(1, "hands"),
        Stop::hitch(1, "hitch"),
        Stop::free(),
    ])
}

fn moving_rope_with_tending_pulley() -> Rig {
    two_bodies(vec![
        Stop::tied(1, "tie"),
        Stop::turn(TREE, "crotch"),
        Stop::hitch(1, "hitch"),
        Stop::turn(1, "tending pulley"),
        Stop::hand(1, "hands"),
        Stop::free(),
    ])
}

pub fn base_anchor() -> Rig {
    Rig::new(
        bodies(&[BodyKind::Tree, BodyKind::Climber, BodyKind::Ground]),
        vec![Rope::new(
            "climbing rope",
            vec![Stop::tied(2, "foot tie"), Stop::turn(TREE, "crotch"), Stop::hitch(1, "hitch"), Stop::free()],
        )],
    )
    .unwrap()
}

pub fn over_the_crotch_and_loose() -> Rig {
    two_bodies(vec![Stop::tied(1, "tie"), Stop::turn(TREE, "crotch"), Stop::free()])
}

pub fn tail_three_to_one_with_helper() -> Rig {
    let stops = vec![
        Stop::tied(TREE, "anchor"),
        Stop::hitch(1, "upper hitch"),
        Stop::hitch(2, "lower hitch"),
        Stop::turn(2, "lower turn"),
        Stop::turn(1, "upper turn"),
        Stop::hand(2, "hands"),
        Stop::hand(3, "helper"),
        Stop::free(),
    ];
    let kinds = [BodyKind::Tree, BodyKind::Carriage, BodyKind::Climber, BodyKind::Ground];
    Rig::new(bodies(&kinds), vec![Rope::new("climbing rope", stops)]).unwrap()
}

pub fn knot() -> Backup {
    Backup::TailKnot { slack: Length::metres(2.0) }
}

/// What the single parts of a rig are called: stops along the ropes, then ropes.
pub fn single_nouns(rig: &Rig) -> Vec<String> {
    let (stops, ropes): (Vec<Part>, Vec<Part>) =
        single_parts(rig).into_iter().partition(|part| matches!(part, Part::Stop { .. }));
    let noun = |part: Part| match part {
        Part::Stop { rope, stop } => rig.ropes()[rope].stops[stop].noun.to_string(),
        Part::Rope { rope } => rig.ropes()[rope].noun.to_string(),
    };
    stops.into_iter().chain(ropes).map(noun).collect()
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
    Hand { name, rig, losses: Box::new(losses), advantage: Box::new(advantage), ideal }
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
        row("tail 3:1", tail(1), 3, pairs(1), grip_and_drag, |r| 1.0 + p(r, 1) + p(r, 1) * q(r, 1) * h(r)),
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
