//! The answer to "Can I climb this?" in words.

use super::caution::caution_line;
use super::drawing::drawing;
use super::figure::{Style, figure};
use super::part::part_lines;
use super::phrase::{metres, newtons};
use super::source::source_line;
use super::verdict::{first, missing_lines, second, verdict_line};
use super::{Figure, Report, WorkDone};
use crate::climber::Arms;
use crate::field::Spread;
use crate::quantity::{Dimension, STANDARD_GRAVITY, View, percent, plain, written};
use crate::question::can_i_climb::Answer;
use crate::reeving::{BodyKind, RigName};
use crate::source::{
    ANSUR, COMMON_PRACTICE, CROSBY, DELANEY, GEOMETRY, GRAVITY, JOHNSON, JUDGED, LA_DELFA, SOURCES, Source, YOUNG,
};

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's.
#[must_use]
pub fn report(answer: &Answer, view: View) -> Report {
    let figures = figures(answer, view);
    let used = |source: &&Source| figures.iter().any(|figure| figure.sources.contains(&source.id));
    Report {
        verdict: verdict_line(answer.verdict),
        first: first(answer, view),
        second: second(answer, view),
        missing: missing_lines(answer),
        drawing: drawing(answer, view),
        parts: part_lines(answer, view),
        cautions: answer.cautions.iter().map(|caution| caution_line(*caution, view)).collect(),
        sources: SOURCES.iter().filter(used).map(source_line).collect(),
        effort: WorkDone { samples: answer.samples, more: answer.more },
        figures,
    }
}

fn figures(answer: &Answer, view: View) -> Vec<Figure> {
    let strength = strength_figures(answer, view);
    let stroke = stroke_figures(answer, view);
    let chance = answer.verdict.map(|verdict| {
        figure("chance", "chance that one pull comes off", Spread::point(verdict.chance), Style::Percent, view)
            .worked([format!(
                "Of {} reckoned climbs, each with every uncertain figure drawn from its range, the share in which arms and hands give what one pull takes and the stroke gains height.",
                answer.samples
            )])
            .from(&[JUDGED])
    });
    let mut figures = vec![need(answer, view)];
    figures.extend(strength.into_iter().chain(chance).chain(stroke).chain(rig_figures(answer, view)));
    figures
}

fn need(answer: &Answer, view: View) -> Figure {
    let (weight, advantage) = (newtons(answer.weight.likely, view), plain(answer.advantage.likely, 2, view));
    let need = newtons(answer.need.likely, view);
    figure("pullNeeded", "pull one stroke takes", answer.need, Style::Unit(Dimension::Force), view)
        .worked([format!("weight ÷ real advantage = {weight} ÷ {advantage} = {need}")])
        .from(&[GEOMETRY, DELANEY, JUDGED])
}

fn strength_figures(answer: &Answer, view: View) -> Vec<Figure> {
    let need = newtons(answer.need.likely, view);
    let force = Style::Unit(Dimension::Force);
    let share = |have: f64, percent_of: f64| {
        format!("pull one stroke takes ÷ this = {need} ÷ {} = {}", newtons(have, view), percent(percent_of, view))
    };
    let mut figures = Vec::new();
    if let Some(gate) = answer.arms {
        let mut workings = vec![
            "Your measured pull, brought to the weakest point of the stroke: times 0.70 (0.65 to 0.74) if taken overhead, 1 if at the lowest point, 1.25 if it is the load of ten repetitions.".to_owned(),
        ];
        if answer.hands == Arms::One {
            workings.push("One arm at a time gives 0.58 of what two give.".to_owned());
        }
        figures.push(
            figure("armPull", "pull your arms give", gate.capacity, force, view)
                .worked(workings)
                .from(&[LA_DELFA, JOHNSON, JUDGED]),
        );
        figures.push(
            figure("armShare", "of that, one stroke takes", gate.share, Style::Percent, view)
                .worked([share(gate.capacity.likely, gate.share.likely)])
                .from(&[GEOMETRY]),
        );
    }
    if let Some(gate) = answer.grasp {
        figures.push(
            figure("handHold", "pull your hands hold", gate.capacity, force, view)
                .worked([
                    if answer.grip_is_reckoned {
                        "Your grip has not been entered: it is reckoned from your pull, which is 0.65 (0.50 to 0.85) of the grip of both hands.".to_owned()
                    } else {
                        "From the grip you entered; a hand that was not measured counts 0.9 of the other.".to_owned()
                    },
                    "Grip × 0.75 (0.60 to 1.0) on bare rope, 1.03 on a handle along the rope, 1.26 (1.07 to 1.58) on a handle across it or a loop; or what your measured pull proves, if that is more.".to_owned(),
                ])
                .from(&[YOUNG, CROSBY, JUDGED]),
        );
        figures.push(
            figure("handShare", "of that, one stroke takes", gate.share, Style::Percent, view)
                .worked([share(gate.capacity.likely, gate.share.likely)])
                .from(&[GEOMETRY]),
        );
    }
    figures
}

fn stroke_figures(answer: &Answer, view: View) -> Vec<Figure> {
    let length = Style::Unit(Dimension::Length);
    let mut figures = Vec::new();
    if let (Some(travel), Some(gain), Some(strokes)) = (answer.travel, answer.gain, answer.strokes) {
        let height = metres(answer.height, view);
        figures.push(
            figure("gain", "height gained each stroke", gain, length, view)
                .worked([
                    format!(
                        "rope pulled ÷ rope for each unit of height − setback = {} ÷ {} − {} = {}",
                        metres(travel.likely, view),
                        plain(answer.ideal, 0, view),
                        metres(answer.setback.likely, view),
                        metres(gain.likely, view)
                    ),
                    "Setback, stack and the share of your reach were chosen to agree with what climbers report: about 15 cm a stroke sitting, 23 cm leaning back (common practice, no source).".to_owned(),
                ])
                .from(&[GEOMETRY, JUDGED, COMMON_PRACTICE]),
        );
        figures.push(
            figure("strokes", "strokes to the height", strokes, Style::Whole, view)
                .worked([format!("height ÷ gain = {height} ÷ {}", metres(gain.likely, view))])
                .from(&[GEOMETRY]),
        );
        figures.push(
            figure("handTravel", "rope pulled each stroke", travel, length, view)
                .worked([
                    "Your own figure, or from your stature: 0.4802 × stature + 1.2 mm from overhead down to the chest, of which 0.70 (0.55 to 0.85) is used sitting upright, all of it leaning back or with a hand loop.".to_owned(),
                ])
                .from(&[ANSUR, JUDGED]),
        );
    }
    if let Some(rope) = answer.rope_handled {
        figures.push(
            figure("ropeHandled", "rope through your hands", rope, length, view)
                .worked(["strokes × rope pulled each stroke".to_owned()])
                .from(&[GEOMETRY]),
        );
    }
    if let Some(time) = answer.time {
        let moved = if answer.rig.body(BodyKind::Carriage).is_some() {
            " and 8 s (4 to 15) to move the upper hitch"
        } else {
            ""
        };
        figures.push(
            figure("workingTime", "time without any rest", time, Style::Unit(Dimension::Duration), view)
                .worked([format!(
                    "strokes × (1.35 s (1.2 to 1.5) a pull{moved}). Rests come on top and are not reckoned yet."
                )])
                .from(&[JUDGED]),
        );
    }
    figures
}

fn rig_figures(answer: &Answer, view: View) -> Vec<Figure> {
    let mut figures = vec![
        figure("realAdvantage", "real advantage", answer.advantage, Style::Plain(2), view)
            .worked(advantage_workings(answer, view))
            .from(&[GEOMETRY])
            .from(&answer.turns.iter().flat_map(|(kind, _)| kind.sources()).copied().collect::<Vec<_>>()),
        figure("idealAdvantage", "advantage without loss", Spread::point(answer.ideal), Style::Plain(0), view)
            .worked(["The rope your hands take for each unit of height; losses never change it.".to_owned()])
            .from(&[GEOMETRY]),
    ];
    if let Some(kept) = answer.turn_efficiency {
        figures.push(
            figure("turnEfficiency", "kept at a turn, by your own test", Spread::point(kept), Style::Plain(3), view)
                .worked([
                    "One reading and several turns: all are scaled by one power until the rig gives what you measured; the drag of the hitch is in it.".to_owned(),
                ])
                .from(&[GEOMETRY]),
        );
    }
    let mass = |value: f64| written(value, Dimension::Mass, view);
    figures.push(
        figure("climberWeight", "your weight, all-up", answer.weight, Style::Unit(Dimension::Force), view)
            .worked([format!("{} × {STANDARD_GRAVITY} m/s²", mass(answer.mass.likely))])
            .from(&[GRAVITY, JUDGED]),
    );
    figures.push(
        figure("anchorLoad", "peak load on the anchor", answer.anchor, Style::Unit(Dimension::Force), view)
            .worked([
                "What the rope pulls on the crotch × 1.5 (1.2 to 2.0) for climbing in jerks. A slip or a catch loads it far more, and is not reckoned here.".to_owned(),
            ])
            .from(&[GEOMETRY, JUDGED]),
    );
    figures
}

/// What adds up to the real advantage: every strand that pulls the climber up.
fn advantage_workings(answer: &Answer, view: View) -> Vec<String> {
    let climber = answer.rig.body(BodyKind::Climber);
    let mut lifting = Vec::new();
    for (rope, tensions) in answer.rig.ropes().iter().zip(&answer.tensions) {
        for (ends, tension) in rope.stops.windows(2).zip(tensions) {
            let bodies: Vec<Option<usize>> = ends.iter().map(|stop| stop.body).collect();
            let lifts = bodies.contains(&climber) && bodies.iter().any(|body| body.is_some() && *body < climber);
            if lifts && tension.likely > 0.0 {
                lifting.push(plain(tension.likely / answer.need.likely, 2, view));
            }
        }
    }
    lifting.reverse();
    let sum = plain(answer.advantage.likely, 2, view);
    let turns =
        answer.turns.iter().map(|(kind, kept)| format!("{} {}", kind.named().noun, plain(kept.likely, 2, view)));
    let mut workings =
        vec![format!("Each strand that lifts you, for one unit of pull at the hand: {} = {sum}", lifting.join(" + "))];
    if answer.turn_efficiency.is_none() && answer.rig_name != RigName::HandOverHand {
        let kept: Vec<String> = turns.rev().collect();
        workings.push(format!(
            "Kept at each turn, from the hand: {}; past the sliding hitch {}.",
            kept.join(", "),
            plain(answer.drag.likely, 2, view)
        ));
    }
    workings
}
