//! The verdict, what decides it, and what would move it.

use super::phrase::listed;
use super::template::{said, say};
use super::{ErrorLine, VerdictLine};
use crate::climber::{
    AGE, GRIP_LEFT, GRIP_RIGHT, HAND_TRAVEL, HOLD, Hold, MEASURED_PULL, PULL_HELD, Posture, SEX, STATURE,
};
use crate::field::{Kind, Row, Spread};
use crate::quantity::{View, written};
use crate::question::can_i_climb::{Answer, Decided, Gate, Level, Missing, Verdict};
use crate::rope::CROTCH_HEIGHT;

pub(super) fn verdict_line(verdict: Option<Verdict>) -> VerdictLine {
    let (id, text) = match verdict.map(|verdict| verdict.level) {
        Some(Level::WithinReach) => ("within-reach", "Within reach on paper"),
        Some(Level::AtLimit) => ("at-limit", "At your limit"),
        Some(Level::OutOfReach) => ("out-of-reach", "Out of reach as rigged"),
        None => ("none", "No verdict yet"),
    };
    VerdictLine { id, text }
}

/// What decides the verdict, in a sentence.
pub(super) fn first(answer: &Answer, view: View) -> String {
    let need = &answer.need;
    let tell = |template: &str, numbers: &[&Spread], words: &[&str]| said(template, numbers, words, view);
    let (Some(verdict), Some(arms)) = (answer.verdict, &answer.arms) else {
        if let Some(arms) = &answer.arms {
            return tell(
                "One pull takes about {P}, {%} of what your arms give. What your hands hold on this has not been measured, so whether they keep it is not known.",
                &[need, &arms.share],
                &[],
            );
        }
        // A grip that was entered says something about the hands.
        return match &answer.grasp {
            Some(grasp) => tell(
                "One pull takes about {P}, {%} of what your hands hold. Your pull has not been measured, so whether your arms give it is not known.",
                &[need, &grasp.share],
                &[],
            ),
            None => tell(
                "One pull takes about {P}. How strong you are is not known, so there is nothing to hold it against.",
                &[need],
                &[],
            ),
        };
    };
    let (gives, often) = (&arms.capacity, &Spread::point(verdict.chance * 100.0));
    let Some(grasp) = &answer.grasp else { return hauled(answer, verdict, arms, view) };
    let holds = &grasp.capacity;
    let mut text = match (verdict.decided, verdict.level) {
        (Decided::Missing, _) => {
            let mut text = not_entered(answer);
            let numbers = [need, &arms.share, &grasp.share];
            let template = " One pull takes about {P}, {%} of what your arms give and {%} of what your hands hold";
            say(&mut text, template, &numbers, &[], view);
            if let Some(strokes) = &answer.taken_up.all_strokes {
                say(&mut text, "; the climb is about {I} such pulls", &[strokes], &[], view);
            }
            match &answer.lasting_time {
                Some(time) if time.likely.is_finite() => {
                    say(&mut text, ", and about {S} with the rests that strength needs to last", &[time], &[], view);
                }
                Some(_) => text.push_str(", for which strength does not last, however long you rest between them"),
                None => {}
            }
            text + "."
        }
        (Decided::Stroke, _) => {
            let template =
                "{} would not rise: the hitch gives back {M} at every stroke, at least as much as a stroke brings.";
            let mut text = tell(template, &[&answer.setback], &[&how_often_stuck(verdict, view)]);
            if is_weak(answer) {
                say(&mut text, " Nor do your arms or hands give the {P} that one pull takes.", &[need], &[], view);
            }
            text
        }
        (Decided::Hands, Level::OutOfReach) => tell(
            "Your hands would slip or open first: one pull takes about {P}, and they hold about {P} on this.",
            &[need, holds],
            &[],
        ),
        (Decided::Arms, Level::OutOfReach) => tell(
            "One pull is too hard: it takes about {P}, and your arms give about {P} through a whole stroke.",
            &[need, gives],
            &[],
        ),
        (Decided::ArmsAndHands, Level::OutOfReach) => tell(
            "One pull is too hard for arms and hands: it takes about {P}; your arms give about {P} through a whole stroke, and your hands hold about {P} on this.",
            &[need, gives, holds],
            &[],
        ),
        (Decided::Hands, _) => tell(
            "Your hands decide: one pull takes about {P}; they hold about {P}, more or less, and it succeeds in about {0} of 100 reckoned climbs.",
            &[need, holds, often],
            &[],
        ),
        (Decided::Arms, _) => tell(
            "Your arms decide: one pull takes about {P}; they give about {P}, more or less, and it succeeds in about {0} of 100 reckoned climbs.",
            &[need, gives, often],
            &[],
        ),
        (Decided::ArmsAndHands, _) => tell(
            "Your arms and hands decide: one pull takes about {P}; your arms give about {P} and your hands hold about {P}, more or less, and it succeeds in about {0} of 100 reckoned climbs.",
            &[need, gives, holds, often],
            &[],
        ),
    };
    if let Some(planning) = answer.planning {
        say(
            &mut text,
            " By age and sex alone, plan on no more than {P} of pull: the grip of one in five like you is weaker still.",
            &[&Spread::point(planning)],
            &[],
            view,
        );
    }
    text
}

/// What decides where helpers haul.
fn hauled(answer: &Answer, verdict: Verdict, helpers: &Gate, view: View) -> String {
    let (need, gives) = (&answer.need, &helpers.capacity);
    if verdict.level == Level::OutOfReach {
        said(
            "The haul is too hard: it takes about {P}, and the helper pulls about {P} again and again.",
            &[need, gives],
            &[],
            view,
        )
    } else if verdict.decided == Decided::Missing {
        let mut text = not_entered(answer);
        let template = " The haul takes about {P}, {%} of what the helper pulls.";
        say(&mut text, template, &[need, &helpers.share], &[], view);
        text
    } else {
        said(
            "The helper decides: the haul takes about {P}; they pull about {P}, more or less, and it succeeds in about {0} of 100 reckoned hauls.",
            &[need, gives, &Spread::point(verdict.chance * 100.0)],
            &[],
            view,
        )
    }
}

/// The beginning of a sentence that goes on with "would not rise".
fn how_often_stuck(verdict: Verdict, view: View) -> String {
    let in_hundred = (verdict.stuck * 100.0).round();
    if in_hundred >= 100.0 {
        "You".to_owned()
    } else if in_hundred > 50.0 {
        "In most reckoned climbs you".to_owned()
    } else {
        said("In about {0} of 100 reckoned climbs you", &[&Spread::point(in_hundred)], &[], view)
    }
}

/// The beginning of what is said of a plan that lacks something.
fn not_entered(answer: &Answer) -> String {
    let mut nouns = Vec::new();
    for missing in &answer.missing {
        nouns.push(
            match missing {
                Missing::Strength | Missing::Pull | Missing::Hold | Missing::OtherHalf(_) => "no strength",
                Missing::Stroke => "no length of pull",
                Missing::Crotch => "no height of the crotch",
                Missing::WayDown => "no way down",
                Missing::SecondPerson => "no second person",
            }
            .to_owned(),
        );
    }
    let mut text = "It is not yet a plan: ".to_owned();
    text.push_str(&listed(&nouns));
    text + "."
}

/// The smallest change that would move the verdict, or what comes next.
pub(super) fn second(answer: &Answer, view: View) -> String {
    let Some(verdict) = answer.verdict else {
        if answer.arms.is_some() {
            return "Measure your grip, or your pull with what you will hold, and enter it.".to_owned();
        }
        let beside = if answer.missing.contains(&Missing::Pull) { "" } else { "; or enter your grip, or age and sex" };
        return said(
            "Measure your pull with a luggage scale or a bathroom scale, somebody beside you, and enter it{}.",
            &[],
            &[beside],
            view,
        );
    };
    match (verdict.decided, verdict.stronger) {
        (Decided::Missing, _) => {
            "Plan the way down and who stays on the ground before anything else; then try it at knee height first."
                .to_owned()
        }
        (Decided::Stroke, _) if is_weak(answer) => {
            "No one change would move it: it takes more strength and a stroke that gains height.".to_owned()
        }
        (Decided::Stroke, _) => less_stuck(answer).to_owned(),
        (_, None) => "Try it at knee height first.".to_owned(),
        (_, Some(times)) => stronger(answer, verdict, times, view),
    }
}

/// What more strength, or a pull that takes less, would bring.
fn stronger(answer: &Answer, verdict: Verdict, times: f64, view: View) -> String {
    let [whose, than, as_much] = match verdict.decided {
        _ if answer.hauled => &["Helpers together", "stronger", "as strong"],
        Decided::Hands => &["A hold", "better", "as good"],
        Decided::ArmsAndHands => &["Arms and a hold", "stronger", "as strong"],
        _ => &["Arms", "stronger", "as strong"],
    };
    let mut text = if times < 2.0 {
        said("{} {A} {}", &[&Spread::point(times - 1.0)], &[whose, than], view)
    } else {
        said("{} {1} times {}", &[&Spread::point(times)], &[whose, as_much], view)
    };
    let next = match (answer.hauled, verdict.level) {
        (true, Level::OutOfReach) => "let one haul in five succeed",
        (true, _) => "let four hauls in five succeed",
        (false, Level::OutOfReach) => "let one pull in five succeed, which is no climb",
        (false, _) => "let four pulls in five succeed",
    };
    let [how, end] = if verdict.decided == Decided::Hands && !answer.hold.is_best() {
        &["", "; a hand loop or a handle is the usual way"]
    } else if answer.ideal > 1.0 && !answer.hauled {
        &[" (less kit, better turns)", ""]
    } else {
        &[" (less kit, a rig with more advantage)", ""]
    };
    let less = Spread::point(1.0 - 1.0 / times);
    say(&mut text, ", or a pull that takes {A} less{}, would {}{}.", &[&less], &[how, next, end], view);
    text
}

/// Whether one pull takes more than arms or hands give, most likely.
fn is_weak(answer: &Answer) -> bool {
    let lacks = |gate: &Option<Gate>| gate.as_ref().is_some_and(|gate| gate.share.likely > 1.0);
    lacks(&answer.arms) || lacks(&answer.grasp)
}

/// What moves a verdict that no strength would move.
fn less_stuck(answer: &Answer) -> &'static str {
    if answer.room_decides() {
        "Less setback, or hitches and connectors that stack shorter, would move it."
    } else if answer.ideal <= 1.0 {
        "Less setback or a longer pull would move it."
    } else if answer.posture == Posture::Upright && answer.hold != Hold::HandLoop {
        "Less setback, a longer pull (leaning back, a hand loop) or a rig with less advantage would move it."
    } else {
        "Less setback, a longer pull or a rig with less advantage would move it."
    }
}

/// The defaults the answer rests on, in a sentence; nothing where all was said.
pub(super) fn assumed(rows: &[&Row], view: View) -> String {
    let mut text = String::new();
    for row in rows {
        let value = match row.kind {
            Kind::Choice { options, likely } => {
                options.iter().find(|option| Some(option.id) == likely).map(|option| option.noun.to_owned())
            }
            Kind::Text(_) => None,
            Kind::Quantity(limits) => limits.likely.map(|likely| written(likely.likely, limits.dimension, view)),
        };
        if let Some(value) = value {
            let before = if text.is_empty() { "Reckoned with, unless you say otherwise: " } else { "; " };
            say(&mut text, "{}{}, {}", &[], &[before, row.noun, &value], view);
        }
    }
    if text.is_empty() { text } else { text + "." }
}

/// What has not been entered yet, in sentences.
pub(super) fn missing_lines(answer: &Answer) -> Vec<ErrorLine> {
    const STRENGTH: &[&Row] = &[&MEASURED_PULL.row, &GRIP_RIGHT.row, &GRIP_LEFT.row, &AGE.row, &SEX.row];
    const PULL: &[&Row] = &[&MEASURED_PULL.row];
    const HOLDS: &[&Row] = &[&GRIP_RIGHT.row, &GRIP_LEFT.row, &PULL_HELD.row, &HOLD.row];
    const STROKE: &[&Row] = &[&STATURE.row, &HAND_TRAVEL.row];
    const CROTCH: &[&Row] = &[&CROTCH_HEIGHT.row];
    let mut lines = Vec::new();
    for missing in &answer.missing {
        let (rows, message) = match missing {
            Missing::Strength => (
                STRENGTH,
                "How strong you are: best a pull you have measured, else your grip, else age and sex. Without it there is no verdict, only the pull that is needed.",
            ),
            Missing::Hold => (
                HOLDS,
                "What your hands hold: after an injury at the neck only what was measured counts, and a loop round the hand proves only itself. Measure your grip, or your pull with what you will hold.",
            ),
            Missing::Pull => (PULL, "How strong you are: after an injury at the neck only a measured pull counts."),
            Missing::OtherHalf(row) => (
                std::slice::from_ref(row),
                "Age and sex tell something only together. A measured pull or a grip tells more.",
            ),
            Missing::Stroke => (
                STROKE,
                "How long your pull is: enter your stature, or the rope you pull in a stroke. Without it there is no count of strokes.",
            ),
            Missing::Crotch => (
                CROTCH,
                "How high the crotch is: without it nobody can tell whether your seat comes above the edge of the platform.",
            ),
            Missing::WayDown => (
                &[][..],
                "A way down, tried low down first. This page does not ask for it yet, so it never says more than “at your limit”.",
            ),
            Missing::SecondPerson => {
                (&[][..], "A second person on the ground, able and equipped to get you down at once.")
            }
        };
        let mut fields = Vec::new();
        for row in rows {
            fields.push(row.id.to_owned());
        }
        lines.push(ErrorLine { fields, message: message.to_owned() });
    }
    lines
}
