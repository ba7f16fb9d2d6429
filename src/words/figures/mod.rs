//! The figures of an answer, in the order to show them, each with what it comes from.

mod going;
mod rig;
mod start;
mod strength;
mod stroke;
mod top;

use super::Figure;
use super::figure::figure;
use super::template::say;
use crate::ascent::By;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::can_i_climb::Answer;
use crate::source::{DELANEY, GEOMETRY, JUDGED, Source};

/// The figures of an answer.
pub(super) fn figures(answer: &Answer, view: View) -> Vec<Figure> {
    let mut rows = Rows { answer, view, figures: Vec::new() };
    rows.need();
    rows.strength();
    rows.stroke();
    rows.start();
    rows.top();
    rows.rig();
    rows.figures
}

struct Rows<'a> {
    answer: &'a Answer,
    view: View,
    figures: Vec<Figure>,
}

impl Rows<'_> {
    /// Begins a figure, written as a slot of a template writes it.
    fn add(&mut self, id: &'static str, noun: &'static str, spread: &Spread, slot: &str, sources: &[Source]) {
        self.figures.push(figure(id, noun, spread, slot, self.view, sources));
    }

    /// Adds a line to how the last figure comes about.
    fn line(&mut self, template: &str, numbers: &[&Spread], words: &[&str]) {
        if let Some(figure) = self.figures.last_mut() {
            figure.workings.push(String::new());
        }
        self.more(template, numbers, words);
    }

    /// Goes on with the last line.
    fn more(&mut self, template: &str, numbers: &[&Spread], words: &[&str]) {
        if let Some(line) = self.figures.last_mut().and_then(|figure| figure.workings.last_mut()) {
            say(line, template, numbers, words, self.view);
        }
    }

    fn need(&mut self) {
        let answer = self.answer;
        let sources = if self.own_figures_only() { &[GEOMETRY, JUDGED][..] } else { &[GEOMETRY, DELANEY, JUDGED] };
        let noun = if answer.hauled { "pull the haul takes" } else { "pull one stroke takes" };
        self.add("pullNeeded", noun, &answer.need, "{N}", sources);
        let numbers = [&answer.weight, &answer.advantage, &answer.need];
        match &answer.helped {
            None => self.line("weight ÷ real advantage = {N} ÷ {2} = {N}", &numbers, &[]),
            Some(helped) => self.line(
                "(weight − what helpers lift) ÷ real advantage = ({N} − {N}) ÷ {2} = {N}, and never less than nothing",
                &[&answer.weight, helped, &answer.advantage, &answer.need],
                &[],
            ),
        }
    }

    /// Whether every turn's share is the climber's own figure.
    fn own_figures_only(&self) -> bool {
        self.answer.turns.iter().all(|turn| turn.by != By::Kind)
    }
}
