//! What the rope gives at the start.

use super::Rows;
use crate::field::Spread;
use crate::source::{ATTAWAY, CALIFORNIA, EN_1891, GEOMETRY, JUDGED};

impl Rows<'_> {
    pub(super) fn start(&mut self) {
        let start = &self.answer.taken_up;
        let sources = &[GEOMETRY, ATTAWAY, EN_1891, CALIFORNIA, JUDGED];
        self.add("ropeStretch", "stretch of the rope at the start", &start.stretch, "{M}", sources);
        self.line(
            "your weight × rope above you ÷ the force that would stretch it to twice its length = {N} × {M} ÷ {N}",
            &[&self.answer.weight, &start.above, &start.rope_kind.modulus()],
            &[],
        );
        if start.strands != 1.0 {
            self.more(" × {2} for both sides of the crotch", &[&Spread::point(start.strands)], &[]);
        }
        self.more(" = {M}", &[&start.stretch], &[]);
        let above = if self.answer.top.crotch.is_some() {
            "The rope above you goes from your attachment to the crotch."
        } else {
            "How high the crotch is has not been said: it is taken to be no higher than the climb needs."
        };
        self.line(above, &[], &[]);
        let (Some(strokes), Some(time), Some(all)) = (&start.strokes, &start.time, &start.all_strokes) else {
            if self.answer.hauled {
                let template = "Before you rise {M} of rope is hauled, {J} of work, on top of what the height takes.";
                self.line(template, &[&start.rope, &start.work], &[]);
            }
            return;
        };
        if strokes.likely.is_finite() {
            let noun = "first strokes, which stretch the rope and raise nobody";
            self.add("emptyStrokes", noun, strokes, "{I}", sources);
            self.line(
                "stretch × rope for each unit of height ÷ rope a stroke takes = {M} of rope ÷ that = {1}, the last one begun",
                &[&start.rope, strokes],
                &[],
            );
            self.line(
                "They are reckoned with the whole pull, though it begins at nothing: {J} of work and {S} without rests, on top of rope, work and pulling time to the height.",
                &[&start.work, time],
                &[],
            );
        }
        self.add("allStrokes", "strokes in all", all, "{I}", &[GEOMETRY]);
        self.line(
            "The first strokes and those to the height; rests and the time with rests are for all of them.",
            &[],
            &[],
        );
    }
}
