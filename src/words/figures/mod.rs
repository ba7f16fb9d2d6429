//! The figures of an answer, in the order to show them, each with what it comes from.

mod rig;
mod strength;
mod stroke;

use super::Figure;
use super::figure::{Style, figure};
use super::phrase::newtons;
use crate::field::Spread;
use crate::quantity::{Dimension, View, plain};
use crate::question::can_i_climb::Answer;
use crate::source::{DELANEY, GEOMETRY, JUDGED, Source};

const FORCE: Style = Style::Unit(Dimension::Force);
const LENGTH: Style = Style::Unit(Dimension::Length);

/// The figures of an answer.
pub(super) fn figures(answer: &Answer, view: View) -> Vec<Figure> {
    let mut rows = Rows { answer, view, figures: Vec::new() };
    rows.need();
    rows.strength();
    rows.stroke();
    rows.rig();
    rows.figures
}

struct Rows<'a> {
    answer: &'a Answer,
    view: View,
    figures: Vec<Figure>,
}

impl Rows<'_> {
    fn add(
        &mut self,
        names: (&'static str, &'static str),
        spread: Spread,
        style: Style,
        workings: Vec<String>,
        sources: &[Source],
    ) {
        self.figures.push(figure(names, spread, style, self.view, workings, sources));
    }

    fn need(&mut self) {
        let (answer, view) = (self.answer, self.view);
        let weight = newtons(answer.weight.likely, view);
        let advantage = plain(answer.advantage.likely, 2, view);
        let need = newtons(answer.need.likely, view);
        let workings = vec![format!("weight ÷ real advantage = {weight} ÷ {advantage} = {need}")];
        let sources = if self.own_figures_only() { &[GEOMETRY, JUDGED][..] } else { &[GEOMETRY, DELANEY, JUDGED] };
        let noun = if answer.hauled { "pull the haul takes" } else { "pull one stroke takes" };
        self.add(("pullNeeded", noun), answer.need, FORCE, workings, sources);
    }

    /// Whether every turn's share is the climber's own figure.
    fn own_figures_only(&self) -> bool {
        self.answer.turn_efficiency.is_some() || self.answer.turns.iter().all(|turn| turn.own)
    }
}
