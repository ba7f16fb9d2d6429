//! The answer to "Can I get down again?" in words.

use super::assumed::assumed;
use super::descent_caution::descent_caution;
use super::figure::figure;
use super::record::records;
use super::source::cited;
use super::step::step_line;
use super::template::said;
use super::{CautionLine, Figure, SourceLine, StepLine, WorkDone};
use crate::descent::{Brake, NoChangeOver, SENSIBLE_SPEED};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::coming_down::{Answer, Cord, Slowest};
use crate::source::{
    COMMON_PRACTICE, DELANEY, EN_341, FIBRE_HEAT, GEOMETRY, GRAVITY, JUDGED, MORTON_HEARLE, MUNTER, NHANES, SUMMIT,
    Source, YOUNG,
};

records! {
    /// How somebody comes down again.
    pub struct DescentReport {
        /// Whether the hand holds it.
        pub first: String,
        /// The same in a few words.
        pub glance: &'static str,
        /// How fast at the most, and why.
        pub second: String,
        /// The defaults it rests on; empty where all was said.
        pub assumed: String,
        /// The figures of hand and heat.
        pub figures: Vec<Figure>,
        /// The steps of the change-over, in order; none where nobody changes over on the rig.
        pub steps: Vec<StepLine>,
        /// Why there are no steps; empty where there are.
        pub none: &'static str,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources that the figures and cautions rest on.
        pub sources: Vec<SourceLine>,
        /// The effort it rests on.
        pub effort: WorkDone,
    }
}

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's.
#[must_use]
pub fn descent_report(answer: &Answer, view: View) -> DescentReport {
    let (mut steps, mut none) = (Vec::new(), "");
    match &answer.steps {
        Ok(all) => {
            for step in all {
                steps.push(step_line(step));
            }
        }
        Err(why) => none = why_none(*why),
    }
    let mut cautions = Vec::new();
    for caution in &answer.cautions {
        cautions.push(descent_caution(*caution, view));
    }
    let figures = figures(answer, view);
    DescentReport {
        first: first(answer, view),
        glance: glance(answer),
        second: second(answer, view),
        assumed: assumed(&answer.assumed, view),
        sources: cited(&[&figures], &cautions, &[COMMON_PRACTICE.id]),
        figures,
        steps,
        none,
        cautions,
        effort: WorkDone { samples: answer.samples, more: answer.more },
    }
}

const fn why_none(why: NoChangeOver) -> &'static str {
    match why {
        NoChangeOver::Hauled => "Nobody comes down on this rig by themselves: whoever hauled you lets you down.",
        NoChangeOver::NoHitch => {
            "No hitch of yours is on the climbing rope of this rig, so there is none to come down on."
        }
    }
}

fn first(answer: &Answer, view: View) -> String {
    let hold = match (&answer.steps, &answer.hold) {
        (Err(why), _) => return why_none(*why).to_owned(),
        (_, None) => return why_none(NoChangeOver::NoHitch).to_owned(),
        (_, Some(hold)) => hold,
    };
    if answer.brake == Brake::None && !answer.is_measured {
        return said(
            "Not on the hitch alone: held in the hand it counts as nothing, and your hand would hold {P}.",
            &[hold],
            &[],
            view,
        );
    }
    let Some(hand) = &answer.hand else {
        return said(
            "Whether your hand holds it is not known: to stop you it must hold {P}. Enter a grip, or age and sex.",
            &[hold],
            &[],
            view,
        );
    };
    let template = match stops(hold, hand) {
        Stops::Surely => "On paper your weaker hand stops you: that takes {P}, and on bare rope it holds about {N}.",
        Stops::Perhaps => {
            "Your weaker hand may not stop you: that takes up to {P}, and on bare rope it holds about {N}, but perhaps only {N}. Add friction."
        }
        Stops::Hardly => {
            "Your weaker hand likely does not stop you: that takes {P}, and on bare rope it holds about {N}. Add friction."
        }
    };
    let (most, least) = (Spread::point(hold.high), Spread::point(hand.low));
    match stops(hold, hand) {
        Stops::Perhaps => said(template, &[&most, hand, &least], &[], view),
        Stops::Surely | Stops::Hardly => said(template, &[hold, hand], &[], view),
    }
}

/// Whether the weaker hand stops the climber.
enum Stops {
    Surely,
    Perhaps,
    Hardly,
}

fn stops(hold: &Spread, hand: &Spread) -> Stops {
    if hand.low >= hold.high {
        Stops::Surely
    } else if hand.likely >= hold.likely {
        Stops::Perhaps
    } else {
        Stops::Hardly
    }
}

/// The answer in a few words.
fn glance(answer: &Answer) -> &'static str {
    match (&answer.steps, &answer.hold, &answer.hand) {
        (Err(why), ..) => why_none(*why),
        (_, None, _) => why_none(NoChangeOver::NoHitch),
        _ if answer.brake == Brake::None && !answer.is_measured => "Not on the hitch alone",
        (.., None) => "Whether your hand holds it is not known",
        (_, Some(hold), Some(hand)) => match stops(hold, hand) {
            Stops::Surely => "On paper your weaker hand stops you",
            Stops::Perhaps => "Your weaker hand may not stop you",
            Stops::Hardly => "Your weaker hand likely does not stop you",
        },
    }
}

fn second(answer: &Answer, view: View) -> String {
    let (speed, why) = answer.sensible;
    let speed = Spread::point(speed);
    let speed = &[&speed][..];
    match why {
        Slowest::Sensible if answer.cord.is_none() => said(
            "How fast its cord lets you go is not known: enter the hitch, its cord and the rope’s diameter. {V} is too fast on any hitch, and yours may want far less.",
            speed,
            &[],
            view,
        ),
        Slowest::Sensible => said("Go no faster than {V}, with stops to feel the hitch.", speed, &[], view),
        Slowest::Heat => said("Go no faster than {V}: faster, the cord of the hitch likely gets too hot.", speed, &[], view),
        Slowest::NeedsStops => {
            "However slowly, the cord of the hitch may get too hot on this way down: stop often and let it cool, or let less of the heat into it.".to_owned()
        }
    }
}

fn figures(answer: &Answer, view: View) -> Vec<Figure> {
    let mut figures = Vec::new();
    let mut add =
        |id: &'static str, noun: &'static str, spread: &Spread, slot: &str, sources: &[Source], working: String| {
            let mut figure = figure(id, noun, spread, slot, view, sources);
            figure.workings.push(working);
            figures.push(figure);
        };
    let friction: &[Source] = match answer.brake {
        _ if answer.is_measured => &[GEOMETRY, GRAVITY],
        Brake::None => &[GEOMETRY, GRAVITY, JUDGED],
        Brake::Munter => &[MUNTER, GEOMETRY, GRAVITY],
        Brake::Redirect | Brake::Turns => &[DELANEY, GEOMETRY, GRAVITY],
    };
    if let (Some(hold), Some(run)) = (&answer.hold, &answer.run) {
        add(
            "holdForce",
            "what your hand must hold to stop",
            hold,
            "{P}",
            friction,
            said(
                "What hangs on that side of the rope ÷ {1}, the least that the friction multiplies a hand; the hitch counts as nothing.",
                &[&Spread::point(answer.ratio.low)],
                &[],
                view,
            ),
        );
        if answer.ratio.low < answer.ratio.high {
            add(
                "runForce",
                "the least it must hold while rope runs",
                run,
                "{N}",
                friction,
                said(
                    "The same ÷ {1}, the most that it multiplies a hand: with less than that the rope runs anyhow.",
                    &[&Spread::point(answer.ratio.high)],
                    &[],
                    view,
                ),
            );
        }
        if let (Some(hand), Some(chance)) = (&answer.hand, answer.chance) {
            let sources = &[YOUNG, NHANES, SUMMIT, JUDGED];
            let working =
                "Its grip on bare rope, with the gloves you said; a hand is usually taken to hold 222 N (50 lbf).";
            add("handHolds", "what your weaker hand holds", hand, "{N}", sources, working.to_owned());
            if let Some(share) = &answer.hand_share {
                let working = "What stopping takes ÷ what the hand holds.".to_owned();
                add("handShare", "share of that which stopping takes", share, "{%}", &[GEOMETRY, JUDGED], working);
            }
            let chance = Spread::point(chance);
            let working = said("In {C} of the sums your weaker hand holds that.", &[&chance], &[], view);
            add("handChance", "chance that it does", &chance, "{C}", sources, working);
        }
    }
    let (height, speed) = (&Spread::point(answer.height), &Spread::point(answer.speed));
    let stops = if answer.stops.is_some() { ", and the stops" } else { "" };
    let working = said("{M} at {V}{}.", &[height, speed], &[stops], view);
    add("descentTime", "time it takes", &Spread::point(answer.time), "{S}", &[GEOMETRY], working);
    let working = said("weight × {M}", &[height], &[], view);
    add("descentEnergy", "what becomes heat", &answer.energy, "{J}", &[GEOMETRY, GRAVITY], working);
    let working = said("weight × {V}, while you move", &[speed], &[], view);
    add("descentPower", "how much of it a second", &answer.power, "{W}", &[GEOMETRY, GRAVITY], working);
    if let Some(cord) = &answer.cord {
        cord_figures(&mut add, cord, view);
    }
    let sensible = if answer.cord.is_some() { "no faster than" } else { "never faster than, on any hitch" };
    let limit = Spread::point(answer.sensible.0);
    let working = said(
        "At most {V} on any hitch, whatever a sum says; 2 m/s is the limit of a standard for devices, and no speed for a hitch.",
        &[&Spread::point(SENSIBLE_SPEED)],
        &[],
        view,
    );
    add("sensibleSpeed", sensible, &limit, "{V}", &[JUDGED, EN_341], working);
    figures
}

/// Adds a figure: its id, noun, range, slot, sources and working.
type Add<'a> = dyn FnMut(&'static str, &'static str, &Spread, &str, &[Source], String) + 'a;

fn cord_figures(add: &mut Add<'_>, cord: &Cord, view: View) {
    let sources = &[MORTON_HEARLE, FIBRE_HEAT, GEOMETRY, JUDGED];
    let (length, share) = (&Spread::point(cord.length), &cord.share);
    let working = said(
        "{%} of the heat ({%} to {%}), spread evenly through the {c0} of cord that lie on the rope, from air at 0 to 40 degrees Celsius.",
        &[share, &Spread::point(share.low), &Spread::point(share.high), length],
        &[],
        view,
    );
    add("cordTemperature", "the hitch’s cord, evenly", &cord.even, "{T}", sources, working);
    let warmth = cord.fibre.warmth();
    let (changes, fails) = (&Spread::point(warmth.changes), &Spread::point(warmth.fails));
    let working = said(
        "The side that the rope runs past, with nothing lost to the air. {} changes near {T} and fails near {T}.",
        &[changes, fails],
        &[&super::phrase::sentence(cord.fibre.named().noun)],
        view,
    );
    add("faceTemperature", "its side on the rope, at the hottest", &cord.face, "{T}", sources, working);
}
