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
    /// As so many in a hundred, and never as certain.
    Chance,
    /// As a number with this many decimals.
    Plain(usize),
    /// As a number of whole things, the last one begun.
    Whole,
}

impl Style {
    pub(super) fn text(self, value: f64, view: View) -> String {
        match self {
            Self::Whole if value.is_infinite() => "never".to_owned(),
            _ if value.is_infinite() => "endless".to_owned(),
            Self::Unit(dimension) => written(value, dimension, view),
            Self::Chance if value > 0.995 => "over 99 %".to_owned(),
            Self::Chance if value < 0.005 => "under 1 %".to_owned(),
            Self::Percent | Self::Chance => percent(value, view),
            Self::Plain(decimals) => plain(value, decimals, view),
            Self::Whole => plain(value.ceil(), 0, view),
        }
    }
}

/// A figure with its range, how it comes about, and the sources it rests on.
pub(super) fn figure(
    (id, noun): (&'static str, &'static str),
    spread: Spread,
    style: Style,
    view: View,
    workings: Vec<String>,
    sources: &[Source],
) -> Figure {
    let finite = |value: f64| value.is_finite().then_some(value);
    let (low, high) = (style.text(spread.low, view), style.text(spread.high, view));
    let mut figure = Figure {
        id,
        noun,
        value: finite(spread.likely),
        low: finite(spread.low),
        high: finite(spread.high),
        text: style.text(spread.likely, view),
        range: (low != high).then(|| format!("{low} to {high}")),
        workings,
        sources: Vec::new(),
    };
    add_ids(&mut figure.sources, sources);
    figure
}

/// Adds the ids of sources that are not there yet.
pub(super) fn add_ids(ids: &mut Vec<&'static str>, sources: &[Source]) {
    for source in sources {
        if !ids.contains(&source.id) {
            ids.push(source.id);
        }
    }
}
