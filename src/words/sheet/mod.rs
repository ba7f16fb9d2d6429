//! Answers on paper: what they say as a title and sections, for a page to print, and as text or Markdown.

mod answered;
mod block;
mod carried;
mod cautions;
mod cords;
mod down;
mod entered;
mod markdown;
mod plain_text;
mod told;
mod trip;

use super::error::error_lines;
use super::phrase::{listed, noun};
use super::record::records;
use super::template::worded;
use super::{Drawing, ErrorLine};
use crate::draft::Draft;
use crate::error::{Error, Reason};
use crate::link;
use crate::quantity::{View, joined};
use crate::question::{Effort, Question};

pub use block::Block;
pub use trip::trip_sheet;

records! {
    /// A part of a sheet.
    pub struct Section {
        /// Its id in this sheet.
        pub id: &'static str,
        /// Its heading; empty for what stands right under the title.
        pub heading: String,
        /// 2 under the title, 3 and more under the section before it.
        pub level: u32,
        /// What is still to be entered before it can be answered, each by its noun; empty where it is answered.
        pub needs: Vec<ErrorLine>,
        /// What is wrong, in sentences; empty where it is answered.
        pub wrong: Vec<ErrorLine>,
        /// What it says.
        pub blocks: Vec<Block>,
        /// The rig, for whoever can draw it; its words are in the blocks.
        pub drawing: Option<Drawing>,
    }

    /// What is said on paper.
    pub struct Sheet {
        /// Its title.
        pub title: &'static str,
        /// Its parts, in the order to read them.
        pub sections: Vec<Section>,
        /// The fragment of the link, without `#`; empty while anything said cannot be read.
        pub link: String,
        /// The versions of program and figures.
        pub version: String,
    }
}

impl Section {
    fn of(id: &'static str, heading: &str, level: u32) -> Self {
        Self {
            id,
            heading: heading.to_owned(),
            level,
            needs: Vec::new(),
            wrong: Vec::new(),
            blocks: Vec::new(),
            drawing: None,
        }
    }

    /// Why there is no answer.
    fn lack(&mut self, errors: &[Error], view: View) {
        for error in errors {
            if error.reason == Reason::Needed {
                let mut nouns = Vec::new();
                for field in &error.fields {
                    nouns.push(noun(field));
                }
                self.needs.push(ErrorLine { fields: error.fields.clone(), message: listed(&nouns) });
            } else {
                self.wrong.extend(error_lines(std::slice::from_ref(error), view));
            }
        }
    }

    /// A paragraph, unless it is empty.
    fn say(&mut self, text: &str) {
        if !text.is_empty() {
            self.blocks.push(Block::paragraph(text));
        }
    }

    /// Its blocks, with what it needs before them.
    fn told(&self) -> Vec<Block> {
        let (mut needs, mut wrong) = (String::new(), Vec::new());
        for line in &self.needs {
            needs.push_str(&worded(if needs.is_empty() { "Needs: {}" } else { "; {}" }, &[&line.message]));
        }
        for line in &self.wrong {
            wrong.push(line.message.clone());
        }
        let mut blocks = Vec::new();
        if !needs.is_empty() {
            blocks.push(Block::paragraph(&(needs + ".")));
        }
        if !wrong.is_empty() {
            blocks.push(Block::list("No answer. To put right:", wrong));
        }
        blocks.extend_from_slice(&self.blocks);
        blocks
    }

    /// Another block, unless it is empty.
    fn add(&mut self, block: Block) {
        if !block.items.is_empty() || !block.rows.is_empty() {
            self.blocks.push(block);
        }
    }
}

/// What a text can be of: one question, or the whole plan.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subject {
    /// An answer.
    Answer(Question),
    /// The whole plan, in short.
    TripSheet,
}

impl Subject {
    /// The subject of an id.
    #[must_use]
    pub fn of(id: &str) -> Option<Self> {
        if id == link::TRIP_SHEET { Some(Self::TripSheet) } else { Question::of(id).map(Self::Answer) }
    }
}

/// How a sheet is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Format {
    /// Lines of plain text.
    Text,
    /// Markdown, as forums read it.
    Markdown,
}

impl Format {
    /// The format of an id, `text` or `markdown`.
    #[must_use]
    pub fn of(id: &str) -> Option<Self> {
        match id {
            "text" => Some(Self::Text),
            "markdown" => Some(Self::Markdown),
            _ => None,
        }
    }
}

/// The answer to a question, or the trip sheet, as text.
///
/// `address` is that of the page which the link is for; without one the text ends with the bare fragment.
///
/// # Guarantees
/// No caution, nothing missing and no error of the answer is left out.
#[must_use]
pub fn as_text(subject: Subject, draft: &Draft, view: View, effort: Effort, format: Format, address: &str) -> String {
    let sheet = match subject {
        Subject::Answer(question) => answered::answer_sheet(question, draft, view, effort),
        Subject::TripSheet => trip_sheet(draft, view, effort),
    };
    sheet_text(&sheet, format, address)
}

/// A sheet as text.
#[must_use]
pub fn sheet_text(sheet: &Sheet, format: Format, address: &str) -> String {
    let link = if sheet.link.is_empty() { String::new() } else { joined(&[address, "#", &sheet.link]) };
    match format {
        Format::Text => plain_text::written(sheet, &link),
        Format::Markdown => markdown::written(sheet, &link),
    }
}
