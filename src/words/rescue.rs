//! The answer to "What if I am stuck?" in words.

use super::assumed::assumed;
use super::before::before_line;
use super::figure::figure;
use super::phrase::listed;
use super::record::records;
use super::rescue_caution::rescue_caution;
use super::rescue_way::way_line;
use super::source::cited;
use super::template::said;
use super::{BeforeLine, CautionLine, Figure, SourceLine, WayLine};
use crate::descent::Stage;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::rescue::{Answer, Hauling, How, Unload, Why};
use crate::source::{AFAG401, CAPSTAN, DELANEY, GEOMETRY, GRAVITY, JUDGED, MUNTER, RAUCH, TURNER};

records! {
    /// Somebody on the ground hauls.
    pub struct HaulLine {
        /// The id of the rig.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// The pull.
        pub pull: Figure,
        /// The rope that is pulled.
        pub rope: String,
        /// How many helpers.
        pub people: Figure,
    }

    /// What if the climber is stuck.
    pub struct RescueReport {
        /// Whether the plan has them on the ground in time.
        pub first: String,
        /// What would, or how.
        pub second: String,
        /// The defaults it rests on; empty where all was said.
        pub assumed: String,
        /// The clocks, and what the hand at the foot holds.
        pub figures: Vec<Figure>,
        /// Every way to the ground.
        pub ways: Vec<WayLine>,
        /// What takes the weight off a jammed hitch.
        pub unload: Vec<&'static str>,
        /// Whether this plan's rope can be hauled, in a sentence.
        pub hauling: &'static str,
        /// What hauling takes, rig by rig.
        pub hauls: Vec<HaulLine>,
        /// What to see to before going.
        pub before: Vec<BeforeLine>,
        /// A plan to print and fill in, a line each.
        pub plan: Vec<String>,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources.
        pub sources: Vec<SourceLine>,
    }
}

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's.
#[must_use]
pub fn rescue_report(answer: &Answer, view: View) -> RescueReport {
    let mut ways = Vec::new();
    for (at, way) in answer.ways.iter().enumerate() {
        ways.push(way_line(way, answer.height, answer.best == Some(at), view));
    }
    let mut cautions = Vec::new();
    for caution in &answer.cautions {
        cautions.push(rescue_caution(*caution, view));
    }
    let (mut hauls, mut unload, mut before) = (Vec::new(), Vec::new(), Vec::new());
    for hauling in &answer.hauls {
        hauls.push(haul_line(hauling, view));
    }
    for what in &answer.unload {
        unload.push(told(*what));
    }
    for what in &answer.before {
        before.push(before_line(what));
    }
    let figures = figures(answer, view);
    let mut pulls = Vec::new();
    for haul in &hauls {
        pulls.push(haul.pull.clone());
    }
    RescueReport {
        first: first(answer, view),
        second: second(answer, &ways),
        assumed: assumed(&answer.assumed, view),
        sources: cited(&[&figures, &pulls], &cautions, &[JUDGED.id]),
        plan: plan(answer, &ways, view),
        figures,
        ways,
        unload,
        hauling: if answer.comes_down {
            "The rope comes to the ground: this is what hauling you up over the crotch takes, to take your weight off something."
        } else {
            "No rope of this plan comes to the ground over the crotch. With one that did, hauling you up would take this."
        },
        hauls,
        before,
        cautions,
    }
}

fn first(answer: &Answer, view: View) -> String {
    let clock = &Spread::point(answer.rescue_clock);
    let total = answer.best.and_then(|best| answer.ways.get(best)?.total);
    let Some(total) = total else {
        return said(
            "As planned nobody can get you down if you cannot help yourself. On the ground within {S} is what counts.",
            &[clock],
            &[],
            view,
        );
    };
    let template = if total.likely > answer.rescue_clock {
        "Not in time: the quickest way to the ground without your help takes about {S}, up to {S}, and {S} is what counts."
    } else if total.high > answer.rescue_clock {
        "Perhaps in time: the quickest way to the ground without your help takes about {S}, but up to {S}, and {S} is what counts."
    } else {
        "In time on paper: the quickest way to the ground without your help takes about {S}, up to {S}, of the {S} that count. No time is safe."
    };
    said(template, &[&total, &Spread::point(total.high), clock], &[], view)
}

fn second(answer: &Answer, ways: &[WayLine]) -> String {
    match answer.best.and_then(|best| ways.get(best)) {
        Some(way) if !answer.cautions.contains(&crate::question::rescue::Caution::NoRescue) => {
            said("That is: {}. Rehearse it low down, with a watch.", &[], &[way.noun], View::default())
        }
        _ => said("What would change it: {}.", &[], &[&listed(&what_would(answer))], View::default()),
    }
}

/// What this plan has not, and what would make a way quicker.
fn what_would(answer: &Answer) -> Vec<String> {
    let mut list = Vec::new();
    for way in &answer.ways {
        let what = match (way.how, &way.stages) {
            (How::LetDown, Err(Why::ShortRope)) => "a rope of at least three times the height of the crotch",
            (How::LetDown, Err(_)) => "an anchor at the foot that pays out under load, with somebody trained at it",
            (How::SecondRope, Err(_)) => "a trained rescuer on the ground, ready to climb",
            (How::SecondRope, Ok(stages)) if stages.contains(&Stage::SetRope) => "a second rope in the tree",
            (How::SecondRope, Ok(_)) => "a rescuer who waits in the harness, on the second rope",
            _ => continue,
        };
        list.push(what.to_owned());
    }
    list.push("a lower climb".to_owned());
    list
}

fn figures(answer: &Answer, view: View) -> Vec<Figure> {
    let mut figures = Vec::new();
    let mut add = |mut figure: Figure, working: String| {
        figure.workings.push(working);
        figures.push(figure);
    };
    let point = |value: f64| Spread::point(value);
    add(
        figure("rescueClock", "on the ground within", &point(answer.rescue_clock), "{S}", view, &[TURNER, JUDGED]),
        "From the moment you hang still: 95 people in 100 last at least 7 minutes, the shortest lasted 4. No time is safe.".to_owned(),
    );
    if let Some(clock) = answer.harness_clock {
        add(
            figure("harnessClock", "from your seat and back within", &point(clock), "{S}", view, &[RAUCH, JUDGED]),
            "For legs that do not move, from leaving the seat: thighs level, legs raised, a stop on a platform, a shorter climb or a faster rig change it.".to_owned(),
        );
    }
    if let Some(total) = answer.best.and_then(|best| answer.ways.get(best)?.total) {
        add(
            figure("rescueTime", "quickest without your help", &total, "{S}", view, &[JUDGED]),
            "The stages of that way, one after the other.".to_owned(),
        );
    }
    if let Some(lowering) = &answer.lowering {
        add(
            figure(
                "footHold",
                "what the hand at the foot holds",
                lowering,
                "{P}",
                view,
                &[CAPSTAN, MUNTER, DELANEY, GRAVITY],
            ),
            said(
                "Your weight, less the least that friction in the crotch takes, ÷ {1}. Friction over the crotch helps whoever lets you down and hinders whoever hauls.",
                &[&point(answer.foot_ratio.low)],
                &[],
                view,
            ),
        );
    }
    if let Some(rope) = answer.lowering_rope {
        add(
            figure("loweringRope", "rope to let you down from the top", &point(rope), "{M}", view, &[GEOMETRY]),
            "Three times the height of the crotch, and the wraps of what pays out.".to_owned(),
        );
    }
    figures
}

fn haul_line(hauling: &Hauling, view: View) -> HaulLine {
    let named = hauling.haul.rig.named();
    let mut pull = figure("haulPull", "the pull", &hauling.pull, "{P}", view, &[CAPSTAN, DELANEY, GEOMETRY, AFAG401]);
    pull.workings.push("Over the crotch as you said it, pulleys with bearings; planned on the most friction, which is what it takes to start.".to_owned());
    HaulLine {
        id: named.id,
        noun: named.noun,
        pull,
        rope: said("{M}", &[&Spread::point(hauling.rope)], &[], view),
        people: figure("haulPeople", "helpers", &hauling.people, "{I}", view, &[JUDGED]),
    }
}

const fn told(what: Unload) -> &'static str {
    match what {
        Unload::OneMorePull => {
            "If the upper hitch still slides up: push it up and pull once more, which takes your weight off the lower one. With the hitches closed up under the crotch there is no room left for it."
        }
        Unload::FootLoop => "A foot loop on a hitch above the jammed one, to stand up in.",
        Unload::SpareCord => {
            "A short spare cord with a hitch of its own on the rope above, or slung over the limb, and a turn or two between it and the harness: the same advantage once more. Carry it within reach."
        }
        Unload::HelperOnTheTail => "A helper on the ground who pulls the tail with you.",
    }
}

/// Who and where, to fill in before anybody leaves the ground.
pub(super) const WHO_AND_WHERE: [&str; 3] = [
    "Who gets me down: ____________ Phone: ____________",
    "Who calls for help: ____________ Number to call: ____________",
    "Where we are, for whoever comes (road, gate, coordinates): ____________",
];

/// A plan to fill in: who, where, how.
fn plan(answer: &Answer, ways: &[WayLine], view: View) -> Vec<String> {
    let mut lines = Vec::new();
    for line in WHO_AND_WHERE {
        lines.push(line.to_owned());
    }
    lines.extend([
        said(
            "Height: {M}. On the ground within {S} once I hang still.",
            &[&Spread::point(answer.height), &Spread::point(answer.rescue_clock)],
            &[],
            view,
        ),
        "Sign that I need help: ____________ Sign that I am all right, every few minutes: ____________".to_owned(),
    ]);
    if let Some(way) = answer.best.and_then(|best| ways.get(best)) {
        let mut number = 1.0;
        for stage in &way.stages {
            lines.push(said("{0}. {} (about {}).", &[&Spread::point(number)], &[stage.how, &stage.time], view));
            number += 1.0;
        }
    } else {
        lines.push("Steps: nobody can get me down on this plan.".to_owned());
    }
    lines.push("On the ground: let me lie or sit as I feel best, loosen the straps, and call for medical help after any time hanging still.".to_owned());
    lines
}
