//! The answer to "Which advantage?" in words.

use super::assumed::assumed;
use super::caution::caution_line;
use super::chart::{ALL_UP, Band, Chart, ChartLine, Point, axis, told, units};
use super::drawing::drawing;
use super::figures::figures;
use super::first::first;
use super::missing::missing_lines;
use super::report::{AdvantageReport, RigLine};
use super::source::cited;
use super::template::{said, say};
use super::verdict::verdict_line;
use super::{CautionLine, Figure, WorkDone};
use crate::ascent::{Answer as Ascent, Missing};
use crate::climber::Arms;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::advantage::{Answer, Beside, Kit, Standing};

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's.
#[must_use]
pub fn advantage_report(answer: &Answer, view: View) -> AdvantageReport {
    let mut rigs = Vec::new();
    for (at, beside) in answer.rigs.iter().enumerate() {
        rigs.push(rig_line(beside, answer.least == Some(at), answer.said == Some(beside.ascent.rig_name), view));
    }
    let person = answer.rigs.iter().find(|beside| !beside.ascent.hauled);
    let mut of_person = Vec::new();
    let mut missing = Vec::new();
    let mut cautions = Vec::new();
    if let Some(beside) = person {
        of_person = kept(
            figures(&beside.ascent, view),
            &["climberWeight", "armPull", "handHold", "gripPull", "normPull", "planningPull"],
        );
        missing = missing_lines(&beside.ascent);
        // What is true of one rig alone stands beside it.
        cautions = caution_lines(&beside.ascent, false, view);
    }
    let mut all_cautions = cautions.clone();
    for rig in &rigs {
        all_cautions.extend_from_slice(&rig.cautions);
    }
    let mut lists: Vec<&[Figure]> = vec![&of_person];
    for rig in &rigs {
        lists.push(&rig.figures);
    }
    let sources = cited(&lists, &all_cautions, &[]);
    AdvantageReport {
        first: which(answer, view),
        second: lesser(answer, view),
        assumed: assumed(&answer.assumed, view),
        missing,
        figures: of_person,
        chart: chart(answer, view),
        rigs,
        cautions,
        sources,
        effort: WorkDone { samples: answer.samples, more: answer.more },
    }
}

/// The figures of some ids, in their order.
fn kept(figures: Vec<Figure>, ids: &[&str]) -> Vec<Figure> {
    let mut kept = Vec::new();
    for figure in figures {
        if ids.contains(&figure.id) {
            kept.push(figure);
        }
    }
    kept
}

/// What is shown of each rig.
const SHOWN: &[&str] = &[
    "pullNeeded",
    "armShare",
    "handShare",
    "chance",
    "reachChance",
    "realAdvantage",
    "idealAdvantage",
    "gain",
    "strokes",
    "allStrokes",
    "workingTime",
    "lastingTime",
    "ropeHandled",
];

fn rig_line(beside: &Beside, least: bool, chosen: bool, view: View) -> RigLine {
    let ascent = &beside.ascent;
    let named = ascent.rig_name.named();
    RigLine {
        id: named.id,
        noun: named.noun,
        hauled: ascent.hauled,
        chosen,
        standing: match beside.standing() {
            Standing::Works => "works",
            Standing::AtLimit => "at-limit",
            Standing::Out => "out",
            Standing::Unknown => "not-known",
        },
        verdict: verdict_line(ascent.verdict, false),
        first: first(ascent, view),
        least,
        figures: kept(figures(ascent, view), SHOWN),
        gear: gear(&beside.kit, view),
        cautions: caution_lines(ascent, true, view),
        drawing: drawing(ascent, view),
    }
}

/// The cautions that are the rig's, or those that are the climber's on all.
fn caution_lines(ascent: &Ascent, of_rig: bool, view: View) -> Vec<CautionLine> {
    let mut lines = Vec::new();
    for caution in &ascent.cautions {
        if caution.is_of_rig() == of_rig {
            lines.push(caution_line(*caution, view));
        }
    }
    lines
}

/// What a rig takes beyond rope, harness and the hitch that holds the climber.
fn gear(kit: &Kit, view: View) -> Vec<String> {
    let mut gear = Vec::new();
    for (kind, count) in &kit.turns {
        let plural = if *count > 1 { "s" } else { "" };
        // Pulleys take the ending in the middle: "2 pulleys with bearings".
        let noun = kind.named().noun;
        let (head, tail) = noun.split_at(noun.find(' ').unwrap_or(noun.len()));
        gear.push(told("{0} {}{}{}", &[*count as f64], &[head, plural, tail], view));
    }
    if kit.hitches > 0 {
        let template = if kit.hitches > 1 { "{0} more hitches and their cords" } else { "{0} more hitch and its cord" };
        gear.push(told(template, &[kit.hitches as f64], &[], view));
    }
    match &kit.cord {
        Some(cord) => gear.push(said("about {M} of haul cord", &[cord], &[], view)),
        None if kit.cords > 0 => gear.push("a haul cord".to_owned()),
        None => {}
    }
    gear
}

/// Which rig is the least that works.
fn which(answer: &Answer, view: View) -> String {
    let Some(least) = answer.least.and_then(|at| answer.rigs.get(at)) else {
        let Some(lightest) = lightest(answer) else { return String::new() };
        let noun = lightest.ascent.rig_name.named().noun;
        let mut text = if lightest.standing() == Standing::Unknown {
            "How strong you are is not known, so no rig can be named.".to_owned()
        } else {
            let template = "With none of the rigs you haul yourself {} in four of five reckoned climbs.";
            said(template, &[], &[does(lightest)], view)
        };
        let template = " The lightest pull that one of them takes is about {P}: {}.";
        say(&mut text, template, &[&lightest.ascent.need], &[noun], view);
        chosen(answer, &mut text, view);
        return text;
    };
    let ascent = &least.ascent;
    let mut text = said(
        "The least kit with which {} in four of five reckoned climbs: {}. It takes about {P}",
        &[&ascent.need],
        &[succeeds(least), ascent.rig_name.named().noun],
        view,
    );
    if let Some(arms) = &ascent.arms {
        say(&mut text, ", {%} of what your arms give", &[&arms.share], &[], view);
    }
    if let Some(strokes) = &ascent.taken_up.all_strokes {
        say(&mut text, ", in about {I} strokes", &[strokes], &[], view);
    }
    if let Some(time) = ascent.lasting_time.filter(|time| time.likely.is_finite()) {
        say(&mut text, " and {S} with rests", &[&time], &[], view);
    }
    text.push('.');
    match answer.easy.and_then(|at| answer.rigs.get(at)) {
        Some(_) if answer.easy == answer.least => {}
        Some(Beside { ascent, .. }) => {
            let noun = ascent.rig_name.named().noun;
            say(&mut text, " Easier to repeat: {}, at about {P} a pull.", &[&ascent.need], &[noun], view);
        }
        None => text.push_str(" None that succeeds on paper takes less than half of your strength."),
    }
    chosen(answer, &mut text, view);
    text
}

/// Whether the count of pulls is known, so that the whole climb counts.
fn is_counted(beside: &Beside) -> bool {
    beside.ascent.verdict.is_some_and(|verdict| verdict.reaches.is_some())
}

/// What counts as success with a rig.
fn succeeds(beside: &Beside) -> &'static str {
    if is_counted(beside) { "you come to the height in time" } else { "one pull succeeds" }
}

/// The same, asked.
fn does(beside: &Beside) -> &'static str {
    if is_counted(beside) { "do you come to the height in time" } else { "does one pull succeed" }
}

/// What the rig that was chosen takes, where another is named.
fn chosen(answer: &Answer, text: &mut String, view: View) {
    let named = answer.least.and_then(|at| answer.rigs.get(at)).map(|beside| beside.ascent.rig_name);
    let said = answer.rigs.iter().find(|beside| answer.said == Some(beside.ascent.rig_name));
    if let Some(Beside { ascent, .. }) = said.filter(|beside| named != Some(beside.ascent.rig_name)) {
        let noun = ascent.rig_name.named().noun;
        say(text, " The one you chose, {}, takes about {P}.", &[&ascent.need], &[noun], view);
    }
}

/// The rig that asks least of a pull, of those that need no helper.
fn lightest(answer: &Answer) -> Option<&Beside> {
    let mut lightest: Option<&Beside> = None;
    for beside in answer.rigs.iter().filter(|beside| !beside.ascent.hauled) {
        if lightest.is_none_or(|known| beside.ascent.need.likely < known.ascent.need.likely) {
            lightest = Some(beside);
        }
    }
    lightest
}

/// What the next lesser rig lacks, or what would bring one within reach.
fn lesser(answer: &Answer, view: View) -> String {
    let own = answer.rigs.iter().find(|beside| !beside.ascent.hauled);
    if let Some(own) = own.filter(|beside| beside.standing() == Standing::Unknown) {
        if own.ascent.arms.is_some() {
            return "Measure your grip, or your pull with what you will hold, and enter it. The pull each rig takes stands below."
                .to_owned();
        }
        let beside =
            if own.ascent.missing.contains(&Missing::Pull) { "" } else { "; or enter your grip, or age and sex" };
        return said("Measure your pull and enter it{}. The pull each rig takes stands below.", &[], &[beside], view);
    }
    let helped = answer.rigs.iter().find(|beside| beside.ascent.hauled && beside.standing() == Standing::Works);
    let Some(least) = answer.least.and_then(|at| answer.rigs.get(at)) else {
        let lightest = lightest(answer);
        let stronger = lightest.and_then(|beside| beside.ascent.verdict?.stronger);
        let mut text = match stronger {
            Some(times) if times < 100.0 => told(
                "Arms and hands {1} times as strong, or so much less to lift, would bring it to {} of five reckoned climbs. ",
                &[times],
                &[if lightest.is_some_and(|beside| beside.standing() == Standing::Out) { "one" } else { "four" }],
                view,
            ),
            _ => "A stroke that gains more, more time, or a helper, is what it would take. ".to_owned(),
        };
        match helped {
            Some(helped) => {
                let noun = helped.ascent.rig_name.named().noun;
                say(
                    &mut text,
                    "With somebody on the ground who hauls, this succeeds on paper: {}.",
                    &[],
                    &[noun],
                    view,
                );
            }
            None => text.push_str("Nor do the helper’s rigs succeed with the helper’s pull that is reckoned with."),
        }
        return text;
    };
    // Of what takes less kit, the one that comes nearest.
    let less = |beside: &&Beside| {
        !beside.ascent.hauled && beside.standing() != Standing::Works && beside.kit.key() <= least.kit.key()
    };
    let mut nearest: Option<&Beside> = None;
    for beside in answer.rigs.iter().filter(less) {
        if nearest.is_none_or(|known| beside.ascent.need.likely < known.ascent.need.likely) {
            nearest = Some(beside);
        }
    }
    let mut text = match nearest {
        Some(nearest) => said(
            "The nearest with no more kit than that, {}, would take about {P} a pull.",
            &[&nearest.ascent.need],
            &[nearest.ascent.rig_name.named().noun],
            view,
        ),
        None => "Nothing here takes less kit.".to_owned(),
    };
    let lacks = |missing: &Missing| matches!(missing, Missing::WayDown | Missing::SecondPerson);
    text.push_str(if least.ascent.missing.iter().any(lacks) {
        " It is not yet a plan without a way down and somebody on the ground: try it at knee height first."
    } else {
        " Try it at knee height first."
    });
    text
}

/// The pull that each rig takes, against the weight.
fn chart(answer: &Answer, view: View) -> Chart {
    let [mass, force] = units(view);
    let pulls = &answer.pulls;
    let mut most = 0.0;
    let mut lines = Vec::new();
    for (at, needed) in &pulls.lines {
        let Some(beside) = answer.rigs.get(*at) else { continue };
        let named = beside.ascent.rig_name.named();
        let mut points = Vec::new();
        for (kilograms, newtons) in pulls.masses.iter().zip(needed) {
            most = if *newtons > most { *newtons } else { most };
            points.push(Point { x: mass.count(*kilograms), y: force.count(*newtons) });
        }
        lines.push(ChartLine { id: named.id, noun: named.noun, points });
    }
    let mut bands = Vec::new();
    let mut text =
        "The pull that one stroke takes, against the weight of climber and kit, a line for each rig you haul yourself."
            .to_owned();
    if let Some(strength) = &answer.strength {
        let Spread { low, high, .. } = strength.force;
        most = if high > most { high } else { most };
        let noun = if strength.is_hands { "what your hands hold" } else { "what your arms give" };
        bands.push(Band { noun, low: force.count(low), high: force.count(high) });
        let with = if strength.pulls_with == Arms::One { "one hand" } else { "both hands" };
        let ends = [&Spread::point(low), &Spread::point(high)];
        say(&mut text, " The band is {}, {N} to {N} with {}.", &ends, &[noun, with], view);
    }
    let ends = (pulls.masses.first().copied().unwrap_or(0.0), pulls.masses.last().copied().unwrap_or(0.0));
    Chart {
        noun: "Pull against weight",
        text,
        x: axis(ALL_UP, mass, ends),
        y: axis("pull one stroke takes", force, (0.0, most)),
        lines,
        bands,
        marks: Vec::new(),
        you: Some(mass.count(answer.mass.likely)),
    }
}
