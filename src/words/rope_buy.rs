//! What to buy, and what the rope that somebody has comes to, in words.

use super::Figure;
use super::rope_measure::{all_begun, begun, large, measured, text, whole};
use super::template::{say, worded};
use crate::field::Spread;
use crate::quantity::{System, View};
use crate::question::rope_length::Answer;
use crate::rope::{ADDING_UP, Ladder, Owned, Stock};
use crate::source::{GEOMETRY, JUDGED, ROPE_LADDER};

/// What one can buy in a view.
pub(super) fn sold([metric, us]: &[Stock; 2], view: View) -> &Stock {
    if view.system == System::Si { metric } else { us }
}

/// Which length to buy, and what is left of it; nothing where no height is planned.
pub(super) fn buy(answer: &Answer, need: Spread, view: View) -> String {
    let Stock { ladder, buy, might_do, .. } = sold(&answer.stock, view);
    if !answer.planned {
        return String::new();
    }
    let Some(length) = buy else {
        let unit = if view.system == System::Si { " m" } else { " ft" };
        let longest = text(whole(ladder.longest(), view), view);
        let needed = large(need.high, view) + unit;
        let mut text = worded(
            "None of the lengths to buy reaches if everything takes the most it may: the longest is {}, and it takes {}.",
            &[&longest, &needed],
        );
        might_be_enough(&mut text, *might_do, view);
        return text;
    };
    let steps = whole(*length, view);
    let left = |need: f64| text((steps - need).max(0.0), view);
    let mut words = worded(
        "The shortest to buy is {}; about {} of it is left over, {} at the least.",
        &[&text(steps, view), &left(need.likely), &left(need.high)],
    );
    might_be_enough(&mut words, *might_do, view);
    words
}

fn might_be_enough(words: &mut String, length: Option<f64>, view: View) {
    if let Some(length) = length {
        say(
            words,
            " {} would reach only where everything comes out as likely: do not count on it.",
            &[],
            &[&text(whole(length, view), view)],
            view,
        );
    }
}

/// The length to buy, as a figure.
pub(super) fn bought(ladder: &Ladder, length: f64, view: View) -> Figure {
    let mut bought = measured(
        ("ropeToBuy", "rope to buy"),
        &Spread::point(length),
        Spread::point(whole(length, view)),
        view,
        &[GEOMETRY, ROPE_LADDER],
    );
    let mut each = "The shortest that reaches if everything takes the most it may, of ".to_owned();
    let mut before = "";
    for length in &ladder.0 {
        each.push_str(before);
        each.push_str(&text(whole(*length, view), view));
        before = "; ";
    }
    bought.workings.push(each + ".");
    bought
}

/// The length to buy and what is left of it, as figures.
pub(super) fn to_buy(answer: &Answer, need: Spread, view: View) -> Vec<Figure> {
    let Stock { ladder, buy, .. } = sold(&answer.stock, view);
    let Some(length) = buy.filter(|_| answer.planned) else { return Vec::new() };
    let steps = whole(length, view);
    let less = |by: f64| (length - by).max(0.0);
    let left = Spread::new(less(answer.need.high), less(answer.need.likely), less(answer.need.low));
    let shown = |need: f64| (steps - need).max(0.0);
    let shown = Spread::new(shown(need.high), shown(need.likely), shown(need.low));
    let mut left = measured(("ropeLeftOver", "left over of it"), &left, shown, view, &[GEOMETRY, ROPE_LADDER]);
    left.workings.push(worded("{} less {}", &[&text(steps, view), &text(need.likely, view)]));
    vec![bought(ladder, length, view), left]
}

/// How high the rope goes that somebody has, and whether it reaches; nothing where they have none.
pub(super) fn has(answer: &Answer, view: View) -> String {
    let Some(Owned { length, highest, short, .. }) = &answer.owned else { return String::new() };
    let rope = text(whole(*length, view), view);
    let high = |height: f64| text(whole(height, view), view);
    let mut words = match *highest {
        [Some(sure), Some(likely), _] => worded(
            "Your {} goes over a crotch up to {} high if everything takes the most it may, {} as likely as not.",
            &[&rope, &high(sure), &high(likely)],
        ),
        [_, Some(likely), _] => worded(
            "Your {} goes over a crotch up to {} high as likely as not, and over none if everything takes the most it may.",
            &[&rope, &high(likely)],
        ),
        _ => worded("Your {} goes over no crotch.", &[&rope]),
    };
    if answer.planned {
        words.push_str(if short.high <= ADDING_UP {
            " For this one it reaches on paper."
        } else if short.likely <= ADDING_UP {
            " For this one it may be too short."
        } else {
            " For this one it is too short."
        });
    }
    words
}

/// How high it goes, and how far above the ground it ends, as figures.
pub(super) fn of_owned(answer: &Answer, view: View) -> Vec<Figure> {
    let mut figures = Vec::new();
    let Some(Owned { length, highest: [sure, likely, most], above, .. }) = &answer.owned else { return figures };
    if let (Some(likely), Some(most)) = (likely, most) {
        let height = Spread::new(sure.unwrap_or(0.0), *likely, *most);
        let shown = Spread::new(whole(height.low, view), whole(height.likely, view), whole(height.high, view));
        let mut height = measured(("highestCrotch", "highest crotch for your rope"), &height, shown, view, &[GEOMETRY]);
        height.workings.push(worded("The height that takes {} of rope.", &[&text(whole(*length, view), view)]));
        figures.push(height);
    }
    if let Some(above) = above {
        let steps = all_begun(*above, view);
        let mut above =
            measured(("ropeEndsAbove", "your rope’s end above the ground"), above, steps, view, &[GEOMETRY]);
        above.workings.push("Going down, without anything to spare, less your rope.".to_owned());
        figures.push(above);
    }
    figures
}

/// A thin line beside the rope, as a figure.
fn line(name: (&'static str, &'static str), length: &Spread, working: &str, view: View) -> Figure {
    let mut line = measured(name, length, all_begun(*length, view), view, &[GEOMETRY, JUDGED]);
    line.workings.push(working.to_owned());
    line
}

/// The cord that brings the anchor down, as a figure.
pub(super) fn retrieval(cord: &Spread, view: View) -> Figure {
    line(("retrievalCord", "retrieval cord"), cord, "From the crotch to where you stand, and its knot.", view)
}

/// The thin lines beside the rope, as figures.
pub(super) fn lines(answer: &Answer, view: View) -> Vec<Figure> {
    let mut lines = Vec::new();
    lines.extend(answer.retrieval_cord.as_ref().map(|cord| retrieval(cord, view)));
    let name = ("presetLine", "preset line, left in the tree");
    let working = "A loop over the crotch and down both sides, and its knot.";
    lines.push(line(name, &answer.preset_line, working, view));
    lines
}

/// How long to say that something is: what it is as likely as not, or else what it may be.
pub(super) fn about(by: Spread, [about, may]: [&'static str; 2], view: View) -> (&'static str, String) {
    let (words, length) = if by.likely > ADDING_UP { (about, by.likely) } else { (may, by.high) };
    (words, text(begun(length, view), view))
}
