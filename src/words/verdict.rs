//! The verdict, what decides it, and what would move it.

use super::phrase::{metres, newtons};
use super::{ErrorLine, VerdictLine};
use crate::climber::{HAND_TRAVEL, MEASURED_PULL, STATURE};
use crate::quantity::{View, percent, plain};
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
    let need = newtons(answer.need.likely, view);
    let (Some(verdict), Some(arms), Some(grasp)) = (answer.verdict, answer.arms, answer.grasp) else {
        return format!(
            "One pull takes about {need}. How strong you are has not been entered, so there is nothing to hold it against."
        );
    };
    let have = |gate: Gate| newtons(gate.capacity.likely, view);
    let share = |gate: Gate| percent(gate.share.likely, view);
    let in_hundred = (verdict.chance * 100.0).round();
    match (verdict.decided, verdict.level) {
        (Decided::Missing, _) => format!(
            "One pull is in your arms and hands: it takes about {need}, {} of what your arms give and {} of what your hands hold. It is not yet a plan: {}.",
            share(arms),
            share(grasp),
            not_entered(answer)
        ),
        (Decided::Stroke, _) => format!(
            "You would not rise: the hitch gives back {} at every stroke, as much as a stroke brings.",
            metres(answer.setback.likely, view)
        ),
        (Decided::Hands, Level::OutOfReach) => format!(
            "Your hands would slip or open first: one pull takes about {need}, and they hold about {} on this.",
            have(grasp)
        ),
        (Decided::Arms, Level::OutOfReach) => format!(
            "One pull is too hard: it takes about {need}, and your arms give about {} through a whole stroke.",
            have(arms)
        ),
        (Decided::Hands, _) => format!(
            "Your hands decide: one pull takes about {need} of the {} they hold, and comes off in about {in_hundred} of 100 reckoned climbs.",
            have(grasp)
        ),
        (Decided::Arms, _) => format!(
            "Your arms decide: one pull takes about {need} of the {} they give, and comes off in about {in_hundred} of 100 reckoned climbs.",
            have(arms)
        ),
    }
}

fn not_entered(answer: &Answer) -> String {
    let missing: Vec<String> = answer.missing.iter().map(|missing| missing_noun(*missing).to_owned()).collect();
    format!("{}, and whether strength lasts is not reckoned here", missing.join(", "))
}

const fn missing_noun(missing: Missing) -> &'static str {
    match missing {
        Missing::Strength => "no strength",
        Missing::Stroke => "no length of pull",
        Missing::WayDown => "no way down",
        Missing::SecondPerson => "no second person",
    }
}

/// The smallest change that would move the verdict, or what comes next.
pub(super) fn second(answer: &Answer, view: View) -> String {
    let Some(verdict) = answer.verdict else {
        return "Measure your pull with a chair, a bathroom scale and a fixed rope, and enter it; that needs no gear."
            .to_owned();
    };
    let next = if verdict.level == Level::OutOfReach { "bring it to your limit" } else { "make one pull likely" };
    match (verdict.decided, verdict.stronger) {
        (Decided::Missing, _) => {
            "Plan the way down and who stays on the ground before anything else; then try it at knee height first."
                .to_owned()
        }
        (Decided::Stroke, _) => {
            "Less setback, a longer pull (leaning back, a hand loop) or a rig with less advantage would move it."
                .to_owned()
        }
        (Decided::Hands, Some(stronger)) => format!(
            "A hold {}, or a pull that takes {} less, would {next}; a hand loop or a handle is the usual way.",
            by(stronger, "better", "as good", view),
            percent(1.0 - 1.0 / stronger, view)
        ),
        (_, Some(stronger)) => format!(
            "Arms {}, or a pull that takes {} less (less kit, better turns, more advantage), would {next}.",
            by(stronger, "stronger", "as strong", view),
            percent(1.0 - 1.0 / stronger, view)
        ),
        (_, None) => "Try it at knee height first.".to_owned(),
    }
}

/// "14 % stronger", and from twice on "2.5 times as strong".
fn by(times: f64, more: &str, as_much: &str, view: View) -> String {
    if times < 2.0 {
        format!("{} {more}", percent(times - 1.0, view))
    } else {
        format!("{} times {as_much}", plain(times, 1, view))
    }
}

/// What has not been entered yet, in sentences.
pub(super) fn missing_lines(answer: &Answer) -> Vec<ErrorLine> {
    let line = |missing: &Missing| {
        let (fields, message): (&[&str], &str) = match missing {
            Missing::Strength => (
                &[MEASURED_PULL.row.id],
                "How strong you are: enter a pull you have measured. Without it there is no verdict, only the pull that is needed.",
            ),
            Missing::Stroke => (
                &[STATURE.row.id, HAND_TRAVEL.row.id],
                "How long your pull is: enter your stature, or the rope you pull in a stroke. Without it there is no count of strokes.",
            ),
            Missing::WayDown => (
                &[],
                "A way down, tried low down first. This page does not ask for it yet, so it never says more than “at your limit”.",
            ),
            Missing::SecondPerson => (
                &[],
                "A second person on the ground, able and equipped to get you down at once (HSE leaflet AFAG401 asks for two people at all tree climbing).",
            ),
        };
        ErrorLine { fields: fields.iter().map(|&field| field.to_owned()).collect(), message: message.to_owned() }
    };
    answer.missing.iter().map(line).collect()
}
