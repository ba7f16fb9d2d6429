//! What a stroke brings, and how many of them it is.

use super::Rows;
use crate::climber::{
    Hold, KEPT_UP, KEPT_UP_FOR, MOVING, PEAK_OVER_GRIP, PULL_TIME, Posture, RESET_TIME, ShoulderReach, TO_CHEST,
    share_used,
};
use crate::field::Spread;
use crate::reeving::BodyKind;
use crate::source::{AMINOFF, ANSUR, COMMON_PRACTICE, GEOMETRY, HAISMA, JOHNSON, JUDGED, RAKSHIT};

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
            match answer.shoulder_reach {
                None => self.more(" Of your arms nothing is said, so they are taken to go all the way up.", &[], &[]),
                Some(ShoulderReach::Full) => {}
                Some(limited) => {
                    self.more(" Of arms that do not go all the way up, {r1} of it.", &[&limited.kept()], &[]);
                }
            }
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
        self.going();
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
        if let Some(hanging) = &self.answer.hanging {
            self.add("hangingTime", "time in the harness until you are down", hanging, "{S}", &[JUDGED]);
            self.line("that time, and the height at half a metre a second, the most that anybody should come down at on a hitch", &[], &[]);
        }
        self.power();
    }

    /// The power of the arms, needed and kept up.
    fn power(&mut self) {
        let answer = self.answer;
        let (Some(needed), Some(kept)) = (&answer.power_needed, &answer.power_kept_up) else { return };
        self.add("powerNeeded", "power it takes in the time you allow", needed, "{W}", &[GEOMETRY]);
        let time = if answer.time_allowed < KEPT_UP_FOR { answer.time_allowed } else { KEPT_UP_FOR };
        self.line("work of all strokes ÷ {S}, half an hour at the most", &[&Spread::point(time)], &[]);
        self.add("powerKeptUp", "power your arms keep up", kept, "{W}", &[AMINOFF, HAISMA, JUDGED]);
        match answer.arm_power {
            Some(peak) => self.line("the greatest you measured, {W}, × {r1}", &[&Spread::point(peak), &KEPT_UP], &[]),
            None => self.line(
                "107 W is the greatest of able-bodied men at the arm crank, of a grip of both hands like theirs, 74 W of people with paraplegia, 40 W with tetraplegia; × {r1} of it for people like you × {r1} for 20 to 30 minutes",
                &[&PEAK_OVER_GRIP, &KEPT_UP],
                &[],
            ),
        }
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
