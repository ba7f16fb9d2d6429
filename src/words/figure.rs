//! One figure: its likely value, its range, and how both are written.

use super::Figure;
use crate::field::Spread;
use crate::quantity::{Dimension, View, percent, plain, written};
use crate::source::Source;

/// How a figure is written.
#[derive(Clone, Copy)]
pub(super) enum Style {
    /// With the unit of its dimension.
    Unit(Dimension),
    /// As so many in a hundred.
    Percent,
    /// As a number with this many decimals.
    Plain(usize),
    /// As a number of whole things, the last one begun.
    Whole,
}

impl Style {
    pub(super) fn text(self, value: f64, view: View) -> String {
        if value.is_infinite() {
            return "never".to_owned();
        }
        match self {
            Self::Unit(dimension) => written(value, dimension, view),
            Self::Percent => percent(value, view),
            Self::Plain(decimals) => plain(value, decimals, view),
            Self::Whole => plain(value.ceil(), 0, view),
        }
    }
}

/// A figure with its range; workings and sources are added by whoever knows them.
pub(super) fn figure(id: &'static str, noun: &'static str, spread: Spread, style: Style, view: View) -> Figure {
    let finite = |value: f64| value.is_finite().then_some(value);
    let (low, high) = (style.text(spread.low, view), style.text(spread.high, view));
    Figure {
        id,
        noun,
        value: finite(spread.likely),
        low: finite(spread.low),
        high: finite(spread.high),
        text: style.text(spread.likely, view),
        range: (low != high).then(|| format!("{low} to {high}")),
        workings: Vec::new(),
        sources: Vec::new(),
    }
}

impl Figure {
    pub(super) fn worked(mut self, workings: impl IntoIterator<Item = String>) -> Self {
        self.workings.extend(workings);
        self
    }

    pub(super) fn from(mut self, sources: &[Source]) -> Self {
        for source in sources {
            if !self.sources.contains(&source.id) {
                self.sources.push(source.id);
            }
        }
        self
    }
}
