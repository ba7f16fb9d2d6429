//! The answer to "What does each part carry?" in words.

use super::assumed::assumed;
use super::figure::figure;
use super::limb::limb_line;
use super::load_caution::load_caution;
use super::load_line::load_state;
use super::slip::slip_chart;
use super::source::{cited, source_line};
use super::template::said;
use super::{Figure, LoadLine, LoadState, LoadsReport, WorkDone};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::loads::{Answer, Doing, PieceKind};
use crate::source::{ATTAWAY, GEOMETRY, GRAVITY, JUDGED, OREGON_BOLE};

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's.
#[must_use]
pub fn loads_report(answer: &Answer, view: View) -> LoadsReport {
    let mut states = Vec::new();
    for state in &answer.states {
        states.push(load_state(state, answer.heights, view));
    }
    let mut cautions = Vec::new();
    for caution in &answer.cautions {
        cautions.push(load_caution(*caution, answer.hauled, view));
    }
    let figures = figures(answer, view);
    let limb = limb_line(answer, view);
    let mut all = Vec::new();
    for part in states.iter().flat_map(|state| &state.parts) {
        all.push(part.peak.clone());
        all.extend(part.strength.clone());
    }
    let mut sources = cited(&[&figures, &limb.figures, &all], &cautions, &[]);
    // What is asked of a limb first rests on no figure.
    sources.push(source_line(&OREGON_BOLE));
    LoadsReport {
        first: first(answer, &states, view),
        glance: glance(answer, &states, view),
        second: second(&states),
        assumed: assumed(&answer.assumed, view),
        figures,
        slip: answer.slip.as_ref().map(|slip| slip_chart(slip, view)),
        states,
        limb,
        cautions,
        sources,
        effort: WorkDone { samples: answer.samples, more: answer.more },
    }
}

/// The part with least in hand, and where.
fn least(states: &[LoadState]) -> Option<(&LoadState, &LoadLine, f64)> {
    let mut least: Option<(&LoadState, &LoadLine, f64)> = None;
    for state in states {
        for part in &state.parts {
            let Some(low) = part.ratio.as_ref().and_then(|ratio| ratio.low) else { continue };
            if least.is_none_or(|(_, _, known)| low < known) {
                least = Some((state, part, low));
            }
        }
    }
    least
}

/// What the rope pulls on the harness when it stops a slip at the top.
fn stops_at_the_top(answer: &Answer) -> Option<&Spread> {
    let slipping = answer.states.iter().find(|state| state.doing == Doing::Slipping)?;
    let loads = &slipping.carried.as_ref().ok()?.loads;
    loads.iter().find(|load| load.piece.kind == PieceKind::Harness).map(|load| &load.peak)
}

fn first(answer: &Answer, states: &[LoadState], view: View) -> String {
    if !answer.held && !answer.hauled {
        return "Nothing in this rig holds you once your hands let go, whatever its parts bear.".to_owned();
    }
    let Some((state, part, low)) = least(states) else {
        return "Nothing is known yet of what the parts bear.".to_owned();
    };
    let words: &[&str] = &[&part.noun, &state.noun.to_ascii_lowercase()];
    if part.standing == "short" {
        return said(
            "{} ({}): may be loaded past what it bears, by the high end of the reckoned peaks.",
            &[],
            words,
            view,
        );
    }
    if answer.heights.is_none() && !answer.hauled {
        // Most of what a part carries comes of a slip: a number without it would flatter.
        return said(
            "A slip is not reckoned yet: enter the height of the crotch and the height to climb. Without it, least in hand of the parts whose strength is known: {} ({}).",
            &[],
            words,
            view,
        );
    }
    said(
        "Least in hand of the parts whose strength is known: {} ({}). As rigged it bears {1} times the high end of its reckoned peak, on paper and in sound gear.",
        &[&Spread::point(low)],
        words,
        view,
    )
}

/// The answer in a few words.
fn glance(answer: &Answer, states: &[LoadState], view: View) -> String {
    if !answer.held && !answer.hauled {
        return "Nothing holds you once hands let go".to_owned();
    }
    match least(states) {
        None => "What the parts bear is not known".to_owned(),
        Some((_, part, _)) if part.standing == "short" => "A part may be loaded past what it bears".to_owned(),
        Some(_) if answer.heights.is_none() && !answer.hauled => "A slip is not reckoned yet".to_owned(),
        Some((.., low)) => said("Least in hand, on paper: {1} times the peak", &[&Spread::point(low)], &[], view),
    }
}

fn second(states: &[LoadState]) -> String {
    let (mut unknown, mut under) = (Vec::new(), Vec::new());
    for part in states.iter().flat_map(|state| &state.parts) {
        let list: &mut Vec<&str> = match part.standing {
            // No label says what a crotch bears.
            "not-known" if !matches!(part.kind, "crotch" | "redirect") => &mut unknown,
            "under-minimum" => &mut under,
            _ => continue,
        };
        let noun = plural(part.kind);
        if !list.contains(&noun) {
            list.push(noun);
        }
    }
    let mut text = String::new();
    for (before, list) in [
        ("Not known until its label is read: ", unknown),
        (
            "Under the 5,000 lbf (22 kN) that is asked of what bears a tree worker, or a line’s 5,400, as far as is known: ",
            under,
        ),
    ] {
        let mut between = before;
        for noun in &list {
            text.push_str(between);
            text.push_str(noun);
            between = ", ";
        }
        if !list.is_empty() {
            text.push_str(". ");
        }
    }
    text.push_str("What the tree bears no sum here can tell.");
    text
}

fn plural(kind: &str) -> &'static str {
    match kind {
        "rope" => "the rope",
        "haul-cord" => "the haul cord",
        "hitch-cord" => "hitch cords",
        "connector" => "connectors",
        "pulley" => "pulleys",
        "ring" => "rings",
        "anchor" => "the rope at its tie",
        "knot" => "the knot",
        _ => "the harness",
    }
}

fn figures(answer: &Answer, view: View) -> Vec<Figure> {
    let mut figures =
        vec![figure("climberWeight", "your weight, all-up", &answer.weight, "{N}", view, &[GRAVITY, JUDGED])];
    if let Some(figure) = figures.last_mut() {
        figure.workings.push("Body mass and kit under standard gravity.".to_owned());
    }
    if let Some(slip) = &answer.slip {
        let point = Spread::point;
        figures.push(figure("fallFactor", "fall factor at the top", &point(slip.factor), "{2}", view, &[GEOMETRY]));
        if let Some(figure) = figures.last_mut() {
            figure.workings.push(
                "How far you drop, slack and what the hitch gives back, over the rope that stops you; hands and arms that hold on are not counted.".to_owned(),
            );
        }
        if let Some(stops) = stops_at_the_top(answer) {
            let mut figure =
                figure("arrestForce", "what stops you at the top", stops, "{N}", view, &[ATTAWAY, GEOMETRY]);
            figure.workings.push(
                "weight × (1 + √(1 + 2 × fall factor × force at a strain of one ÷ weight)). The stem that gives, the hitch that slips and the body that bends are left out: they lessen it, and none can be counted on."
                    .to_owned(),
            );
            figures.push(figure);
        }
        if let Some(lowest) = slip.lowest_catch {
            let mut figure = figure(
                "lowestCatch",
                "below this hitch height the ground may come first, in a slip",
                &point(lowest),
                "{M}",
                view,
                &[GEOMETRY, ATTAWAY],
            );
            figure.workings.push("Slack at its most, rope at its softest, a hitch that gives back most and the heaviest climber; above it nothing is promised.".to_owned());
            figures.push(figure);
        }
    }
    figures
}
