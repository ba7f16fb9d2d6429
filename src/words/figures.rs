//! The figures of an answer, in the order to show them, each with what it comes from.

use super::Figure;
use super::figure::{Style, figure};
use super::phrase::{fine_length, joined, metres, newtons, ranged, small_length};
use crate::climber::{
    Arms, Hold, ONE_ARM, OTHER_HAND, PULL_OVER_GRIP, PULL_TIME, Posture, PullTaken, RESET_TIME, TO_CHEST, share_used,
};
use crate::field::Spread;
use crate::quantity::{Dimension, STANDARD_GRAVITY, System, View, percent, plain, written};
use crate::question::can_i_climb::{Answer, CLIMBING_PEAK, Gate};
use crate::reeving::{BodyKind, RigName};
use crate::source::{
    ANSUR, COMMON_PRACTICE, CROSBY, DELANEY, GEOMETRY, GRAVITY, JOHNSON, JUDGED, LA_DELFA, Source, YOUNG,
};

const FORCE: Style = Style::Unit(Dimension::Force);
const LENGTH: Style = Style::Unit(Dimension::Length);

/// The figures of an answer.
pub(super) fn figures(answer: &Answer, view: View) -> Vec<Figure> {
    let mut rows = Rows { answer, view, figures: Vec::new() };
    rows.need();
    rows.strength();
    rows.stroke();
    rows.rig();
    rows.figures
}

struct Rows<'a> {
    answer: &'a Answer,
    view: View,
    figures: Vec<Figure>,
}

impl Rows<'_> {
    fn add(
        &mut self,
        names: (&'static str, &'static str),
        spread: Spread,
        style: Style,
        workings: Vec<String>,
        sources: &[Source],
    ) {
        self.figures.push(figure(names, spread, style, self.view, workings, sources));
    }

    fn need(&mut self) {
        let (answer, view) = (self.answer, self.view);
        let weight = newtons(answer.weight.likely, view);
        let advantage = plain(answer.advantage.likely, 2, view);
        let need = newtons(answer.need.likely, view);
        let workings = vec![format!("weight ÷ real advantage = {weight} ÷ {advantage} = {need}")];
        let sources = if self.own_figures_only() { &[GEOMETRY, JUDGED][..] } else { &[GEOMETRY, DELANEY, JUDGED] };
        self.add(("pullNeeded", "pull one stroke takes"), answer.need, FORCE, workings, sources);
    }

    fn strength(&mut self) {
        let (answer, view) = (self.answer, self.view);
        if let Some(gate) = answer.arms {
            let mut workings = Vec::new();
            let mut sources = vec![JUDGED];
            if let Some(measured) = answer.measured {
                let through = ranged(measured.taken.through_the_stroke(), 2, view);
                let pull = newtons(measured.pull.in_newtons(), view);
                let (why, source) = match measured.taken {
                    PullTaken::Overhead => ("arms pull harder overhead than where the stroke ends", LA_DELFA),
                    PullTaken::LowestPoint => ("it was taken where the stroke ends", LA_DELFA),
                    PullTaken::TenRepetitions => ("what goes ten times is 80 % of what goes once", JOHNSON),
                };
                let one_arm = ranged(ONE_ARM, 2, view);
                let arms = match (measured.arms, answer.hands) {
                    (Arms::Two, Arms::One) => format!(" × {one_arm} for one arm at a time"),
                    (Arms::One, Arms::Two) => format!(" ÷ {one_arm} for two arms"),
                    _ => String::new(),
                };
                let given = newtons(gate.capacity.likely, view);
                workings.push(format!("measured pull {pull} × {through}{arms} = {given}: {why}"));
                sources.push(source);
            }
            self.gate(
                [("armPull", "pull your arms give"), ("armShare", "share of your arms' pull in one stroke")],
                gate,
                workings,
                &sources,
            );
        }
        if let Some(gate) = answer.grasp {
            let grip = if answer.grip_is_reckoned {
                format!(
                    "Your grip has not been entered: it is reckoned from your pull, which is {} of the grip of both hands.",
                    ranged(PULL_OVER_GRIP, 2, view)
                )
            } else {
                format!(
                    "From the grip you entered; a hand that was not measured counts {} of the other.",
                    plain(OTHER_HAND, 1, view)
                )
            };
            let of = |hold: Hold| ranged(hold.over_grip(), 2, view);
            let held = format!(
                "Grip × {} on bare rope, {} on a handle along the rope, {} on a handle across it or a loop; or what your measured pull proves, if that is more.",
                of(Hold::BareRope),
                of(Hold::VerticalHandle),
                of(Hold::HandLoop)
            );
            self.gate(
                [("handHold", "pull your hands hold"), ("handShare", "share of your hands' hold in one stroke")],
                gate,
                vec![grip, held],
                &[YOUNG, CROSBY, JUDGED],
            );
        }
        if let Some(verdict) = answer.verdict {
            let workings = vec![format!(
                "Of {} reckoned climbs, each with every uncertain figure drawn from its range, the share in which arms and hands give what one pull takes and the stroke gains height.",
                plain(f64::from(answer.samples), 0, view)
            )];
            let names = ("chance", "chance of one pull, by these figures alone");
            self.add(names, Spread::point(verdict.chance), Style::Chance, workings, &[JUDGED]);
        }
    }

    /// What somebody has, and the share of it that one stroke takes.
    fn gate(
        &mut self,
        [have, takes]: [(&'static str, &'static str); 2],
        gate: Gate,
        workings: Vec<String>,
        sources: &[Source],
    ) {
        let (need, has) = (newtons(self.answer.need.likely, self.view), newtons(gate.capacity.likely, self.view));
        let share = percent(gate.share.likely, self.view);
        self.add(have, gate.capacity, FORCE, workings, sources);
        let workings = vec![format!("pull one stroke takes ÷ this = {need} ÷ {has} = {share}")];
        self.add(takes, gate.share, Style::Percent, workings, &[GEOMETRY]);
    }

    fn stroke(&mut self) {
        let (answer, view) = (self.answer, self.view);
        let (Some(travel), Some(gain), Some(strokes)) = (answer.travel, answer.gain, answer.strokes) else { return };
        let gained = fine_length(gain.likely, view);
        let practice = format!(
            "Setback, stack and the share of your reach were chosen to agree with what climbers report: about {} a stroke sitting, {} leaning back (common practice, no source).",
            small_length(0.15, 0, view),
            small_length(0.23, 0, view)
        );
        self.add(
            ("gain", "height gained each stroke"),
            gain,
            LENGTH,
            vec![gain_working(answer, travel, &gained, view), practice],
            &[GEOMETRY, JUDGED, COMMON_PRACTICE],
        );
        let counted = if strokes.likely.is_finite() {
            let height = metres(answer.height, view);
            format!("height ÷ gain = {height} ÷ {gained} = {}, the last one begun", plain(strokes.likely, 1, view))
        } else {
            "A stroke that gains nothing never comes to the height, however often.".to_owned()
        };
        self.add(("strokes", "strokes to the height"), strokes, Style::Whole, vec![counted], &[GEOMETRY]);
        let (reach, sources) = if answer.travel_is_own {
            ("Your own figure.".to_owned(), &[GEOMETRY][..])
        } else {
            let reach = format!(
                "From your stature: {} × stature + {} from overhead down to the chest, of which {} is used sitting upright, all of it leaning back or with a hand loop.",
                plain(TO_CHEST.0, 4, view),
                small_length(TO_CHEST.1, 2, view),
                ranged(share_used(Posture::Upright, Hold::BareRope), 2, view)
            );
            (reach, &[ANSUR, JUDGED][..])
        };
        self.add(("handTravel", "rope pulled each stroke"), travel, LENGTH, vec![reach], sources);
        if let Some(rope) = answer.rope_handled {
            let workings = vec!["strokes × (gain + setback) × rope for each unit of height".to_owned()];
            self.add(("ropeHandled", "rope through your hands"), rope, LENGTH, workings, &[GEOMETRY]);
        }
        if let Some(time) = answer.time {
            let moved = if answer.rig.body(BodyKind::Carriage).is_some() {
                format!(" and {} s to move the upper hitch", ranged(RESET_TIME, 0, view))
            } else {
                String::new()
            };
            let pull = ranged(PULL_TIME, 2, view);
            let workings =
                vec![format!("strokes × ({pull} s a pull{moved}). Rests come on top and are not reckoned yet.")];
            let style = Style::Unit(Dimension::Duration);
            self.add(("workingTime", "pulling time alone, no rests"), time, style, workings, &[JUDGED]);
        }
    }

    fn rig(&mut self) {
        let (answer, view) = (self.answer, self.view);
        let mut sources = vec![GEOMETRY];
        if answer.turn_efficiency.is_none() {
            for turn in answer.turns.iter().filter(|turn| !turn.own) {
                sources.extend(turn.kind.sources());
            }
        }
        let workings = advantage_workings(answer, view);
        self.add(("realAdvantage", "real advantage"), answer.advantage, Style::Plain(2), workings, &sources);
        let workings = vec!["The rope your hands take for each unit of height; losses never change it.".to_owned()];
        let (names, ideal) = (("idealAdvantage", "advantage without loss"), Spread::point(answer.ideal));
        self.add(names, ideal, Style::Plain(0), workings, &[GEOMETRY]);
        if let Some(kept) = answer.turn_efficiency {
            let workings = vec![
                "One reading and several turns: all are scaled by one power until the rig gives what you measured; the drag of the hitch is in it.".to_owned(),
            ];
            let names = ("turnEfficiency", "kept at a turn, by your own test");
            self.add(names, Spread::point(kept), Style::Plain(3), workings, &[GEOMETRY]);
        }
        let (mass, weight) = (written(answer.mass.likely, Dimension::Mass, view), newtons(answer.weight.likely, view));
        let workings = vec![match view.system {
            System::Si => format!("{mass} × {} m/s² = {weight}", plain(STANDARD_GRAVITY, 5, view)),
            System::Us => format!("{mass}, which standard gravity makes {weight}"),
        }];
        self.add(("climberWeight", "your weight, all-up"), answer.weight, FORCE, workings, &[GRAVITY, JUDGED]);
        let workings = vec![format!(
            "What the rope pulls on the crotch × {} for climbing in jerks. A slip or a catch loads it far more, and is not reckoned here.",
            ranged(CLIMBING_PEAK, 1, view)
        )];
        let names = ("anchorLoad", "load on the anchor, climbing in jerks");
        self.add(names, answer.anchor, FORCE, workings, &[GEOMETRY, JUDGED]);
    }

    /// Whether every turn's share is the climber's own figure.
    fn own_figures_only(&self) -> bool {
        self.answer.turn_efficiency.is_some() || self.answer.turns.iter().all(|turn| turn.own)
    }
}

/// What a stroke gains: by the pull, or by the room above the lap where that ends the stroke.
fn gain_working(answer: &Answer, travel: Spread, gained: &str, view: View) -> String {
    let setback = fine_length(answer.setback.likely, view);
    match answer.room {
        Some(room) if answer.room_decides() => format!(
            "room − setback = {} − {setback} = {gained}: the hitches and connectors leave so much between your lap and your reach, less than your pull would give",
            fine_length(room.likely, view)
        ),
        _ => format!(
            "rope pulled ÷ rope for each unit of height − setback = {} ÷ {} − {setback} = {gained}",
            fine_length(travel.likely, view),
            plain(answer.ideal, 0, view)
        ),
    }
}

/// What adds up to the real advantage: every strand that pulls the climber up.
fn advantage_workings(answer: &Answer, view: View) -> Vec<String> {
    let climber = answer.rig.body(BodyKind::Climber);
    let mut lifting = Vec::new();
    for (rope, tensions) in answer.rig.ropes().iter().zip(&answer.tensions) {
        for (ends, tension) in rope.stops.windows(2).zip(tensions) {
            let at_climber = ends.iter().any(|stop| stop.body == climber);
            let from_above = ends.iter().any(|stop| stop.body.is_some() && stop.body < climber);
            if at_climber && from_above && tension.likely > 0.0 {
                lifting.push(plain(tension.likely / answer.need.likely, 2, view));
            }
        }
    }
    lifting.reverse();
    let sum = plain(answer.advantage.likely, 2, view);
    let mut workings = vec![format!(
        "Each strand that lifts you, for one unit of pull at the hand: {} = {sum}",
        joined(&lifting, " + ")
    )];
    if answer.turn_efficiency.is_some() {
        workings.push(
            "The losses are those of your own test, which stands in place of any figure for a turn or a hitch."
                .to_owned(),
        );
    } else if answer.rig_name != RigName::HandOverHand {
        let mut kept = String::new();
        for turn in answer.turns.iter().rev() {
            let own = if turn.own { " (your own figure)" } else { "" };
            kept += &format!("{} {}{own}, ", turn.kind.named().noun, plain(turn.kept.likely, 2, view));
        }
        let drag = plain(answer.drag.likely, 2, view);
        workings.push(format!("Kept at each turn, from the hand: {kept}and past each hitch that slides {drag}."));
    }
    workings
}
