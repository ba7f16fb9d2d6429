//! What each question answers, as facts and as it crosses to JavaScript.
#![allow(dead_code, reason = "each test file uses some of it")]

use boughline::Draft;
use boughline::error::Error;
use boughline::quantity::View;
use boughline::question::{
    Effort, Question, advantage, can_i_climb, coming_down, cut_length, cut_plan, loads, rescue, rope_length,
};
use boughline::words::{
    advantage_report, cord_report, cut_report, descent_report, loads_report, report, rescue_report, rope_report,
};
use serde_json::{Value, to_value};

/// An answer.
pub(crate) struct Told {
    /// Every fact of it, written for programmers.
    pub(crate) facts: String,
    /// What JavaScript gets, in each view.
    pub(crate) reports: Vec<Value>,
}

/// What a question answers, or every error.
pub(crate) fn told(question: Question, draft: &Draft, views: &[View], effort: Effort) -> Result<Told, Vec<Error>> {
    macro_rules! told {
        ($of:ident, $report:ident $(, $effort:ident)?) => {
            $of::Inputs::of(draft).map(|inputs| {
                let answer = $of::ask(&inputs $(, $effort)?);
                let report = |view: &View| to_value($report(&answer, *view)).expect("an answer is plain");
                Told { facts: format!("{answer:?}"), reports: views.iter().map(report).collect() }
            })
        };
    }
    match question {
        Question::CanIClimb => told!(can_i_climb, report, effort),
        Question::Advantage => told!(advantage, advantage_report, effort),
        Question::Loads => told!(loads, loads_report, effort),
        Question::RopeLength => told!(rope_length, rope_report),
        Question::CutLength => told!(cut_length, cord_report),
        Question::CutPlan => told!(cut_plan, cut_report, effort),
        Question::ComingDown => told!(coming_down, descent_report, effort),
        Question::Rescue => told!(rescue, rescue_report),
        _ => panic!("{}: say here how it is asked", question.id()),
    }
}

/// What is wrong with a plan for a question.
pub(crate) fn errors(question: Question, draft: &Draft) -> Vec<Error> {
    let refused = match question {
        Question::CanIClimb => can_i_climb::Inputs::of(draft).err(),
        Question::Advantage => advantage::Inputs::of(draft).err(),
        Question::Loads => loads::Inputs::of(draft).err(),
        Question::RopeLength => rope_length::Inputs::of(draft).err(),
        Question::CutLength => cut_length::Inputs::of(draft).err(),
        Question::CutPlan => cut_plan::Inputs::of(draft).err(),
        Question::ComingDown => coming_down::Inputs::of(draft).err(),
        Question::Rescue => rescue::Inputs::of(draft).err(),
        _ => panic!("{}: say here how its inputs are read", question.id()),
    };
    refused.unwrap_or_default()
}
