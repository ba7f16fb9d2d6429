//! Answers as they cross to JavaScript, and as text.

use boughline::Draft;
use boughline::quantity::View;
use boughline::question::{
    Effort, Question, advantage, can_i_climb, coming_down, cut_length, cut_plan, loads, rescue, rope_length,
};
use boughline::words::{
    Format, Subject, advantage_report, as_text, cord_report, cut_report, descent_report, loads_report, report,
    rescue_report, rope_report,
};
use serde_json::{Value, to_value};

/// Few samples: which cautions there are hangs on no sample.
pub(crate) fn effort() -> Effort {
    Effort::samples(50)
}

/// The answer, or nothing where the plan is not in order.
pub(crate) fn answer(question: Question, draft: &Draft, view: View) -> Result<Value, ()> {
    let value = match question {
        Question::CanIClimb => {
            can_i_climb::Inputs::of(draft).map(|inputs| to_value(report(&can_i_climb::ask(&inputs, effort()), view)))
        }
        Question::Advantage => advantage::Inputs::of(draft)
            .map(|inputs| to_value(advantage_report(&advantage::ask(&inputs, effort()), view))),
        Question::Loads => {
            loads::Inputs::of(draft).map(|inputs| to_value(loads_report(&loads::ask(&inputs, effort()), view)))
        }
        Question::RopeLength => {
            rope_length::Inputs::of(draft).map(|inputs| to_value(rope_report(&rope_length::ask(&inputs), view)))
        }
        Question::CutLength => {
            cut_length::Inputs::of(draft).map(|inputs| to_value(cord_report(&cut_length::ask(&inputs), view)))
        }
        Question::CutPlan => {
            cut_plan::Inputs::of(draft).map(|inputs| to_value(cut_report(&cut_plan::ask(&inputs, effort()), view)))
        }
        Question::ComingDown => coming_down::Inputs::of(draft)
            .map(|inputs| to_value(descent_report(&coming_down::ask(&inputs, effort()), view))),
        Question::Rescue => {
            rescue::Inputs::of(draft).map(|inputs| to_value(rescue_report(&rescue::ask(&inputs), view)))
        }
        _ => panic!("no question that is known here"),
    };
    value.map(|value| value.expect("an answer is plain")).map_err(|_| ())
}

/// Id and text of every caution of an answer, or of a rig in it.
pub(crate) fn cautions(told: &Value) -> Vec<(String, String)> {
    let text = |caution: &Value, key: &str| caution[key].as_str().expect("a text").to_owned();
    let list = told["cautions"].as_array().expect("a list");
    list.iter().map(|caution| (text(caution, "id"), text(caution, "text"))).collect()
}

/// The answer or sheet as lines of text, and as Markdown without its escapes.
pub(crate) fn texts(subject: Subject, draft: &Draft, view: View) -> [String; 2] {
    [Format::Text, Format::Markdown]
        .map(|format| as_text(subject, draft, view, effort(), format, "https://example.org/").replace('\\', ""))
}
