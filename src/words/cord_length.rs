//! The answer to "What length of cord?" in words.

use super::assumed::assumed_too;
use super::cord_caution::cord_caution;
use super::cord_figures::figures;
use super::cord_piece::{cord_piece, count};
use super::figure::figure;
use super::shares::{Shares, share, shares};
use super::source::cited;
use super::template::{said, say};
use super::{CordReport, CordShape};
use crate::cord::{Cut, Make};
use crate::field::{Row, Spread};
use crate::gear::{CORD_ENDS, Ends};
use crate::quantity::{View, plain};
use crate::question::cut_length::{Answer, Asked};
use crate::source::{GEOMETRY, JUDGED};

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's. As they are written, the pieces add up to the whole.
#[must_use]
pub fn cord_report(answer: &Answer, view: View) -> CordReport {
    let mut lengths = Vec::new();
    for (.., length) in &answer.cut.pieces {
        lengths.push(length.likely);
    }
    let shared = shares(&lengths, view);
    let mut pieces = Vec::new();
    let mut items = Vec::new();
    for ((piece, place, length), part) in answer.cut.pieces.iter().zip(&shared.parts) {
        let piece = cord_piece(answer, (*piece, *place), length, *part, view);
        items.push(piece.length.clone());
        pieces.push(piece);
    }
    let mut total = figure("cutLength", cut_noun(answer), &answer.cut.total, "{M}", view, &[GEOMETRY, JUDGED]);
    total.text = share(shared.whole, view);
    let mut sum = String::new();
    for item in &items {
        if !sum.is_empty() {
            sum.push_str(" + ");
        }
        sum.push_str(&item.text);
    }
    total.workings.push(sum);
    let mut cautions = Vec::new();
    for caution in &answer.cautions {
        cautions.push(cord_caution(*caution, view));
    }
    let figures = figures(answer, &total, view);
    let sources = cited(&[&figures, &items], &cautions, &[]);
    let make = &answer.make;
    CordReport {
        first: first(answer, &shared, view),
        second: second(answer, view),
        assumed: assumed_too(&usual(&answer.usual, &answer.make, &answer.cut, view), &answer.assumed, view),
        figures,
        pieces,
        total,
        shape: CordShape {
            ends: make.ends.named().id,
            closed: make.is_loop(),
            coils: make.coils,
            strands: make.pattern.lay.strands(),
            crossings: make.crossings,
            legs: make.pattern.legs,
            eyes: make.pattern.eyes,
        },
        cautions,
        sources,
    }
}

/// What the whole of it is called.
fn cut_noun(answer: &Answer) -> &'static str {
    match (answer.make.ends, answer.asked) {
        (Ends::Sewn, _) => "cord to buy",
        (_, Asked::Length) => "cord to cut",
        (_, Asked::Leaves) => "cord that was cut",
    }
}

/// How its finished length is measured.
fn measured(answer: &Answer) -> &'static str {
    match answer.make.pattern.eyes {
        _ if answer.make.is_loop() => "inside",
        2 => "from eye to eye",
        0 => "between its ends",
        _ => "from its eye to its stopper",
    }
}

/// What to cut or to buy, or what a cut leaves.
fn first(answer: &Answer, shared: &Shares, view: View) -> String {
    let whole = share(shared.whole, view);
    let hitch = answer.cord_use.is_hitch();
    match (answer.make.ends, answer.asked) {
        (Ends::Sewn, _) if answer.make.pattern.eyes == 1 => {
            said("Buy it {} long from its eye to its end.", &[], &[&whole], view)
        }
        (Ends::Sewn, _) => said("Buy it {M} long {}; nothing is cut.", &[&answer.finished], &[measured(answer)], view),
        (_, Asked::Leaves) if hitch => {
            said("{} of cord leaves {M} of free legs in all.", &[&answer.cut.legs], &[&whole], view)
        }
        (_, Asked::Leaves) => {
            said("{} of cord comes out at {M} {}.", &[&answer.finished], &[&whole, measured(answer)], view)
        }
        (_, Asked::Length) => {
            let mut text = said("About {} of cord", &[], &[&whole], view);
            if hitch {
                say(&mut text, " for {M} of free legs in all", &[&answer.cut.legs], &[], view);
            }
            let Spread { likely, high, .. } = answer.cut.total;
            if likely < high {
                let template = "; {M} if everything takes the most it may. Cut the longer";
                say(&mut text, template, &[&Spread::point(high)], &[], view);
            }
            text + "."
        }
    }
}

/// What it comes out at, and how to begin.
fn second(answer: &Answer, view: View) -> String {
    let (cut, make) = (&answer.cut, &answer.make);
    if !answer.cord_use.is_hitch() {
        if answer.asked == Asked::Leaves {
            let Spread { low, high, .. } = answer.finished;
            let ends = [&Spread::point(low), &Spread::point(high)];
            return said("It may be from {M} to {M}, as its knots are tied.", &ends, &[], view);
        }
        let mut text = said("Finished it is {M} {}", &[&answer.finished], &[measured(answer)], view);
        if let Some((count, length)) = &answer.strands {
            let count = plain(f64::from(*count), 0, view);
            say(&mut text, ": {} strands of {M}, and {M} for the hand", &[length, &make.hand_end], &[&count], view);
        }
        return text + ".";
    }
    let coils = if make.coils == 1.0 { "coil" } else { "coils" };
    let mut text = said("In {} {}", &[], &[&count(make.coils, view), coils], view);
    say(&mut text, " it is {M} {} off the rope.", &[&answer.finished], &[measured(answer)], view);
    let template = match make.ends {
        Ends::Sewn => return text,
        Ends::Button => " Begin in its middle: the first coils leave {M} to either end.",
        Ends::Loop => " Tied on before its ends are joined, it begins with a working end of {M}.",
        Ends::Scaffold | Ends::DoubleOverhand => " Begin with a working end of {M} before the first coil.",
    };
    say(&mut text, template, &[&cut.working_end], &[], view);
    text
}

/// What is usual of a cord and stands for what was not said, each by its noun.
pub(super) fn usual(rows: &[&'static Row], make: &Make, cut: &Cut, view: View) -> Vec<(&'static str, String)> {
    let mut usual = Vec::new();
    for row in rows {
        let value = match row.id {
            "hitchCoils" => count(make.coils, view),
            "hitchCrossings" => count(make.crossings, view),
            id if id == CORD_ENDS.row.id => make.ends.named().noun.to_owned(),
            "freeLeg" => said("{M}", &[&cut.legs], &[], view),
            _ => said("{M}", &[&make.finished(cut)], &[], view),
        };
        usual.push((row.noun, value));
    }
    usual
}
