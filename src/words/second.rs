//! The smallest change that would move a verdict, or what comes next.

use super::first::is_weak;
use super::template::{said, say};
use crate::climber::Posture;
use crate::field::Spread;
use crate::quantity::View;
use crate::question::can_i_climb::{Answer, Decided, Level, Missing, Verdict};

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
    if verdict.level == Level::WithinReach {
        return "Try it at knee height first.".to_owned();
    }
    match (verdict.decided, verdict.stronger) {
        (Decided::Missing, _) => {
            let plan = answer.missing.iter().any(|missing| matches!(missing, Missing::WayDown | Missing::Lowering | Missing::SecondPerson));
            let template = "{}; then try it at knee height first.";
            let first = if plan {
                "Plan the way down and who stays on the ground before anything else"
            } else {
                "Enter what is missing"
            };
            said(template, &[], &[first], view)
        }
        (Decided::RatedMass, _) => if answer.rated.is_some() {
            "Gear of which every part is rated for more, or less kit, would move it."
        } else {
            "Read the labels of harness, connectors, pulleys and devices, and enter the least that they allow."
        }.to_owned(),
        (Decided::TopOut, _) => "A higher crotch, hitches and connectors that stack shorter, or a lower climb would move it.".to_owned(),
        (Decided::NothingHolds, _) => {
            "A hitch at the harness that grips the rope, or something at the foot of the tree that does, would move it.".to_owned()
        }
        (Decided::HarnessClock, _) => {
            "A seat board under level thighs, legs raised, a stop on a platform, a lower climb or a rig with fewer strokes changes it.".to_owned()
        }
        (Decided::Time, None) => {
            let time = if answer.hangs_still { "A" } else { "More time, a" };
            said("{} longer pull, less setback or a rig with less advantage would move it.", &[], &[time], view)
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
        Decided::Hands | Decided::LastingHands => &["A hold", "better", "as good"],
        Decided::ArmsAndHands => &["Arms and a hold", "stronger", "as strong"],
        _ => &["Arms", "stronger", "as strong"],
    };
    let mut text = if times < 2.0 {
        said("{} {A} {}", &[&Spread::point(times - 1.0)], &[whose, than], view)
    } else {
        said("{} {1} times {}", &[&Spread::point(times)], &[whose, as_much], view)
    };
    let out = verdict.level == Level::OutOfReach;
    let next = match (answer.hauled, out) {
        (true, true) => "let one haul in five succeed",
        (true, _) => "let four hauls in five succeed",
        (false, true) if verdict.reaches.is_some() => "let one climb in five come to the height",
        (false, _) if verdict.reaches.is_some() => "let four climbs in five come to the height",
        (false, true) => "let one pull in five succeed, which is no climb",
        (false, _) => "let four pulls in five succeed",
    };
    let hands = matches!(verdict.decided, Decided::Hands | Decided::LastingHands);
    let [how, end] = if hands && !answer.hold.is_best() {
        &["", "; a hand loop or a handle is the usual way"]
    } else if answer.ideal > 1.0 && !answer.hauled && !answer.missing.contains(&Missing::Rig) {
        &[" (less kit, better turns)", ""]
    } else {
        &[" (less kit, a rig with more advantage)", ""]
    };
    let less = Spread::point(1.0 - 1.0 / times);
    say(&mut text, ", or a pull that takes {A} less{}, would {}{}.", &[&less], &[how, next, end], view);
    if verdict.decided.is_of_many_pulls() && !answer.hangs_still {
        text.push_str(" So may more time.");
    }
    text
}

/// What moves a verdict that no strength would move.
fn less_stuck(answer: &Answer) -> &'static str {
    if answer.room_decides() {
        "Less setback, or hitches and connectors that stack shorter, would move it."
    } else if answer.ideal <= 1.0 {
        "Less setback or a longer pull would move it."
    } else if answer.posture == Posture::Upright && !answer.hold.is_loop() {
        "Less setback, a longer pull (leaning back, a hand loop) or a rig with less advantage would move it."
    } else {
        "Less setback, a longer pull or a rig with less advantage would move it."
    }
}
