//! The rope that the rig of a cutting plan takes: to buy, or had.

use super::Figure;
use super::rope_buy::{bought, retrieval, sold};
use super::rope_measure::{begun, large, text, whole};
use super::template::worded;
use crate::quantity::{System, View, joined};
use crate::question::cut_plan::Rope;

/// The rope to buy and its retrieval cord, a line for each.
pub(super) fn rope_lines(rope: Option<&Rope>, view: View) -> Vec<String> {
    let Some(rope) = rope else { return vec!["the rope, as long as “How much rope?” says".to_owned()] };
    let mut lines = Vec::new();
    let stock = sold(&rope.stock, view);
    let needed = begun(stock.need.high, view);
    match stock.buy {
        _ if rope.enough().is_some() => {}
        Some(length) => lines.push(worded(
            "a rope of {}: it takes {} at the most",
            &[&text(whole(length, view), view), &text(needed, view)],
        )),
        None => {
            let needed = joined(&[&large(needed, view), if view.system == System::Si { " m" } else { " ft" }]);
            lines.push(worded("a rope of {} or more, longer than any of the lengths to buy", &[&needed]));
        }
    }
    if let Some(cord) = &rope.retrieval {
        lines.push(worded(
            "a retrieval cord of {}, as long as it may have to be",
            &[&text(begun(cord.high, view), view)],
        ));
    }
    lines
}

/// What is said of the rope that somebody has, where it is enough.
pub(super) fn rope_note(rope: &Rope, view: View) -> Option<String> {
    let length = text(whole(rope.enough()?, view), view);
    let needed = text(begun(sold(&rope.stock, view).need.high, view), view);
    Some(worded("Your rope of {} reaches on paper: it takes {} at the most.", &[&length, &needed]))
}

/// The rope to buy and its retrieval cord, as figures.
pub(super) fn rope_figures(rope: &Rope, view: View) -> Vec<Figure> {
    let mut figures = Vec::new();
    let stock = sold(&rope.stock, view);
    if let Some(length) = stock.buy.filter(|_| rope.enough().is_none()) {
        figures.push(bought(&stock.ladder, length, view));
    }
    figures.extend(rope.retrieval.as_ref().map(|cord| retrieval(cord, view)));
    figures
}
