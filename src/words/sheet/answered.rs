//! The answer to any one question on paper.

use super::entered::entered;
use super::told::told;
use super::{Block, Section, Sheet};
use crate::draft::Draft;
use crate::error::Error;
use crate::field::Spread;
use crate::link;
use crate::quantity::View;
use crate::question::{
    Effort, Question, advantage, can_i_climb, coming_down, cut_length, cut_plan, loads, rescue, rope_length,
};
use crate::words::record::{IsPlain, Plain};
use crate::words::template::said;
use crate::words::{
    advantage_report, cord_report, cut_report, descent_report, loads_report, report, rescue_report, rope_report,
};

/// The answer to a question, or everything that is wrong or missing, with what was entered.
pub(super) fn answer_sheet(question: Question, draft: &Draft, view: View, effort: Effort) -> Sheet {
    let mut sections = match answered(question, draft, view, effort) {
        Ok(answer) => told(&answer),
        Err(errors) => {
            let mut section = Section::of("answer", "", 2);
            section.lack(&errors, view);
            vec![section]
        }
    };
    let mut inputs = Section::of("entered", "What was entered", 2);
    inputs.add(Block::list("", entered(draft, view)));
    if !inputs.blocks.is_empty() {
        sections.push(inputs);
    }
    Sheet {
        title: title(question),
        sections,
        link: link::write(question, draft, view).unwrap_or_default(),
        version: version(),
    }
}

/// The versions of program and figures.
pub(super) fn version() -> String {
    let figures = Spread::point(f64::from(link::FIGURES));
    said("Boughline {}, figures {0}.", &[&figures], &[env!("CARGO_PKG_VERSION")], View::default())
}

fn answered(question: Question, draft: &Draft, view: View, effort: Effort) -> Result<Plain, Vec<Error>> {
    Ok(match question {
        Question::CanIClimb => report(&can_i_climb::ask(&can_i_climb::Inputs::of(draft)?, effort), view).plain(),
        Question::Advantage => advantage_report(&advantage::ask(&advantage::Inputs::of(draft)?, effort), view).plain(),
        Question::Loads => loads_report(&loads::ask(&loads::Inputs::of(draft)?, effort), view).plain(),
        Question::RopeLength => rope_report(&rope_length::ask(&rope_length::Inputs::of(draft)?), view).plain(),
        Question::CutLength => cord_report(&cut_length::ask(&cut_length::Inputs::of(draft)?), view).plain(),
        Question::CutPlan => cut_report(&cut_plan::ask(&cut_plan::Inputs::of(draft)?, effort), view).plain(),
        Question::ComingDown => {
            descent_report(&coming_down::ask(&coming_down::Inputs::of(draft)?, effort), view).plain()
        }
        Question::Rescue => rescue_report(&rescue::ask(&rescue::Inputs::of(draft)?), view).plain(),
    })
}

const fn title(question: Question) -> &'static str {
    match question {
        Question::CanIClimb => "Can I climb this?",
        Question::Advantage => "Which advantage?",
        Question::Loads => "What does each part carry?",
        Question::RopeLength => "How much rope?",
        Question::CutLength => "What length of cord?",
        Question::CutPlan => "Out of which hanks?",
        Question::ComingDown => "Can I get down again?",
        Question::Rescue => "What if I am stuck?",
    }
}
