//! What a stroke brings, and how many of them it is.

use super::super::figure::Style;
use super::super::phrase::{fine_length, metres, ranged, small_length};
use super::{LENGTH, Rows};
use crate::climber::{Hold, PULL_TIME, Posture, RESET_TIME, TO_CHEST, share_used};
use crate::field::Spread;
use crate::quantity::{Dimension, View, plain};
use crate::question::can_i_climb::Answer;
use crate::reeving::BodyKind;
use crate::source::{ANSUR, COMMON_PRACTICE, GEOMETRY, JUDGED};

impl Rows<'_> {
    pub(super) fn stroke(&mut self) {
        let (answer, view) = (self.answer, self.view);
        let (Some(travel), Some(gain), Some(strokes)) = (answer.travel, answer.gain, answer.strokes) else {
            return self.rope("height × rope for each unit of height");
        };
        let gained = fine_length(gain.likely, view);
        let practice = format!(
            "Setback, stack and the share of your reach were chosen to agree with what climbers report: about {} a stroke sitting, {} leaning back (common practice, no source).",
            small_length(0.15, 0, view),
            small_length(0.23, 0, view)
        );
        self.add(
            ("gain", "height gained each stroke"),
            gain,
            LENGTH,
            vec![gain_working(answer, travel, &gained, view), practice],
            &[GEOMETRY, JUDGED, COMMON_PRACTICE],
        );
        let counted = if strokes.likely.is_finite() {
            let height = metres(answer.height, view);
            format!("height ÷ gain = {height} ÷ {gained} = {}, the last one begun", plain(strokes.likely, 1, view))
        } else {
            "A stroke that gains nothing never comes to the height, however often.".to_owned()
        };
        self.add(("strokes", "strokes to the height"), strokes, Style::Whole, vec![counted], &[GEOMETRY]);
        let (reach, sources) = if answer.travel_is_own {
            ("Your own figure.".to_owned(), &[GEOMETRY][..])
        } else {
            let reach = format!(
                "From your stature: {} × stature + {} from overhead down to the chest, of which {} is used sitting upright, all of it leaning back or with a hand loop.",
                plain(TO_CHEST.0, 4, view),
                small_length(TO_CHEST.1, 2, view),
                ranged(share_used(Posture::Upright, Hold::BareRope), 2, view)
            );
            (reach, &[ANSUR, JUDGED][..])
        };
        self.add(("handTravel", "rope pulled each stroke"), travel, LENGTH, vec![reach], sources);
        self.rope("strokes × (gain + setback) × rope for each unit of height");
        if let Some(time) = answer.time {
            let moved = if answer.rig.body(BodyKind::Carriage).is_some() {
                format!(" and {} s to move the upper hitch", ranged(RESET_TIME, 0, view))
            } else {
                String::new()
            };
            let pull = ranged(PULL_TIME, 2, view);
            let workings =
                vec![format!("strokes × ({pull} s a pull{moved}). Rests come on top and are not reckoned yet.")];
            let style = Style::Unit(Dimension::Duration);
            self.add(("workingTime", "pulling time alone, no rests"), time, style, workings, &[JUDGED]);
        }
        let at_the_cadence = [
            (answer.stroke_work, ("strokeWork", "work of one stroke"), Dimension::Energy, "pull × rope pulled"),
            (
                answer.power,
                ("power", "power at your strokes a minute"),
                Dimension::Power,
                "work of one stroke × strokes a minute",
            ),
            (answer.speed, ("climbSpeed", "speed at them"), Dimension::Speed, "gain × strokes a minute"),
            (
                answer.climb_time,
                ("climbTime", "time to the height at them"),
                Dimension::Duration,
                "strokes ÷ strokes a minute",
            ),
        ];
        for (figure, names, dimension, working) in at_the_cadence {
            if let Some(figure) = figure {
                self.add(names, figure, Style::Unit(dimension), vec![working.to_owned()], &[GEOMETRY]);
            }
        }
    }

    fn rope(&mut self, working: &str) {
        if let Some(rope) = self.answer.rope_handled {
            let noun = if self.answer.hauled { "rope the helper hauls" } else { "rope through your hands" };
            self.add(("ropeHandled", noun), rope, LENGTH, vec![working.to_owned()], &[GEOMETRY]);
        }
        if let Some(work) = self.answer.work {
            let workings = vec!["pull × all this rope; lifting you alone would be your weight × the height".to_owned()];
            self.add(("work", "work to the height"), work, Style::Unit(Dimension::Energy), workings, &[GEOMETRY]);
        }
    }
}

/// What a stroke gains: by the pull, or by the room above the lap where that ends the stroke.
fn gain_working(answer: &Answer, travel: Spread, gained: &str, view: View) -> String {
    let setback = fine_length(answer.setback.likely, view);
    match answer.room {
        Some(room) if answer.room_decides() => format!(
            "room − setback = {} − {setback} = {gained}: the hitches and connectors leave so much between your lap and your reach, less than your pull would give",
            fine_length(room.likely, view)
        ),
        _ => format!(
            "rope pulled ÷ rope for each unit of height − setback = {} ÷ {} − {setback} = {gained}",
            fine_length(travel.likely, view),
            plain(answer.ideal, 0, view)
        ),
    }
}
