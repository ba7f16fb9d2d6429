//! The answer to "What does each part carry?" in words.

use super::chart::{Chart, ChartLine, Mark, Point, axis, units};
use super::figure::figure;
use super::load_caution::load_caution;
use super::load_line::load_state;
use super::source::cited;
use super::template::{said, say};
use super::verdict::assumed;
use super::{Figure, LimbLine, LoadLine, LoadState, LoadsReport, WorkDone};
use crate::field::Spread;
use crate::gear::{FULL_BODY_LIMIT, SEAT_HARNESS_LIMIT};
use crate::quantity::{FOOT, METRE, System, View};
use crate::question::loads::{Answer, LimbFact, Slip};
use crate::source::{ATTAWAY, GEOMETRY, GRAVITY, JUDGED, OREGON_BOLE, RESCUE_MANUAL, Source};
use crate::tree::{Bending, LEAST_BOLE, SHARE_THAT_RULES_OUT};

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
        cautions.push(load_caution(*caution, view));
    }
    let figures = figures(answer, view);
    let limb = limb_line(answer, view);
    let mut all = Vec::new();
    for part in states.iter().flat_map(|state| &state.parts) {
        all.push(part.peak.clone());
        all.extend(part.strength.clone());
    }
    let sources = cited(&[&figures, &limb.figures, &all], &cautions);
    LoadsReport {
        first: first(&states, view),
        second: second(&states),
        assumed: assumed(&answer.assumed, view),
        figures,
        slip: answer.slip.as_ref().map(|slip| chart(slip, view)),
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

fn first(states: &[LoadState], view: View) -> String {
    let Some((state, part, low)) = least(states) else {
        return "Nothing is known yet of what the parts bear.".to_owned();
    };
    let times = Spread::point(low);
    let words: &[&str] = &[&part.noun, &state.noun.to_ascii_lowercase()];
    if part.standing == "short" {
        return said(
            "{} ({}): may be loaded past what it bears, which is {1} times the highest peak.",
            &[&times],
            words,
            view,
        );
    }
    said(
        "Least in hand of the parts whose strength is known: {} ({}). As rigged it bears {1} times the highest peak, on paper and in sound gear.",
        &[&times],
        words,
        view,
    )
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
                "How far you drop over how much rope is out; hands and arms that hold on are not counted.".to_owned(),
            );
        }
        let top = (slip.likely.last(), slip.stiff.last());
        if let (Some(likely), Some(stiff)) = top {
            let spread = Spread::new(*likely, *likely, *stiff);
            let mut figure =
                figure("arrestForce", "what stops you at the top", &spread, "{N}", view, &[ATTAWAY, GEOMETRY]);
            figure.workings.push(
                "weight × (1 + √(1 + 2 × fall factor × force at a strain of one ÷ weight)), to the stiffest rope of its kind. The stem that gives, the hitch that slips and the body that bends are left out: they lessen it, and none can be counted on."
                    .to_owned(),
            );
            figures.push(figure);
        }
        if let Some(lowest) = slip.lowest_catch {
            let mut figure = figure(
                "lowestCatch",
                "hitch height for a catch above the ground",
                &point(lowest),
                "{M}",
                view,
                &[GEOMETRY, ATTAWAY],
            );
            figure.workings.push("Slack at its most, rope at its softest and a hitch that gives back most; below this you may meet the ground first.".to_owned());
            figures.push(figure);
        }
    }
    figures
}

/// What stops somebody at each height.
fn chart(slip: &Slip, view: View) -> Chart {
    let length = if view.system == System::Si { METRE } else { FOOT };
    let [_, force] = units(view);
    let mut lines = Vec::new();
    let mut most = FULL_BODY_LIMIT.in_newtons();
    for (id, noun, forces) in
        [("likely-rope", "likely rope", &slip.likely), ("stiffest-rope", "stiffest of its kind", &slip.stiff)]
    {
        let mut points = Vec::new();
        for (height, newtons) in slip.heights.iter().zip(forces) {
            most = if *newtons > most { *newtons } else { most };
            points.push(Point { x: length.count(*height), y: force.count(*newtons) });
        }
        lines.push(ChartLine { id, noun, points });
    }
    let ends = (slip.heights.first().copied().unwrap_or(0.0), slip.heights.last().copied().unwrap_or(0.0));
    let mut text = said(
        "What the rope pulls on you when it stops a drop of {M}, against the height of your lower hitch: it is hardest at the top, where least rope is out.",
        &[&Spread::point(slip.slack.likely)],
        &[],
        view,
    );
    match slip.lowest_catch {
        Some(lowest) => say(
            &mut text,
            " With the hitch below {M} you may meet the ground first.",
            &[&Spread::point(lowest)],
            &[],
            view,
        ),
        None => text
            .push_str(" Nowhere on this climb is there room enough under you to count on a catch before the ground."),
    }
    let mark = |noun, newtons: f64| Mark { noun, y: force.count(newtons) };
    Chart {
        noun: "A slip at each height",
        text,
        x: axis("height of the lower hitch", length, ends),
        y: axis("what stops you", force, (0.0, most)),
        lines,
        bands: Vec::new(),
        marks: vec![
            mark("seat harness, 4 kN", SEAT_HARNESS_LIMIT.in_newtons()),
            mark("full-body harness, 8 kN", FULL_BODY_LIMIT.in_newtons()),
        ],
        you: None,
    }
}

fn limb_line(answer: &Answer, view: View) -> LimbLine {
    let (id, text) = match answer.limb.as_ref().map(|limb| limb.says) {
        Some(Bending::DeadWood) => {
            ("dead-wood", "Dead or decayed wood is always refused, whatever a sum says. Choose another tie-in.")
        }
        Some(Bending::RuledOut) => (
            "ruled-out",
            "Bending alone rules this limb out. Choose a thicker one, nearer to the stem, or the stem itself.",
        ),
        Some(Bending::NotRuledOut) => (
            "not-ruled-out",
            "Bending in sound, clear wood does not rule it out; this sum cannot see decay, dead wood, cracks or a weak union. Have a qualified arborist look before anybody hangs on it.",
        ),
        None => (
            "not-known",
            "Not reckoned: that takes the thickness of the limb and the species. A qualified arborist looks at both.",
        ),
    };
    LimbLine {
        id,
        text: text.to_owned(),
        checks: checks(answer, view),
        figures: answer.limb.as_ref().map_or_else(Vec::new, |limb| limb_figures(limb, view)),
    }
}

fn checks(answer: &Answer, view: View) -> Vec<String> {
    let forearm = match answer.thinner_than_forearm {
        Some(true) => "It is thinner than your forearm: too thin to tie in to.",
        Some(false) => "It is at least as thick as your forearm, the first thing that is asked of a tie-in.",
        None => "It must be at least as thick as your forearm.",
    };
    let bole = Spread::point(LEAST_BOLE.in_metres());
    let thin = match answer.thinner_than_bole {
        Some(true) => {
            "It is thinner than {c0}: above a bole of that nobody climbs in a conifer unsecured, and none is a tie-in."
        }
        _ => "In a conifer nobody climbs unsecured above a bole of {c0}.",
    };
    let mut checks = vec![
        forearm.to_owned(),
        said(thin, &[&bole], &[], view),
        "The rope goes round the stem and not out along the limb, and never on a single smaller branch.".to_owned(),
    ];
    if answer.limb.as_ref().is_none_or(|limb| !limb.looked_at) {
        checks.push("Nobody has said yet whether it lives: look from the ground before anybody trusts it.".to_owned());
    }
    checks
}

fn limb_figures(limb: &LimbFact, view: View) -> Vec<Figure> {
    let point = Spread::point;
    let mut figures = Vec::new();
    let mut add = |id, noun, number: f64, slot: &str, sources: &[Source], working: String| {
        let mut figure = figure(id, noun, &point(number), slot, view, sources);
        figure.workings.push(working);
        figures.push(figure);
    };
    let pull = "The greatest peak on the crotch in any state.".to_owned();
    add("limbPull", "greatest pull on it", limb.pull, "{N}", &[GEOMETRY, JUDGED], pull);
    if let Some(moment) = limb.moment {
        let working = "pull × distance from the stem × the sine of its angle from upright, with the rope as far out as it may lie";
        let sources = &[GEOMETRY, RESCUE_MANUAL];
        add("limbMoment", "bending at the union, kN m", moment / 1e3, "{2}", sources, working.to_owned());
    }
    if let (Some(stress), Some((strength, source))) = (limb.stress, limb.strength) {
        let working = "32 × bending ÷ (π × thickness³), a round section".to_owned();
        add("limbStress", "stress there, MPa", stress / 1e6, "{1}", &[GEOMETRY], working);
        let working = said(
            "The mean less two standard deviations, without knots, taper or a union. From {%} of it on, bending rules a limb out.",
            &[&point(SHARE_THAT_RULES_OUT)],
            &[],
            view,
        );
        let sources = &[source, OREGON_BOLE];
        add("limbStrength", "low strength of green clear wood, MPa", strength / 1e6, "{0}", sources, working);
    }
    figures
}
