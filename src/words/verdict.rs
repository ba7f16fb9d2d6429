//! The verdict, what decides it, and what would move it.

use super::phrase::{metres, pull};
use super::{ErrorLine, VerdictLine};
use crate::climber::{AGE, GRIP_LEFT, GRIP_RIGHT, HAND_TRAVEL, Hold, MEASURED_PULL, Posture, SEX, STATURE};
use crate::field::{Kind, Row};
use crate::quantity::{View, percent, plain, written};
use crate::question::can_i_climb::{Answer, Decided, Gate, Level, Missing, Verdict};

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
    let need = pull(answer.need.likely, view);
    let (Some(verdict), Some(arms)) = (answer.verdict, answer.arms) else {
        return unmeasured(answer, &need, view);
    };
    let have = |gate: Gate| pull(gate.capacity.likely, view);
    let often = plain(verdict.chance * 100.0, 0, view);
    let Some(grasp) = answer.grasp else {
        return hauled(answer, verdict, arms, [&need, &have(arms), &often], view);
    };
    let (arms_give, hands_hold) = (have(arms), have(grasp));
    let comes_off = |who: &str, have: &str| {
        format!(
            "Your {who} decide: one pull takes about {need}; {have}, more or less, and it comes off in about {often} of 100 reckoned climbs."
        )
    };
    match (verdict.decided, verdict.level) {
        (Decided::Missing, _) => format!(
            "It is not yet a plan: {}. One pull takes about {need}, {} of what your arms give and {} of what your hands hold{}.",
            not_entered(answer),
            percent(arms.share.likely, view),
            percent(grasp.share.likely, view),
            how_many(answer, view)
        ),
        (Decided::Stroke, _) => format!(
            "{} would not rise: the hitch gives back {} at every stroke, at least as much as a stroke brings.",
            how_often_stuck(verdict, view),
            metres(answer.setback.likely, view)
        ),
        (Decided::Hands, Level::OutOfReach) => format!(
            "Your hands would slip or open first: one pull takes about {need}, and they hold about {hands_hold} on this."
        ),
        (Decided::Arms, Level::OutOfReach) => format!(
            "One pull is too hard: it takes about {need}, and your arms give about {arms_give} through a whole stroke."
        ),
        (Decided::ArmsAndHands, Level::OutOfReach) => format!(
            "One pull is too hard for arms and hands: it takes about {need}; your arms give about {arms_give} through a whole stroke, and your hands hold about {hands_hold} on this."
        ),
        (Decided::Hands, _) => comes_off("hands", &format!("they hold about {hands_hold}")),
        (Decided::Arms, _) => comes_off("arms", &format!("they give about {arms_give}")),
        (Decided::ArmsAndHands, _) => comes_off(
            "arms and hands",
            &format!("your arms give about {arms_give} and your hands hold about {hands_hold}"),
        ),
    }
}

/// What decides where helpers haul.
fn hauled(answer: &Answer, verdict: Verdict, helpers: Gate, [need, give, often]: [&str; 3], view: View) -> String {
    if verdict.level == Level::OutOfReach {
        format!("The haul is too hard: it takes about {need}, and the helper pulls about {give} again and again.")
    } else if verdict.decided == Decided::Missing {
        let share = percent(helpers.share.likely, view);
        format!(
            "It is not yet a plan: {}. The haul takes about {need}, {share} of what the helper pulls.",
            not_entered(answer)
        )
    } else {
        format!(
            "The helper decides: the haul takes about {need}; they pull about {give}, more or less, and it comes off in about {often} of 100 reckoned hauls."
        )
    }
}

/// How many pulls the climb is; nothing where that is not known.
fn how_many(answer: &Answer, view: View) -> String {
    match answer.strokes {
        Some(strokes) => format!("; the climb is about {} such pulls", plain(strokes.likely.ceil(), 0, view)),
        None => String::new(),
    }
}

/// Without a measured pull; a grip that was entered says something about the hands.
fn unmeasured(answer: &Answer, need: &str, view: View) -> String {
    match answer.grasp {
        Some(grasp) => format!(
            "One pull takes about {need}, {} of what your hands hold. Your pull has not been measured, so whether your arms give it is not known.",
            percent(grasp.share.likely, view)
        ),
        None => format!(
            "One pull takes about {need}. How strong you are is not known, so there is nothing to hold it against."
        ),
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
        format!("In about {} of 100 reckoned climbs you", plain(in_hundred, 0, view))
    }
}

fn not_entered(answer: &Answer) -> String {
    let mut text = String::new();
    for missing in &answer.missing {
        text.push_str(match missing {
            Missing::Strength | Missing::Pull | Missing::OtherHalf(_) => "no strength, ",
            Missing::Stroke => "no length of pull, ",
            Missing::WayDown => "no way down, ",
            Missing::SecondPerson => "no second person, ",
        });
    }
    text + "and whether strength lasts is not reckoned here"
}

/// The smallest change that would move the verdict, or what comes next.
pub(super) fn second(answer: &Answer, view: View) -> String {
    let Some(verdict) = answer.verdict else {
        let mut text =
            "Measure your pull with a luggage scale or a bathroom scale, somebody beside you, and enter it".to_owned();
        if !answer.missing.contains(&Missing::Pull) {
            text += "; or enter your grip, or age and sex";
        }
        return text + ".";
    };
    let stronger = match (verdict.decided, verdict.stronger) {
        (Decided::Missing, _) => {
            return "Plan the way down and who stays on the ground before anything else; then try it at knee height first."
                .to_owned();
        }
        (Decided::Stroke, _) => return less_stuck(answer).to_owned(),
        (_, None) => return "Try it at knee height first.".to_owned(),
        (_, Some(stronger)) => stronger,
    };
    let (change, than, as_much) = match verdict.decided {
        _ if answer.hauled => ("Helpers together", "stronger", "as strong"),
        Decided::Hands => ("A hold", "better", "as good"),
        Decided::ArmsAndHands => ("Arms and a hold", "stronger", "as strong"),
        _ => ("Arms", "stronger", "as strong"),
    };
    let change = format!("{change} {}", by(stronger, than, as_much, view));
    let less = share(1.0 - 1.0 / stronger, view);
    let next = if answer.hauled {
        if verdict.level == Level::OutOfReach { "make the haul possible" } else { "make the haul likely" }
    } else if verdict.level == Level::OutOfReach {
        "make one pull possible, though not a climb"
    } else {
        "make one pull likely"
    };
    if verdict.decided == Decided::Hands && !answer.hold.is_best() {
        format!("{change}, or a pull that takes {less} less, would {next}; a hand loop or a handle is the usual way.")
    } else {
        let how = if answer.ideal > 1.0 && !answer.hauled {
            "less kit, better turns"
        } else {
            "less kit, a rig with more advantage"
        };
        format!("{change}, or a pull that takes {less} less ({how}), would {next}.")
    }
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

/// "14 % stronger", "a little stronger", and from twice on "2.5 times as strong".
fn by(times: f64, more: &str, as_much: &str, view: View) -> String {
    if times < 2.0 {
        format!("{} {more}", share(times - 1.0, view))
    } else {
        format!("{} times {as_much}", plain(times, 1, view))
    }
}

/// So many per cent, or "a little" where they would be nought.
fn share(share: f64, view: View) -> String {
    if share < 0.05 { "a little".to_owned() } else { percent(share, view) }
}

/// The defaults the answer rests on, in a sentence; nothing where all was said.
pub(super) fn assumed(rows: &[&Row], view: View) -> String {
    let mut text = String::new();
    for row in rows {
        let value = match row.kind {
            Kind::Choice { options, likely } => {
                options.iter().find(|option| Some(option.id) == likely).map(|option| option.noun.to_owned())
            }
            Kind::Quantity(limits) => limits.likely.map(|likely| written(likely.likely, limits.dimension, view)),
        };
        if let Some(value) = value {
            text += if text.is_empty() { "Reckoned with, unless you say otherwise: " } else { "; " };
            text = text + row.noun + ", " + &value;
        }
    }
    if text.is_empty() { text } else { text + "." }
}

/// What has not been entered yet, in sentences.
pub(super) fn missing_lines(answer: &Answer) -> Vec<ErrorLine> {
    let mut lines = Vec::new();
    for missing in &answer.missing {
        let (fields, message): (&[&str], &str) = match missing {
            Missing::Strength => (
                &[MEASURED_PULL.row.id, GRIP_RIGHT.row.id, GRIP_LEFT.row.id, AGE.row.id, SEX.row.id],
                "How strong you are: best a pull you have measured, else your grip, else age and sex. Without it there is no verdict, only the pull that is needed.",
            ),
            Missing::Pull => (
                &[MEASURED_PULL.row.id],
                "How strong you are: after an injury at the neck only a measured pull counts.",
            ),
            Missing::OtherHalf(row) => {
                (&[row.id], "Age and sex tell something only together. A measured pull or a grip tells more.")
            }
            Missing::Stroke => (
                &[STATURE.row.id, HAND_TRAVEL.row.id],
                "How long your pull is: enter your stature, or the rope you pull in a stroke. Without it there is no count of strokes.",
            ),
            Missing::WayDown => (
                &[],
                "A way down, tried low down first. This page does not ask for it yet, so it never says more than “at your limit”.",
            ),
            Missing::SecondPerson => (&[], "A second person on the ground, able and equipped to get you down at once."),
        };
        let fields = fields.iter().map(|&field| field.to_owned()).collect();
        lines.push(ErrorLine { fields, message: message.to_owned() });
    }
    lines
}
