//! The trip sheet: the whole plan on a page or two, in the order in which somebody at the tree needs it.

use super::answered::version;
use super::carried::carried;
use super::cautions::{against, cautions};
use super::cords::{cord, cuts, rope, shopping};
use super::down::{before, coming_down, rescue};
use super::entered::{entered, entered_in};
use super::{Block, Section, Sheet};
use crate::ascent::CLIMB_HEIGHT;
use crate::draft::Draft;
use crate::error::Error;
use crate::field::Row;
use crate::link;
use crate::quantity::View;
use crate::question::can_i_climb::Caution;
use crate::question::{
    Effort, Question, can_i_climb, coming_down as descent, cut_length, cut_plan, loads, rescue as stuck, rope_length,
};
use crate::reeving::RIG;
use crate::rope::{CROTCH_HEIGHT, HITCH_HEIGHT, PLATFORM_HEIGHT};
use crate::words::assumed::assumed;
use crate::words::can_i_climb::USUAL_RIG;
use crate::words::caution::caution_line;
use crate::words::rescue::WHO_AND_WHERE;
use crate::words::template::worded;
use crate::words::verdict::WITHIN_REACH;
use crate::words::{
    CautionLine, Report, cord_report, cut_report, descent_report, loads_report, report, rescue_report, rope_report,
};

/// What a verdict that strength alone would earn comes to, where something else stands against the plan.
const NOT_AS_PLANNED: &str = "Not as planned; by strength alone within reach on paper";

/// And where nobody can tell yet whether anything does.
const NOT_ALL_ANSWERED: &str = "By strength alone within reach on paper; the rest is not answered";

/// The whole plan in short. What cannot be answered yet says what it needs, and hides nothing else.
#[must_use]
pub fn trip_sheet(draft: &Draft, view: View, effort: Effort) -> Sheet {
    let climb = can_i_climb::Inputs::of(draft).map(|inputs| report(&can_i_climb::ask(&inputs, effort), view));
    let down = descent::Inputs::of(draft).map(|inputs| descent_report(&descent::ask(&inputs, effort), view));
    let help = stuck::Inputs::of(draft).map(|inputs| rescue_report(&stuck::ask(&inputs), view));
    let parts = loads::Inputs::of(draft).map(|inputs| loads_report(&loads::ask(&inputs, effort), view));
    let length = rope_length::Inputs::of(draft).map(|inputs| rope_report(&rope_length::ask(&inputs), view));
    let cutting = cut_plan::Inputs::of(draft).map(|inputs| cut_report(&cut_plan::ask(&inputs, effort), view));
    let piece = cut_length::Inputs::of(draft).map(|inputs| cord_report(&cut_length::ask(&inputs), view));

    // The one that holds whatever was said comes even where nothing is answered.
    let all: [&[CautionLine]; 8] = [
        &[caution_line(Caution::Arithmetic, view)],
        climb.as_ref().map_or(&[], |report| &report.cautions),
        parts.as_ref().map_or(&[], |report| &report.cautions),
        down.as_ref().map_or(&[], |report| &report.cautions),
        help.as_ref().map_or(&[], |report| &report.cautions),
        length.as_ref().map_or(&[], |report| &report.cautions),
        cutting.as_ref().map_or(&[], |report| &report.cautions),
        piece.as_ref().map_or(&[], |report| &report.cautions),
    ];
    let against = against(&all);

    let mut sections = Vec::new();
    let mut add = |section: Section| {
        if !section.blocks.is_empty() || !section.needs.is_empty() || !section.wrong.is_empty() {
            sections.push(section);
        }
    };
    add(blanks());
    let within = if !against.blocks.is_empty() {
        Some(NOT_AS_PLANNED)
    } else if help.is_err() || down.is_err() || parts.is_err() || length.is_err() {
        Some(NOT_ALL_ANSWERED)
    } else {
        None
    };
    add(answered("verdict", "", &climb, view, |climb, section| verdict(climb, within, section)));
    add(against);
    if climb.is_ok() {
        add(answered("missing", "Missing before it is a plan", &climb, view, missing));
    }
    add(answered("before", "Before you go", &help, view, before));
    add(answered("rig", "The rig", &climb, view, |climb, section| {
        rig(climb, draft.get(RIG.row.id).is_some(), section);
    }));
    add(heights(draft, view));
    add(answered("coming-down", "Coming down", &down, view, coming_down));
    let mut stuck = answered("rescue", "If you are stuck", &help, view, rescue);
    if help.is_err() {
        stuck.add(Block::blanks(WHO_AND_WHERE.map(str::to_owned).to_vec()));
    }
    add(stuck);
    add(answered("loads", "What the parts carry", &parts, view, carried));
    add(cautions(&all));
    add(answered("rope", "Rope", &length, view, rope));
    let mut cords = answered("cords", "Cords to cut", &cutting, view, cuts);
    if let Ok(piece) = &piece {
        cord(piece, &mut cords);
    }
    add(cords);
    add(answered("shopping", "To buy", &cutting, view, shopping));
    let taken = Question::assumed_by_any(draft);
    add(reckoned_from(draft, view, &taken));
    Sheet {
        title: "Trip sheet",
        sections,
        link: link::sheet_of(draft, view, &taken).unwrap_or_default(),
        version: version(),
    }
}

/// A section of what an answer says, or of what it needs.
fn answered<T>(
    id: &'static str,
    heading: &str,
    answer: &Result<T, Vec<Error>>,
    view: View,
    tell: impl FnOnce(&T, &mut Section),
) -> Section {
    let mut section = Section::of(id, heading, 2);
    match answer {
        Ok(answer) => tell(answer, &mut section),
        Err(errors) => section.lack(errors, view),
    }
    section
}

/// Who, when and where, to fill in.
fn blanks() -> Section {
    let mut section = Section::of("trip", "", 2);
    section.add(Block::blanks(vec!["Who climbs: ____________ Date: ____________ Tree: ____________".to_owned()]));
    section
}

/// The verdict on strength, never as one on a whole plan that something else stands against, or may: then `within` says
/// what strength within reach comes to.
fn verdict(climb: &Report, within: Option<&str>, section: &mut Section) {
    let told = within.filter(|_| climb.verdict.id == WITHIN_REACH).unwrap_or(climb.verdict.text);
    section.blocks.push(Block::verdict(told));
    section.say(&climb.first);
    section.say(&climb.second);
    if let Some(legs) = &climb.legs {
        section.say(&legs.text);
    }
}

fn missing(climb: &Report, section: &mut Section) {
    let mut lines = Vec::new();
    for line in &climb.missing {
        lines.push(line.message.clone());
    }
    section.add(Block::list("", lines));
}

/// The rig while the hands pull, the same pull as the verdict tells.
fn rig(climb: &Report, is_said: bool, section: &mut Section) {
    section.say(&climb.drawing.text);
    if !is_said {
        section.say(USUAL_RIG);
    }
    section.drawing = Some(climb.drawing.clone());
}

fn heights(draft: &Draft, view: View) -> Section {
    let mut section = Section::of("heights", "Heights", 2);
    let mut lines = Vec::new();
    for row in [&CLIMB_HEIGHT.row, &CROTCH_HEIGHT.row, &PLATFORM_HEIGHT.row, &HITCH_HEIGHT.row] {
        lines.push(entered_in(row, draft, view).unwrap_or_else(|| worded("{}: not entered", &[row.noun])));
    }
    section.add(Block::list("", lines));
    section
}

/// What was entered, and what was taken for granted.
fn reckoned_from(draft: &Draft, view: View, taken: &[&Row]) -> Section {
    let mut section = Section::of("entered", "Reckoned from", 2);
    let mut text = String::new();
    for line in entered(draft, view) {
        text.push_str(&worded(if text.is_empty() { "Entered: {}" } else { "; {}" }, &[&line]));
    }
    if !text.is_empty() {
        text.push('.');
    }
    section.say(&text);
    section.say(&assumed(taken, view));
    section.say("Workings, ranges and sources stand on the pages that the link leads to.");
    section
}
