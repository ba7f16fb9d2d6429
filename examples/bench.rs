//! Milliseconds of one full answer, natively: `bench TIMES SAMPLES FIELD TEXT FIELD TEXT…` prints the samples it really
//! used and the middle of so many runs. `pkg-config/bench` runs it beside the shipped module, with the same plan.

use boughline::quantity::View;
use boughline::question::{Effort, can_i_climb};
use boughline::{Draft, words};
use std::hint::black_box;

#[expect(clippy::disallowed_types, reason = "a clock is what measures; no answer depends on it")]
use std::time::Instant;

/// The words of an answer, as the module reckons them: from what was typed to what is read. And its samples.
fn asked(draft: &Draft, samples: u32) -> Result<u32, String> {
    let view = View::default();
    let inputs = can_i_climb::Inputs::of(draft).map_err(|errors| {
        let lines: Vec<String> = words::error_lines(&errors, view).into_iter().map(|line| line.message).collect();
        lines.join("\n")
    })?;
    let answer = can_i_climb::ask(&inputs, Effort::samples(samples));
    Ok(black_box(words::report(&answer, view)).effort.samples)
}

/// The samples, and the milliseconds of the middle one of some runs, after one that warms up.
fn measured(words: &[String]) -> Result<(u32, f64), String> {
    let number = |at: usize| words.get(at).and_then(|word| word.parse().ok());
    let (Some(times), Some(samples)) = (number(0), number(1)) else {
        return Err("Say how often, with how many samples, and the plan: bench 9 20000 bodyMass \"80 kg\" …".to_owned());
    };
    let mut draft = Draft::new();
    for pair in words.get(2..).unwrap_or_default().chunks(2) {
        if let [id, text] = pair {
            draft = draft.set(id, text);
        }
    }
    let used = asked(&draft, samples)?;
    let mut took = Vec::new();
    for _ in 0..times {
        #[expect(clippy::disallowed_types, reason = "as above")]
        let start = Instant::now();
        asked(black_box(&draft), samples)?;
        took.push(start.elapsed().as_secs_f64() * 1000.0);
    }
    took.sort_by(f64::total_cmp);
    Ok((used, took.get(took.len() / 2).copied().unwrap_or_default()))
}

fn main() -> Result<(), String> {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let (samples, took) = measured(&words)?;
    println!("{samples} {took}");
    Ok(())
}
