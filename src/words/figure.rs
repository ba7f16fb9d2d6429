//! One figure: its likely value, its range, and how both are written.

use super::Figure;
use super::template::said;
use crate::field::Spread;
use crate::quantity::View;
use crate::source::Source;

/// A figure with its range and the sources it rests on, written as a slot of a template writes it.
pub(super) fn figure(
    id: &'static str,
    noun: &'static str,
    spread: &Spread,
    slot: &str,
    view: View,
    sources: &[Source],
) -> Figure {
    let finite = |value: f64| value.is_finite().then_some(value);
    let text = |value: f64| match slot {
        _ if !value.is_infinite() => said(slot, &[&Spread::point(value)], &[], view),
        "{I}" => "never".to_owned(),
        "{S}" if matches!(id, "climbTime" | "lastingTime") => "never".to_owned(),
        _ => "endless".to_owned(),
    };
    let (low, high) = (text(spread.low), text(spread.high));
    let mut figure = Figure {
        id,
        noun,
        value: finite(spread.likely),
        low: finite(spread.low),
        high: finite(spread.high),
        text: text(spread.likely),
        range: (low != high).then(|| said("{} to {}", &[], &[&low, &high], view)),
        workings: Vec::new(),
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
