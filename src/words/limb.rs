//! What bending says of a limb, in words.

use super::figure::figure;
use super::template::said;
use super::{Figure, LimbLine};
use crate::field::Spread;
use crate::quantity::{FOOT, INCH, POUND_FORCE, System, View};
use crate::question::loads::{Answer, LimbFact};
use crate::source::{GEOMETRY, JUDGED, RESCUE_MANUAL, Source};
use crate::tree::{Bending, LEAST_BOLE, SHARE_THAT_RULES_OUT};

/// What bending says of the limb, and what is asked of it first.
pub(super) fn limb_line(answer: &Answer, view: View) -> LimbLine {
    let (id, text) = match answer.limb.as_ref().map(|limb| limb.says) {
        Some(Bending::DeadWood) => {
            ("dead-wood", "Dead or decayed wood is always refused, whatever a sum says. Choose another tie-in.")
        }
        Some(Bending::TooThin) => {
            ("too-thin", "It is too thin to tie in to, whatever a sum says. Choose a thicker one, or the stem itself.")
        }
        Some(Bending::NotRuledOut) if answer.limb.as_ref().is_some_and(|limb| !limb.with_slips) => (
            "not-known",
            "Standing loads do not rule it out, and a slip is not in them: enter the height of the crotch and the height to climb. A qualified arborist looks at it before anybody hangs on it.",
        ),
        Some(Bending::RuledOut) => (
            "ruled-out",
            "Bending alone rules this limb out. Choose a thicker one, nearer to the stem, or the stem itself.",
        ),
        Some(Bending::NotRuledOut) => (
            "not-ruled-out",
            "Bending in sound, clear wood does not rule it out; this sum cannot see decay, dead wood, cracks or a weak union. Have a qualified arborist look before anybody hangs on it.",
        ),
        None => (
            "not-known",
            "Not reckoned: that takes the thickness of the limb and the species. A qualified arborist looks at both.",
        ),
    };
    LimbLine {
        id,
        text: text.to_owned(),
        checks: checks(answer, view),
        figures: answer.limb.as_ref().map_or_else(Vec::new, |limb| limb_figures(limb, view)),
    }
}

fn checks(answer: &Answer, view: View) -> Vec<String> {
    let forearm = match answer.thinner_than_forearm {
        Some(true) => "It is thinner than your forearm: too thin to tie in to.",
        Some(false) => {
            "It is at least as thick as your forearm: the first thing that is asked of a tie-in, and not the last."
        }
        None => "It must be at least as thick as your forearm.",
    };
    let bole = Spread::point(LEAST_BOLE.in_metres());
    let thin = match answer.thinner_than_bole {
        Some(true) => "It is thinner than {c0}: too thin to tie in to. In a conifer that is as thin as anybody climbs.",
        _ => "In a conifer nobody climbs unsecured above a bole of {c0}.",
    };
    let mut checks = vec![
        forearm.to_owned(),
        said(thin, &[&bole], &[], view),
        "The rope goes round the stem and not out along the limb, and never on a single smaller branch.".to_owned(),
    ];
    if answer.limb.as_ref().is_none_or(|limb| !limb.looked_at) {
        checks.push("Nobody has said yet whether it lives: look from the ground before anybody trusts it.".to_owned());
    }
    checks
}

fn limb_figures(limb: &LimbFact, view: View) -> Vec<Figure> {
    let point = Spread::point;
    let si = view.system == System::Si;
    let mut figures = Vec::new();
    let mut add = |id, noun, number: f64, slot: &str, sources: &[Source], working: String| {
        let mut figure = figure(id, noun, &point(number), slot, view, sources);
        figure.workings.push(working);
        figures.push(figure);
    };
    let pull = "The high end of the greatest peak on the crotch in any state that is reckoned.".to_owned();
    add("limbPull", "greatest pull on it", limb.pull, "{N}", &[GEOMETRY, JUDGED], pull);
    if let Some(moment) = limb.moment {
        let working = "pull × distance from the stem × the sine of its angle from upright, with the rope as far out as it may lie";
        let sources = &[GEOMETRY, RESCUE_MANUAL];
        let (noun, unit, slot) = if si {
            ("bending at the union, kN m", 1e3, "{2}")
        } else {
            ("bending at the union, lbf ft", POUND_FORCE.si(1.0) * FOOT.si(1.0), "{0}")
        };
        add("limbMoment", noun, moment / unit, slot, sources, working.to_owned());
    }
    if let (Some(stress), Some((strength, source))) = (limb.stress, limb.strength) {
        let working = "32 × bending ÷ (π × thickness³), a round section".to_owned();
        let [under, bears] = if si {
            ["stress there, MPa", "low strength of green clear wood, MPa"]
        } else {
            ["stress there, psi", "low strength of green clear wood, psi"]
        };
        let inch = INCH.si(1.0);
        let (unit, slot) = if si { (1e6, "{1}") } else { (POUND_FORCE.si(1.0) / (inch * inch), "{0}") };
        add("limbStress", under, stress / unit, slot, &[GEOMETRY], working);
        let working = said(
            "The mean less two standard deviations, without knots, taper or a union. From {%} of it on, bending rules a limb out.",
            &[&point(SHARE_THAT_RULES_OUT)],
            &[],
            view,
        );
        let sources = &[source, JUDGED];
        add("limbStrength", bears, strength / unit, "{0}", sources, working);
    }
    figures
}
