//! Rigs written down stop by stop, with the advantage that each comes to by hand.
#![allow(dead_code, unreachable_pub, reason = "each test file uses some of them")]
#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a rig that cannot be made fails the test")]

use boughline::quantity::Length;
use boughline::reeving::{Backup, Body, BodyKind, Part, Rig, Rope, Stop, single_parts};

pub mod hand_derived;
pub mod random;
pub mod solver;

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

pub fn moving_rope_with_tending_pulley() -> Rig {
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
        Stop::helper(3, "helper"),
        Stop::free(),
    ];
    let kinds = [BodyKind::Tree, BodyKind::Carriage, BodyKind::Climber, BodyKind::Ground];
    Rig::new(bodies(&kinds), vec![Rope::new("climbing rope", stops)]).unwrap()
}

/// Someone on the ground pulls the moving rope down past the climber, straight through hitch and pulley.
fn moving_rope_from_the_ground() -> Rig {
    let stops = vec![
        Stop::tied(1, "tie"),
        Stop::turn(TREE, "crotch"),
        Stop::hitch(1, "hitch"),
        Stop::turn(1, "tending pulley"),
        Stop::hand(2, "hands"),
        Stop::free(),
    ];
    let kinds = [BodyKind::Tree, BodyKind::Climber, BodyKind::Ground];
    Rig::new(bodies(&kinds), vec![Rope::new("climbing rope", stops)]).unwrap()
}

/// Ropes straight down from the crotch with these knots at the climber; a hitch holds on the first.
pub fn ropes_with_knots(tails: &[&[f64]]) -> Rig {
    let mut ropes = Vec::new();
    for (at, tail) in tails.iter().enumerate() {
        let mut stops = vec![Stop::tied(TREE, "anchor")];
        if at == 0 {
            stops.push(Stop::hitch(1, "lower hitch"));
        }
        stops.extend(tail.iter().map(|slack| Stop::knot(1, Length::metres(*slack), "knot")));
        stops.push(Stop::free());
        ropes.push(Rope::new("rope", stops));
    }
    Rig::new(bodies(&[BodyKind::Tree, BodyKind::Climber]), ropes).unwrap()
}

/// The tail 3:1 with knots in its tail below the upper turn, in this order from the turn.
pub fn tail_three_to_one_with_knots(slacks: &[f64]) -> Rig {
    let mut stops = tail(1).ropes()[0].stops.clone();
    let below = stops.len() - 2;
    stops.splice(below..below, slacks.iter().map(|slack| Stop::knot(1, Length::metres(*slack), "knot")));
    self_haul(vec![Rope::new("climbing rope", stops)])
}

/// A haul cord 2:1 with a knot of 1 m, beside a climbing rope with a knot of 2 m below the climber.
pub fn haul_cord_with_knots() -> Rig {
    let knot = |slack| Stop::knot(2, Length::metres(slack), "knot");
    let main = vec![
        Stop::tied(TREE, "anchor"),
        Stop::hitch(1, "upper hitch"),
        Stop::hitch(2, "lower hitch"),
        knot(2.0),
        Stop::free(),
    ];
    let cord = vec![Stop::tied(2, "tie"), Stop::turn(1, "upper turn"), knot(1.0), Stop::hand(2, "hands"), Stop::free()];
    self_haul(vec![Rope::new("climbing rope", main), Rope::new("haul cord", cord)])
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
