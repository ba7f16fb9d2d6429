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

/// Asks a plan and puts the answer into words, as the module gives it. Gives these as JSON where somebody wants to see them:
/// that takes time, and nobody does while the clock runs.
///
/// # Errors
/// What is wrong with the plan, or that there is no such question.
pub fn asked(plan: &Plan, is_seen: bool) -> Result<Option<String>, Vec<Error>> {
    let Plan { draft, effort, .. } = plan;
    let (samples, view) = (Effort::samples(*effort), View::default());
    macro_rules! read {
        ($report:expr) => {{
            let report = black_box($report);
            if is_seen { serde_json::to_string(&report).ok() } else { None }
        }};
    }
    macro_rules! asked {
        ($of:ident, $report:ident $(, $samples:ident)?) => {
            read!(words::$report(&$of::ask(&$of::Inputs::of(draft)? $(, $samples)?), view))
        };
    }
    Ok(match plan.question {
        "can-i-climb" => asked!(can_i_climb, report, samples),
        "advantage" => asked!(advantage, advantage_report, samples),
        "map" => {
            let side = *effort as usize;
            read!(words::map_report(&advantage::map(&advantage::Inputs::of(draft)?, side, side), view))
        }
        "loads" => asked!(loads, loads_report, samples),
        "rope-length" => asked!(rope_length, rope_report),
        "cut-length" => asked!(cut_length, cord_report),
        "cut-plan" => asked!(cut_plan, cut_report, samples),
        "coming-down" => asked!(coming_down, descent_report, samples),
        "rescue" => asked!(rescue, rescue_report),
        _ => return Err(Vec::new()),
    })
}
