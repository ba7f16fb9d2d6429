//! The plans that are measured, and each asked from what was typed to the words that are read.

use boughline::error::Error;
use boughline::quantity::View;
use boughline::question::{
    Effort, advantage, can_i_climb, coming_down, cut_length, cut_plan, loads, rescue, rope_length,
};
use boughline::{Draft, link, words};
use std::hint::black_box;

/// What is measured, natively and in the module: a line a plan, its parts apart by tabs.
const PLANS: &str = include_str!("../plans.tsv");

/// One line of them.
#[derive(Debug, Clone)]
pub struct Plan {
    /// What people call it.
    pub name: &'static str,
    /// The question's id, or `map`.
    pub question: &'static str,
    /// Samples, or of a map the cells along a side.
    pub effort: u32,
    /// What was typed.
    pub draft: Draft,
}

/// Every plan; none of a line that is miswritten.
#[must_use]
pub fn plans() -> Vec<Plan> {
    let mut plans = Vec::new();
    for line in PLANS.lines() {
        let parts: Vec<&'static str> = line.split('\t').collect();
        if let [name, question, effort, typed] = parts[..]
            && let Ok(effort) = effort.parse()
        {
            plans.push(Plan { name, question, effort, draft: link::read(typed).draft });
        }
    }
    plans
}

/// Asks a plan and puts the answer into words. Says how many samples it took; one where none are counted.
///
/// # Errors
/// What is wrong with the plan, or that there is no such question.
pub fn asked(plan: &Plan) -> Result<u32, Vec<Error>> {
    let Plan { draft, effort, .. } = plan;
    let (samples, view) = (Effort::samples(*effort), View::default());
    match plan.question {
        "can-i-climb" => {
            let answer = can_i_climb::ask(&can_i_climb::Inputs::of(draft)?, samples);
            Ok(black_box(words::report(&answer, view)).effort.samples)
        }
        "advantage" => {
            let answer = advantage::ask(&advantage::Inputs::of(draft)?, samples);
            Ok(black_box(words::advantage_report(&answer, view)).effort.samples)
        }
        "map" => {
            let answer = advantage::map(&advantage::Inputs::of(draft)?, *effort as usize, *effort as usize);
            black_box(words::map_report(&answer, view));
            Ok(1)
        }
        "loads" => {
            let answer = loads::ask(&loads::Inputs::of(draft)?, samples);
            Ok(black_box(words::loads_report(&answer, view)).effort.samples)
        }
        "rope-length" => {
            black_box(words::rope_report(&rope_length::ask(&rope_length::Inputs::of(draft)?), view));
            Ok(1)
        }
        "cut-length" => {
            black_box(words::cord_report(&cut_length::ask(&cut_length::Inputs::of(draft)?), view));
            Ok(1)
        }
        "cut-plan" => {
            let answer = cut_plan::ask(&cut_plan::Inputs::of(draft)?, samples);
            Ok(black_box(words::cut_report(&answer, view)).effort.samples)
        }
        "coming-down" => {
            let answer = coming_down::ask(&coming_down::Inputs::of(draft)?, samples);
            Ok(black_box(words::descent_report(&answer, view)).effort.samples)
        }
        "rescue" => {
            black_box(words::rescue_report(&rescue::ask(&rescue::Inputs::of(draft)?), view));
            Ok(1)
        }
        _ => Err(Vec::new()),
    }
}
