//! What a stroke brings, and how many of them it is.

use super::Rows;
use crate::climber::{Hold, MOVING, PULL_TIME, Posture, RESET_TIME, TO_CHEST, share_used};
use crate::field::Spread;
use crate::reeving::BodyKind;
use crate::source::{ANSUR, COMMON_PRACTICE, GEOMETRY, JOHNSON, JUDGED, RAKSHIT};

impl Rows<'_> {
    pub(super) fn stroke(&mut self) {
        let answer = self.answer;
        let (Some(travel), Some(gain), Some(strokes)) = (&answer.travel, &answer.gain, &answer.strokes) else {
            return self.rope("height × rope for each unit of height");
        };
        self.add("gain", "height gained each stroke", gain, "{M}", &[GEOMETRY, JUDGED, COMMON_PRACTICE]);
        self.gain(travel, gain);
        self.line(
            "Setback, stack and the share of your reach were chosen to agree with what climbers report: about {c0} a stroke sitting, {c0} leaning back (common practice, no source).",
            &[&const { Spread::point(0.15) }, &const { Spread::point(0.23) }],
            &[],
        );
        self.add("strokes", "strokes to the height", strokes, "{I}", &[GEOMETRY]);
        if strokes.likely.is_finite() {
            let numbers = [&Spread::point(answer.height), gain, strokes];
            self.line("height ÷ gain = {M} ÷ {F} = {1}, the last one begun", &numbers, &[]);
        } else {
            self.line("A stroke that gains nothing never comes to the height, however often.", &[], &[]);
        }
        let sources = if answer.travel_is_own { &[GEOMETRY][..] } else { &[ANSUR, JUDGED] };
        self.add("handTravel", "rope pulled each stroke", travel, "{M}", sources);
        if answer.travel_is_own {
            self.line("Your own figure.", &[], &[]);
        } else {
            const SLOPE: &Spread = &Spread::point(TO_CHEST.0);
            const START: &Spread = &Spread::point(TO_CHEST.1);
            self.line(
                "From your stature: {4} × stature + {c2} from overhead down to the chest, of which {r2} is used sitting upright, all of it leaning back or with a hand loop.",
                &[SLOPE, START, &share_used(Posture::Upright, Hold::BareRope)],
                &[],
            );
        }
        self.rope("strokes × (gain + setback) × rope for each unit of height");
        if let Some(time) = &answer.time {
            self.add("workingTime", "pulling time alone, no rests", time, "{S}", &[JUDGED]);
            self.line("strokes × ({r2} s a pull", &[&PULL_TIME], &[]);
            if answer.rig.body(BodyKind::Carriage).is_some() {
                self.more(" and {r0} s to move the upper hitch", &[&RESET_TIME], &[]);
            }
            self.more("). Rests come on top.", &[], &[]);
        }
        self.lasting();
        self.at_cadence(&answer.stroke_work, "strokeWork", "work of one stroke", "{J}", "pull × rope pulled");
        let (noun, working) = ("power at your strokes a minute", "work of one stroke × strokes a minute");
        self.at_cadence(&answer.power, "power", noun, "{W}", working);
        self.at_cadence(&answer.speed, "climbSpeed", "speed at them", "{V}", "gain × strokes a minute");
        let (noun, working) = ("time to the height at them", "strokes ÷ strokes a minute");
        self.at_cadence(&answer.climb_time, "climbTime", noun, "{S}", working);
    }

    /// How long the rests must be for strength to last.
    fn lasting(&mut self) {
        let (Some(rest), Some(time)) = (&self.answer.rest, &self.answer.lasting_time) else { return };
        let sources = &[RAKSHIT, JOHNSON, JUDGED];
        self.add("restEach", "rest after each pull, for strength to last", rest, "{S}", sources);
        self.line(
            "As long as arms and hands need to have what a pull takes at the end of the last one; moving the hitch counts as rest. Muscles that move tire {r1} times as fast as those that hold still.",
            &[&MOVING],
            &[],
        );
        self.line(
            "Reckoned of muscles, not of you: pain, breath, heat, and hanging in a harness come on top.",
            &[],
            &[],
        );
        self.add("lastingTime", "time to the height with those rests", time, "{S}", sources);
        self.line("strokes in all × (a pull + that rest)", &[], &[]);
    }

    /// A figure that follows from the strokes, where it is known.
    fn at_cadence(&mut self, figure: &Option<Spread>, id: &'static str, noun: &'static str, slot: &str, working: &str) {
        if let Some(figure) = figure {
            self.add(id, noun, figure, slot, &[GEOMETRY]);
            self.line(working, &[], &[]);
        }
    }

    fn rope(&mut self, working: &str) {
        if let Some(rope) = &self.answer.rope_handled {
            let noun = if self.answer.hauled { "rope the helper hauls" } else { "rope through your hands" };
            self.add("ropeHandled", noun, rope, "{M}", &[GEOMETRY]);
            self.line(working, &[], &[]);
        }
        if let Some(work) = &self.answer.work {
            self.add("work", "work to the height", work, "{J}", &[GEOMETRY]);
            self.line("pull × all this rope; lifting you alone would be your weight × the height", &[], &[]);
        }
    }

    /// What a stroke gains: by the pull, or by the room above the lap where that ends the stroke.
    fn gain(&mut self, travel: &Spread, gain: &Spread) {
        let answer = self.answer;
        match &answer.room {
            Some(room) if answer.room_decides() => self.line(
                "room − setback = {F} − {F} = {F}: the hitches and connectors leave so much between your lap and your reach, less than your pull would give",
                &[room, &answer.setback, gain],
                &[],
            ),
            _ => self.line(
                "rope pulled ÷ rope for each unit of height − setback = {F} ÷ {0} − {F} = {F}",
                &[travel, &Spread::point(answer.ideal), &answer.setback, gain],
                &[],
            ),
        }
    }
}
