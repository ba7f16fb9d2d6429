//! What the rig does with the pull, and what hangs on it.

use super::Rows;
use crate::ascent::By;
use crate::field::Spread;
use crate::quantity::{STANDARD_GRAVITY, System};
use crate::question::can_i_climb::CLIMBING_PEAK;
use crate::reeving::BodyKind;
use crate::source::{GEOMETRY, GRAVITY, JUDGED};

impl Rows<'_> {
    pub(super) fn rig(&mut self) {
        let answer = self.answer;
        let mut sources = vec![GEOMETRY];
        for turn in answer.turns.iter().filter(|turn| turn.by == By::Kind) {
            sources.extend(turn.kind.sources());
        }
        self.add("realAdvantage", "real advantage", &answer.advantage, "{2}", &sources);
        self.lifting();
        self.kept();
        self.add("idealAdvantage", "advantage without loss", &Spread::point(answer.ideal), "{0}", &[GEOMETRY]);
        self.line("The rope the hand takes for each unit of height; losses never change it.", &[], &[]);
        if let Some(kept) = answer.turn_efficiency {
            let kept = Spread::point(kept);
            self.add("turnEfficiency", "kept at a turn, by your own test", &kept, "{3}", &[GEOMETRY]);
            self.line(
                "One reading and several turns: all are scaled by one power until the rig gives what you measured; the drag of the hitch is in it.",
                &[],
                &[],
            );
        }
        self.add("climberWeight", "your weight, all-up", &answer.weight, "{N}", &[GRAVITY, JUDGED]);
        self.line("{K}", &[&answer.mass], &[]);
        if self.view.system == System::Si {
            let gravity = &const { Spread::point(STANDARD_GRAVITY) };
            self.more(" × {5} m/s² = {N}", &[gravity, &answer.weight], &[]);
        } else {
            self.more(", which standard gravity makes {N}", &[&answer.weight], &[]);
        }
        let noun = "load on the anchor, moving in jerks";
        self.add("anchorLoad", noun, &answer.anchor, "{N}", &[GEOMETRY, JUDGED]);
        self.line(
            "What the rope pulls on the crotch × {r1} for moving in jerks. With the rope made fast at the foot of the tree it is up to twice as much. A slip or a catch loads it far more, and is not reckoned here.",
            &[&CLIMBING_PEAK],
            &[],
        );
    }

    /// What adds up to the real advantage: every strand that pulls the climber up.
    fn lifting(&mut self) {
        let answer = self.answer;
        let climber = answer.rig.body(BodyKind::Climber);
        if answer.helped.is_some() {
            self.line("What one unit of pull at the hand lifts; helpers lift beside it.", &[], &[]);
            return;
        }
        let mut lifting = Vec::new();
        for (rope, tensions) in answer.rig.ropes().iter().zip(&answer.tensions) {
            let mut from = None;
            for (at, stop) in rope.stops.iter().enumerate() {
                let tension = at.checked_sub(1).and_then(|strand| tensions.get(strand));
                if let Some(tension) = tension
                    && tension.likely > 0.0
                    && (from == climber || stop.body == climber)
                    && (from.is_some() && from < climber || stop.body.is_some() && stop.body < climber)
                {
                    lifting.push(tension.likely / answer.need.likely);
                }
                from = stop.body;
            }
        }
        if lifting.len() > 1 {
            let mut before = "Each strand that lifts you, for one unit of pull at the hand: ";
            self.line("", &[], &[]);
            for strand in lifting.iter().rev() {
                self.more("{}{2}", &[&Spread::point(*strand)], &[before]);
                before = " + ";
            }
            self.more(" = {2}", &[&answer.advantage], &[]);
        } else {
            let template = "One strand lifts you; for one unit of pull at the hand it carries {2}";
            self.line(template, &[&answer.advantage], &[]);
        }
    }

    /// What the turns and the hitch leave of a tension.
    fn kept(&mut self) {
        let answer = self.answer;
        if !answer.turns.is_empty() {
            let mut before = "Kept at each turn, from the hand: ";
            self.line("", &[], &[]);
            for turn in answer.turns.iter().rev() {
                let own = match turn.by {
                    By::Kind => "",
                    By::Own => " (your own figure)",
                    By::Test => " (by your own test)",
                };
                self.more("{}{} {2}{}", &[&turn.kept], &[before, turn.kind.named().noun, own]);
                before = ", ";
            }
            if answer.drags {
                self.more(", and past the hitch that slides {2}", &[&answer.drag], &[]);
            }
            self.more(".", &[], &[]);
        }
    }
}
