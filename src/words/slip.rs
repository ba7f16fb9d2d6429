//! A slip at each height, in words and as a chart.

use super::chart::{Chart, ChartLine, Mark, Point, axis, units};
use super::template::{said, say};
use crate::field::Spread;
use crate::gear::{FULL_BODY_LIMIT, SEAT_HARNESS_LIMIT};
use crate::quantity::{FOOT, METRE, System, View};
use crate::question::loads::Slip;

/// What stops somebody at each height.
pub(super) fn slip_chart(slip: &Slip, view: View) -> Chart {
    let si = view.system == System::Si;
    let length = if si { METRE } else { FOOT };
    let [_, force] = units(view);
    let mut lines = Vec::new();
    let mut most = FULL_BODY_LIMIT.in_newtons();
    for (id, noun, forces) in
        [("likely-rope", "likely rope", &slip.likely), ("stiffest-rope", "stiffest of its kind", &slip.stiff)]
    {
        let mut points = Vec::new();
        for (height, newtons) in slip.heights.iter().zip(forces) {
            most = if *newtons > most { *newtons } else { most };
            points.push(Point { x: length.count(*height), y: force.count(*newtons) });
        }
        lines.push(ChartLine { id, noun, points });
    }
    let ends = (slip.heights.first().copied().unwrap_or(0.0), slip.heights.last().copied().unwrap_or(0.0));
    let mut text = said(
        "What the rope pulls on you when it stops a drop of {M}, against the height of your lower hitch: it is hardest at the top, where least rope is out.",
        &[&Spread::point(slip.drop.likely)],
        &[],
        view,
    );
    match slip.lowest_catch {
        Some(lowest) => say(
            &mut text,
            " With the hitch below {M} you may meet the ground first.",
            &[&Spread::point(lowest)],
            &[],
            view,
        ),
        None => text
            .push_str(" Nowhere on this climb is there room enough under you to count on a catch before the ground."),
    }
    let mark = |noun, newtons: f64| Mark { noun, y: force.count(newtons) };
    Chart {
        noun: "A slip at each height",
        text,
        x: axis("height of the lower hitch", length, ends),
        y: axis("what stops you", force, (0.0, most)),
        lines,
        bands: Vec::new(),
        marks: vec![
            mark(if si { "seat harness, 4 kN" } else { "seat harness, 900 lbf" }, SEAT_HARNESS_LIMIT.in_newtons()),
            mark(
                if si { "full-body harness, 8 kN" } else { "full-body harness, 1,800 lbf" },
                FULL_BODY_LIMIT.in_newtons(),
            ),
        ],
        you: None,
    }
}
