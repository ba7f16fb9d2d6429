//! What must hold of every plan, whatever the figures.
#![cfg(not(target_arch = "wasm32"))]
#![allow(
    clippy::expect_used,
    clippy::panic,
    clippy::unreachable,
    reason = "a plan that is out of order fails the test"
)]

#[path = "laws/better.rs"]
mod better;
#[path = "laws/figures.rs"]
mod figures;
#[path = "laws/plans.rs"]
mod plans;
#[path = "laws/top.rs"]
mod top;

use boughline::field::Spread;
use boughline::question::Effort;
use boughline::question::can_i_climb::{Answer, Inputs, ask};
use plans::{Plan, draft};
use proptest::test_runner::Config;

/// So many cases; a failing one is printed, not written beside the tests.
fn cases(cases: u32) -> Config {
    Config { cases, failure_persistence: None, ..Config::default() }
}

/// The answer to a plan, with few samples: they are drawn one by one, so that what holds of each holds of all.
fn answer(plan: &Plan) -> Answer {
    answer_with(plan, Effort::samples(200))
}

fn answer_with(plan: &Plan, effort: Effort) -> Answer {
    ask(&Inputs::of(&draft(plan)).expect("the plan is in order"), effort)
}

/// Every spread of an answer, by name.
fn spreads(answer: &Answer) -> Vec<(&'static str, Spread)> {
    let mut all = vec![
        ("drag", answer.drag),
        ("weight", answer.weight),
        ("mass", answer.mass),
        ("advantage", answer.advantage),
        ("need", answer.need),
        ("setback", answer.setback),
        ("anchor", answer.anchor),
        ("rope above", answer.taken_up.above),
        ("stretch", answer.taken_up.stretch),
        ("rope taken up", answer.taken_up.rope),
        ("work of taking it up", answer.taken_up.work),
        ("seat at the start", answer.top.start),
        ("gap under the crotch", answer.top.gap),
    ];
    let maybe = [
        ("arms", answer.arms.map(|gate| gate.capacity)),
        ("share of the arms", answer.arms.map(|gate| gate.share)),
        ("grasp", answer.grasp.map(|gate| gate.capacity)),
        ("share of the grasp", answer.grasp.map(|gate| gate.share)),
        ("travel", answer.travel),
        ("room", answer.room),
        ("gain", answer.gain),
        ("strokes", answer.strokes),
        ("rope handled", answer.rope_handled),
        ("time", answer.time),
        ("empty strokes", answer.taken_up.strokes),
        ("their time", answer.taken_up.time),
        ("all strokes", answer.taken_up.all_strokes),
        ("seat at the top", answer.top.seat),
        ("height left", answer.top.left),
        ("seat over the edge", answer.top.over_edge),
        ("rest", answer.rest),
        ("time with rests", answer.lasting_time),
    ];
    all.extend(maybe.into_iter().filter_map(|(name, spread)| Some((name, spread?))));
    all.extend(answer.turns.iter().map(|turn| ("turn", turn.kept)));
    all.extend(answer.tensions.iter().flatten().map(|tension| ("tension", *tension)));
    all
}
