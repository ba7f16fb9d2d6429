//! The answer to "Can I climb this?" in words.

use super::assumed::assumed;
use super::caution::caution_line;
use super::drawing::drawing;
use super::figures::figures;
use super::first::first;
use super::going::going_report;
use super::leg_climb::leg_line;
use super::missing::missing_lines;
use super::part::part_lines;
use super::second::second;
use super::source::cited;
use super::template::worded;
use super::verdict::verdict_line;
use super::{Report, WorkDone};
use crate::quantity::View;
use crate::question::can_i_climb::{Answer, Missing};

/// What stands in for a rig that nobody chose.
pub(super) const USUAL_RIG: &str = "Reckoned on a 3:1 on the rope’s own tail until you choose a rig.";

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here: every number is one of the answer's.
#[must_use]
pub fn report(answer: &Answer, view: View) -> Report {
    let figures = figures(answer, view);
    let rig_is_usual = answer.missing.contains(&Missing::Rig);
    let assumed = assumed(&answer.assumed, view);
    let mut cautions = Vec::new();
    for caution in &answer.cautions {
        cautions.push(caution_line(*caution, view));
    }
    let legs = answer.legs.map(|climb| leg_line(climb, view));
    let sources = cited(&[&figures], &cautions, legs.as_ref().map_or(&[], |legs| &legs.sources));
    Report {
        verdict: verdict_line(answer.verdict, rig_is_usual),
        first: first(answer, view),
        second: second(answer, view),
        assumed: if rig_is_usual { worded("{} {}", &[USUAL_RIG, &assumed]) } else { assumed },
        missing: missing_lines(answer),
        legs,
        figures,
        going: answer.going.as_ref().map(|going| going_report(going, view)),
        drawing: drawing(answer, view),
        parts: part_lines(answer, view),
        cautions,
        sources,
        effort: WorkDone { samples: answer.samples, more: answer.more },
    }
}
