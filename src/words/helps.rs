//! What would help most, in words.

use super::record::records;
use super::source::cited;
use super::template::said;
use super::{SourceLine, WorkDone};
use crate::chance::Effort;
use crate::field::Spread;
use crate::quantity::{Force, View};
use crate::question::can_i_climb::{Change, Compared, Helps, LESS_KIT, TAIL_HELP};
use crate::source::{JACOBS, JUDGED};

records! {
    /// What a climb comes to with one thing otherwise, or as it is.
    pub struct HelpLine {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What people call it.
        pub noun: String,
        /// The chance, from nought to one.
        pub value: f64,
        /// The same as people read it.
        pub chance: String,
        /// The share of strength that a pull takes.
        pub share: String,
        /// The strokes in all; none where they are not known.
        pub strokes: Option<String>,
        /// The time with rests; none where it is not known.
        pub time: Option<String>,
        /// What it takes beside them; empty of the climb as it is.
        pub cost: &'static str,
    }

    /// What would help most.
    pub struct HelpsReport {
        /// What does most, in a sentence.
        pub first: String,
        /// Which chance is compared; empty where nothing is.
        pub of: &'static str,
        /// The climb as it is; none while the strength is not known.
        pub now: Option<HelpLine>,
        /// Every change that can be made, the most helpful first.
        pub changes: Vec<HelpLine>,
        /// The sources.
        pub sources: Vec<SourceLine>,
        /// The effort each rests on.
        pub effort: WorkDone,
    }
}

/// What would help most, as people read it; nothing to compare while the strength is not known.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's.
#[must_use]
pub fn helps_report(helps: Option<&Helps>, view: View) -> HelpsReport {
    let Some(helps) = helps else {
        return HelpsReport {
            first: "How strong you are is not known, so nothing can be compared.".to_owned(),
            of: "",
            now: None,
            changes: Vec::new(),
            sources: Vec::new(),
            effort: WorkDone { samples: 0, more: false },
        };
    };
    let mut changes = Vec::new();
    for help in &helps.changes {
        let noun = noun(help.change, helps, view);
        changes.push(line(id(help.change), noun, &help.with, cost(help.change), view));
    }
    HelpsReport {
        first: first(helps, view),
        of: if helps.counted { "chance of the height in time" } else { "chance of one pull" },
        now: Some(line("as-it-is", "as it is".to_owned(), &helps.as_it_is, "", view)),
        changes,
        sources: cited(&[], &[], &[JACOBS.id, JUDGED.id]),
        effort: WorkDone { samples: helps.samples, more: helps.samples < Effort::FULL.count() },
    }
}

fn line(id: &'static str, noun: String, with: &Compared, cost: &'static str, view: View) -> HelpLine {
    let told = |template: &str, value: f64| said(template, &[&Spread::point(value)], &[], view);
    let known = |template: &str, value: f64| {
        if value.is_nan() {
            None
        } else if value.is_infinite() {
            Some("never".to_owned())
        } else {
            Some(told(template, value))
        }
    };
    HelpLine {
        id,
        noun,
        value: with.chance,
        chance: told("{C}", with.chance),
        share: told("{%}", with.share),
        strokes: known("{I}", with.strokes),
        time: known("{S}", with.time),
        cost,
    }
}

/// The change that does most, in a sentence.
fn first(helps: &Helps, view: View) -> String {
    let Some(best) = helps.changes.first() else { return String::new() };
    let (now, then) = (helps.as_it_is.chance, best.with.chance);
    let chances = [&Spread::point(then), &Spread::point(now)];
    // Less than one climb in a hundred is no help that anybody would notice (judged).
    if then - now >= 0.01 {
        let noun = noun(best.change, helps, view);
        let what = if helps.counted { "come to the height in time" } else { "succeed with one pull" };
        return said(
            "Most would help: {}. Then {C} of the reckoned climbs {}, and not {C}.",
            &chances,
            &[&noun, what],
            view,
        );
    }
    let mut spares = best;
    for help in &helps.changes {
        // Nobody is shown a lighter pull that makes the climb less likely.
        if help.with.share < spares.with.share && help.with.chance > now - 0.01 {
            spares = help;
        }
    }
    let noun = noun(spares.change, helps, view);
    let shares = [&Spread::point(spares.with.share), &Spread::point(helps.as_it_is.share)];
    said(
        "No one of these raises the chance by as much as one climb in a hundred. What spares most strength: {}. A pull then takes {%} of it, and not {%}.",
        &shares,
        &[&noun],
        view,
    )
}

const fn id(change: Change) -> &'static str {
    match change {
        Change::Pulleys => "pulleys",
        Change::HandLoop => "hand-loop",
        Change::LeaningBack => "leaning-back",
        Change::CaptureDevice => "capture-device",
        Change::NextRig => "next-rig",
        Change::LighterKit => "lighter-kit",
        Change::MoreTime => "more-time",
        Change::HelperOnTail => "helper-on-tail",
        Change::StrongerPull => "stronger-pull",
        Change::LowerClimb => "lower-climb",
    }
}

fn noun(change: Change, helps: &Helps, view: View) -> String {
    match change {
        Change::Pulleys => "pulleys wherever the rope slides round something".to_owned(),
        Change::HandLoop => "a loop round each hand".to_owned(),
        Change::LeaningBack => "leaning back at each pull".to_owned(),
        Change::CaptureDevice => "a mechanical progress-capture device for the lower hitch".to_owned(),
        Change::NextRig => said("the next rig, {}", &[], &[helps.next.unwrap_or_default()], view),
        Change::LighterKit => said("{K} less kit", &[&Spread::point(LESS_KIT)], &[], view),
        Change::MoreTime => "twice the time".to_owned(),
        Change::HelperOnTail => {
            let pull = Spread::point(Force::kilograms_force(TAIL_HELP).in_newtons());
            said("a helper who pulls {P} on the tail", &[&pull], &[], view)
        }
        Change::StrongerPull => "arms a tenth stronger".to_owned(),
        Change::LowerClimb => "a climb a quarter lower".to_owned(),
    }
}

/// What the change takes beside strokes and time.
const fn cost(change: Change) -> &'static str {
    match change {
        Change::Pulleys => "a pulley for each such turn, rated for you",
        Change::HandLoop => "cord or webbing for two loops",
        Change::LeaningBack => "a trunk that holds you, and a harness that lets you",
        Change::CaptureDevice => {
            "a device rated for you and for this rope, used as its maker says; what it gives back and keeps is judged"
        }
        Change::NextRig => "more turns and a longer tail or cord",
        Change::LighterKit => "what can stay below, if it is not what keeps you safe",
        Change::MoreTime => "as long again in the harness",
        Change::HelperOnTail => "somebody who stays on the rope’s tail all the way",
        Change::StrongerPull => {
            "months of training: small studies of people with paraplegia gained 12 to 39 % in 12 to 16 weeks; shoulders are soon overused"
        }
        Change::LowerClimb => "a lower goal",
    }
}
