//! The figures of a cord.

use super::Figure;
use super::figure::figure;
use super::template::said;
use crate::field::Spread;
use crate::gear::Ends;
use crate::quantity::View;
use crate::question::cut_length::Answer;
use crate::source::{EN_564, GEOMETRY, JUDGED, KNOT_STRENGTH};

/// The figures, what it takes first.
pub(super) fn figures(answer: &Answer, total: &Figure, view: View) -> Vec<Figure> {
    let (cut, make) = (&answer.cut, &answer.make);
    let pattern = make.pattern;
    let mut figures = vec![total.clone()];
    let mut add = |figure: Figure| figures.push(figure);
    let with = |mut figure: Figure, working: String| {
        figure.workings.push(working);
        figure
    };
    let length = |id, noun, length: &Spread, sources| figure(id, noun, length, "{M}", view, sources);
    let between = if make.is_loop() {
        "Half of what goes round in it: legs, coils and crossings."
    } else if answer.cord_use.is_hitch() {
        "Legs, coils and crossings, pulled straight."
    } else {
        "Between its ends."
    };
    add(with(length("finishedLength", "finished length", &answer.finished, &[GEOMETRY]), between.to_owned()));
    if answer.cord_use.is_hitch() {
        let legs = Spread::point(f64::from(pattern.legs));
        let hangs = cut.legs.scaled(1.0 / legs.likely);
        add(with(
            length("freeLegs", "free legs in all", &cut.legs, pattern.sources),
            if pattern.legs > 1 {
                said("{0} strands of {M} hang from the hitch, were they alike.", &[&legs, &hangs], &[], view)
            } else {
                "One strand goes to its connector.".to_owned()
            },
        ));
        if make.ends != Ends::Sewn {
            let working = "All before the first coil: tail, knot, eye and leg.";
            add(with(
                length("workingEnd", "working end to begin with", &cut.working_end, &[GEOMETRY, JUDGED]),
                working.to_owned(),
            ));
        }
    }
    if let Some(fit) = make.fit {
        add(with(
            figure("cordFit", "your coils and knots, over the usual", &Spread::point(fit), "{%}", view, &[GEOMETRY]),
            "From what you cut and what it came out at, with the shortest tails.".to_owned(),
        ));
    }
    if let (Some(straight), Some(strength)) = (answer.straight, &answer.strength) {
        let strands = if pattern.legs > 1 { "2" } else { "1" };
        add(with(
            figure("cordStrength", "what it bears as tied", strength, "{N}", view, &[EN_564, KNOT_STRENGTH]),
            said("{} × {N} straight × what its knots keep", &[&Spread::point(straight.in_newtons())], &[strands], view),
        ));
    }
    if let (Some(weight), Some(peak)) = (&answer.weight, &answer.peak) {
        add(with(
            figure("cordLoad", "your weight on it, all of it", weight, "{N}", view, &[GEOMETRY]),
            "Body, clothes and kit, hanging still: no part of any rig need carry more.".to_owned(),
        ));
        add(with(
            figure("cordPeak", "the same with the jerks of a climb", peak, "{N}", view, &[JUDGED]),
            "× 1.5, from 1.2 to 2.0; a fall asks for far more.".to_owned(),
        ));
    }
    figures
}
